/** Lists of bare weights: repetition counts ("45 45 25 25", "20-20-25", "7-7"); different ones leave the count open ("45, 35, 25 and 10 lb plates"). */
import type { Quantity } from '../mention.ts';
import { findAll, type Scan, unitBetween, valueAt } from '../text/scan.ts';
import { membersOf } from './each-of.ts';
import { isSize, MODIFIERS, UNIT } from './notation.ts';
import { OWN } from './noun-counts.ts';

/** "50s, 2 of em": what is counted is no weight. */
const MEMBER = `(?:n${UNIT}?|v)(?!&)`;
const REPEATED = new RegExp(`${MEMBER}(?:(?:,|-|/|c|,c)?${MEMBER}){1,19}(?![fJ$])${MODIFIERS}(k?)`, 'dg');

const TWICE = /(?<=^|[l.:,(]|[.:,]c)n-n(?=[l.,;(]|c|$)/dg;

export function readLists(scan: Scan): Quantity[] {
  const found: Quantity[] = [];
  findAll(scan, REPEATED, ({ from, to, group }) => {
    const noun = group(1)?.[0] ?? null;
    // "10s, 25s, 1 bench": the last number counts what comes next.
    const kind = noun === null ? null : scan.tokens[noun]?.term?.kind;
    if (kind && OWN.includes(kind) && /(?:^|[^n])n[mC]{0,4}$/.test(scan.plain.slice(Math.max(0, from), noun ?? from)))
      return false;
    const members = membersOf(scan, from, noun === null ? to : noun - 1);
    const unit = unitBetween(scan, from, Math.min(to + 1, scan.tokens.length - 1));
    const distinct = new Set(members.map((member) => member.value));
    const repeats = distinct.size < members.length;
    const sure = noun !== null || unit !== null || members.some(({ at, end }) => scan.plain[at] === 'v' || end > at);
    // "5 lb, 22, $4 each": pieces before the price of each.
    const counted = members.length === 2 && !repeats && (members[0]?.end ?? from) > from && members[1]?.at === to;
    if (counted && /^[,-]?\$?n\$?e/.test(scan.plain.slice(to + 1, to + 6))) return false;
    if (members.length < 2 || members.some((member) => !isSize(member.value, member.unit ?? unit))) return false;
    if (!sure && !(repeats && members.length >= 4)) return false;
    // "5-50 lb dumbbells" is a range; "20-20-25" is a list.
    if (members.length === 2 && !repeats && scan.plain[(members[0]?.end ?? 0) + 1] === '-') return false;
    for (const value of distinct) {
      const same = members.filter((member) => member.value === value);
      const [first] = same;
      if (!first) continue;
      const plural = scan.plain[first.at] === 'v' || scan.plain[first.end] === 's';
      const count = repeats && !plural ? same.length : null;
      found.push({
        rule: repeats ? 'repeated-weights' : 'list-of-weights',
        from: first.at,
        to: first.end,
        count,
        weight: value,
        unit: first.unit ?? unit,
        noun,
        list: from,
      });
    }
    return true;
  });
  // "7-7" beside lists of the same hand: two of one size.
  if (found.length > 0)
    findAll(scan, TWICE, ({ from, to }) => {
      const weight = valueAt(scan, from);
      if (weight === null || weight !== valueAt(scan, to) || !isSize(weight, 'lb')) return false;
      found.push({ rule: 'repeated-weights', from, to, count: 2, weight, unit: null, noun: null });
      return true;
    });
  return found;
}
