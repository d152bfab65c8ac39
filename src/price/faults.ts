/** What flags on an item take off its worth. */
import { LOW_RATINGS } from '../flags/claims.ts';
import type { Flag } from '../listing/evaluation.ts';
import { type Item, isKept } from '../listing/reading.ts';
import { spoilsResale } from './resale.ts';

/** A bar too short for a rack is worth a part of a full one; an assumption. */
const SHORT_BAR_FACTOR = 0.4;

/** What its maker rates low is of the cheapest make of its kind; an assumption. */
const LOW_RATING_FACTOR = 0.4;

/** The flags on an item that bear on its worth. */
export interface Faults {
  readonly broken: boolean;
  readonly unsaleable: boolean;
  readonly short: boolean;
  readonly weak: boolean;
}
export const FAULTLESS: Faults = { broken: false, unsaleable: false, short: false, weak: false };

/** What of a sound piece's worth is left by its make: a short bar is somebody's bar, so its resale is not lowered. */
export const makeFactor = (item: Item, { short, weak }: Faults): number =>
  (short && isKept(item) ? SHORT_BAR_FACTOR : 1) * (weak ? LOW_RATING_FACTOR : 1);

export function faultsOf(flags: readonly Flag[]): ReadonlyMap<string | null, Faults> {
  const faults = new Map<string | null, Faults>();
  for (const flag of flags) {
    const known = faults.get(flag.item) ?? FAULTLESS;
    faults.set(flag.item, {
      broken: known.broken || flag.weight === 'deal-breaker',
      unsaleable: known.unsaleable || spoilsResale(flag),
      short: known.short || flag.id === 'short-bar',
      weak: known.weak || LOW_RATINGS.has(flag.id),
    });
  }
  return faults;
}
