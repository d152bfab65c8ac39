/**
 * A price in the title beside prices in the text: the same lot at another price (the text holds, with a doubt), or the lot whose goods the text
 * prices one by one.
 */
import { isPlate, type Kind } from '../../listing/reading.ts';
import type { Price } from '../mention.ts';
import type { Scan } from '../text/scan.ts';
import type { Draft } from './draft.ts';
import { isExtra } from './extras.ts';
import { type Cover, coverPrices } from './own-prices.ts';
import { isConcession, isForPart } from './price-words.ts';

/** Farther apart the two can't be prices of the same goods. */
const MOST_APART = 2.5;
const LOT_ROLES = ['asking', 'all'];
/** "Price in the title is old", "ignore the title", "der Titel stimmt nicht". */
const OUTDATED = new Set(['title', 'titel', 'heading', 'headline', 'uberschrift', 'subject']);

export interface TitlePrice {
  /** The asking prices without the one of the title where it is not the price of anything any more. */
  readonly asks: readonly Price[];
  /** What the title asks for the same goods. */
  readonly rival: Price | null;
  /** The title's price is for all goods that the text prices one by one. */
  readonly lot: Price | null;
}

const lineOf = (scan: Scan, price: Price): number => scan.tokens[price.from]?.line ?? -1;

const kindsOf = (goods: readonly Draft[]): Set<Kind> => new Set(goods.map(({ kind }) => (isPlate(kind) ? 'plate' : kind)));

export function settleTitlePrice(scan: Scan, asks: readonly Price[], drafts: readonly Draft[]): TitlePrice {
  const nothing: TitlePrice = { asks, rival: null, lot: null };
  const lots = asks.filter(({ role, from }) => from >= 0 && LOT_ROLES.includes(role));
  const titles = lots.filter((price) => lineOf(scan, price) === 0);
  const [title] = titles;
  const body = lots.filter((price) => lineOf(scan, price) > 0 && price.amount !== title?.amount && !isConcession(scan, price));
  if (!title || titles.length > 1 || body.length === 0) return nothing;
  const named = kindsOf(drafts.filter((item) => !item.sold && item.places.some(({ from }) => scan.tokens[from]?.line === 0)));
  const covers = coverPrices(scan, body, drafts);
  const amounts = new Set(body.map(({ amount }) => amount));
  const [other] = body;
  const outdated = amounts.size === 1 && scan.tokens.some(({ text, line }) => line > 0 && OUTDATED.has(text));
  if (other && amounts.size === 1 && isSameLot(scan, title, other, covers, named, outdated))
    return { asks: asks.filter((price) => price !== title), rival: outdated ? null : title, lot: null };
  const goods = covers.filter(
    ({ price, drafts: own }) => price.role === 'asking' && own.length > 0 && !isExtra(scan, { price, drafts: own }),
  );
  const priced = kindsOf(goods.flatMap(({ drafts: own }) => own));
  const lot =
    !isItemised(scan, drafts) &&
    goods.length > 1 &&
    named.size > 0 &&
    [...named].every((kind) => priced.has(kind)) &&
    title.amount > Math.max(...amounts);
  return lot ? { ...nothing, lot: title } : nothing;
}

/** "4 x 45 lb $200" above "2 x 25 lb $40": the first line is one of the list and no title, for its goods are told nowhere else. */
function isItemised(scan: Scan, drafts: readonly Draft[]): boolean {
  const first = (item: Draft): boolean => item.places.every(({ from }) => scan.tokens[from]?.line === 0);
  const same = (one: Draft, other: Draft): boolean => one.kind === other.kind && one.weight?.value === other.weight?.value;
  return drafts.some(
    (item) => item.weight && item.count && first(item) && !drafts.some((other) => !first(other) && same(item, other)),
  );
}

/** Whether the one price of the text is for what the title prices. */
function isSameLot(
  scan: Scan,
  title: Price,
  other: Price,
  covers: readonly Cover[],
  named: ReadonlySet<Kind>,
  outdated: boolean,
): boolean {
  if (outdated) return true;
  const cover = covers.find(({ price }) => price === other);
  const far = Math.max(title.amount, other.amount) > MOST_APART * Math.min(title.amount, other.amount);
  if (!cover || cover.drafts.length === 0 || far || isExtra(scan, cover) || isForPart(scan, other)) return false;
  const told = kindsOf(cover.drafts);
  return named.size > 0 && [...named].every((kind) => told.has(kind));
}
