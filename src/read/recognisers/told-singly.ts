/** One count for a list of sizes, each a piece or a pair: "Two left: 35 lb and 53 lb", "3 kettlebells: 16, 20 and 24 kg", "two pairs: 45s and 25s". */
import type { Quantity } from '../mention.ts';
import { says } from '../text/says.ts';
import { findAll, type Scan, unitBetween, valueAt } from '../text/scan.ts';
import { isSize } from './notation.ts';

const HEADED = /([nd])(p?)[mkC]{0,3}&?k?[mC]?[:-]/dg;
/** "Pair prices: 15s $25, 25s $40". */
const PAIR_PRICES = /p(z)[-:]/dg;
/** "6 kettlebells: 8, 12, 16, 20, 24 and 28 kg", "2 pairs of dumbbells: 20 lb and 30 lb". */
const LISTED = /([nd])([pJ]?)o?[mC]{0,3}(k)[mC]?[:,(]((?:d?nu?s?,?[,c/]){1,11}d?nu?s?)(?![x-]?[nd]|[fJ]|(?<![uhs])[$])/dg;
const LIST = /^[,.;c&zam()-]*$/;

/** Gives each weight of the list its count, where there are as many as the count says. */
export function readToldSingly(scan: Scan, quantities: readonly Quantity[]): Quantity[] {
  let told = [...quantities];
  findAll(scan, HEADED, ({ from, to, group }) => {
    const count = valueAt(scan, from);
    const listed = told.filter(({ from: at }) => at > to && scan.clause[at] === scan.clause[from]);
    const open = listed.filter(({ count: pieces, weight }) => pieces === null && weight !== null);
    if (count === null || count < 2 || open.length !== count || open.length !== listed.length) return false;
    const last = open.at(-1);
    const between = scan.letters.slice(to + 1, last?.from).filter((letter) => letter !== '_');
    if (!LIST.test(between.join(''))) return false;
    const pieces = group(2) ? 2 : 1;
    told = told.map((one) => (open.includes(one) ? { ...one, count: pieces, rule: `${one.rule}-told-singly` } : one));
    return true;
  });
  findAll(scan, PAIR_PRICES, ({ from, to, group }) => {
    if (!says(scan, group(1)?.[0] ?? from, 'price')) return false;
    const open = told.filter(
      (one) => one.from > to && scan.clause[one.from] === scan.clause[from] && one.count === null && one.weight !== null,
    );
    told = told.map((one) => (open.includes(one) ? { ...one, count: 2, rule: `${one.rule}-told-singly` } : one));
    return false;
  });
  return told;
}

/** Such a list as a whole, where as many sizes are named as the count says. */
export function readHeadedLists(scan: Scan): Quantity[] {
  const found: Quantity[] = [];
  findAll(scan, LISTED, ({ from, to, group }) => {
    const [start, end] = group(4) ?? [to, to];
    const members: number[] = [];
    for (let i = start; i <= end; i += 1) {
      if (scan.plain[i] === 'n') members.push(i);
      // "Two trap bars, one 45 lb, one 60 lb".
      if (scan.plain[i] === 'd' && valueAt(scan, i) !== 1) return false;
    }
    // "2 sets of dumbbells" are pairs; other words of time and measure are none.
    const sets = scan.plain[group(2)?.[0] ?? from] === 'J';
    const kind = scan.tokens[group(3)?.[0] ?? from]?.term?.kind ?? 'other';
    if (
      sets &&
      (!/^sets of/.test(scan.tokens[group(2)?.[0] ?? from]?.text ?? '') || !['dumbbell', 'plate', 'bumper'].includes(kind))
    )
      return false;
    const unit = unitBetween(scan, start, end);
    const weights = members.map((at) => valueAt(scan, at) ?? 0);
    if (valueAt(scan, from) !== members.length || new Set(weights).size < members.length) return false;
    if (!weights.every((weight) => isSize(weight, unit))) return false;
    members.forEach((at, index) => {
      const last = (members[index + 1] ?? end + 1) - 1;
      found.push({
        rule: 'headed-list',
        from: at,
        to: scan.plain[at + 1] === 'u' ? Math.min(last, at + 1) : at,
        count: group(2) ? 2 : 1,
        weight: weights[index] ?? 0,
        unit,
        noun: group(3)?.[0] ?? null,
        list: from,
      });
    });
    return true;
  });
  return found;
}
