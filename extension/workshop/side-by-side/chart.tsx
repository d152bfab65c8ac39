/** The lots on one scale, each with its range. */
import type { Comparison } from '../../../src/compare/index.ts';
import type { MoneyRange } from '../../../src/listing/evaluation.ts';
import { withoutOrders } from '../../../src/words/say.ts';
import { figure, likely, span } from '../../components/figures.ts';
import { type ChartRow, RangeChart } from '../../components/range-chart.tsx';
import { useWords } from '../../components/speech.ts';
import type { Column } from './columns.ts';

/** Characters of a title that leave room for the figures beside it at 360 px; the table has it in full. */
const MOST = 20;

const inShort = (title: string): string => (title.length > MOST ? `${title.slice(0, MOST - 1).trimEnd()}…` : title);

export function CompareChart({ columns, comparison }: { readonly columns: readonly Column[]; readonly comparison: Comparison }) {
  const words = useWords();
  const { say, t } = words;
  const { kind, values, best } = comparison;
  const currency = columns.find(({ evaluation }) => evaluation.worth.allIn)?.evaluation.worth.allIn?.currency ?? 'USD';
  const share = (value: number) => t('compare_share', { share: { percent: value * 100 } });
  const rows = columns.flatMap(({ find }, index): ChartRow[] => {
    const value = values[index];
    if (!value) return [];
    const money: MoneyRange = { ...value, currency };
    const written =
      kind === 'per-pound'
        ? {
            low: figure(words, value.low, money),
            likely: likely(words, money),
            high: figure(words, value.high, money),
            span: span(words, money),
          }
        : {
            low: share(value.low),
            likely: share(value.likely),
            high: share(value.high),
            span: t('panel_span', { low: share(value.low), high: share(value.high) }),
          };
    return [
      {
        id: find.id,
        label: inShort(withoutOrders(find.title) || t('finds_untitled')),
        ...value,
        words: { ...written, per: t(`compare_${kind.replace('-', '_')}`) },
        own: index === best,
      },
    ];
  });
  if (rows.length < 2) return null;
  const caption = t(`compare_${kind.replace('-', '_')}`);
  return (
    <section class="compare-chart">
      <h2>{caption}</h2>
      <RangeChart
        caption={caption}
        rows={rows}
        writeTick={(value) => (kind === 'per-pound' ? say.money({ minor: Math.round(value), currency }) : share(value))}
      />
    </section>
  );
}
