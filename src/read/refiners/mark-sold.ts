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
    if (scan.plain[at] !== 'Y' || /N[a-z]?$/.test(scan.plain.slice(Math.max(0, at - 2), at))) continue;
    const clause = scan.clause[at];
    const inClause = drafts.filter((item) => item.places.some(({ from }) => scan.clause[from] === clause));
    const ends = (item: Draft): number =>
      Math.max(...item.places.filter(({ from }) => scan.clause[from] === clause).map(({ to }) => to));
    const before = inClause.filter((item) => ends(item) < at);
    // "45s $60, 25s SOLD": only what stands since the last price or the last comma that follows another quantity.
    const stop = lastStop(scan, at);
    const close = before.filter((item) => ends(item) >= stop);
    const goods = close.length > 0 ? close : before.length > 0 ? [] : inClause;
    for (const item of goods) item.sold = true;
  }
}

/** Last price or closing bracket before a place, behind which the sold goods stand. */
function lastStop(scan: Scan, at: number): number {
  for (let i = at - 1; i >= 0 && scan.clause[i] === scan.clause[at]; i -= 1) {
    if (scan.letters[i] === 'M' && scan.plain[at - 1] !== '(' && i < at - 3) return i;
    if (scan.plain[i] === ',' && at - i > 2 && /[kuhsnv]/.test(scan.plain.slice(i + 1, at))) return i;
  }
  return -1;
}
