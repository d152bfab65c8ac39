/** Puts the buyer's own values into a reading: by hand, by settling a doubt, by measuring. */
import type { Asking, Basis, Correction, Fact, Item, Reading } from '../listing/reading.ts';
import { correctAsking, settleUnitPrice } from './correct-asking.ts';
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

/** An item's id as path with nothing as value takes the item out; the kind of an id not there yet adds one. */
function correctItems(reading: Reading, correction: Correction): Reading | null {
  const dot = correction.path.indexOf('.');
  const id = dot < 0 ? correction.path : correction.path.slice(0, dot);
  const field = dot < 0 ? null : correction.path.slice(dot + 1);
  const item = reading.items.find((one) => one.id === id);
  if (item === undefined) {
    const added = field === 'kind' && /^[a-z-]+-\d+$/.test(id) ? newItem(id, correction) : null;
    return added === null ? null : { ...reading, aboutThisTrade: true, items: [...reading.items, added] };
  }
  if (field === null) {
    const gone = correction.value === null || correction.value === false;
    return gone ? { ...reading, items: reading.items.filter((one) => one !== item) } : null;
  }
  const changed = correctItem(item, field, correction);
  return changed === null ? null : { ...reading, items: reading.items.map((one): Item => (one === item ? changed : one)) };
}

function apply(reading: Reading, correction: Correction): Reading | null {
  if (correction.path.startsWith('asking.')) {
    const asking: Asking | null = correctAsking(reading.asking, correction);
    return asking === null ? null : { ...reading, asking };
  }
  return correctTop(reading, correction) ?? correctItems(reading, correction);
}

/** Applies corrections in order. Doubts about a corrected path are settled and go; a price worked out from a unit price follows the items. */
export function correct(reading: Reading, corrections: readonly Correction[]): Corrected {
  if (corrections.length === 0) return { reading, applied: [], refused: [] };
  const applied: Correction[] = [];
  const refused: Correction[] = [];
  let current = reading;
  for (const correction of corrections) {
    const next = apply(current, correction);
    (next === null ? refused : applied).push(correction);
    current = next ?? current;
  }
  const paths = new Set(applied.map((correction) => correction.path));
  const doubts = current.doubts.filter(
    (doubt) =>
      !paths.has(doubt.about) &&
      !doubt.choices.some((choice) => choice.corrections.length > 0 && choice.corrections.every(({ path }) => paths.has(path))),
  );
  return { reading: settleUnitPrice({ ...current, doubts }, paths), applied, refused };
}
