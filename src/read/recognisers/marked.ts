/**
 * Weights read off the goods: "eight marked 45", "11 of the big plates that say 45", "four little ones that say 2 1/2", "smaller ones that say 10 and 5" (how many is not told),
 * "round plates with 45 on them".
 */
import type { Quantity } from '../mention.ts';
import { says } from '../text/says.ts';
import { findAll, type Scan, valueAt } from '../text/scan.ts';
import { findLetter, isCount, isPlateSize } from './notation.ts';

const COUNTED = /([nd])o?[mCz]{0,3}(k?)(?:,?e)?o(n)(?![uhqsxf])/dg;
const UNCOUNTED = /([kz])o(n(?:(?:,c?|c|\/)n){0,5})(?![uhqsxf])/dg;
const ON_THEM = /(k)c(n(?:(?:,c?|c|\/)n){0,5})(?=zz)/dg;
/** "Four of the big ones, they say 45 on them", "two of them, stamped 25". */
const SAYING = /([nd])o?[mC]{0,3}[zk],?[zc]?[zyo]U?(n)(?![uhqsxfJ$])/dg;
/** "Two say 35 and three that say 10", "five of the big ones have 45 on them". */
const TELLING = /([nd])(?:(?:&|o?[amCz]{0,3})%(n)(?=[zo])|z?[Uy](n)(?![uhqsxfJ$]))/dg;
/** Words that stand for goods named before. */
const STAND_INS = /^(?:ones|them|some|others)$/;

const isMark = (scan: Scan, at: number): boolean => scan.tokens[at]?.term?.sense === 'marked';

export function readMarked(scan: Scan): Quantity[] {
  const found: Quantity[] = [];
  findAll(scan, COUNTED, ({ from, to, group }) => {
    const count = valueAt(scan, from);
    const weight = valueAt(scan, to);
    if (!isMark(scan, to - 1) || !isCount(count) || weight === null || !isPlateSize(weight)) return false;
    const noun = group(2)?.[0] ?? null;
    found.push({ rule: 'count-marked-weight', from, to, count, weight, unit: null, noun });
    return true;
  });
  if (/[zk],?[zc]?[zyo]U?n/.test(scan.plain))
    findAll(scan, SAYING, ({ from, to }) => {
      const count = valueAt(scan, from);
      const weight = valueAt(scan, to);
      const said = [to - 1, to - 2].some((at) => says(scan, at, 'is-marked'));
      if (!said || !isCount(count) || weight === null || !isPlateSize(weight)) return false;
      found.push({ rule: 'count-marked-weight', from, to, count, weight, unit: null, noun: findLetter(scan, from, to, 'k') });
      return true;
    });
  if (/[nd]z?[Uy]n|%n[zo]/.test(scan.plain))
    findAll(scan, TELLING, ({ from, to, group }) => {
      const count = valueAt(scan, from);
      const weight = valueAt(scan, to);
      const said = group(2)
        ? scan.tokens[to + 1]?.text.startsWith('on ') || scan.tokens[to + 1]?.text === 'on' || isMark(scan, to + 1)
        : scan.tokens[to - 1]?.term?.sense === 'marking';
      if (!said || !isCount(count) || weight === null || !isPlateSize(weight)) return false;
      found.push({ rule: 'count-marked-weight', from, to, count, weight, unit: null, noun: null });
      return true;
    });
  const uncounted = (noun: number | null, list: readonly [number, number] | null): boolean => {
    const [from, to] = list ?? [0, -1];
    const members: number[] = [];
    for (let i = from; i <= to; i += 1) if (scan.plain[i] === 'n') members.push(i);
    if (members.length === 0 || members.some((at) => !isPlateSize(valueAt(scan, at) ?? 0))) return false;
    for (const at of members) {
      const weight = valueAt(scan, at);
      found.push({ rule: 'marked-weight', from: at, to: at, count: null, weight, unit: null, noun, list: from });
    }
    return true;
  };
  findAll(scan, UNCOUNTED, ({ from, group }) => {
    const noun = scan.plain[from] === 'k';
    if (!isMark(scan, from + 1) || !(noun || STAND_INS.test(scan.tokens[from]?.text ?? ''))) return false;
    return uncounted(noun ? from : null, group(2));
  });
  findAll(scan, ON_THEM, ({ from, to, group }) => {
    const on = scan.tokens[to + 1]?.text === 'on' && scan.tokens[from + 1]?.text === 'with';
    return on && scan.tokens[from]?.term?.plural === true && uncounted(from, group(2));
  });
  return found;
}
