/** Bars whose sleeves the ad does not tell, by the plates that they come with. */
import { type Item, isPlate, type Reading } from '../listing/reading.ts';
import { inKilograms } from '../units/mass.ts';

/** Longer, or heavier, than 1-inch bars are. Common practice, no source. */
const LONGEST_MM = 2000;
const HEAVIEST_KG = 14;

const isFilled = ({ material }: Item): boolean => material?.value === 'vinyl' || material?.value === 'cement';
/** On a 1-inch bar, as far as the ad says, or as such plates are made. */
const isNarrow = (plate: Item): boolean => (plate.fits === null ? isFilled(plate) : plate.fits.value === '25mm');

const isOpen = ({ kind, fits, sleeveMm, lengthMm, unitWeight }: Item): boolean =>
  (kind.value === 'bar' || kind.value === 'curl-bar') &&
  fits === null &&
  sleeveMm === null &&
  (lengthMm === null || lengthMm.value < LONGEST_MM) &&
  (unitWeight === null || inKilograms(unitWeight.value) < HEAVIEST_KG);

/**
 * The reading as it is judged: a bar of which nothing else is told, sold with 1-inch or filled plates alone, is taken for a 1-inch bar, as the
 * bars of such sets are. Common practice, no source. The same object where there is none.
 */
export function withLikelyBars(reading: Reading): Reading {
  const plates = reading.items.filter(({ kind }) => isPlate(kind.value));
  if (plates.length === 0 || !plates.every(isNarrow) || !reading.items.some(isOpen)) return reading;
  const evidence = plates.flatMap(({ fits, material }) => (fits ?? material)?.evidence ?? []);
  const narrow = { value: '25mm', basis: 'assumed', rule: 'bar-by-plates', evidence } as const;
  return { ...reading, items: reading.items.map((item) => (isOpen(item) ? { ...item, fits: narrow } : item)) };
}
