/** Prices per weight that differ by the goods: "$3/kg for the black iron, $4/kg bumpers", "iron $1/lb, bumpers $1.50/lb". */
import { isPlate } from '../../listing/reading.ts';
import { inKilograms, inPounds } from '../../units/mass.ts';
import type { Price } from '../mention.ts';
import type { Scan } from '../text/scan.ts';
import type { Draft } from './draft.ts';

export interface RatedGoods {
  readonly item: Draft;
  readonly price: Price;
  readonly amount: number;
}

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

/** Each plate line with its own rate and its amount in major units; null unless at least two rates cover every line of plates. */
export function ratesByGoods(scan: Scan, weighed: readonly Price[], live: readonly Draft[]): RatedGoods[] | null {
  if (weighed.length < 2) return null;
  const counted = (one: Draft): boolean => one.count !== null && !one.again;
  const told = live.filter((item) => isPlate(item.kind) && (item.weight !== null || item.total !== null));
  // "The 45s are a mix of makes": goods named again are counted once.
  const plates = told.filter(
    (item) =>
      !item.again &&
      (item.count !== null ||
        item.total !== null ||
        !told.some((one) => counted(one) && one.kind === item.kind && one.weight?.value === item.weight?.value)),
  );
  const rated: RatedGoods[] = [];
  for (const price of weighed) {
    const at = price.from < 0 ? null : subjectAt(scan, price);
    const term = at === null ? undefined : scan.tokens[at]?.term;
    if (!term) return null;
    for (const item of plates) {
      const named = term.kind ? item.kind === term.kind : item.material?.value === term.material;
      if (!named || rated.some((other) => other.item === item)) continue;
      const unit = item.unit ?? 'lb';
      const weight = item.total ?? (item.weight && item.count ? { value: item.weight.value * item.count.value, unit } : null);
      if (!weight) return null;
      const measured = price.role === 'per-kilogram' ? inKilograms(weight) : inPounds(weight);
      rated.push({ item, price, amount: price.amount * measured });
    }
  }
  return plates.length > 1 && rated.length === plates.length && new Set(rated.map(({ price }) => price)).size > 1 ? rated : null;
}
