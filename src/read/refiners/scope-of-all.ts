/**
 * Which goods a price "for all" covers: those it names ("for all the plates"), those of the part of the text it stands in ("plates $200 for the
 * works"), or the whole ad. A price cannot be for everything where another price for more goods is higher, nor below the price of one piece.
 */
import type { Price } from '../mention.ts';
import { says, saysWithin } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';
import { type Draft, firstToken } from './draft.ts';
import { isExtra } from './extras.ts';
import { isCovered } from './itemised.ts';
import { type Cover, sizedBefore } from './own-prices.ts';
import { isConcession } from './price-words.ts';
import { namedBy } from './subject.ts';

export interface ScopesOfAll {
  /** The covers, those of parts narrowed to the goods of that part. */
  readonly covers: readonly Cover[];
  /** Prices for all of some of the goods. */
  readonly parts: ReadonlySet<Price>;
  /** What the ad may come to where a price for all may be that of some goods only. */
  readonly perhaps: readonly Price[];
}

interface Scope {
  readonly price: Price;
  /** The goods it names or stands with in its own part of the sentence, else those told before it. */
  readonly goods: readonly Draft[];
  /** They are named right behind the word: "for all the plates". */
  readonly named: boolean;
  /** They stand with it in its own part of the sentence. */
  readonly own: boolean;
  /** The word leaves nothing out: "everything". */
  readonly everything: boolean;
}

/** How far a price for all may lie above what the rest of the goods cost, and still be that of its own goods. */
const ABOVE_REST = 1.1;
const PERHAPS_ABOVE_REST = 1.7;
/** How many tokens before and behind a price its words for all may stand. */
const WORDS_BEFORE = 7;
const WORDS_BEHIND = 6;
/** How far back goods of its part of the sentence are looked for. */
const SEGMENT = 80;

/** Goods named right behind the words: "$250 for all of the plates", "price for all plates: $200". */
function namedBehind(scan: Scan, price: Price, drafts: readonly Draft[]): readonly Draft[] {
  const goods = new Set<Draft>();
  const last = price.to + WORDS_BEHIND;
  const word = scan.plain.slice(price.to + 1, last).search(/[Ld]|z(?=[az]{0,2}[mC]{0,2}k)/);
  if (word < 0 || /[.,;l()M$-]/.test(scan.plain.slice(price.to + 1, price.to + 1 + word))) return [];
  for (let i = price.to + 1 + word; i <= last + 4; i += 1) {
    const letter = scan.plain[i] ?? 'l';
    if (letter === 'k') for (const item of namedBy(scan, drafts, i)) goods.add(item);
    else if (!'LdzoamCcw'.includes(letter) || (letter === 'z' && (goods.size > 0 || says(scan, i, 'or')))) break;
  }
  return [...goods];
}

/** How far its own part of the sentence reaches before and behind a price: up to the next prices. */
function partAround(scan: Scan, { from, to }: Price, before: number, behind: number): readonly [number, number] {
  const clause = scan.clause[from];
  let first = from;
  while (first > Math.max(0, from - before) && scan.clause[first - 1] === clause && scan.letters[first - 1] !== 'M') first -= 1;
  let last = to;
  while (last < to + behind && scan.clause[last + 1] === clause && scan.letters[last + 1] !== 'M') last += 1;
  return [first, last];
}

/** Goods that stand before the price in its part of the sentence, or are named there; "plates: 4x45" are those. */
function ofSegment(scan: Scan, price: Price, drafts: readonly Draft[]): readonly Draft[] {
  const [from] = partAround(scan, price, SEGMENT, 0);
  const goods = drafts.filter((item) => item.places.some((place) => place.to >= from && place.to < price.from));
  for (let i = from; i < price.from; i += 1) {
    const named = scan.plain[i] === 'k' ? namedBy(scan, drafts, i) : [];
    if (!named.some((item) => goods.some(({ kind }) => kind === item.kind))) goods.push(...named);
  }
  // "Plates: 4x45": the plain noun is what is told.
  return goods.filter(
    (item) => item.weight || item.count || item.total || !goods.some((other) => other.kind === item.kind && other.weight),
  );
}

function scopeOf(scan: Scan, { price, drafts }: Cover, live: readonly Draft[]): Scope {
  const behind = namedBehind(scan, price, live);
  const [first, last] = partAround(scan, price, WORDS_BEFORE, WORDS_BEHIND);
  const everything = saysWithin(scan, first, last + 1, 'of-everything');
  if (behind.length > 0) return { price, goods: behind, named: true, own: true, everything };
  const sized = sizedBefore(scan, price, live);
  if (sized.length > 0) return { price, goods: sized, named: true, own: true, everything: false };
  const segment = ofSegment(scan, price, live);
  const goods = segment.length > 0 ? segment : drafts;
  return { price, goods, named: false, own: segment.length > 0, everything };
}

/** For all goods, for some, or perhaps for some: then the ad comes to so much more, which the rest costs by its own prices. */
type Extent = 'all' | 'some' | { readonly with: number };

function extentOf(scan: Scan, scope: Scope, scopes: readonly Scope[], covers: readonly Cover[], live: readonly Draft[]): Extent {
  const { price, goods, everything } = scope;
  const seen = new Set(goods);
  const outside = live.filter((item) => item.kind !== 'collars' && !isCovered(item, seen));
  if (goods.length === 0 || outside.length === 0) return 'all';
  if (scope.named) return 'some';
  const others = covers.filter(
    ({ price: other, drafts }) =>
      other !== price &&
      ['asking', 'all', 'each', 'pair'].includes(other.role) &&
      drafts.length > 0 &&
      drafts.every((item) => outside.includes(item)),
  );
  const later =
    others.length > 0 &&
    others.every(
      (other) =>
        scan.clause[other.price.from] !== scan.clause[price.from] && other.drafts.every((item) => firstToken(item) > price.to),
    );
  const ours = others.some(({ drafts }) => drafts.some(({ kind }) => kind !== 'other'));
  // "$240 takes everything. Also have a bench for $40."
  if (everything && !scope.own) return later && ours && others.every((other) => isExtra(scan, other)) ? 'some' : 'all';
  const wider = (other: Scope): boolean =>
    other.price.amount > price.amount &&
    !other.named &&
    !isConcession(scan, other.price) &&
    (other.goods.length === 0 || other.everything || goods.every((item) => other.goods.includes(item)) || !other.own);
  if (scopes.some((other) => other.price !== price && wider(other))) return 'some';
  // "All $400: rack $200, bench $100, plates $150": its goods have prices of their own among the others.
  const again = covers.some(
    ({ price: other, drafts }) => other !== price && other.role === 'asking' && drafts.some((item) => seen.has(item)),
  );
  if (others.length === 0 || again) return 'all';
  const dearest = Math.max(...others.map(({ price: other }) => other.amount));
  if (price.amount < dearest) return 'some';
  if (later) return 'some';
  if (everything) return 'all';
  const rest = others.reduce((sum, { price: other }) => sum + other.amount, 0);
  if (!scope.own || others.some((other) => scan.clause[other.price.from] === scan.clause[price.from])) return 'all';
  return price.amount <= ABOVE_REST * rest ? 'some' : price.amount <= PERHAPS_ABOVE_REST * rest ? { with: rest } : 'all';
}

export function scopesOfAll(scan: Scan, covers: readonly Cover[], live: readonly Draft[]): ScopesOfAll {
  const forAll = covers.filter(({ price }) => price.role === 'all' && price.from >= 0);
  if (forAll.length === 0) return { covers, parts: new Set(), perhaps: [] };
  const scopes = forAll.map((cover) => scopeOf(scan, cover, live));
  const parts = new Map<Price, readonly Draft[]>();
  const perhaps: Price[] = [];
  for (const scope of scopes) {
    const extent = extentOf(scan, scope, scopes, covers, live);
    if (extent === 'some') parts.set(scope.price, scope.goods);
    else if (extent !== 'all') perhaps.push({ ...scope.price, amount: scope.price.amount + extent.with });
  }
  return {
    covers: covers.map((cover) => ({ price: cover.price, drafts: parts.get(cover.price) ?? cover.drafts })),
    parts: new Set(parts.keys()),
    perhaps,
  };
}
