/** A count that comes later: "45s. Four of them.", "25 lb plates $20 each, 6 available": it belongs to the last weight that has none. */
import type { Quantity } from '../mention.ts';
import { findAll, type Scan, valueAt } from '../text/scan.ts';
import { isCount } from './notation.ts';

const LATER = /(?:j|z|a)?([nd])k?&/dg;
/** How far back the weight may stand, in tokens. */
const REACH = 30;

export function readLaterCounts(scan: Scan, quantities: readonly Quantity[]): Quantity[] {
  const counted = [...quantities];
  findAll(scan, LATER, ({ from, group }) => {
    const count = valueAt(scan, group(1)?.[0] ?? from);
    const at = counted.findLastIndex((quantity) => quantity.to < from && from - quantity.to < REACH);
    const last = counted[at];
    if (!last || !isCount(count) || (last.count !== null && !last.countImplied)) return false;
    counted[at] = { ...last, count, countImplied: false, rule: `${last.rule}-counted-later` };
    return true;
  });
  return counted;
}
