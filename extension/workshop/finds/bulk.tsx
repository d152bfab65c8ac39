/** What can be done with the finds that are chosen, and taking back what was removed. */
import { useState } from 'preact/hooks';
import { ChoiceField } from '../../components/choice-field.tsx';
import { useWords } from '../../components/speech.ts';
import { STATUSES } from '../../store/index.ts';
import type { WorkshopHost } from '../host.ts';
import { addressOf } from '../route.ts';
import { useComplaint, useStore } from '../use-store.tsx';

export interface BulkProps {
  readonly host: WorkshopHost;
  readonly chosen: ReadonlySet<string>;
  readonly total: number;
  readonly onChooseAll: () => void;
  readonly onDone: () => void;
}

/** Side by side has room for so many columns. */
export const MOST_COLUMNS = 5;

export function Bulk({ host, chosen, total, onChooseAll, onDone }: BulkProps) {
  const { t } = useWords();
  const { finds } = useStore();
  const { complaint, checked } = useComplaint();
  const [removed, setRemoved] = useState<readonly string[]>([]);
  const ids = [...chosen];
  /** Does it to one after the other, and stops at the first that fails. */
  const each = async <T,>(work: (id: string) => Promise<T | null>): Promise<readonly T[]> => {
    const done: T[] = [];
    for (const id of ids) {
      const result = await work(id);
      if (result === null) break;
      done.push(result);
    }
    return done;
  };
  const setStatus = async (value: string) => {
    const status = STATUSES.find((one) => one === value);
    if (status) await each(async (id) => checked(await finds.setStatus(id, status, host.now())));
  };
  const remove = async () => {
    const removals = await each(async (id) => checked(await finds.remove(id, host.now())));
    setRemoved(removals.map(({ token }) => token));
    onDone();
  };
  const undo = async () => {
    for (const token of removed) if (checked(await finds.undo(token)) === null) return;
    setRemoved([]);
  };
  return (
    <div class="bulk">
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
              ...STATUSES.map((status) => ({ value: status, words: t(`finds_status_${status}`) })),
            ]}
            onChoice={(value) => void setStatus(value)}
          />
          {ids.length >= 2 && ids.length <= MOST_COLUMNS ? (
            <a href={addressOf('side-by-side', ids.join(','))}>{t('finds_compare')}</a>
          ) : (
            <span class="quiet">{t('finds_compare_how', { most: MOST_COLUMNS })}</span>
          )}
          <button type="button" data-remove onClick={() => void remove()}>
            {t('finds_remove')}
          </button>
        </>
      )}
      {removed.length > 0 && (
        <span role="status">
          {t('finds_removed', { n: removed.length })}{' '}
          <button type="button" data-undo onClick={() => void undo()}>
            {t('finds_undo')}
          </button>
        </span>
      )}
      {complaint && <p role="alert">{complaint}</p>}
    </div>
  );
}
