/** One cell of the table: its figures, where they come from and since when; changed on the spot, and put back. */
import { useId, useState } from 'preact/hooks';
import { isOwn, withDefault } from '../../../src/listing/setting-path.ts';
import type { RateCategory } from '../../../src/listing/settings.ts';
import { sourceOf } from '../../../src/price/rate-steps.ts';
import { cellOf, ordered } from '../../../src/price/rates.ts';
import { likely, span } from '../../components/figures.ts';
import { useWords } from '../../components/speech.ts';
import { CellFields } from './cell-fields.tsx';
import { moneyOf, nameOf } from './figures.ts';
import { type Column, pathOf, type Rates } from './use-rates.ts';

export interface CellProps {
  readonly rates: Rates;
  readonly category: RateCategory;
  readonly column: Column;
}

export function Cell({ rates, category, column }: CellProps) {
  const words = useWords();
  const { say, t } = words;
  const id = useId();
  const [open, setOpen] = useState(false);
  const { settings } = rates;
  const path = pathOf(category, column);
  const cell = cellOf(category, column, settings);
  const money = cell && moneyOf(ordered(cell), category, settings);
  const source = sourceOf(cell);
  const what = t('rates_cell', { category: nameOf(words, category), column: t(`rates_column_${column}`) });
  return (
    <td data-cell={path}>
      {money ? (
        <>
          <strong>{likely(words, money)}</strong> {money.low < money.high && <span class="rates-span">{span(words, money)}</span>}
        </>
      ) : (
        <span>{t('rates_no_cell')}</span>
      )}
      {source && <span class="rates-source">{say(source)}</span>}
      <button
        type="button"
        class="bare"
        data-change={path}
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        onClick={() => setOpen(!open)}
      >
        {t(open ? 'rates_done' : 'rates_change')}
        <span class="unseen">: {what}</span>
      </button>
      {isOwn(settings, path) && (
        <button
          type="button"
          class="bare"
          data-put-back={path}
          onClick={() => {
            rates.change((now) => withDefault(now, path));
            setOpen(false);
          }}
        >
          {t('rates_put_back')}
          <span class="unseen">: {what}</span>
        </button>
      )}
      {open && <CellFields id={id} legend={what} rates={rates} category={category} column={column} />}
    </td>
  );
}
