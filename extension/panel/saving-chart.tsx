/** What is left of the saving, the further off the seller lives: with the distance at which it is gone, and this seller's. */
import type { Prospect, Trip } from '../../src/listing/evaluation.ts';
import { type Distance, MILE_IN_KILOMETRES } from '../../src/units/length.ts';
import { LineChart, type LineMark } from '../components/line-chart.tsx';
import { useWords } from '../components/speech.ts';

export interface SavingChartProps {
  readonly prospect: Prospect | null;
  readonly trip: Trip | null;
}

export function SavingChart({ prospect, trip }: SavingChartProps) {
  const { say, t } = useWords();
  const last = prospect?.byDistance.at(-1);
  if (!prospect || !last) return null;
  const { unit } = last.distance;
  const { currency } = prospect.saving;
  const money = (minor: number): string => say.money({ minor: Math.round(minor) + 0, currency }, 'whole');
  const distance = (value: number) => ({ distance: { distance: { value, unit } } });
  const own = trip === null ? null : inUnit(trip.distance, unit);
  const gone = prospect.breakEvenDistance === null ? null : inUnit(prospect.breakEvenDistance, unit);
  const marks: LineMark[] = [];
  if (own !== null) marks.push({ id: 'own', x: own, label: t('working_mark_own', distance(own)) });
  const reached = gone !== null && gone < last.distance.value;
  if (reached) marks.push({ id: 'gone', x: gone, label: t('working_mark_gone', distance(gone)) });
  return (
    <LineChart
      caption={t('working_saving_chart')}
      note={gone === null || reached ? t('working_saving_note') : t('working_saving_note_far', distance(gone))}
      points={prospect.byDistance.map((at) => ({ x: at.distance.value, ...at.saving }))}
      marks={marks}
      heads={[t('working_head_distance'), t('panel_table_low'), t('panel_table_likely'), t('panel_table_high')]}
      writeX={(value) => t('panel_distance_value', distance(value))}
      writeY={money}
    />
  );
}

function inUnit({ value, unit }: Distance, wanted: Distance['unit']): number {
  if (unit === wanted) return value;
  return wanted === 'km' ? value * MILE_IN_KILOMETRES : value / MILE_IN_KILOMETRES;
}
