/** What lots are held against each other by: one figure with its range, the smaller the better, the same for all of them. */
import type { Evaluation, MoneyRange } from '../listing/evaluation.ts';
import { isPlate } from '../listing/reading.ts';
import { POUND_IN_KILOGRAMS } from '../units/mass.ts';
import { over, type Range, scale } from '../units/range.ts';

/**
 * `per-pound`: all-in of a usable pound, in minor units, where every lot is plates alone.
 * `per-new`: all-in for each unit of money that the same goods cost new and delivered: 0.4 means two fifths of new.
 */
export type MeasureKind = 'per-pound' | 'per-new';

export interface Measured {
  readonly kind: MeasureKind;
  /** One for each evaluation; null where the ad does not say enough, or is in another currency than the first that does. */
  readonly values: readonly (Range | null)[];
}

const isPlatesAlone = ({ reading, worth }: Evaluation): boolean =>
  worth.perUsablePound !== null && reading.items.every((item) => isPlate(item.kind.value) || item.kind.value === 'other');

const perPound = ({ worth }: Evaluation): MoneyRange | null => {
  const rate = worth.perUsablePound;
  if (rate === null || rate.per === 'lot') return null;
  return rate.per === 'lb' ? rate : { ...scale(rate, POUND_IN_KILOGRAMS), currency: rate.currency };
};

function perNew({ worth }: Evaluation): MoneyRange | null {
  const { allIn, newWorth } = worth;
  if (allIn === null || newWorth === null || newWorth.likely <= 0 || allIn.currency !== newWorth.currency) return null;
  // A worth that may be nothing still divides: its low end counts as at least a quarter of the likely one.
  const divisor = { ...newWorth, low: Math.max(newWorth.low, newWorth.likely / 4) };
  return { ...over(allIn, divisor), currency: allIn.currency };
}

/** Measures lots for comparison, by the figure that all of them have unless one is named. Those without it come out null. */
export function measure(
  evaluations: readonly Evaluation[],
  kind: MeasureKind = evaluations.length > 0 && evaluations.every(isPlatesAlone) ? 'per-pound' : 'per-new',
): Measured {
  const found = evaluations.map(kind === 'per-pound' ? perPound : perNew);
  const currency = found.find((one) => one !== null)?.currency;
  return { kind, values: found.map((one) => (one !== null && one.currency === currency ? one : null)) };
}
