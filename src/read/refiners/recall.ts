/**
 * Goods that are named again: "4 x 20, 4 x 10. The 20s are sold. The 10s are $15 each." A weight without a count that the ad counts
 * elsewhere is those pieces, and sold with them.
 */
import type { Scan } from '../text/scan.ts';
import type { Draft } from './draft.ts';

const keyOf = (item: Draft): string => `${item.kind}|${item.weight?.value}|${item.unit}`;

/** "I sold the other 45s": not those on offer. */
const isOther = (scan: Scan, at: number): boolean =>
  scan.tokens.slice(Math.max(0, at - 2), at).some(({ text }) => /^(?:others?|more|ander\w*|weiter\w*|restlich\w*)$/.test(text));

export function recallGoods(scan: Scan, drafts: readonly Draft[]): void {
  const counted = new Map<string, Draft[]>();
  for (const item of drafts) {
    if (item.weight === null || item.count === null || item.count.implied) continue;
    counted.set(keyOf(item), [...(counted.get(keyOf(item)) ?? []), item]);
  }
  for (const item of drafts) {
    if (item.weight === null || item.count !== null) continue;
    const [same, ...others] = counted.get(keyOf(item)) ?? [];
    if (!same?.count || others.length > 0 || same.sold) continue;
    if (item.sold) same.sold = !isOther(scan, item.places[0]?.from ?? 0);
    else {
      item.count = { ...same.count, implied: true };
      item.again = true;
    }
  }
}
