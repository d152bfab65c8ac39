/** What was removed, the latest first, with the way back; after 30 days it is deleted for good. */
import { useRef, useState } from 'preact/hooks';
import { useWords } from '../../components/speech.ts';
import { failureMessage, type Removal, type RemovalPage } from '../../store/index.ts';
import { addressOf } from '../route.ts';
import { useLive } from '../use-live.ts';
import { useComplaint, useStore } from '../use-store.tsx';
import { DAYS_REMOVED } from './purge.ts';

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
  const [back, setBack] = useState<string | null>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const page = useLive<RemovalPage>((seen) => finds.watchRemovals(most, seen), [finds, most]);
  const nameOf = ({ find }: Removal): string => find.title || t('finds_untitled');
  const undo = async (removal: Removal) => {
    if (checked(await finds.undo(removal.token)) === null) return;
    setBack(nameOf(removal));
    // The button that was pressed goes with its line.
    heading.current?.focus();
  };
  return (
    <>
      <p>
        <a href={addressOf('finds')}>{t('finds_back')}</a>
      </p>
      <h2 ref={heading} tabIndex={-1}>
        {t('finds_removed_heading')}
      </h2>
      <p class="quiet">{t('finds_removed_how', { days: DAYS_REMOVED })}</p>
      <p role="status">{back !== null && t('finds_removed_is_back', { title: back })}</p>
      {complaint && <p role="alert">{complaint}</p>}
      {page && !page.ok && <p role="alert">{say(failureMessage(page.code))}</p>}
      {page?.ok && page.value.total === 0 && <p>{t('finds_removed_none')}</p>}
      {page?.ok && (
        <ul class="plain-list">
          {page.value.rows.map((removal) => (
            <li key={removal.token} data-removal={removal.find.id}>
              <bdi>{nameOf(removal)}</bdi>{' '}
              <span class="quiet">
                {t('finds_removed_on', { day: say.day(removal.removedAt) })}
                {removal.goods > 0 && ` ${t('finds_removed_goods', { n: removal.goods })}`}
              </span>{' '}
              <button type="button" class="bare" data-undo onClick={() => void undo(removal)}>
                {t('finds_undo')}
                <span class="unseen">: {nameOf(removal)}</span>
              </button>
            </li>
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
