/**
 * Prices that take the place of earlier ones: "UPDATE: bench is gone, now $380", "EDIT 3: dropping rack to $250", "Rest 90 €", "$300, jetzt $250".
 * The earlier one becomes a former price; goods that an update names again are those told before.
 */
import type { Price } from '../mention.ts';
import { takenRole } from '../recognisers/price-roles.ts';
import { isMore } from '../recognisers/taken-back.ts';
import { readUpdates, type Update, updateAt } from '../recognisers/updates.ts';
import type { Scan } from '../text/scan.ts';
import type { Draft } from './draft.ts';
import { firstToken } from './draft.ts';
import { type Cover, coverPrices } from './own-prices.ts';

const OF_LOT = ['asking', 'all'];
const OF_PIECES = ['each', 'pair', 'per-pound', 'per-kilogram'];
const NOW =
  /^(?:now|now only|down to|reduced|lowered|dropped|discounted|reduziert|gesenkt|runtergesetzt|reduced to|dropped to|lowered to|marked down to|dropping to|lowering to|reducing to|price drop|jetzt|jetzt nur|jetzt nur noch|jetzt noch|nun|nur noch|gesenkt auf|reduziert auf|runtergesetzt auf|preis gesenkt auf|preissenkung|preisreduzierung)$/;

interface Renewal {
  readonly price: Price;
  readonly update: Update | undefined;
  /** First token of what it speaks of. */
  readonly from: number;
  /** The words say that it is for all that is left. */
  readonly rest: boolean;
  /** Nothing says that it is new but that something was sold right before it. */
  readonly afterSale: boolean;
}

export function renewPrices(scan: Scan, prices: readonly Price[], drafts: Draft[]): void {
  const asks = prices.filter(({ role, from }) => from >= 0 && (OF_LOT.includes(role) || OF_PIECES.includes(role)));
  if (asks.length === 0) return;
  const updates = readUpdates(scan);
  const renewals = asks.flatMap((price) => renewalOf(scan, asks, updates, price) ?? []);
  if (renewals.length === 0) return;
  const plain = asks.filter((price) => !renewals.some((renewal) => renewal.price === price));
  if (isStacked(updates, plain, drafts)) renewals.reverse();
  const earlier = [...plain];
  for (const renewal of renewals) {
    const open = earlier.filter((price) => isOpen(price) && isBefore(renewal, price));
    if (open.length > 0) renew(scan, renewal, open, drafts);
    earlier.push(renewal.price);
  }
}

const isOpen = ({ role }: Price): boolean => OF_LOT.includes(role) || OF_PIECES.includes(role);

/** Without the word of an update a price renews only what stands before it, and with it nothing that is part of the same update. */
const isBefore = ({ price, update }: Renewal, other: Price): boolean =>
  update === undefined ? other.from < price.from : other.from < update.from || other.from > update.to;

/** Updates above the ad: the newest is put on top. */
const isStacked = (updates: readonly Update[], plain: readonly Price[], drafts: readonly Draft[]): boolean => {
  const first = Math.min(
    ...plain.map(({ from }) => from),
    ...drafts.filter((item) => !updateAt(updates, firstToken(item))).map(firstToken),
  );
  return updates.length > 1 && updates.every(({ to }) => to < first);
};

function renewalOf(scan: Scan, asks: readonly Price[], updates: readonly Update[], price: Price): Renewal | null {
  const update = updateAt(updates, price.from);
  const others = asks.filter((other) => other !== price);
  let from = price.from;
  let now = false;
  let sale = false;
  let rest = false;
  // Back to the last price, the word of update or the beginning of the sentence.
  const least = update?.from ?? Math.max(0, price.from - 40);
  while (from > least && (update !== undefined || scan.clause[from - 1] === scan.clause[price.from])) {
    if (others.some(({ to }) => to === from - 1)) break;
    from -= 1;
    if (price.from - from <= 4 && NOW.test(scan.tokens[from]?.text ?? '')) now = true;
    if (scan.letters[from] === 'Y') sale = true;
    if (/^price drop$/.test(scan.tokens[from]?.text ?? '')) now = true;
    if (price.from - from <= 5 && scan.tokens[from]?.term?.sense === 'rest') rest = true;
  }
  for (let i = price.to + 1; i <= price.to + 4 && scan.clause[i] === scan.clause[price.to] && scan.letters[i] !== 'M'; i += 1)
    if (scan.tokens[i]?.term?.sense === 'rest') rest = true;
  // "Two 45s left. $80."
  for (let i = price.from - 1; i >= price.from - 4 && lineOf(scan, i) === lineOf(scan, price.from); i -= 1)
    if (/^(?:left|remaining|ubrig)$/.test(scan.tokens[i]?.text ?? '')) now = true;
  // "$1/lb for the 45s, $1.50/lb for the rest": both hold.
  const rates =
    price.role.startsWith('per-') &&
    others.some((other) => other.role === price.role && scan.clause[other.from] === scan.clause[price.from]);
  if (rest && rates) return null;
  const told = update !== undefined || now || rest;
  return told || sale ? { price, update, from, rest, afterSale: !told } : null;
}

/** Named with its weight, or by its kind alone. */
const isNamed = (item: Draft, named: readonly Draft[]): boolean =>
  named.some((one) => one.kind === item.kind && (one.weight === null || one.weight.value === item.weight?.value));

function renew(scan: Scan, { price, update, from, rest, afterSale }: Renewal, earlier: readonly Price[], drafts: Draft[]): void {
  const within = (at: number): boolean => (at >= from && at < price.from) || isBehind(scan, price, at);
  const live = drafts.filter((item) => !item.sold && item.kind !== 'other');
  const named = live.filter((item) => item.places.some((place) => within(place.from) && !isMore(scan, place)));
  if (afterSale && named.length === 0) return;
  const covers = coverPrices(scan, earlier, drafts);
  const all = rest || named.length === 0 || live.every((item) => isNamed(item, named));
  if (!update && !rest && named.length === 0) {
    // "Power rack $300, now $250": the price right before it on its line, else the only one.
    const last = earlier.findLast((other) => other.to < price.from && lineOf(scan, other.to) === lineOf(scan, price.from));
    const one = last ?? (new Set(earlier.map(({ amount }) => amount)).size === 1 ? earlier[0] : undefined);
    for (const other of earlier) if (one && other.amount === one.amount && other.role === one.role) other.role = takenRole(other);
    return;
  }
  if (all) renewLot(price, earlier, covers, named.length !== 1 || rest);
  else if (named.length === 1) for (const item of named) renewGoods(item, covers, drafts, price);
}

const lineOf = (scan: Scan, at: number): number => scan.tokens[at]?.line ?? 0;

/** "$230 for bar and plates", "price drop to $60 on the trap bar". */
function isBehind(scan: Scan, price: Price, at: number): boolean {
  if (at <= price.to || at - price.to > 8 || scan.clause[at] !== scan.clause[price.to]) return false;
  return (
    /^(?:w|z)[amCkndzc]{0,7}$/.test(scan.plain.slice(price.to + 1, at)) &&
    /^(?:for|on|fur)$/.test(scan.tokens[price.to + 1]?.text ?? '')
  );
}

/** A price for all that is left: the one before it is a former price; prices of single goods stay beside it. */
function renewLot(price: Price, earlier: readonly Price[], covers: readonly Cover[], whole: boolean): void {
  const unit = OF_PIECES.includes(price.role);
  const single = covers.filter(
    ({ price: other, drafts }) => OF_LOT.includes(other.role) && drafts.filter(({ sold }) => !sold).length === 1,
  );
  const itemised = covers.filter(({ drafts }) => drafts.length > 0).length > 1 && single.length > 0;
  for (const other of earlier) {
    const own = itemised && single.some((cover) => cover.price === other);
    if (unit ? !own : OF_LOT.includes(other.role) && !own) other.role = takenRole(other);
  }
  if (!unit && whole && earlier.some(isOpen)) {
    price.role = 'all';
    price.whole = true;
  }
}

/** A price of goods that had one: they are the same goods. */
function renewGoods(item: Draft, covers: readonly Cover[], drafts: Draft[], price: Price): void {
  const alike = drafts.filter(
    (other) =>
      other !== item &&
      !other.sold &&
      other.kind === item.kind &&
      (item.weight === null || (other.weight?.value === item.weight.value && other.unit === item.unit)),
  );
  const own = covers.filter(
    ({ drafts: goods }) => goods.filter(({ sold }) => !sold).length === 1 && alike.some((one) => goods.includes(one)),
  );
  const goods = new Set(own.flatMap(({ drafts: covered }) => covered.filter((one) => alike.includes(one))));
  const [same] = goods;
  if (!same || goods.size > 1) return;
  for (const { price: other } of own) if (other.role === price.role || OF_LOT.includes(other.role)) other.role = takenRole(other);
  if (item.count && !item.count.implied) same.count = item.count;
  same.places.push(...item.places);
  drafts.splice(drafts.indexOf(item), 1);
}
