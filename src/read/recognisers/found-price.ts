/** Puts a price that a recogniser found on the list of them, and uses its tokens up. */
import type { Price } from '../mention.ts';
import { claim, type Scan, valueAt } from '../text/scan.ts';

/** "1.2k" is twelve hundred. */
const thousands = (scan: Scan, at: number): number =>
  scan.tokens[at + 1]?.text === 'k' && scan.tokens[at + 1]?.glued ? 1000 : 1;

interface Place {
  readonly from: number;
  readonly to: number;
  /** Token of the amount. */
  readonly at: number;
  /** Token of the high end of a range. */
  readonly highAt?: number | null;
  readonly currency?: string | null;
  /** What the number is multiplied by: 0.01 for cents. */
  readonly factor?: number;
  readonly sure?: boolean;
}

export function putPrice(scan: Scan, found: Price[], rule: string, place: Place): 'claimed' {
  const { from, to, at, highAt = null, currency = null, factor = 1, sure = true } = place;
  const amount = (valueAt(scan, at) ?? 0) * thousands(scan, at) * factor;
  const high = highAt === null ? null : (valueAt(scan, highAt) ?? 0);
  return putAmount(scan, found, { rule, from, to, amount, currency, sure, ...(high !== null && high > amount ? { high } : {}) });
}

/** A number without a sign of money. */
export const putNumber = (scan: Scan, found: Price[], rule: string, at: number, sure = true): 'claimed' =>
  putPrice(scan, found, rule, { from: at, to: at, at, sure });

/** An amount that is worked out from several words. */
export function putAmount(scan: Scan, found: Price[], price: Omit<Price, 'role'>): 'claimed' {
  found.push({ ...price, role: 'asking' });
  claim(scan, price.from, price.to, 'M');
  return 'claimed';
}
