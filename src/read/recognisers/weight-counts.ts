/** The weight, then its count with nothing between, as a list: "20 lb two, 10 lb four, 2-1/2 lb two". Two lines of it at least, so that no count of the next goods is taken. */
import type { Quantity } from '../mention.ts';
import { findAll, type Scan, valueAt } from '../text/scan.ts';
import { isCount, isSize, weightAt } from './notation.ts';

const LIST = /(?:n[-.]?[uh][nd](?:,?c|[,/])?){2,20}(?=[.;l)]|$)/dg;

export function readWeightCounts(scan: Scan): Quantity[] {
  const found: Quantity[] = [];
  findAll(scan, LIST, ({ from, to }) => {
    const lines: Quantity[] = [];
    for (let i = from; i <= to; i += 1) {
      const unit = scan.plain.slice(i, to + 1).search(/[uh]/);
      const end = i + unit;
      const weight = weightAt(scan, i, end);
      const count = valueAt(scan, end + 1);
      if (unit < 1 || !weight || !isCount(count) || count > 24 || !isSize(weight.value, weight.unit)) return false;
      lines.push({ rule: 'weight-count-list', from: i, to: end + 1, count, weight: weight.value, unit: weight.unit, noun: null });
      i = end + 1;
      while (i < to && ',c/'.includes(scan.plain[i + 1] ?? '_')) i += 1;
    }
    found.push(...lines);
    return true;
  });
  return found;
}
