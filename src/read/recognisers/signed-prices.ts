/** Amounts with a sign of money or of no cents: "$40", "40-50 €", "120,-", "75¢", "a buck twenty five a pound". */
import type { Price } from '../mention.ts';
import { says } from '../text/says.ts';
import { findAll, type Scan, valueAt } from '../text/scan.ts';
import { putAmount, putPrice } from './found-price.ts';
import { centsCurrency, currencyOf } from './price-currency.ts';

const SIGNED = /(\$\.?:?)([ni])¤?(?:-\$?(n)(?![x\-uhfsk]))?(\$(?!n))?/dg;
/** "$70 to $80", "between $70 and $80". */
const SIGNED_TWICE = /\$(n)[zc]\$(n)(?![x\-uhfsk])/dg;
const BEHIND = /([nid])¤?(?:([-zc])(n))?\.?-?¤?(\$)/dg;
/** "120,-" with no currency. */
const NO_CENTS = /([ni])¤/dg;
const CENTS = /([ni])(¢)/dg;
/** "a buck twenty five a pound". */
const BUCK_AND_CENTS = /a?(\$)-?(i)(?=[ra/]u)/dg;

export function readSignedPrices(scan: Scan, found: Price[]): void {
  if (scan.plain.includes('i'))
    findAll(scan, BUCK_AND_CENTS, ({ from, to, group }) => {
      const cents = valueAt(scan, to) ?? 0;
      const currency = scan.tokens[group(1)?.[0] ?? from]?.term?.currency ?? null;
      if (cents >= 100 || currency === null) return false;
      return putAmount(scan, found, { rule: 'price-of-one', from, to, amount: 1 + cents / 100, currency, sure: true });
    });
  findAll(scan, CENTS, ({ from, to, group }) => {
    const currency = centsCurrency(scan, to);
    if (currency === null) return false;
    // ".75 cents a pound" is meant as 75 cents.
    const factor = (valueAt(scan, from) ?? 1) < 1 ? 1 : 0.01;
    return putPrice(scan, found, 'cents', { from, to, at: group(1)?.[0] ?? from, currency, factor });
  });
  findAll(scan, SIGNED_TWICE, ({ from, to }) => {
    const [low, high] = [valueAt(scan, from + 1) ?? 0, valueAt(scan, to) ?? 0];
    const lowered = says(scan, from - 1, 'from') || scan.tokens[from - 1]?.term?.sense === 'from';
    if (lowered || !isRange(scan, from, from + 2) || high <= low || high > 2 * low) return false;
    const currency = currencyOf(scan, from, to);
    return putPrice(scan, found, 'price-sign-first', { from, to, at: from + 1, highAt: to, currency });
  });
  findAll(scan, SIGNED, ({ from, to, group }) => {
    const currency = currencyOf(scan, from, group(4) ? to - 1 : to);
    const at = group(2)?.[0] ?? to;
    const high = group(3)?.[0] ?? null;
    const sensible = high !== null && (valueAt(scan, high) ?? 0) > (valueAt(scan, at) ?? 0);
    // "$25 - 45s": the second number is no price; give back what is behind the first.
    const end = high !== null && !sensible ? at : to;
    return putPrice(scan, found, 'price-sign-first', { from, to: end, at, highAt: sensible ? high : null, currency });
  });
  findAll(scan, BEHIND, ({ from, to, group }) => {
    const link = group(2)?.[0];
    // "2x10 - 80 bucks": the weight of the last of the goods.
    if (link !== undefined && scan.plain[from - 1] === 'x') return false;
    if (link !== undefined && !isRange(scan, from, link)) return false;
    const currency = currencyOf(scan, group(4)?.[0] ?? to, to);
    return putPrice(scan, found, 'price-sign-behind', {
      from,
      to,
      at: group(1)?.[0] ?? from,
      highAt: group(3)?.[0] ?? null,
      currency,
    });
  });
  findAll(scan, NO_CENTS, ({ from, to }) => putPrice(scan, found, 'price-no-cents', { from, to, at: from }));
}

/** Whether the token between two amounts makes a range of them: "40-50 €", "40 bis 50 €", "zwischen 40 und 50 €". */
const isRange = (scan: Scan, from: number, link: number): boolean =>
  scan.plain[link] === '-' ||
  scan.tokens[link]?.term?.sense === 'to' ||
  (scan.plain[link] === 'c' && scan.tokens[from - 1]?.term?.sense === 'between');
