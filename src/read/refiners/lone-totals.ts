/**
 * A weight of its own that says what all plates come to: "60 lb even (2 tens, 2 fives, 2 fifteens)", "that's 340 lb", "45s, 35s and 25s, 500 pounds".
 * It counts when it is the sum of the plates told, with or without the bar, or too heavy for a piece where no plates are counted.
 */
import { isPlate } from '../../listing/reading.ts';
import { inPounds, type MassUnit } from '../../units/mass.ts';
import type { Total } from '../mention.ts';
import { weightAt } from '../recognisers/notation.ts';
import { findAll, type Scan } from '../text/scan.ts';
import type { Draft } from './draft.ts';

const LONE = /(?<![rxnKPX$][Uo]?)([ni][-.]?[uh]s?)(?![mC]{0,3}[kK]|[-x]?n|[Ke])/dg;
/** Heavier than any one plate, dumbbell or kettlebell, in pounds. */
const HEAVIEST_PIECE = 150;

const pounds = (value: number, unit: MassUnit | null): number => inPounds({ value, unit: unit ?? 'lb' });

/** Heavier than any plate but a rarity, in pounds: 45.4 kg (common practice, no source). */
const HEAVIEST_PLATE = 102;

const isSameSize = (a: Draft, b: Draft): boolean =>
  a.kind === b.kind && a.unit === b.unit && a.weight !== null && a.weight.value === b.weight?.value;

/** What the plates told with their counts come to, each size once, and with the bar that the ad weighs (or one of 45 lb). */
function sumsOf(drafts: readonly Draft[]): readonly number[] {
  const sizes = new Map<string, number>();
  for (const { kind, count, weight, unit } of drafts)
    if (isPlate(kind) && count && weight)
      sizes.set(`${kind} ${weight.value} ${unit} ${count.value}`, count.value * pounds(weight.value, unit));
  if (sizes.size < 2) return [];
  const sum = [...sizes.values()].reduce((all, size) => all + size, 0);
  // "4x 5 kg, 8x 2,5 kg. Eine 5er hat einen Riss": one that is told of again adds nothing.
  const again = drafts.filter(
    (one) =>
      isPlate(one.kind) &&
      one.count?.value === 1 &&
      drafts.some((other) => isSameSize(one, other) && (other.count?.value ?? 0) > 1),
  );
  const once = again.reduce((all, one) => all - pounds(one.weight?.value ?? 0, one.unit), sum);
  const bar = drafts.find(({ kind }) => kind === 'bar');
  const sums = once === sum ? [sum] : [sum, once];
  return bar ? sums.flatMap((all) => [all, all + (bar.weight ? pounds(bar.weight.value, bar.unit) : 45)]) : sums;
}

const isNear = (value: number, sums: readonly number[]): boolean => sums.some((sum) => Math.abs(value - sum) <= 0.02 * sum);

/** "300 lb of plates, mostly 45s and 25s": the sizes that tell what the weight is made of are no lines of their own. */
export function leaveMixed(scan: Scan, drafts: readonly Draft[], totals: readonly Total[]): Draft[] {
  const ends = new Set(totals.filter(({ rule }) => rule === 'weight-of-goods' || rule === 'heavy-goods').map(({ to }) => to));
  const mixed = scan.tokens.flatMap(({ term }, at) => {
    if (term?.sense !== 'mostly') return [];
    for (let i = at - 1; i > at - 8 && scan.clause[i] === scan.clause[at]; i -= 1) if (ends.has(i)) return [at];
    return [];
  });
  if (mixed.length === 0) return [...drafts];
  const isPart = (item: Draft): boolean =>
    isPlate(item.kind) &&
    item.count === null &&
    item.weight !== null &&
    mixed.some((at) => item.places.every(({ from }) => from > at && scan.clause[from] === scan.clause[at]));
  return drafts.filter((item) => !isPart(item));
}

/** Takes the lone weights that are totals out of the drafts. */
export function takeLoneTotals(scan: Scan, drafts: Draft[]): Total[] {
  const found: Total[] = [];
  const plates = drafts.filter(({ kind, sold }) => isPlate(kind) && !sold);
  const sums = sumsOf(plates.length > 0 ? drafts : []);
  const counted = plates.some(({ count, weight }) => count && weight);
  for (let i = drafts.length - 1; i >= 0; i -= 1) {
    const item = drafts[i];
    const [place] = item?.places ?? [];
    if (!item?.weight || !place || item.count || !/^(?:weight-alone|noun-weight)$/.test(item.weight.rule) || !isPlate(item.kind))
      continue;
    const value = pounds(item.weight.value, item.unit);
    // "Standard weights, approx 120 lb. 25s, 10s and 5s": no plate is that heavy.
    const lot = !item.kindAssumed && value > HEAVIEST_PLATE && plates.some((other) => other !== item && other.weight);
    if ('sv'.includes(scan.plain[place.to] ?? '_') || !(lot || isNear(value, sums))) continue;
    found.push({ rule: 'lone-total', from: place.from, to: place.to, weight: item.weight.value, unit: item.unit, set: false });
    drafts.splice(i, 1);
  }
  findAll(scan, LONE, ({ from, to }) => {
    const weight = weightAt(scan, from, to);
    const value = weight ? pounds(weight.value, weight.unit) : 0;
    if (!weight || value <= HEAVIEST_PIECE || value > 20_000) return false;
    const beside = plates.some(({ places }) => places.some((place) => scan.clause[place.from] === scan.clause[from]));
    if (!isNear(value, sums) && !(plates.length > 0 && !counted && beside)) return false;
    found.push({ rule: 'lone-total', from, to, weight: weight.value, unit: weight.unit, set: false });
    return true;
  });
  return found;
}
