/** Lots that an ad offers side by side: "Lot A: bar, 4x45 … Lot B: bar, 2x45", "Set 1 - … Set 2 - …". Goods of two lots are never the same goods. */
import type { Scan } from '../text/scan.ts';

const MOST_LOTS = 12;

/** First tokens of the lots' labels at the head of lines, where there are two at least. */
export function lotsOf(scan: Scan): readonly number[] {
  const heads: number[] = [];
  const names = new Set<string>();
  for (let at = 0; at < scan.tokens.length - 2 && heads.length < MOST_LOTS; at += 1) {
    const opens =
      at === 0 || 'l•'.includes(scan.plain[at - 1] ?? 'l') || (scan.plain[at - 1] === '-' && scan.plain[at - 2] === 'l');
    const lot = scan.tokens[at]?.term?.sense === 'named-lot' || scan.plain[at] === 't';
    const name = scan.plain[at + 1] === 'h' ? at + 2 : at + 1;
    const token = scan.tokens[name];
    if (!opens || !lot || !token || !/^(?:[a-f]|[1-9]|one|two|three|four)$/.test(token.text)) continue;
    if (!'(:-.,='.includes(scan.plain[name + 1] ?? '_')) continue;
    heads.push(at);
    names.add(token.text);
  }
  return names.size > 1 && names.size === heads.length ? heads : [];
}

/** Which lot a token stands in: 0 before the first. */
export const lotAt = (heads: readonly number[], at: number): number => heads.filter((head) => head <= at).length;
