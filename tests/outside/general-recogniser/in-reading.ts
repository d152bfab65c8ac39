/** Which of the weights that the library finds stand in the finished reading, as the weight of an item, of the lot, or as a capacity. */
import { read } from '../../../src/read/index.ts';
import { convert, type MassUnit } from '../../../src/units/mass.ts';
import { type Disagreement, shownIn } from './compare.ts';
import type { Ad } from './found.ts';
import { findWithLibrary } from './library.ts';
import { findWithReader } from './reader.ts';

/** A weight is rounded when its other unit is written: "20 kg (44 lb)". */
const ROUNDING = 0.11;

/**
 * Over the ads that offer goods of the trade: how many of the weights that library and tokens agree on the reading holds, and the
 * others. Those are lifts and bodies, limits of a price, goods that the seller would take in trade, or missed.
 */
export function weightsInReadings(ads: readonly Ad[]): { held: number; others: Disagreement[] } {
  let held = 0;
  const others: Disagreement[] = [];
  for (const ad of ads.filter(({ offers }) => offers)) {
    const reading = read(ad.listing);
    const facts = [
      ...[...reading.items, ...reading.sold].flatMap(({ unitWeight, totalWeight, capacity }) => [
        unitWeight,
        totalWeight,
        capacity,
      ]),
      reading.statedTotal,
    ].filter((fact) => fact !== null);
    const seen = findWithReader(ad.text);
    for (const found of findWithLibrary(ad.text, 'weight')) {
      const unit: MassUnit = found.unit === 'kg' ? 'kg' : 'lb';
      if (!seen.some((one) => one.sort === 'weight' && one.start === found.start && one.value === found.value)) continue;
      const same = facts.some(
        ({ value }) => Math.abs(convert(value, unit).value / found.value - 1) <= (value.unit === unit ? 1e-9 : ROUNDING),
      );
      if (same) held += 1;
      else others.push({ ad: ad.name, found, shown: shownIn(ad, found) });
    }
  }
  return { held, others };
}
