/** Goods that the ad says are gone: "45s are sold", "SOLD - curl bar", or struck through on the page. */
import type { Span } from '../../listing/page-listing.ts';
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
  for (let at = 0; at < scan.plain.length; at += 1) {
    // Used up where only some of the goods are sold (see left-over.ts).
    if (scan.letters[at] !== 'Y' || /N[a-z]?$/.test(scan.plain.slice(Math.max(0, at - 2), at))) continue;
    // "was 4, sold one" leaves the rest.
    if (/^[nd][.,;!)l]/.test(scan.plain.slice(at + 1, at + 3))) continue;
    const clause = scan.clause[at];
    const inClause = drafts.filter((item) => item.places.some(({ from }) => scan.clause[from] === clause));
    const ends = (item: Draft): number =>
      Math.max(...item.places.filter(({ from }) => scan.clause[from] === clause).map(({ to }) => to));
    const before = inClause.filter((item) => ends(item) < at).sort((a, b) => ends(b) - ends(a));
    const goods = before.length > 0 ? together(scan, before, ends, at) : inClause.filter((item) => isSaidBehind(scan, item, at));
    for (const item of goods) item.sold = true;
  }
}

/** "SOLD: rack and bench", but "Sold the rack so I'm selling the rest: bench $75". */
function isSaidBehind(scan: Scan, item: Draft, at: number): boolean {
  const from = Math.min(
    ...item.places.flatMap((place) => (place.from > at && scan.clause[place.from] === scan.clause[at] ? place.from : [])),
  );
  return !scan.tokens
    .slice(at + 1, Number.isFinite(from) ? from : at + 1)
    .some(({ text, term }) => term?.sense === 'rest' || /^(?:selling|still|available|asking|verkaufe|gebe)$/.test(text));
}

/** The goods right before the word, and with "are" those that a list joins to them ("45s and 35s are sold", but "45s $60, 25s SOLD"). */
function together(scan: Scan, before: readonly Draft[], ends: (item: Draft) => number, at: number): Draft[] {
  const [last] = before;
  if (!last) return [];
  const goods = [last];
  const plural = /\b(are|have|both|all)\b/.test(
    scan.tokens
      .slice(Math.max(0, at - 2), at + 1)
      .map(({ text }) => text)
      .join(' '),
  );
  const bare = /^(?:sold|gone|verkauft|weg)$/.test(scan.tokens[at]?.text ?? '');
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
