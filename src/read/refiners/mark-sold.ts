/** Goods that the ad says are gone: "45s are sold", "SOLD - curl bar", or struck through on the page. */
import type { Span } from '../../listing/page-listing.ts';
import { says, saysWithin } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';
import type { Draft } from './draft.ts';

const inside = (spans: readonly Span[], start: number, end: number): boolean =>
  spans.some((span) => start >= span.start && end <= span.end);

export function markSold(scan: Scan, drafts: readonly Draft[], struck: readonly Span[]): void {
  for (const item of drafts) {
    if (
      item.places.length > 0 &&
      item.places.every(({ from, to }) => inside(struck, scan.tokens[from]?.start ?? 0, scan.tokens[to]?.end ?? 0))
    )
      item.sold = true;
  }
  const left = exceptions(scan);
  if (left)
    for (const item of drafts) if (!left.kinds.has(item.kind) && !left.weights.has(item.weight?.value ?? -1)) item.sold = true;
  for (let at = 0; at < scan.plain.length; at += 1) {
    if (left && scan.clause[at] === left.clause) continue;
    // Used up where only some of the goods are sold (see left-over.ts).
    const pending = scan.tokens[at]?.term?.sense === 'pending';
    if ((scan.letters[at] !== 'Y' && !pending) || /N[a-z]?$/.test(scan.plain.slice(Math.max(0, at - 2), at))) continue;
    // "One nut gone": of a part.
    if (says(scan, at - 1, 'small-part')) continue;
    // "One 35, the other is gone": of none of those on offer.
    if (
      /(?:^|[^kns])[zm&%]{0,2}$/.test(scan.plain.slice(Math.max(0, at - 3), at)) &&
      [1, 2, 3].some((n) => says(scan, at - n, 'other-one'))
    )
      continue;
    // "was 4, sold one" leaves the rest.
    if (/^[nd][.,;!)l]/.test(scan.plain.slice(at + 1, at + 3))) continue;
    const clause = scan.clause[at];
    const inClause = drafts.filter((item) => item.places.some(({ from }) => scan.clause[from] === clause));
    const ends = (item: Draft): number =>
      Math.max(...item.places.filter(({ from }) => scan.clause[from] === clause).map(({ to }) => to));
    const before = inClause.filter((item) => ends(item) < at).sort((a, b) => ends(b) - ends(a));
    const goods = before.length > 0 ? together(scan, before, ends, at) : inClause.filter((item) => isSaidBehind(scan, item, at));
    for (const item of goods)
      if (pending) item.pending = { rule: 'pending', from: at, to: at };
      else item.sold = true;
  }
}

/** "All sold except the bench", "only the bar left": everything but what is named there; the clause where it is said, and the kinds it names. */
function exceptions(scan: Scan): { clause: number; kinds: Set<string>; weights: Set<number> } | null {
  for (let at = 0; at < scan.plain.length; at += 1) {
    const clause = scan.clause[at] ?? 0;
    const except =
      scan.letters[at] === 'Y' &&
      (says(scan, at - 1, 'all') || says(scan, at - 1, 'all-sold')) &&
      scan.plain.slice(at + 1, at + 3).includes('Q');
    const only = says(scan, at, 'only') && (isLeftAtEnd(scan, at + 1) || LEFT_FOR_SURE.test(scan.plain.slice(at + 1, at + 11)));
    if (!except && !only) continue;
    const kinds = new Set<string>();
    const weights = new Set<number>();
    for (let i = at + 1; scan.clause[i] === clause && scan.letters[i] !== 'M'; i += 1) {
      const { term, value } = scan.tokens[i] ?? {};
      if (scan.plain[i] === 'k' && term?.kind) kinds.add(term.kind);
      // "Only the 45s left", but "only 4 left" names a count.
      else if (/^(?:v|n-?[uhs])/.test(scan.plain.slice(i, i + 3))) weights.add(value ?? term?.value ?? 0);
    }
    if (kinds.size + weights.size > 0) return { clause, kinds, weights };
  }
  return null;
}

/** "Just the plates are left for sure, …" */
const LEFT_FOR_SURE = /^a?[mC]{0,3}(?:k|n-?[uhs]k?|vk?)z?&[zw]{0,2}(?:[.,!;)l]|$)/;

/** "Only the bar left.": one to three words, with an article at most, and the end. */
function isLeftAtEnd(scan: Scan, at: number): boolean {
  const first = at + Number(says(scan, at, 'the'));
  return [first + 1, first + 2, first + 3].some((i) => says(scan, i, 'left') && /[.,!;l]/.test(scan.plain[i + 1] ?? 'l'));
}

/** "SOLD: rack and bench", but "Sold the rack so I'm selling the rest: bench $75". */
function isSaidBehind(scan: Scan, item: Draft, at: number): boolean {
  const from = Math.min(
    ...item.places.flatMap((place) => (place.from > at && scan.clause[place.from] === scan.clause[at] ? place.from : [])),
  );
  return !scan.tokens
    .slice(at + 1, Number.isFinite(from) ? from : at + 1)
    .some(({ text, term }) => term?.sense === 'rest' || scan.language.cues['still-selling'].is(text));
}

/** The goods right before the word, and with "are" those that a list joins to them ("45s and 35s are sold", but "45s $60, 25s SOLD"). */
function together(scan: Scan, before: readonly Draft[], ends: (item: Draft) => number, at: number): Draft[] {
  const [last] = before;
  if (!last) return [];
  const goods = [last];
  const plural = saysWithin(scan, at - 2, at + 1, 'plural');
  const bare = says(scan, at, 'gone');
  for (const item of before.slice(1)) {
    const next = goods[goods.length - 1];
    if (!next) break;
    const between = scan.letters.slice(ends(item) + 1, Math.min(...next.places.map(({ from }) => from)));
    // "Bench and bar SOLD" needs no "are".
    if (!plural && !(bare && between.includes('c') && goods.length === 1) && !(goods.length > 1 && bare)) break;
    if (between.some((letter) => !',c/a&'.includes(letter)) || between.length > 3) break;
    goods.push(item);
  }
  return goods;
}
