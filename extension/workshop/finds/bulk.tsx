/** What can be done with the finds that are chosen, and taking it back. Each is one write, however many there are. */
import { useState } from 'preact/hooks';
import { ChoiceField } from '../../components/choice-field.tsx';
import { useWords } from '../../components/speech.ts';
import { useOneAtATime } from '../../components/use-one-at-a-time.ts';
import { STATUSES } from '../../store/index.ts';
import type { WorkshopHost } from '../host.ts';
import { addressOf } from '../route.ts';
import { Sure } from '../sure.tsx';
import { useUndo } from '../undo.tsx';
import { useComplaint, useStore } from '../use-store.tsx';

export interface BulkProps {
  readonly host: WorkshopHost;
  readonly chosen: ReadonlySet<string>;
  readonly total: number;
  readonly onChooseAll: () => void;
  readonly onDone: () => void;
}

/** Side by side has room for so many columns. */
const MOST_COLUMNS = 5;

/** Bought is none of them: for that each is asked what was paid. */
const FOR_MANY = STATUSES.filter((status) => status !== 'bought');

export function Bulk({ host, chosen, total, onChooseAll, onDone }: BulkProps) {
  const { t } = useWords();
  const { finds } = useStore();
  const { complaint, checked } = useComplaint();
  const undo = useUndo();
  const { busy, once } = useOneAtATime();
  const [bought, setBought] = useState(0);
  const ids = [...chosen];
  const setStatus = async (value: string) => {
    const status = FOR_MANY.find((one) => one === value);
    const before = status && checked(await finds.setStatusOf(ids, status, host.now()));
    if (!status || !before) return;
    const left = before.filter((one) => one.status === 'bought').length;
    const words = [
      t('finds_status_set', { n: before.length, status: t(`finds_status_${status}`) }),
      left > 0 ? t('finds_unbought', { n: left }) : '',
    ];
    undo.done(words.join(' ').trim(), () => once(async () => checked(await finds.putBack(before, host.now()))));
  };
  const remove = async () => {
    setBought(0);
    const removals = checked(await finds.removeMany(ids, host.now()));
    if (removals === null) return;
    const tokens = removals.map(({ token }) => token);
    undo.done(t('finds_removed', { n: tokens.length }), () => once(async () => checked(await finds.undoMany(tokens))), true);
    onDone();
  };
  const askToRemove = async () => {
    const ofThem = checked(await finds.matching({ order: 'kept', descending: false, statuses: ['bought'], from: 0, count: 0 }));
    const count = ofThem?.filter((id) => chosen.has(id)).length ?? 0;
    if (count > 0) setBought(count);
    else if (ofThem) await remove();
  };
  return (
    <div class="bulk" aria-busy={busy}>
      {total > 0 && (
        <button type="button" data-all onClick={ids.length > 0 ? onDone : onChooseAll}>
          {t(ids.length > 0 ? 'finds_choose_none' : 'finds_choose_all')}
        </button>
      )}
      {ids.length > 0 && (
        <>
          <span>{t('finds_chosen', { n: ids.length })}</span>
          <ChoiceField
            path="set-status"
            label={t('finds_set_status')}
            labelShown
            value=""
            options={[
              { value: '', words: t('finds_set_status_to') },
              ...FOR_MANY.map((status) => ({ value: status, words: t(`finds_status_${status}`) })),
            ]}
            onChoice={(value) => once(() => setStatus(value))}
          />
          {ids.length >= 2 && ids.length <= MOST_COLUMNS ? (
            <a href={addressOf('side-by-side', ids.join(','))}>
              {t('finds_compare')}
              <span class="unseen">: {t('finds_chosen', { n: ids.length })}</span>
            </a>
          ) : (
            <span class="quiet">{t('finds_compare_how', { most: MOST_COLUMNS })}</span>
          )}
          <button type="button" data-remove onClick={() => once(askToRemove)}>
            {t('finds_remove')}
          </button>
        </>
      )}
      {bought > 0 && ids.length > 0 && (
        <Sure
          words={t('finds_remove_bought', { n: bought })}
          yes={t('finds_remove_sure')}
          onYes={() => once(remove)}
          onNo={() => setBought(0)}
        />
      )}
      {busy && <span role="status">{t('finds_working')}</span>}
      {undo.line}
      {complaint && <p role="alert">{complaint}</p>}
    </div>
  );
}
