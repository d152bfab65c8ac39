/** Prices per weight that differ by the goods: "$3/kg for the black iron, $4/kg bumpers", "$1/lb for the 45s, $1.50 for the rest", or are those of some. */
import { isPlate } from '../../listing/reading.ts';
import { inKilograms, inPounds } from '../../units/mass.ts';
import type { Price } from '../mention.ts';
import { says } from '../text/says.ts';
import { type Scan, valueAt } from '../text/scan.ts';
import type { Draft } from './draft.ts';
import { type Cover, groupAmount, sizedBefore } from './own-prices.ts';

export interface RatedGoods {
  readonly item: Draft;
  readonly price: Price;
  readonly amount: number;
}

type Subject = (item: Draft) => boolean;

/** The word that a price per weight is for: a noun or a material right behind it, else the nearest before it in its clause. */
function subjectAt(scan: Scan, price: Price): number | null {
  for (let i = price.to + 1; i <= price.to + 6 && scan.clause[i] === scan.clause[price.from]; i += 1) {
    if (scan.plain[i] === 'k' || scan.tokens[i]?.term?.material) return i;
    if (!'wamrucC'.includes(scan.plain[i] ?? '_')) break;
  }
  for (let i = price.from - 1; i >= Math.max(0, price.from - 6) && scan.clause[i] === scan.clause[price.from]; i -= 1) {
    if (scan.plain[i] === 'k' || scan.tokens[i]?.term?.material) return i;
    if (scan.letters[i] === 'M') return null;
  }
  return null;
}

/** Sizes named right behind a rate: "$1 a pound for the 45s and 35s". */
function sizesBehind(scan: Scan, price: Price): readonly number[] {
  const sizes: number[] = [];
  const link = /^[ra/]{1,2}[uh](?:w|z(?=a?n))/.exec(scan.plain.slice(price.to + 1, price.to + 6))?.[0].length ?? 0;
  for (let i = price.to + 1 + link; link > 0 && i < price.to + 14; i += 1) {
    if (scan.plain[i] === 'n' && 'uhs'.includes(scan.plain[i + 1] ?? '_')) sizes.push(valueAt(scan, i) ?? 0);
    else if (scan.plain[i] === 'v') sizes.push(valueAt(scan, i) ?? 0);
    else if (!'auhsc&'.includes(scan.plain[i] ?? '_')) break;
  }
  return sizes;
}

/** What a rate is for: goods by their size, noun or material, or the rest; null where nothing says it. */
function subjectOf(scan: Scan, price: Price, plates: readonly Draft[]): Subject | 'rest' | null {
  if (price.from < 0) return null;
  const sizes = sizesBehind(scan, price);
  if (sizes.length > 0) return (item) => sizes.includes(item.weight?.value ?? 0);
  for (let i = price.to + 1; i <= price.to + 6 && scan.clause[i] === scan.clause[price.from]; i += 1)
    if (scan.tokens[i]?.term?.sense === 'rest' || (says(scan, i, 'others') && scan.plain[i] !== 'd')) return 'rest';
  const sized = sizedBefore(scan, price, plates);
  if (sized.length > 0) return (item) => sized.includes(item);
  const at = subjectAt(scan, price);
  const term = at === null ? undefined : scan.tokens[at]?.term;
  if (!term) return null;
  return (item) => (term.kind ? item.kind === term.kind : item.material?.value === term.material);
}

/** Lines of plates, each told once. */
function platesOf(live: readonly Draft[]): readonly Draft[] {
  const counted = (one: Draft): boolean => one.count !== null && !one.again;
  const told = live.filter((item) => isPlate(item.kind) && (item.weight !== null || item.total !== null));
  // "The 45s are a mix of makes": goods named again are counted once.
  return told.filter(
    (item) =>
      !item.again &&
      (item.count !== null ||
        item.total !== null ||
        !told.some((one) => counted(one) && one.kind === item.kind && one.weight?.value === item.weight?.value)),
  );
}

function amountAt(price: Price, item: Draft): number | null {
  const unit = item.unit ?? 'lb';
  const weight = item.total ?? (item.weight && item.count ? { value: item.weight.value * item.count.value, unit } : null);
  return weight && price.amount * (price.role === 'per-kilogram' ? inKilograms(weight) : inPounds(weight));
}

/** Each plate line with its own rate and its amount in major units; null unless at least two rates cover every line of plates. */
export function ratesByGoods(scan: Scan, weighed: readonly Price[], live: readonly Draft[]): RatedGoods[] | null {
  if (weighed.length < 2) return null;
  const plates = platesOf(live);
  const subjects = weighed.map((price) => ({ price, of: subjectOf(scan, price, plates) }));
  const rated: RatedGoods[] = [];
  // What is for the rest is settled last.
  for (const { price, of } of [...subjects].sort((a, b) => Number(a.of === 'rest') - Number(b.of === 'rest'))) {
    if (of === null) return null;
    for (const item of plates) {
      if ((of !== 'rest' && !of(item)) || rated.some((other) => other.item === item)) continue;
      const amount = amountAt(price, item);
      if (amount === null) return null;
      rated.push({ item, price, amount });
    }
  }
  return plates.length > 1 && rated.length === plates.length && new Set(rated.map(({ price }) => price)).size > 1 ? rated : null;
}

/** "$1.50 per lb for the deep dish, the hundreds are $130 for the two": one rate, and plates of a size that have a price of their own. */
export function rateBesideSizes(scan: Scan, rate: Price, covers: readonly Cover[], live: readonly Draft[]): RatedGoods[] | null {
  const plates = platesOf(live);
  const rated: RatedGoods[] = covers.flatMap((cover) => {
    const [item] = cover.price.role.startsWith('per-') ? [] : sizedBefore(scan, cover.price, plates);
    const amount = item ? groupAmount({ price: cover.price, drafts: [item] }) : null;
    return item && amount !== null ? [{ item, price: cover.price, amount }] : [];
  });
  if (rated.length === 0 || rated.length === plates.length) return null;
  for (const item of plates) {
    if (rated.some((other) => other.item === item)) continue;
    const amount = amountAt(rate, item);
    if (amount === null) return null;
    rated.push({ item, price: rate, amount });
  }
  return rated;
}
