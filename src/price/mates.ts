/** Which plates pair: two of one kind and weight, on one sleeve, wherever in the ad they stand. */
import type { Item } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import { inPounds } from '../units/mass.ts';
import { categoryOf } from './categories.ts';
import { conditionFactor } from './condition.ts';
import type { Fit } from './fit.ts';
import { pricesOf } from './rates.ts';
import { sameFace } from './same-face.ts';

/** Sound plates of one line, with their number and face value in pounds where the ad gives them. */
export interface Mates {
  readonly item: Item;
  readonly fit: Fit;
  readonly pieces: number | null;
  readonly unit: number | null;
}

const keyOf = ({ item, unit, fit }: Mates): string => `${item.kind.value} ${unit?.toFixed(2)} ${fit.sleeveMm}`;

/** What a pound of it fetches, to tell which of several lines bears the odd piece. */
function worthOf({ item }: Mates, settings: Settings): number {
  const category = categoryOf(item);
  const prices = category === null ? null : pricesOf(category, settings);
  return (prices?.used.likely ?? 0) * conditionFactor(item);
}

/** The kit holds a mate for one plate when it lacks an odd number of them. */
const mateAtHome = (unit: number, settings: Settings): boolean =>
  (settings.need ?? []).some(({ weight, pieces }) => pieces % 2 === 1 && sameFace(inPounds(weight), unit));

/** Ids of lines of which one piece is left without a mate; of several lines, the one that is worth least. */
export function oddOnes(sound: readonly Mates[], settings: Settings): ReadonlySet<string> {
  const groups = new Map<string, Mates[]>();
  for (const mates of sound) {
    if (mates.unit === null || mates.pieces === null || mates.pieces === 0) continue;
    const key = keyOf(mates);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [mates]);
    else group.push(mates);
  }
  const odd = new Set<string>();
  for (const group of groups.values()) {
    const pieces = group.reduce((sum, mates) => sum + (mates.pieces ?? 0), 0);
    const [first] = group;
    if (first === undefined || pieces % 2 === 0 || mateAtHome(first.unit ?? 0, settings)) continue;
    const least = group.length === 1 ? first : group.reduce((a, b) => (worthOf(b, settings) <= worthOf(a, settings) ? b : a));
    odd.add(least.item.id);
  }
  return odd;
}
