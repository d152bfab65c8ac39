/** One ad of the list: a tick, its title, the call and the figures. */
import { useWords } from '../../components/speech.ts';
import type { Row } from './rows.ts';

export interface SweepRowProps {
  readonly row: Row;
  /** Null where ads can't be kept: no tick is shown. */
  readonly ticked: boolean | null;
  readonly onTick: (id: string) => void;
  readonly onChoose: (row: Row) => void;
}

export function SweepRow({ row, ticked, onTick, onChoose }: SweepRowProps) {
  const { t } = useWords();
  const { id, title, says, verdict } = row;
  const figures = [row.costSays, row.asked, row.savingSays, row.distanceSays].filter((part) => part !== null);
  return (
    <li class="sweep-row" data-row={id} data-verdict={verdict}>
      {ticked !== null && (
        <label class="sweep-tick">
          <input type="checkbox" data-tick={id} checked={ticked} onChange={() => onTick(id)} />
          <span class="unseen">{t('sweep_tick', { title })}</span>
        </label>
      )}
      <div>
        <button type="button" class="bare sweep-title" data-choose={id} onClick={() => onChoose(row)}>
          <bdi>{title}</bdi>
        </button>
        <p class="sweep-call">{says}</p>
        {figures.length > 0 && <p class="quiet">{figures.join(' · ')}</p>}
      </div>
    </li>
  );
}
