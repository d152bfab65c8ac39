/** Two to five finds, a column each, the same questions in the same rows. */
import type { ComponentChildren } from 'preact';
import type { Lot } from '../../../src/compare/index.ts';
import { filledBy } from '../../../src/kit/filled-by.ts';
import type { MassUnit } from '../../../src/units/mass.ts';
import { likelyAndSpan, perWords, poundsIn } from '../../components/figures.ts';
import { useWords, type Words } from '../../components/speech.ts';
import { itemName } from '../../panel/item-words.ts';
import { filledName } from '../kit/thing-words.ts';
import { addressOf } from '../route.ts';
import type { Column, Columns } from './columns.ts';
import { milesIn } from './miles-in.ts';
import { offeredRows, piecesIn } from './offered.ts';
import { flagLines, letterOf, questionLines } from './remarks.tsx';

interface Row {
  readonly id: string;
  readonly label: string;
  readonly cells: readonly ComponentChildren[];
  /** On paper it stands below the table instead. */
  readonly long?: boolean;
}

function offered(words: Words, columns: readonly Column[]): Row[] {
  const { t } = words;
  return offeredRows(columns.map(({ evaluation }) => evaluation.reading.items)).map(({ like, items }) => ({
    id: `${like.id} ${itemName(words, like)}`,
    label: itemName(words, like),
    cells: items.map((own) => {
      if (own.length === 0) return t('compare_nothing');
      const pieces = piecesIn(own);
      return pieces === null ? t('compare_uncounted') : words.say.number(pieces);
    }),
  }));
}

function figures(words: Words, columns: readonly Column[], lots: readonly Lot[], unit: MassUnit): Row[] {
  const { say, t } = words;
  const row = (id: string, of: (lot: Lot) => ComponentChildren): Row => ({
    id,
    label: t(`compare_${id}`),
    cells: lots.map((lot) => of(lot) ?? t('compare_unknown')),
  });
  return [
    // The call needs no drive: without one it says how far it holds.
    {
      id: 'call',
      label: t('compare_call'),
      cells: columns.map(({ evaluation }) => <strong>{say(evaluation.call.says)}</strong>),
    },
    row('asked', ({ evaluation: { reading } }) => {
      const asked = reading.asking.amount;
      return asked && say.money(asked.value);
    }),
    row('all_in', ({ evaluation: { worth } }) => worth.allIn && likelyAndSpan(words, worth.allIn)),
    row('usable', ({ evaluation: { worth } }) => (worth.usable.likely > 0 ? poundsIn(words, worth.usable.likely, unit) : null)),
    row('per_pound', ({ evaluation: { worth } }) => {
      const rate = worth.perUsablePound;
      return rate && `${likelyAndSpan(words, rate)} ${perWords(words, rate)}`;
    }),
    row('new', ({ evaluation: { worth } }) => worth.newWorth && likelyAndSpan(words, worth.newWorth)),
    row('most', ({ evaluation: { worth } }) => worth.walkAway && say.money(worth.walkAway)),
    row('drive', ({ apart, evaluation: { trip } }) => {
      if (trip === null) return null;
      const cost = likelyAndSpan(words, trip.cost);
      if (apart !== null) return t('compare_drive_assumed', { distance: milesIn(trip.miles.likely, unit), cost });
      return `${t('panel_distance_value', { distance: { distance: trip.distance } })}: ${cost}`;
    }),
  ];
}

/** What each lot would fill of what the kit lacks: "2 of 4 × Plates, 45 lb; Straight bar". */
function fills(words: Words, columns: readonly Column[], { kit, open }: Pick<Columns, 'kit' | 'open'>): Row[] {
  const { t } = words;
  if (open === null) return [];
  const cells = columns.map(({ evaluation }) => {
    const filled = filledBy(evaluation, open, kit);
    return filled.length === 0 ? t('kit_fills_nothing') : filled.map((one) => filledName(words, one)).join('; ');
  });
  return [{ id: 'fills', label: t('kit_fills_row'), cells }];
}

function lists(words: Words, columns: readonly Column[]): Row[] {
  const { t } = words;
  const list = (lines: readonly string[], none: string) =>
    lines.length === 0 ? (
      none
    ) : (
      <ul class="plain-list">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    );
  return [
    {
      id: 'flags',
      label: t('compare_flags'),
      cells: columns.map(({ evaluation }) => list(flagLines(words, evaluation), t('compare_no_flags'))),
      long: true,
    },
    {
      id: 'questions',
      label: t('compare_questions'),
      cells: columns.map(({ evaluation }) => list(questionLines(words, evaluation), t('compare_no_questions'))),
      long: true,
    },
  ];
}

export function CompareTable({
  columns,
  lots,
  unit,
  kit,
  open,
  best,
}: Pick<Columns, 'unit' | 'kit' | 'open'> & {
  readonly columns: readonly Column[];
  readonly lots: readonly Lot[];
  readonly best: number | null;
}) {
  const words = useWords();
  const { t } = words;
  const rows = [
    ...figures(words, columns, lots, unit),
    ...fills(words, columns, { kit, open }),
    ...offered(words, columns),
    ...lists(words, columns),
  ];
  return (
    <div class="compare-box">
      <table class="compare">
        <caption class="unseen">{t('workshop_side_by_side')}</caption>
        <thead>
          <tr>
            <td />
            {columns.map(({ find }, index) => (
              <th key={find.id} scope="col" data-best={index === best || undefined}>
                <span class="on-paper">{letterOf(index)}: </span>
                <a href={addressOf('finds', find.id)}>
                  <bdi>{find.title || t('finds_untitled')}</bdi>
                </a>
                {index === best && <span class="compare-best">{t('compare_best')}</span>}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ id, label, cells, long }) => (
            <tr key={id} data-row={id} class={long ? 'no-print' : undefined}>
              <th scope="row">{label}</th>
              {cells.map((cell, index) => (
                <td key={columns[index]?.find.id}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
