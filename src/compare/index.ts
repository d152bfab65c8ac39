/** Two to five lots side by side: which is the better buy, by how much, how sure that is, and what price would make another as good. */
import type { Evaluation } from '../listing/evaluation.ts';
import type { Money } from '../units/money.ts';
import { exponentOf } from '../units/money.ts';
import { chanceBelow } from './chance.ts';
import { type Measured, type MeasureKind, measure } from './measure.ts';
import type { Lot } from './usual-drive.ts';

export { chanceBelow, normalBelow } from './chance.ts';
export { type Measured, type MeasureKind, measure } from './measure.ts';
export { type Lot, USUAL_MILES, withUsualDrive } from './usual-drive.ts';

export interface Comparison extends Measured {
  /** Number of the best lot; null when fewer than two can be measured. */
  readonly best: number | null;
  /** The next best; null likewise. */
  readonly second: number | null;
  /** How much dearer the next best is, as a fraction of it. */
  readonly by: number;
  /** Chance that the order of these two holds. */
  readonly sure: number;
}

/** What lots measure; one whose drive is assumed reaches from what it would be near by to what it would be far off. */
function measureLots(lots: readonly Lot[]): Measured {
  const usual = measure(lots.map(({ evaluation }) => evaluation));
  const near = measure(
    lots.map(({ evaluation, apart }) => apart?.near ?? evaluation),
    usual.kind,
  );
  const far = measure(
    lots.map(({ evaluation, apart }) => apart?.far ?? evaluation),
    usual.kind,
  );
  const values = usual.values.map((value, index) => {
    const [low, high] = [near.values[index]?.low, far.values[index]?.high];
    return value === null || low === undefined || high === undefined ? value : { ...value, low, high };
  });
  return { kind: usual.kind, values };
}

export function compare(lots: readonly Lot[]): Comparison {
  const measured = measureLots(lots);
  const order = measured.values
    .flatMap((value, index) => (value === null ? [] : [{ value, index }]))
    .sort((a, b) => a.value.likely - b.value.likely || a.index - b.index);
  const [first, next] = order;
  if (first === undefined || next === undefined) return { ...measured, best: null, second: null, by: 0, sure: 0 };
  return {
    ...measured,
    best: first.index,
    second: next.index,
    by: next.value.likely > 0 ? 1 - first.value.likely / next.value.likely : 0,
    sure: chanceBelow(first.value, next.value),
  };
}

/** Halvings of the price: to the cent for anything under ten million. */
const STEPS = 30;

/**
 * The asking price at which a lot would be as good as one that measures `target`, rounded down to a whole major unit; null when not even
 * a gift would be. `judgeAt` judges the lot at a price in minor units: dearer never measures better.
 */
export function priceToEqual(kind: MeasureKind, target: number, now: Money, judgeAt: (price: Money) => Evaluation): Money | null {
  const good = (minor: number): boolean => {
    const value = measure([judgeAt({ minor, currency: now.currency })], kind).values[0] ?? null;
    return value !== null && value.likely <= target;
  };
  let [low, high] = [0, now.minor];
  if (good(high)) return now;
  if (!good(low)) return null;
  for (let step = 0; step < STEPS && high - low > 1; step += 1) {
    const middle = Math.floor((low + high) / 2);
    if (good(middle)) low = middle;
    else high = middle;
  }
  const unit = 10 ** exponentOf(now.currency);
  return { minor: Math.floor(low / unit) * unit, currency: now.currency };
}
