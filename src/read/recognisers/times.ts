/** "4x45", "45x4", "4 x 45 lb", "45 lb x 4", "45 lb plates x 4", "2 x pair 45 lb", "1x1.25kg". */

import type { Quantity } from '../mention.ts';
import { says } from '../text/says.ts';
import { findAll, type Scan, unitBetween, valueAt } from '../text/scan.ts';
import { COUNT, findLetter, isCount, isPlateSize, isSize, MODIFIERS, UNIT, weightAt } from './notation.ts';

const COUNT_FIRST = new RegExp(`(${COUNT})x(?:(p)o?)?a?${MODIFIERS}(n${UNIT}?|v|i${UNIT}?|d${UNIT})(?!x)(${MODIFIERS}k)?`, 'dg');
const WEIGHT_FIRST = new RegExp(`(n${UNIT}?|v)${MODIFIERS}(k?)[-,:(]?x-?(${COUNT})(?![uhq])(p(?![oE]))?`, 'dg');

/** Poods in round pounds: 1 1/2, 2 and more of 16.38 kg, no count of goods. */
const KETTLEBELL_POUNDS = [53, 62, 70, 88, 106];

const HANDLED = ['dumbbell', 'kettlebell', 'plate', 'micro', 'bumper'];

/** "Platform 8x8", "mirrors, 4x8", "3x3 tubing": a word beside it has sides. */
const isSided = (scan: Scan, from: number, to: number): boolean =>
  [from - 1, from - 2, to + 1, to + 2].some((at) => scan.clause[at] === scan.clause[from] && says(scan, at, 'has-sides'));

/** "Rack, 60x60", "bench and mirror 4x8": a size of two sides with no unit, of a number that no plate weighs, where no goods by weight are named. */
function isExtent(scan: Scan, from: number, to: number, weight: number): boolean {
  if (isSided(scan, from, to)) return true;
  if (isPlateSize(weight) || !Number.isInteger(weight) || weight < 6) return false;
  for (let i = from - 1; i >= 0 && from - i < 20; i -= 1) {
    const kind = scan.plain[i] === 'k' ? scan.tokens[i]?.term?.kind : undefined;
    if (kind) return !HANDLED.includes(kind) || scan.clause[i] !== scan.clause[from];
  }
  return false;
}

export function readTimes(scan: Scan): Quantity[] {
  const found: Quantity[] = [];
  // "45 lb x 4" first: there the left number carries the unit or the noun.
  findAll(scan, WEIGHT_FIRST, ({ from, to, group }) => {
    const [start, end] = group(1) ?? [from, from];
    const nounAt = group(2);
    const weight = weightAt(scan, start, end);
    const right = group(3)?.[0] ?? to;
    const count = valueAt(scan, right);
    if (!weight || !isCount(count)) return false;
    const marked = end > start || nounAt !== null || scan.plain[start] === 'v';
    const unitless = !marked;
    const leftOnly = unitless && !isCount(weight.value);
    const cast = isPlateSize(weight.value) || KETTLEBELL_POUNDS.includes(weight.value);
    const bigFirst = unitless && cast && weight.value >= 12.5 && (count < 12.5 || !isPlateSize(count));
    const rightIsNotSize = unitless && !isPlateSize(count) && cast && weight.value > 2;
    if (unitless && isSided(scan, from, to)) return false;
    if (!(marked || leftOnly || bigFirst || rightIsNotSize) || !(cast || isSize(weight.value, weight.unit))) return false;
    found.push({
      rule: 'weight-times-count',
      from,
      to,
      // "10 kg x 2 pairs", "a pair of 35s x2".
      count: group(4) || /po?a?$/.test(scan.plain.slice(Math.max(0, from - 3), from)) ? count * 2 : count,
      weight: weight.value,
      unit: weight.unit,
      noun: nounAt?.[0] ?? null,
    });
    return true;
  });
  findAll(scan, COUNT_FIRST, ({ from, to, group }) => {
    const count = valueAt(scan, from);
    const [start, end] = group(3) ?? [to, to];
    const weight = weightAt(scan, start, end);
    if (!weight || !isCount(count) || !isSize(weight.value, weight.unit)) return false;
    // "je 2 x 5 kg, 10 kg, 15 kg": the count holds for the whole list (see each-of.ts).
    if (scan.plain[from - 1] === 'e' && /^(?:,?c|[,/])n(?!x)/.test(scan.plain.slice(to + 1, to + 5))) return false;
    const either = weight.unit === null && end === start && isPlateSize(count) && isCount(weight.value) && weight.value <= 20;
    const pieces = group(2) ? count * 2 : count;
    const noun = group(4) ? findLetter(scan, end + 1, to, 'k') : null;
    if (end === start && scan.plain[start] === 'n' && noun === null && isExtent(scan, from, to, weight.value)) return false;
    found.push({
      rule: 'count-times-weight',
      from,
      to,
      count: pieces,
      weight: weight.value,
      unit: weight.unit ?? unitBetween(scan, from, to),
      noun,
      either,
    });
    return true;
  });
  return found;
}
