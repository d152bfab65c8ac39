/** What the prices of an ad are beside each other: the roles of each, former ones, those for more goods, and the unit that all are for. */
import type { Price } from '../mention.ts';
import { says, saysWithin } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';
import { roleOf, takenRole } from './price-roles.ts';

/** Sets the roles of the prices, which it brings into the order of the text. */
export function settlePrices(scan: Scan, found: Price[]): void {
  found.sort((a, b) => a.from - b.from);
  for (const [index, price] of found.entries()) {
    const next = found[index + 1];
    price.role = roleOf(scan, price, found[index - 1], next);
    // "less than 300$ new. Mine is 180": what it costs new, where less is asked.
    const fresh =
      scan.tokens[price.to + 1]?.term?.condition === 'new' &&
      /^m(?:[.;,)l]|$)/.test(scan.plain.slice(price.to + 1, price.to + 3));
    if (
      fresh &&
      price.role === 'asking' &&
      found.some((other) => other.amount < price.amount && other.amount >= 0.2 * price.amount)
    )
      price.role = 'former';
    if (isLikeBefore(scan, found[index - 1], price)) price.role = 'former';
    if (next && isTakenBack(scan, price, next)) price.role = takenRole(price);
    if (next && price.role === 'asking' && next.amount < price.amount && isLowered(scan, price, next)) price.role = 'former';
    // "$1,000 $780": the first of two prices side by side is crossed out.
    if (
      next &&
      next.from === price.to + 1 &&
      next.amount < price.amount &&
      price.role === 'asking' &&
      price.currency &&
      next.currency
    )
      price.role = 'former';
  }
  for (const [index, price] of found.entries())
    if (isWithMore(scan, found[index - 1], price)) Object.assign(price, { role: 'all', whole: true });
  for (const [index, price] of found.entries())
    if (isForItsPart(scan, found[index - 1], price, found[index + 1])) price.whole = false;
  spreadUnit(scan, found);
  carryUnit(scan, found);
  spreadWeight(scan, found);
}

/** "Bar $80, with plates $200", "bar $75 or $140 with the plates": the second is for both. */
function isWithMore(scan: Scan, previous: Price | undefined, price: Price): boolean {
  if (previous?.role !== 'asking' || price.role !== 'asking' || price.amount <= previous.amount) return false;
  // "2x45 and 2x25: 120$. With bar 180$."
  const next = (scan.clause[price.from] ?? 0) - (scan.clause[previous.to] ?? 0);
  const opens = next === 1 ? openingWith(scan, price.from) : false;
  if (opens || (next <= 1 && isIfWanted(scan, price.from))) return true;
  if (next !== 0) return false;
  const first = previous.to + 1 + Number(/^[,;-]$/.test(scan.tokens[previous.to + 1]?.text ?? ''));
  const orBefore = price.from - previous.to <= 3 && says(scan, price.from - 1, 'or');
  const goods = scan.plain.slice(previous.to + 1, price.from).includes('k');
  return (first < price.from && says(scan, first, 'with') && goods) || (orBefore && says(scan, price.to + 1, 'with'));
}

/** "If you want the bench too make it $420". */
function isIfWanted(scan: Scan, at: number): boolean {
  if (scan.tokens[at - 1]?.term?.sense !== 'retract') return false;
  for (let i = at - 2; i >= at - 12 && scan.clause[i] === scan.clause[at]; i -= 1)
    if (scan.plain[i] === 'k' && saysWithin(scan, i - 5, i, 'if-you')) return true;
  return false;
}

/** "With bar 180$": the sentence of the price begins so, and names goods. */
function openingWith(scan: Scan, at: number): boolean {
  let first = at;
  while (at - first < 8 && scan.clause[first - 1] === scan.clause[at]) first -= 1;
  return says(scan, first, 'with') && /^[a-z]{1,2}[mC]{0,3}k[a-z=:-]{0,3}$/.test(scan.plain.slice(first, at));
}

/** "10s $15, 25s $35. That's per plate", "prices are per pair": what all prices before are for. */
function spreadUnit(scan: Scan, found: readonly Price[]): void {
  for (let at = found.length > 0 ? 1 : scan.plain.length; at < scan.plain.length; at += 1) {
    const pair = scan.plain[at] === 'p' && scan.plain[at - 1] === 'r';
    if (scan.plain[at] !== 'e' && !pair) continue;
    const from = pair ? at - 1 : at;
    const beside = found.some(
      (price) =>
        (from > price.to && from - price.to <= 2 && scan.clause[from] === scan.clause[price.to]) ||
        Math.abs(price.from - at) <= 2,
    );
    const alone = scan.clause[from - 1] !== scan.clause[from] && /[.,;!l)]/.test(scan.plain[at + 1] ?? 'l');
    if ((beside && !alone) || (!alone && ![from - 3, from - 2, from - 1].some((i) => says(scan, i, 'prices-are')))) continue;
    const asked = (clause: number): Price[] =>
      found.filter(({ role, from: start, to }) => role === 'asking' && to < from && scan.clause[start] === clause);
    const headed = headedBy(scan, found, from, at);
    for (const price of headed) price.role = pair ? 'pair' : 'each';
    if (headed.length > 0) continue;
    const clause = scan.clause[from] ?? 0;
    const same = asked(clause);
    for (const price of same.length > 0 ? same : asked(clause - 1)) price.role = pair ? 'pair' : 'each';
  }
}

/** "Sled $10, two plates together $60, bench $10": one of a row of prices, with its goods between the commas. */
function isForItsPart(scan: Scan, previous: Price | undefined, price: Price, next: Price | undefined): boolean {
  if (price.role !== 'all' || previous?.role !== 'asking' || next?.role !== 'asking') return false;
  if (scan.clause[previous.to] !== scan.clause[price.from] || scan.clause[next.from] !== scan.clause[price.from]) return false;
  const before = scan.plain.slice(previous.to + 1, price.from);
  const behind = scan.plain.slice(price.to + 1, next.from);
  return /^[,;][^,;]{0,12}k[^,;]{0,8}$/.test(before) && /^[,;][^,;]{0,8}k/.test(behind);
}

/** "$40 a pair for 45s, $20 for 25s": the second is for a pair too. */
function carryUnit(scan: Scan, found: readonly Price[]): void {
  for (const [index, price] of found.entries()) {
    const before = found[index - 1];
    const unit = before?.role === 'pair' || before?.role === 'each';
    if (!before || !unit || price.role !== 'asking' || scan.clause[before.to] !== scan.clause[price.from]) continue;
    const sized = /^wa?n[uhs]/.test(scan.plain.slice(price.to + 1, price.to + 5));
    if (sized && /^[ra/]{0,2}[pe]wa?n[uhs]/.test(scan.plain.slice(before.to + 1, before.to + 8))) price.role = before.role;
  }
}

/** "BUMPERS (prices per pair)" over lines with a price each: those up to the next empty line. */
function headedBy(scan: Scan, found: readonly Price[], from: number, at: number): readonly Price[] {
  if (!says(scan, from - 1, 'prices-are') || !/^[):.]{0,2}l/.test(scan.plain.slice(at + 1, at + 4))) return [];
  const line = scan.tokens[at]?.line ?? 0;
  if (found.some((price) => scan.tokens[price.from]?.line === line)) return [];
  const below = found.filter((price) => price.from > at);
  const gap = scan.plain.indexOf('ll', at + 3);
  return below.filter((price) => price.role === 'asking' && (gap === -1 || price.from < gap));
}

/** "$1.25/lb, over 200 lb $1.10": a price as small as the one per pound before it in its sentence is per pound too. */
function spreadWeight(scan: Scan, found: readonly Price[]): void {
  for (const [index, price] of found.entries()) {
    const before = found[index - 1];
    if (price.role !== 'asking' || price.amount > 20 || !before?.role.startsWith('per-')) continue;
    const alike = price.amount >= 0.4 * before.amount && price.amount <= 2.5 * before.amount;
    if (alike && scan.clause[before.to] === scan.clause[price.from]) price.role = before.role;
  }
}

/** "New $239 per pair (45 lb), $129 per pair (25 lb)": a former price for a unit has another for the same unit behind it. */
function isLikeBefore(scan: Scan, before: Price | undefined, price: Price): boolean {
  const unit = price.role === 'each' || price.role === 'pair' || price.role.startsWith('per-');
  if (before?.role !== 'former' || !unit || scan.clause[before.to] !== scan.clause[price.from]) return false;
  const between = scan.plain.slice(before.to + 1, price.from);
  return /^[ra/]{0,2}[peuh]/.test(between) && /[,;/)c]$/.test(between) && !/[AR]/.test(between);
}

/** "$200, actually $180", "I want 200 no make it 180": the second takes the place of the first. */
const isTakenBack = (scan: Scan, price: Price, next: Price): boolean =>
  next.from - price.to <= 6 &&
  ['asking', 'all', 'each', 'pair', 'per-pound', 'per-kilogram'].includes(price.role) &&
  scan.tokens.slice(price.to + 1, next.from).some(({ term }) => term?.sense === 'retract' || term?.sense === 'retract-maybe');

/** "$350 -> $300", "von 300 € auf 250 € reduziert". */
function isLowered(scan: Scan, price: Price, next: Price): boolean {
  const between = scan.tokens.slice(price.to + 1, next.from).map(({ text }) => text);
  if (/^(?:[-=]+ ?>+|>+|→|➔|➜|⇒)$/.test(between.join(' '))) return true;
  return isFromTo(scan, price.from, next.from) && between.length === 1;
}

/** "From 275 to 240". */
export const isFromTo = (scan: Scan, from: number, to: number): boolean =>
  says(scan, to - 1, 'to') && says(scan, from - 1, 'from');
