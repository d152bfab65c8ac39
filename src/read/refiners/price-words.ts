/** What the words around a price say of it: a part's price, a remark, a named lot, room to haggle, an update, goods that we do not know. */
import type { Kind } from '../../listing/reading.ts';
import type { Price } from '../mention.ts';
import { says } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';
import type { Draft } from './draft.ts';

/** "Just the plates $900", "only the rack for $300". */
export function isForPart(scan: Scan, price: Price): boolean {
  if (!scan.senses.has('only')) return false;
  for (let i = price.from - 1; i >= Math.max(0, price.from - 8) && scan.clause[i] === scan.clause[price.from]; i -= 1) {
    if (scan.tokens[i]?.term?.sense === 'only') return true;
    const verb = says(scan, i, 'is-now');
    if (!verb && !'amCkwnduhs:-=c'.includes(scan.plain[i] ?? 'l')) return false;
  }
  return false;
}

/** "$350 for just the rack", "$350 rack only". */
export function isForPartBehind(scan: Scan, price: Price): boolean {
  if (!scan.senses.has('only') || price.from < 0) return false;
  const behind = scan.plain.slice(price.to + 1, price.to + 8);
  const noun = /^w?[az]{0,2}[mC]{0,2}kz?/.exec(behind)?.[0].length ?? 0;
  return scan.tokens.slice(price.to + 1, price.to + 1 + noun).some(({ term }) => term?.sense === 'only');
}

/** Goods that the price of a part names: the nouns between it and the words before, or right behind it. */
export function goodsOfPart(scan: Scan, price: Price, drafts: readonly Draft[]): readonly Draft[] {
  const kinds = new Set<Kind>();
  const look = (at: number): void => {
    const kind = scan.plain[at] === 'k' ? scan.tokens[at]?.term?.kind : undefined;
    if (kind) kinds.add(kind);
  };
  if (isForPartBehind(scan, price))
    for (let i = price.to + 1; i <= price.to + 6 && !'l.,;'.includes(scan.plain[i] ?? 'l'); i += 1) look(i);
  else for (let i = price.from - 1; i >= Math.max(0, price.from - 8) && !/[M.,;l]/.test(scan.letters[i] ?? 'l'); i -= 1) look(i);
  const live = drafts.filter((item) => !item.sold);
  const [kind] = kinds;
  const goods = live.filter((item) => item.kind === kind);
  return kinds.size === 1 && goods.every(({ weight }) => weight?.value === goods[0]?.weight?.value) ? goods.slice(0, 1) : [];
}

/** "If anyone wants plates only I'd do $0.90/lb". */
export function isForThoseOnly(scan: Scan, price: Price): boolean {
  if (!scan.senses.has('those-only')) return false;
  for (let i = price.from - 1; i >= Math.max(0, price.from - 10) && scan.clause[i] === scan.clause[price.from]; i -= 1) {
    if (scan.letters[i] === 'M') return false;
    if (scan.tokens[i]?.term?.sense === 'those-only')
      return scan.plain[i - 1] === 'k' && !/[,;]/.test(scan.plain.slice(i, price.from));
  }
  return false;
}

/** A price per pound that is only worked out from another, roughly. */
export const isRemark = (scan: Scan, price: Price): boolean =>
  /U[a-z]?$/.test(scan.plain.slice(Math.max(0, price.from - 2), price.from)) ||
  scan.tokens.slice(Math.max(0, price.from - 4), price.from).some(({ term }) => term?.sense === 'works-out');

/** "Free" said of the goods, with no price anywhere. */
export const isFree = (scan: Scan): boolean =>
  [...scan.plain.matchAll(/Z/g)].some(({ index }) => !/N[a-z]?$/.test(scan.plain.slice(Math.max(0, index - 2), index)));

/** "Lot D: … $850 for the lot" prices the lot of its own line. */
export function isOfNamedLot(scan: Scan, price: Price): boolean {
  const line = scan.tokens[price.from]?.line;
  let first = price.from;
  while (first > Math.max(0, price.from - 80) && scan.tokens[first - 1]?.line === line) first -= 1;
  if ('•-'.includes(scan.plain[first] ?? 'l')) first += 1;
  const named = scan.tokens[first]?.term?.sense === 'named-lot' && scan.tokens[first + 1]?.line === line;
  return named && ':.-)'.includes(scan.plain[first + 2] ?? 'l');
}

/** Whether a price ends a line that begins with words of its own and no word of asking. */
export function isUnknownGoods(scan: Scan, price: Price): boolean {
  if (price.from < 0) return false;
  const line = scan.tokens[price.from]?.line ?? 0;
  let start = price.from;
  while (start > Math.max(0, price.from - 60) && scan.tokens[start - 1]?.line === line) start -= 1;
  const before = scan.plain.slice(start, price.from);
  const behind = scan.plain.slice(price.to + 1, price.to + 18);
  // "Table $25, paddles are lost" goes on behind the price; one of a list when the line above has a price too.
  const listed = start > 1 && isPriced(scan, start - 2);
  const ends = /^[.!)e]{0,3}(?:l|$)/.test(behind) || (listed && /^e?,[^$MnkAFLORVDHl]{1,14}(?:l|$)/.test(behind));
  return line > 0 && ends && /[zk]/.test(before) && !/[AFLW]/.test(before);
}

/**
 * "Bench $100, dip stand $40": words that we know no goods by stand between a price and the one before it. Said in words that no dictionary has, for
 * "$100, tomorrow $80" is the same goods.
 */
export function isUnknownBeside(scan: Scan, price: Price): boolean {
  if (price.from < 0) return false;
  let from = price.from - Number(/[-:=]/.test(scan.plain[price.from - 1] ?? '_'));
  const end = from;
  while (end - from < 4 && 'zm'.includes(scan.plain[from - 1] ?? '_')) from -= 1;
  const words = scan.tokens.slice(from, end);
  const named = words.length > 0 && words.every(({ term }) => !term?.sense) && words.some(({ term }) => term === null);
  const parted = ',c.;'.includes(scan.plain[from - 1] ?? '_');
  let before = from - 2;
  while (before > 0 && scan.letters[before] === '_') before -= 1;
  return (
    named && parted && scan.letters[before] === 'M' && /^e?(?:[.,;!l)]|$)/.test(scan.plain.slice(price.to + 1, price.to + 3))
  );
}

/** Whether the line of the token holds a price. */
function isPriced(scan: Scan, at: number): boolean {
  const line = scan.tokens[at]?.line;
  for (let i = at; i > Math.max(0, at - 60) && scan.tokens[i]?.line === line; i -= 1) if (scan.letters[i] === 'M') return true;
  return false;
}

/** "I'd take 40" behind an asking price is room to haggle, not the price; "take both for $180" is an offer. */
export function isConcession(scan: Scan, price: Price): boolean {
  for (let i = Math.max(0, price.from - 5); i < price.from; i += 1)
    if (says(scan, i, 'would-take') || (says(scan, i, 'lets-go') && says(scan, i - 1, 'would'))) return true;
  return false;
}

/** A word of update stands before the price on its line. */
export function isUpdated(scan: Scan, price: Price): boolean {
  const line = scan.tokens[price.from]?.line;
  for (let i = price.from - 1; i >= Math.max(0, price.from - 60) && scan.tokens[i]?.line === line; i -= 1) {
    if (scan.tokens[i]?.term?.sense === 'update' || says(scan, i, 'now') || says(scan, i, 'lowered')) return true;
  }
  return false;
}

export const TOLD_RULES = ['price-told', 'price-now', 'price-spoken'];

/** "asking $260", "I want 260": a word of asking stands right before the price. */
export function isAsked(scan: Scan, price: Price): boolean {
  const told = price.from < 0 ? null : /A[aU:=-]{0,2}$/.exec(scan.plain.slice(Math.max(0, price.from - 3), price.from));
  return told !== null && says(scan, price.from - told[0].length, 'asks');
}
