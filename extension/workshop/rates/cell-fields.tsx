/** The fields of one cell: low, likely and high are taken together, and where they come from in the buyer's own words. */
import { useId, useState } from 'preact/hooks';
import { withOwn } from '../../../src/listing/setting-path.ts';
import { cellOf } from '../../../src/price/rates.ts';
import type { Range } from '../../../src/units/range.ts';
import { NumberField } from '../../components/number-field.tsx';
import { parseAmount } from '../../components/parse-input.ts';
import { useWords } from '../../components/speech.ts';
import type { CellProps } from './cell.tsx';
import { factorOf, perWords } from './figures.ts';
import { pathOf } from './use-rates.ts';

const ENDS = ['low', 'likely', 'high'] as const;
type Typed = Readonly<Record<(typeof ENDS)[number], number | null>>;
const NOTHING: Typed = { low: null, likely: null, high: null };

/** Wide enough for anything: it catches slips of the finger. */
const HIGHEST = 1_000_000;

export function CellFields({
  id,
  legend,
  rates,
  category,
  column,
}: CellProps & { readonly id: string; readonly legend: string }) {
  const words = useWords();
  const { say, t } = words;
  const { settings, date, change } = rates;
  const path = pathOf(category, column);
  const cell = cellOf(category, column, settings);
  const factor = factorOf(category, settings);
  const [draft, setDraft] = useState<Typed | null>(null);
  const [left, setLeft] = useState(false);
  const now: Typed = draft ?? cell ?? NOTHING;
  const take = (end: keyof Typed, value: number) => {
    const typed = { ...now, [end]: value / factor };
    setDraft(typed);
    if (!isRange(typed)) return;
    setLeft(false);
    // The figures alone: a cell of the table has more, which is not the buyer's.
    const { low, likely, high } = typed;
    change((stored) => withOwn(stored, path, { low, likely, high }, date) ?? {});
  };
  const waits = draft !== null && !isRange(draft);
  return (
    <fieldset id={id} class="rates-fields" onFocusOut={() => setLeft(true)}>
      <legend class="unseen">{legend}</legend>
      {ENDS.map((end) => (
        <NumberField
          key={end}
          path={`${path}.${end}`}
          label={t(`rates_end_${end}`)}
          labelShown
          value={now[end] === null ? null : (now[end] ?? 0) * factor}
          write={(value) => say.number(value, value < 1 ? 3 : 2)}
          parse={parseAmount}
          low={0}
          high={HIGHEST}
          complaint={t('rates_bad_number')}
          onValue={(value) => take(end, value)}
          width={6}
          hint={`${id}-unit`}
        />
      ))}
      <span id={`${id}-unit`} class="quiet">
        {settings.currency} {perWords(words, category, settings)}
      </span>
      {waits && left && (
        <span class="complaint" role="alert">
          {t('rates_bad_order')}
        </span>
      )}
      {settings.rates[category]?.[column] && <SourceField rates={rates} category={category} column={column} />}
    </fieldset>
  );
}

/** All three are there, and in order. */
function isRange(typed: Typed): typed is Range {
  const { low, likely, high } = typed;
  return low !== null && likely !== null && high !== null && low <= likely && likely <= high;
}

/** Longest text that a cell takes for its source. */
const MOST = 300;

/** Only of the buyer's own cells: what the table says of its own stands. */
function SourceField({ rates, category, column }: CellProps) {
  const { t } = useWords();
  const id = useId();
  const source = rates.settings.rates[category]?.[column]?.source ?? '';
  const take = (text: string) =>
    rates.change(({ rates: cells }) => {
      const own = cells[category]?.[column];
      if (!own) return {};
      return { rates: { ...cells, [category]: { ...cells[category], [column]: { ...own, source: text.trim() || 'own' } } } };
    });
  return (
    <span class="field">
      <label for={id} class="field-label">
        {t('rates_source')}
      </label>
      <input
        id={id}
        type="text"
        autocomplete="off"
        maxLength={MOST}
        data-path={`${pathOf(category, column)}.source`}
        value={source === 'own' ? '' : source}
        onChange={(event) => take(event.currentTarget.value)}
      />
    </span>
  );
}
