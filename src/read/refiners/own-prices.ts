/** Which goods each price covers: those before it in its line (or behind it, where lines begin with the price), and lines of price alone the line above. */
import { isPlate } from '../../listing/reading.ts';
import type { Price } from '../mention.ts';
import { says } from '../text/says.ts';
import { type Scan, valueAt } from '../text/scan.ts';
import type { Draft } from './draft.ts';
import { isForOtherTrade } from './extras.ts';
import { isUnknownBeside, isUnknownGoods } from './price-words.ts';

export interface Cover {
  readonly price: Price;
  readonly drafts: readonly Draft[];
}

interface Event {
  readonly at: number;
  readonly price?: Price;
  readonly item?: Draft;
  /** The end of goods that stand behind their price: what comes before it is no later price's. */
  readonly end?: true;
}

export function coverPrices(scan: Scan, prices: readonly Price[], drafts: readonly Draft[]): Cover[] {
  const told = new Map<Price, readonly Draft[]>();
  const ends: number[] = [];
  for (const price of prices) {
    const { goods, to } = goodsBehind(scan, price, drafts);
    if (goods.length > 0) ends.push(to);
    const named = goods.length > 0 ? goods : sizedBefore(scan, price, drafts);
    if (named.length > 0) told.set(price, named);
  }
  const lines = new Map<number, Event[]>();
  const add = (at: number, event: Omit<Event, 'at'>): void => {
    const line = scan.tokens[Math.floor(at)]?.line ?? 0;
    const events = lines.get(line) ?? [];
    events.push({ at, ...event });
    lines.set(line, events);
  };
  for (const price of prices) if (price.from >= 0 && !told.has(price)) add(price.from, { price });
  for (const item of drafts) for (const place of item.places) if (place.rule !== 'weight-of-goods') add(place.from, { item });
  for (const at of ends) add(at + 0.5, { end: true });
  // The page's own price stands nowhere in the text and covers no goods in particular.
  const covers: Cover[] = prices.filter((price) => price.from < 0).map((price) => ({ price, drafts: [] }));
  for (const [price, goods] of told) covers.push({ price, drafts: goods });
  let above = null as { readonly line: number; readonly drafts: readonly Draft[] } | null;
  for (const [line, events] of [...lines.entries()].sort((a, b) => a[0] - b[0])) {
    events.sort((a, b) => a.at - b.at);
    const priced = events.filter((event) => event.price);
    const goods = events.flatMap((event) => (event.item ? [event.item] : []));
    if (priced.length === 0) {
      // "1 hex bar", "1 olympic bar", "$150 each": the only price is for the pieces of all lines above it.
      const [only] = prices;
      const each = prices.length === 1 && (only?.role === 'each' || only?.role === 'pair');
      above = { line, drafts: each ? [...(above?.drafts ?? []), ...goods] : goods };
      continue;
    }
    if (goods.length === 0) {
      // "Brown couch, reclines $100" in a list of all sorts is not the price of what is told above.
      const strange =
        prices.length > 2 &&
        priced.some(
          ({ price }) =>
            price && isUnknownGoods(scan, price) && /z,z/.test(scan.plain.slice(Math.max(0, price.from - 8), price.from)),
        );
      const adjacent = above && line - above.line <= 2 && !strange;
      for (const { price } of priced)
        if (price) covers.push({ price, drafts: adjacent && priced.length === 1 ? (above?.drafts ?? []) : [] });
      above = null;
      continue;
    }
    covers.push(...coverLine(scan, events));
    above = null;
  }
  return covers.map((cover) => (told.has(cover.price) ? cover : withoutTold(cover, [...told.values()].flat())));
}

/** "3 x 5 kg and 2 x 10 kg: $40 each for the little ones, $55 each for the tens": a size that is named again at its price has no part in the other. */
function withoutTold({ price, drafts }: Cover, told: readonly Draft[]): Cover {
  const rest = drafts.filter(
    (item) => !told.some((one) => one.again && one.kind === item.kind && one.weight?.value === item.weight?.value),
  );
  return { price, drafts: rest.length > 0 ? rest : drafts };
}

interface Behind {
  readonly goods: readonly Draft[];
  /** Token of the last of them. */
  readonly to: number;
}

const NONE_BEHIND: Behind = { goods: [], to: -1 };

/** "$80 for the rack", "$300 for plates and bar": the goods named right behind "for". */
function goodsBehind(scan: Scan, price: Price, drafts: readonly Draft[]): Behind {
  if (price.from < 0) return NONE_BEHIND;
  // "60 per pair for the 45s".
  const unit = /^(?:[ra/]?p|[ra/]?e)(?=w)/.exec(scan.plain.slice(price.to + 1, price.to + 5))?.[0].length ?? 0;
  const start = price.to + 1 + unit;
  if (scan.plain[start] !== 'w') return NONE_BEHIND;
  const goods = new Set<Draft>();
  let to = start;
  for (let i = start + 1; i < start + 12; i += 1) {
    const letter = scan.plain[i] ?? '_';
    // Behind the first goods only such as "and" joins to them.
    const joins = goods.size > 0 && letter === 'c' && /^[aC]{0,2}m{0,3}k/.test(scan.plain.slice(i + 1, i + 7));
    // "The curl bar": its first words are one term.
    const called = scan.tokens[i]?.term?.part?.endsWith('-bar') === true;
    if (!joins && !called && !'amCknduhsv'.includes(letter)) break;
    if (goods.size > 0 && i > start + 8 && !joins) break;
    const item = drafts.find((draft) => draft.places.some((place) => i >= place.from && i <= place.to));
    if (item) {
      goods.add(item);
      to = i;
      continue;
    }
    // "$40 for the 35, $60 for the 53": by the number on them.
    const sized = 'uhs'.includes(scan.plain[i + 1] ?? '_') && 'aw'.includes(scan.plain[i - 1] ?? '_');
    const bare = scan.letters[i] === 'n' && scan.plain[i - 1] === 'a' && /[,.;l!)c]/.test(scan.plain[i + 1] ?? 'l');
    if (scan.plain[i] !== 'n' || !(sized || bare)) continue;
    const marked = drafts.filter((draft) => !draft.sold && draft.weight !== null && draft.weight.value === scan.tokens[i]?.value);
    if (marked.length === 1 && marked[0]) return { goods: [marked[0]], to: i };
  }
  return { goods: [...goods], to };
}

/** "The hundreds are $130", "20s are $90 each": by the size that is the subject right before it, in a sentence that counts nothing. */
export function sizedBefore(scan: Scan, price: Price, drafts: readonly Draft[]): readonly Draft[] {
  if (price.from < 3) return [];
  const size = /(?:^|[l.,;c(])a?(v|ns)z$/.exec(scan.plain.slice(Math.max(0, price.from - 5), price.from));
  if (!size || !says(scan, price.from - 1, 'is-now')) return [];
  const value = valueAt(scan, price.from - 1 - (size[1]?.length ?? 1));
  const marked = drafts.filter((draft) => !draft.sold && draft.weight?.value === value);
  const [first] = marked;
  // Named again they are the same.
  const alike = marked.every(({ kind, unit }) => kind === first?.kind && unit === first.unit);
  const one = alike ? (marked.find(({ count, again }) => count !== null && !again) ?? first) : undefined;
  return one ? [one] : [];
}

const isPlain = (item: Draft): boolean => !item.weight && !item.count && !item.total;

const isAlike = (item: Draft, other: Draft): boolean =>
  isPlate(item.kind) ? isPlate(other.kind) : item.kind === other.kind && (item.kind === 'dumbbell' || item.kind === 'kettlebell');

/** "4 x 20, 4 x 10. The 10s are $15 each": a price behind goods named again speaks of those alone. */
function spoken(all: readonly Draft[]): readonly Draft[] {
  // "Plates: 25 lb $25", "dumbbells 2x50 $80": the plain noun is what is told behind it.
  const group = all.filter((item) => !isPlain(item) || !all.some((other) => other.weight && isAlike(item, other)));
  const last = group.at(-1);
  return last?.again && group.some((item) => !item.again) ? [last] : group;
}

/** "Full cage. Also a bar. Cage $350, bar $160": where prices have goods in their own sentences, those before only name the same. */
function isNamedBefore(scan: Scan, events: readonly Event[], item: Draft, price: Price): boolean {
  const clauseOf = (at: number): number | undefined => scan.clause[at];
  const at = item.places.findLast(({ from }) => from < price.from)?.from ?? price.from;
  if (clauseOf(at) === clauseOf(price.from)) return false;
  const priced = events.filter((event) => event.price);
  const own = events.filter(
    (event) => event.item && priced.some((other) => clauseOf(other.at) === clauseOf(event.at) && other.at > event.at),
  );
  if (priced.length < 2 || !own.some((event) => clauseOf(event.at) === clauseOf(price.from))) return false;
  const again = own.some(
    (event) => event.item && event.item !== item && event.item.kind === item.kind && clauseOf(event.at) !== clauseOf(at),
  );
  // "A dollar a pound: 4x45, 2x25. Bar is $80": the plates have their rate.
  const weighed = isPlate(item.kind) && priced.some((event) => event.price?.role.startsWith('per-') && event.at < price.from);
  return again || weighed;
}

/** "Bench, make me an offer. Bumpers: pair of 45s $130": goods left to offers in a sentence of their own have no part in the price behind. */
function isLeftToOffers(scan: Scan, item: Draft, price: Price): boolean {
  const last = item.places.findLast(({ to }) => to < price.from)?.to;
  return (
    last !== undefined &&
    scan.clause[last] !== scan.clause[price.from] &&
    /^[,:(-]{0,2}O/.test(scan.plain.slice(last + 1, last + 4))
  );
}

/** "40s and 50s (pairs) $90 & $110": as many prices in a row as goods before them, each for the goods in its place. */
function inTurn(scan: Scan, events: readonly Event[]): Cover[] {
  const covers: Cover[] = [];
  let goods: Draft[] = [];
  for (let at = 0; at < events.length; at += 1) {
    const { item, price } = events[at] ?? {};
    if (item && !goods.includes(item)) goods.push(item);
    if (!price) continue;
    const row = [price];
    for (let next = events[at + 1]?.price; next; next = events[at + row.length]?.price) {
      const last = row.at(-1) ?? price;
      if (!/^[,c/]{1,2}$/.test(scan.plain.slice(last.to + 1, next.from)) || next.role !== 'asking') break;
      row.push(next);
    }
    const named = spoken(goods);
    if (row.length > 1 && row.length === named.length && price.role === 'asking')
      covers.push(...row.map((one, index) => ({ price: one, drafts: named.slice(index, index + 1) })));
    at += row.length - 1;
    goods = [];
  }
  return covers;
}

/** The events behind goods that a price of their own stands before, where the line begins with such: "$2 each for 2.5s, $4 each 5s". */
function behindFirst(all: readonly Event[]): readonly Event[] {
  const end = all.findIndex((event) => event.end);
  return end >= 0 && !all.slice(0, end).some(({ price }) => price) ? all.slice(end + 1) : all;
}

function coverLine(scan: Scan, line: readonly Event[]): Cover[] {
  const covers: Cover[] = [];
  const all = behindFirst(line);
  const events = all.filter(({ end }) => !end);
  const first = events[0];
  const last = events[events.length - 1];
  // "$300 rack, $50 bench": each price has its goods behind it in its own clause.
  const led = events.every(
    ({ price, at }, index) =>
      !price || (events[index + 1]?.item !== undefined && scan.clause[events[index + 1]?.at ?? 0] === scan.clause[at]),
  );
  const priceFirst = first?.price !== undefined && last?.item !== undefined && (led || events.length === 2);
  let group: Draft[] = [];
  let open: Price | null = null;
  const paired = priceFirst ? [] : inTurn(scan, events);
  for (const event of all) {
    if (event.end && !priceFirst) group = [];
    const own = paired.find(({ price }) => price === event.price);
    if (own) {
      covers.push(own);
      group = [];
      continue;
    }
    if (event.item) group.push(event.item);
    if (!event.price) continue;
    if (priceFirst) {
      if (open) covers.push({ price: open, drafts: [...new Set(group)] });
      open = event.price;
    } else {
      const { price } = event;
      covers.push({
        price,
        drafts: spoken(
          [...new Set(group)].filter((item) => !isNamedBefore(scan, events, item, price) && !isLeftToOffers(scan, item, price)),
        ),
      });
    }
    group = [];
  }
  if (open) covers.push({ price: open, drafts: [...new Set(group)] });
  // A second price right behind the first ("$40 each, $150 for all") has no goods of its own: it speaks of the same.
  return covers.map((cover, index) =>
    cover.drafts.length === 0 &&
    index > 0 &&
    !priceFirst &&
    !isUnknownBeside(scan, cover.price) &&
    !isForOtherTrade(scan, cover.price)
      ? { ...cover, drafts: covers[index - 1]?.drafts ?? [] }
      : cover,
  );
}

/**
 * The goods that a unit price counts: a noun beside weighed goods names those ("20 kg … bumpers"), and extras that come along with goods
 * ("racks with J-hooks $200 each") are no pieces.
 */
export function goodsByPiece(drafts: readonly Draft[]): readonly Draft[] {
  const told = drafts.filter((item) => item.weight !== null);
  const main = drafts.filter((item) => item.kind !== 'other' && item.kind !== 'collars');
  return told.length > 0 ? told : main.length > 0 ? main : drafts;
}

/** Price of the covered goods as a whole, from a unit price and the counts; null when a count is not known. */
export function groupAmount(cover: Cover): number | null {
  const { price, drafts } = cover;
  const [only] = drafts;
  // "25 lb $25, 35 lb $35, two of each": the prices are those of one.
  const one = drafts.length === 1 && price.role === 'asking' && only?.count?.rule.endsWith('-of-each');
  if (one && only?.count) return price.amount * only.count.value;
  if (price.role === 'asking' || price.role === 'all') return price.amount;
  let pieces = 0;
  for (const item of goodsByPiece(drafts)) {
    // "45s $80 a pair" offers a pair at least.
    if (item.count === null && price.role === 'pair' && item.weight !== null)
      item.count = { value: 2, rule: 'priced-by-pair', from: price.from, to: price.to, implied: true };
    if (item.count === null) return null;
    pieces += item.count.value;
  }
  if (pieces === 0) return null;
  if (price.role === 'each') return price.amount * pieces;
  if (price.role === 'pair') return pieces % 2 === 0 ? price.amount * (pieces / 2) : null;
  return null;
}
