/**
 * Goods that are named again: "4 x 20, 4 x 10. The 20s are sold. The 10s are $15 each." A weight without a count that the ad counts
 * elsewhere is those pieces, and sold with them.
 */
import { isPlate, type Kind } from '../../listing/reading.ts';
import type { Scan } from '../text/scan.ts';
import { type Draft, firstToken } from './draft.ts';

const keyOf = (item: Draft): string => `${item.kind}|${item.weight?.value}|${item.unit}`;

/** "I sold the other 45s": not those on offer. */
const isOther = (scan: Scan, at: number): boolean =>
  scan.tokens.slice(Math.max(0, at - 2), at).some(({ text }) => /^(?:others?|more|ander\w*|weiter\w*|restlich\w*)$/.test(text));

/** "IRON 4x45, 4x35. BUMPERS 6x45. The 35s are all one make": a size that no noun stands beside is the one counted piece of that size. */
function otherwiseNamed(scan: Scan, item: Draft, counted: ReadonlyMap<string, Draft[]>): readonly Draft[] {
  const named = scan.clause[item.kindAt] === scan.clause[firstToken(item)] && scan.plain[item.kindAt] === 'k';
  if (named || !isPlate(item.kind)) return [];
  return [...counted.values()]
    .flat()
    .filter(({ kind, weight, unit }) => isPlate(kind) && weight?.value === item.weight?.value && unit === item.unit);
}

const RECALLED: readonly Kind[] = ['bar', 'curl-bar', 'hex-bar', 'dumbbell', 'kettlebell'];

/** "Ten 20 kg bars and six 15 kg bars. Twenties are $90, two of the 20s are bent": where no plates are named, a size alone is of the goods of that weight. */
export function recallByWeight(scan: Scan, drafts: readonly Draft[]): void {
  const weighed = drafts.filter(({ kind, weight, count }) => RECALLED.includes(kind) && weight !== null && count !== null);
  const plates = drafts.filter(({ kind }) => isPlate(kind));
  if (weighed.length === 0 || plates.some((item) => item.unit !== null || !isNameless(scan, item))) return;
  const owners = plates.map((item) => weighed.filter(({ weight }) => weight?.value === item.weight?.value));
  // "A 45 lb bar and four 45s" are plates: only of several goods one speaks by their size.
  if (owners.some(([first, ...others]) => !first || others.length > 0 || (first.count?.value ?? 0) < 2)) return;
  plates.forEach((item, index) => {
    const first = owners[index]?.[0];
    if (!first?.count) return;
    item.kind = first.kind;
    item.unit = first.unit;
    if (item.count === null || item.partitive) item.again = true;
    item.count = { ...first.count, implied: true };
  });
}

/** A size in words or with a plural s, and no noun in its clause. */
const isNameless = (scan: Scan, item: Draft): boolean =>
  item.weight !== null &&
  (item.count === null || item.partitive) &&
  item.places.every(({ to }) => 'sv'.includes(scan.plain[to] ?? '_')) &&
  !(scan.plain[item.kindAt] === 'k' && scan.clause[item.kindAt] === scan.clause[firstToken(item)]);

export function recallGoods(scan: Scan, drafts: readonly Draft[]): void {
  const counted = new Map<string, Draft[]>();
  for (const item of drafts) {
    if (item.weight === null || item.count === null || item.count.implied) continue;
    counted.set(keyOf(item), [...(counted.get(keyOf(item)) ?? []), item]);
  }
  for (const item of drafts) {
    if (item.weight === null || item.count !== null) continue;
    const [same, ...others] = counted.get(keyOf(item)) ?? otherwiseNamed(scan, item, counted);
    if (!same?.count || others.length > 0 || same.sold) continue;
    if (item.sold) same.sold = !isOther(scan, item.places[0]?.from ?? 0);
    else {
      item.count = { ...same.count, implied: true };
      item.kind = same.kind;
      item.again = true;
    }
  }
}
