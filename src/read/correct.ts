/** Puts the buyer's own values into a reading: by hand, by settling a doubt, by measuring. */
import type { Asking, Basis, Correction, Fact, Item, Reading } from '../listing/reading.ts';
import type { Currency } from '../units/money.ts';
import { correctAsking, currencyOf, settleUnitPrice } from './correct-asking.ts';
import { correctItem, newItem } from './correct-item.ts';
import { parseDistance, parseWeight } from './correction-values.ts';

export interface Corrected {
  readonly reading: Reading;
  readonly applied: readonly Correction[];
  /** Corrections whose path names nothing, or whose value can't stand there; the reading is untouched by them. */
  readonly refused: readonly Correction[];
}

const fact = <T>(value: T, basis: Basis): Fact<T> => ({ value, basis, rule: 'buyer', evidence: [] });

function correctTop(reading: Reading, correction: Correction): Reading | null {
  const basis = correction.basis ?? 'stated';
  const { value } = correction;
  switch (correction.path) {
    case 'aboutThisTrade':
    case 'wanted':
      return typeof value === 'boolean' ? { ...reading, [correction.path]: value } : null;
    case 'language':
      // The ad was read in this language already: see `readAs` in evaluate.ts.
      return value === reading.language ? reading : null;
    case 'place':
      if (value === null) return { ...reading, place: null };
      return typeof value === 'string' ? { ...reading, place: fact(value, basis) } : null;
    case 'statedTotal': {
      if (value === null) return { ...reading, statedTotal: null };
      const weight = parseWeight(correction);
      return weight === null ? null : { ...reading, statedTotal: fact(weight, basis) };
    }
    case 'distance': {
      if (value === null) return { ...reading, distance: null };
      const distance = parseDistance(correction);
      return distance === null ? null : { ...reading, distance: fact(distance, basis) };
    }
    default:
      return null;
  }
}

/** Items by id, in the order of the ad, changed in place while corrections are applied. */
type Items = Map<string, Item>;

/** An item's id as path with nothing as value takes the item out; the kind of an id not there yet adds one. */
function correctItems(items: Items, correction: Correction, currency: Currency): boolean {
  const dot = correction.path.indexOf('.');
  const id = dot < 0 ? correction.path : correction.path.slice(0, dot);
  const field = dot < 0 ? null : correction.path.slice(dot + 1);
  const item = items.get(id);
  if (item === undefined) {
    const added = field === 'kind' && /^[a-z-]+-\d+$/.test(id) ? newItem(id, correction) : null;
    if (added !== null) items.set(id, added);
    return added !== null;
  }
  if (field === null) return (correction.value === null || correction.value === false) && items.delete(id);
  const changed = correctItem(item, field, correction, currency);
  if (changed !== null) items.set(id, changed);
  return changed !== null;
}

function correctOutside(reading: Reading, correction: Correction): Reading | null {
  if (!correction.path.startsWith('asking.')) return correctTop(reading, correction);
  const asking: Asking | null = correctAsking(reading.asking, correction);
  return asking === null ? null : { ...reading, asking };
}

/** Applies corrections in order. Doubts about a corrected path are settled and go; a price worked out from a unit price follows the items. */
export function correct(reading: Reading, corrections: readonly Correction[]): Corrected {
  if (corrections.length === 0) return { reading, applied: [], refused: [] };
  const applied: Correction[] = [];
  const refused: Correction[] = [];
  const items: Items = new Map(reading.items.map((item) => [item.id, item]));
  let outside = reading;
  for (const correction of corrections) {
    const next = correctOutside(outside, correction);
    outside = next ?? outside;
    (next !== null || correctItems(items, correction, currencyOf(outside.asking)) ? applied : refused).push(correction);
  }
  const paths = new Set(applied.map((correction) => correction.path));
  const doubts = outside.doubts.filter(
    (doubt) =>
      !paths.has(doubt.about) &&
      !doubt.choices.some((choice) => choice.corrections.length > 0 && choice.corrections.every(({ path }) => paths.has(path))),
  );
  const added = items.size > 0 && reading.items.length === 0;
  const whole = { ...outside, items: [...items.values()], doubts, aboutThisTrade: outside.aboutThisTrade || added };
  return { reading: settleUnitPrice(whole, paths), applied, refused };
}
