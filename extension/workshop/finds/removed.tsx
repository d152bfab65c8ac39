/** What was removed, the latest first, with the way back; it is deleted for good after 30 days, or when the buyer says so. */
import { useRef, useState } from 'preact/hooks';
import { useWords } from '../../components/speech.ts';
import { failureMessage, type Outcome, type Removal, type RemovalPage } from '../../store/index.ts';
import { addressOf } from '../route.ts';
import { Sure } from '../sure.tsx';
import { useLive } from '../use-live.ts';
import { useComplaint, useStore } from '../use-store.tsx';
import { DAYS_REMOVED } from './purge.ts';
import { RemovedRow } from './removed-row.tsx';

/** More are drawn when they are asked for. */
const AT_ONCE = 100;

/** Leads to what was removed; nothing while there is none. */
export function RemovedLink() {
  const { t } = useWords();
  const { finds } = useStore();
  const page = useLive<RemovalPage>((seen) => finds.watchRemovals(0, seen), [finds]);
  if (!page?.ok || page.value.total === 0) return null;
  return (
    <p>
      <a href={addressOf('finds', 'removed')} data-removed-link>
        {t('finds_removed_link', { n: page.value.total })}
      </a>
    </p>
  );
}

export function RemovedList() {
  const { say, t } = useWords();
  const { finds } = useStore();
  const { complaint, checked } = useComplaint();
  const [most, setMost] = useState(AT_ONCE);
  const [done, setDone] = useState<string | null>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const page = useLive<RemovalPage>((seen) => finds.watchRemovals(most, seen), [finds, most]);
  const nameOf = ({ find }: Removal): string => find.title || t('finds_untitled');
  const tell = <T,>(outcome: Outcome<T>, words: (value: T) => string) => {
    const value = checked(outcome);
    if (value === null) return;
    setDone(words(value));
    // The button that was pressed goes with its line.
    heading.current?.focus();
  };
  const undo = async (removal: Removal) =>
    tell(await finds.undo(removal.token), () => t('finds_removed_is_back', { title: nameOf(removal) }));
  const purged = (n: number): string => t('finds_purged', { n });
  const purge = async (removal: Removal) => tell(await finds.purgeOne(removal.token), purged);
  return (
    <>
      <p>
        <a href={addressOf('finds')}>{t('finds_back')}</a>
      </p>
      <h2 ref={heading} tabIndex={-1}>
        {t('finds_removed_heading')}
      </h2>
      <p class="quiet">{t('finds_removed_how', { days: DAYS_REMOVED })}</p>
      <p role="status">{done}</p>
      {complaint && <p role="alert">{complaint}</p>}
      {page && !page.ok && <p role="alert">{say(failureMessage(page.code))}</p>}
      {page?.ok && page.value.total === 0 && <p>{t('finds_removed_none')}</p>}
      {page?.ok && page.value.total > 1 && (
        <PurgeAll {...page.value} onPurge={async (before) => tell(await finds.purge(before), purged)} />
      )}
      {page?.ok && (
        <ul class="plain-list">
          {page.value.rows.map((removal) => (
            <RemovedRow
              key={removal.token}
              removal={removal}
              name={nameOf(removal)}
              onUndo={() => void undo(removal)}
              onPurge={() => void purge(removal)}
            />
          ))}
        </ul>
      )}
      {page?.ok && page.value.total > page.value.rows.length && page.value.rows.length >= most && (
        <button type="button" data-more onClick={() => setMost(most + AT_ONCE)}>
          {t('finds_removed_more')}
        </button>
      )}
    </>
  );
}

/** All of them at once: those that were there when it was asked, and none that another window removes meanwhile. */
function PurgeAll({ rows: [latest], total, onPurge }: RemovalPage & { readonly onPurge: (before: number) => void }) {
  const { t } = useWords();
  const [asked, setAsked] = useState<{ readonly total: number; readonly before: number } | null>(null);
  return (
    <div>
      <button type="button" data-purge-all onClick={() => setAsked({ total, before: (latest?.removedAt ?? 0) + 1 })}>
        {t('finds_purge_all', { n: total })}
      </button>
      {asked && (
        <Sure
          words={t('finds_purge_all_sure', { n: asked.total })}
          yes={t('finds_purge')}
          onYes={() => {
            setAsked(null);
            onPurge(asked.before);
          }}
          onNo={() => setAsked(null)}
        />
      )}
    </div>
  );
}
