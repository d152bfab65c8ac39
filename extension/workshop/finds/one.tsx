/** One find: what became of it, the ad's history, and the whole answer as the panel gives it. */
import { useEffect, useState } from 'preact/hooks';
import { ChoiceField } from '../../components/choice-field.tsx';
import { useWords } from '../../components/speech.ts';
import { Answer } from '../../panel/answer.tsx';
import { Editing } from '../../panel/edits.ts';
import { STATUSES, type Status } from '../../store/index.ts';
import { Bought } from '../bought-form.tsx';
import type { WorkshopHost } from '../host.ts';
import { addressOf } from '../route.ts';
import { Taking, useTaking } from '../taking.tsx';
import { useUndo } from '../undo.tsx';
import { useComplaint, useStore } from '../use-store.tsx';
import { Adds } from './adds.tsx';
import { History } from './history.tsx';
import { Notes } from './notes.tsx';
import { type OpenFind, useFind } from './use-find.ts';

/** What may become a link: a file that was imported can name any address. */
const IS_PAGE = /^https?:\/\//i;

export interface OneFindProps {
  readonly host: WorkshopHost;
  readonly id: string;
  /** The goods of it that are meant, where the address says so. */
  readonly only?: readonly string[] | null | undefined;
}

export function OneFind({ host, id, only }: OneFindProps) {
  const { say, t } = useWords();
  const { open, failed } = useFind(host, id);
  return (
    <>
      <p>
        <a href={addressOf('finds')}>{t('finds_back')}</a>
      </p>
      {failed && <p role="alert">{say(failed)}</p>}
      {open ? <Opened host={host} open={open} only={only} /> : !failed && <p class="quiet">{t('workshop_opening')}</p>}
    </>
  );
}

function Opened({ host, open, only }: Pick<OneFindProps, 'host' | 'only'> & { readonly open: OpenFind }) {
  const { t } = useWords();
  const { finds } = useStore();
  const { complaint, checked } = useComplaint();
  const { find, session, settings, evaluation, edits } = open;
  const taking = useTaking(host, open, only);
  const [buying, setBuying] = useState(false);
  const undo = useUndo();
  const setStatus = async (status: Status) => {
    const before = checked(await finds.setStatusOf([find.id], status, host.now()));
    const left = before?.filter((one) => one.status === 'bought') ?? [];
    if (left.length === 0) return;
    undo.done(t('finds_unbought_this'), async () => void checked(await finds.putBack(left, host.now())));
  };
  // Bought again: what was before is no way back any more.
  useEffect(() => {
    if (find.status === 'bought') undo.forget();
  }, [find.status, find.changedAt]);
  const [unit, setUnit] = useState(session.distance?.unit ?? (settings.unit === 'kg' ? 'km' : 'mi'));
  return (
    <div class="one-find">
      <section class="one-find-about" aria-label={t('finds_about')}>
        <h2>
          <bdi>{find.title || t('finds_untitled')}</bdi>
        </h2>
        {find.address && IS_PAGE.test(find.address) && (
          <p>
            <a href={find.address} rel="noreferrer noopener" target="_blank">
              {t('finds_open_ad')}
            </a>
          </p>
        )}
        <ChoiceField
          path="status"
          label={t('finds_by_status')}
          labelShown
          value={find.status}
          options={STATUSES.map((status) => ({ value: status, words: t(`finds_status_${status}`) }))}
          onChoice={async (value) => {
            const status = STATUSES.find((one) => one === value);
            // Bought asks what was paid first; the status follows when that is said.
            setBuying(status === 'bought');
            if (status && status !== 'bought') await setStatus(status);
          }}
        />
        {undo.line}
        {complaint && <p role="alert">{complaint}</p>}
        <Taking {...taking} />
        <Bought host={host} open={taking.open} asked={buying} onDone={() => setBuying(false)} />
        <p>
          <a href={addressOf('pickup', find.id)}>{t('pickup_open')}</a>
        </p>
        {find.status !== 'bought' && <Adds evaluation={evaluation} />}
        <History find={find} listing={session.listing} currency={settings.currency} now={host.now()} />
        <Notes key={find.id} find={find} host={host} />
      </section>
      <div class="one-find-answer">
        <Editing.Provider value={edits}>
          <Answer
            evaluation={evaluation}
            listing={session.listing}
            settings={settings}
            turnsOf={open.core.turnsOf}
            keeping={null}
            typed={session.distance}
            unit={unit}
            onDistance={open.setDistance}
            onUnit={setUnit}
            onSettings={open.setSettings}
          />
        </Editing.Provider>
      </div>
    </div>
  );
}
