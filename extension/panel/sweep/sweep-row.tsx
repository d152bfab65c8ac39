/** One ad of the list: a tick, its title, the call and the figures. */
import { useWords } from '../../components/speech.ts';
import type { Find } from '../../store/index.ts';
import { priceThen } from '../price-then.ts';
import type { Row } from './rows.ts';

export interface SweepRowProps {
  readonly row: Row;
  /** The find that this ad is already; null for none. */
  readonly find: Find | null;
  /** Null where ads can't be kept: no tick is shown. */
  readonly ticked: boolean | null;
  readonly onTick: (id: string) => void;
  readonly onChoose: (row: Row) => void;
}

export function SweepRow({ row, find, ticked, onTick, onChoose }: SweepRowProps) {
  const words = useWords();
  const { t } = words;
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
        {find && (
          <p class="quiet" data-known={find.id}>
            {t('sweep_known')} {priceThen(words, find, row.asking)}
          </p>
        )}
        {figures.length > 0 && <p class="quiet">{figures.join(' · ')}</p>}
      </div>
    </li>
  );
}
