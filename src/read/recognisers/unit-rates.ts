/** Prices of one pound, kilogram, pair or piece that have no sign of money: "2.1 per lb", "a buck a pound", "60 per pair and 40 per pair". */
import type { Price } from '../mention.ts';
import { says } from '../text/says.ts';
import { findAll, type Scan, valueAt } from '../text/scan.ts';
import { putAmount, putPrice } from './found-price.ts';

/** "2.1 per lb", "1.10 a lb". */
const PER_WEIGHT = /(n)(?=[ra/][uh](?![hx]?n))/dg;
/** "1.10 a lb if you take 200 lb, otherwise 1.35". */
const PER_WEIGHT_TOO = /n(?=[.,;!l)]|$)/dg;
/** "2x45 2x35. 2.00 lb.": with its cents to the last nought, in an ad that asks for nothing else. */
const RATE_ALONE = /(?<=^|[l.,;:(-])(n)(?=u(?:[.,;!l)]|$))/dg;
/** "60 per pair for the 45s and 40 per pair for the 25s": like the one before it. */
const PER_PIECE = /(?<=[,c])(n)(?=[ra]p(?![on])|r?e(?=[,.;!l)w]|$))/dg;
/** "a buck a pound", "iron plates dollar a pound". */
const BUCK = /(?:a|(?<=^|[l,.;(ksuhw:@-]|kz))(\$)(?=[ra/]u)/dg;

const isPerWeight = (scan: Scan, { to }: Price): boolean => /^[ra/][uh]/.test(scan.plain.slice(to + 1, to + 3));

export function readUnitRates(scan: Scan, found: Price[]): void {
  const put = (rule: string, from: number, to: number): 'claimed' => putPrice(scan, found, rule, { from, to, at: from });
  findAll(scan, PER_WEIGHT, ({ from, to }) => ((valueAt(scan, from) ?? 99) > 20 ? false : put('price-per-weight', from, to)));
  if (found.length === 0)
    findAll(
      scan,
      RATE_ALONE,
      ({ from, to }) => /^[0-4]?\.\d0$/.test(scan.tokens[from]?.text ?? '') && put('price-per-weight', from, to),
    );
  if (found.some((price) => isPerWeight(scan, price)))
    findAll(scan, PER_WEIGHT_TOO, ({ from, to }) => {
      const value = valueAt(scan, from) ?? 0;
      const fraction = value < 20 && /^\d*\.\d\d$/.test(scan.tokens[from]?.text ?? '');
      const beside = found.some((price) => scan.clause[price.from] === scan.clause[from] && isPerWeight(scan, price));
      return fraction && beside && put('price-per-weight', from, to);
    });
  findAll(scan, PER_PIECE, ({ from, to }) => {
    const beside = found.some((price) => scan.clause[price.from] === scan.clause[from] && price.to < from);
    return (valueAt(scan, from) ?? 0) >= 5 && beside && put('price-per-piece', from, to);
  });
  findAll(scan, BUCK, ({ from, to }) => {
    if (!says(scan, to, 'unit-of-money')) return false;
    const currency = scan.tokens[to]?.term?.currency ?? null;
    return putAmount(scan, found, { rule: 'price-of-one', from, to, amount: 1, currency, sure: true });
  });
}
