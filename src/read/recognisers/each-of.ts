/**
 * One count for a list of weights: "2 each of 45, 35 and 25", "2 of each: 45, 25", "pairs of 45/35/25", "45, 35, 25, 10 (2 each)",
 * "45s, 35s, 25s, a pair of each", "set of bumpers 10/15/20 kg" (two of each, implied).
 */
import type { Quantity } from '../mention.ts';
import { findAll, type Match, type Scan, unitBetween, valueAt } from '../text/scan.ts';
import { COUNT, findLetter, isCount, isPlateSize, isSize, MODIFIERS, UNIT, weightAt } from './notation.ts';

const MEMBER = `(?:n${UNIT}?|v)(?![xnoejp]|-?[xn])`;
const BETWEEN = '(?:,?c|,|/)';
/** "20s 30s 40s and 50s": with the plural s nothing need stand between. */
const PLURALS = `(?:ns|v)(?:(?:${BETWEEN})?(?:ns|v)(?![xoejp]|-?[xn](?!s))){1,14}`;
const LIST = `(?:(?:n${UNIT}?|v)(?:${BETWEEN}${MEMBER}){1,14}|${PLURALS}|n(?:l[•-]?n(?![uhqsxf])){2,14})`;
const PAIRS_FIRST = new RegExp(
  `(?:(${COUNT})-?x?(?:e?E|eo?|p(?:E|o|e)|o?E|k(?:E|eo))|(p)(?:E|e?o|e)?|\\((${COUNT})(?:e|E)?\\)(?:E|e)?|(${COUNT})oe|e(${COUNT})[jpx]?)[-:,(]?${MODIFIERS}(k?)[-:]?(${LIST})`,
  'dg',
);
const PAIRS_BEHIND = new RegExp(
  `(${LIST})[-,]?${MODIFIERS}(k?)[-:,]{0,2}L?\\(?(?:(${COUNT})x?(?:e?E|e|oe)|a?(${COUNT})?(p)(?:E|eo?|oe|e)?|x(${COUNT})(?:e|E)|e(${COUNT})(?:[jp](?!n)|(?![$¤uhqsfnxkmCjp])))\\)?`,
  'dg',
);
/** "10, 15, 25 and 45 pairs", "45 & 35 pairs", "25 and 45 lb pairs". */
const PAIRS_LIST = new RegExp(`((?:n${UNIT}?|v)(?:${BETWEEN}(?:n${UNIT}?|v)){1,14})${MODIFIERS}(p)(?![oE])`, 'dg');
/** "45s and 35s pairs". */
const PLURAL_PAIRS = new RegExp(`((?:ns|v)(?:${BETWEEN}(?:ns|v)){1,14})${MODIFIERS}(p)(?![oE])`, 'dg');
/** "10 15 25 35 45 pairs", "pairs of 45-35-25": sizes in order, three at least, with nothing or a dash between. */
const SPACED = '(n(?:-?[uh])?(?:-?n(?:-?[uh])?){2,14})';
const SPACED_BEHIND = new RegExp(
  `${SPACED}[-,]?${MODIFIERS}(k?)[-:,]?\\(?(?:a?(${COUNT})?(p)(?:E|eo?|oe)?|x?(${COUNT})(?:e?E|e|oe)|e(${COUNT})(?:j|(?=[,.;l)]|$)))\\)?`,
  'dg',
);
const SPACED_FIRST = new RegExp(
  `(?:(${COUNT})(?:x?e?E|eo?|p[oEe]?|x?oE)|(p)[oEe]?)[-:,]?${MODIFIERS}(k?)[-:]?${SPACED}${MODIFIERS}(k?)(?![xsqfnp$'"/-])`,
  'dg',
);
const SET_FIRST = new RegExp(`t[o:]{0,2}${MODIFIERS}(k)[-:(]{0,2}(${LIST})`, 'dg');

/** Members of a list between two tokens, each with its unit; a unit at the end holds for those before it. */
export function membersOf(
  scan: Scan,
  from: number,
  to: number,
): { at: number; end: number; value: number; unit: 'lb' | 'kg' | null }[] {
  const members: { at: number; end: number; value: number; unit: 'lb' | 'kg' | null }[] = [];
  for (let i = from; i <= to; i += 1) {
    if (!'nvi'.includes(scan.plain[i] ?? '_')) continue;
    let end = i;
    while (end < to && !'nvi,/cl-•'.includes(scan.plain[end + 1] ?? 'n')) end += 1;
    if (scan.plain[end + 1] === '-' && 'uhq'.includes(scan.plain[end + 2] ?? '_')) end += 2;
    const weight = weightAt(scan, i, end);
    if (weight) members.push({ at: i, end: Math.min(end, to), ...weight });
  }
  const last = unitBetween(scan, from, to);
  return members.map((member) => ({ ...member, unit: member.unit ?? last }));
}

/** Sizes that only rise or only fall. */
const isInOrder = (members: readonly { readonly value: number }[]): boolean => {
  const steps = members.slice(1).map(({ value }, index) => Math.sign(value - (members[index]?.value ?? 0)));
  return members.length > 2 && steps[0] !== 0 && steps.every((step) => step === steps[0]);
};

export function readEachOf(scan: Scan): Quantity[] {
  const found: Quantity[] = [];
  const take = (
    rule: string,
    list: readonly [number, number] | null,
    count: number | null,
    noun: number | null,
    implied = false,
  ) => {
    if (!list || !isCount(count)) return false;
    const members = membersOf(scan, list[0], list[1]);
    if (members.length < 2 || members.some((member) => !isSize(member.value, member.unit))) return false;
    const unit = unitBetween(scan, list[0], Math.min(list[1] + 2, scan.tokens.length - 1));
    for (const member of members) {
      const place = { rule, from: member.at, to: member.end };
      found.push({
        ...place,
        count,
        countImplied: implied,
        weight: member.value,
        unit: member.unit ?? unit,
        noun,
        list: list[0],
      });
    }
    return true;
  };
  const numberOf = (...groups: (readonly [number, number] | null)[]): number | null => {
    const at = groups.find((group) => group !== null);
    return at ? valueAt(scan, at[0]) : null;
  };
  const nounOf = ({ from, to }: Match): number | null => findLetter(scan, from, to, 'k');
  findAll(scan, PAIRS_FIRST, (match) => {
    const count = numberOf(match.group(1), match.group(3), match.group(4), match.group(5));
    const pairs = match.group(2) !== null || findLetter(scan, match.from, (match.group(7)?.[0] ?? match.to) - 1, 'p') !== null;
    return take('each-of-list', match.group(7), count === null ? 2 : pairs ? count * 2 : count, nounOf(match));
  });
  findAll(scan, PAIRS_BEHIND, (match) => {
    const pairs = match.group(5) !== null;
    const count = numberOf(match.group(3), match.group(4), match.group(6), match.group(7)) ?? 1;
    return take('list-each', match.group(1), pairs ? count * 2 : count, nounOf(match));
  });
  findAll(scan, PAIRS_LIST, (match) => {
    const list = match.group(1);
    const plural = scan.tokens[match.group(2)?.[0] ?? match.to]?.term?.plural === true;
    const members = list === null ? [] : membersOf(scan, list[0], list[1]);
    // "25 lb, 10 pairs" counts; "25 and 45 pairs", "25 and 45 lb pairs" are of two sizes.
    const form = list === null ? '' : scan.plain.slice(list[0], list[1] + 1);
    const weighed = /^n[uh]?cn[uh]$/.test(form) && !'ndxj@'.includes(scan.plain[match.from - 1] ?? 'l');
    const two = members.length === 2 && form !== 'ncn' && !weighed;
    const sizes = !two && (weighed || members.every(({ value }) => isPlateSize(value)) || isInOrder(members));
    return plural && sizes && take('list-pairs', list, 2, null);
  });
  findAll(scan, PLURAL_PAIRS, (match) => {
    const plural = scan.tokens[match.group(2)?.[0] ?? match.to]?.term?.plural === true;
    return plural && scan.plain[match.from - 1] !== 'p' && take('list-pairs', match.group(1), 2, null);
  });
  const inOrder = (list: readonly [number, number] | null): boolean =>
    list !== null && isInOrder(membersOf(scan, list[0], list[1]));
  findAll(scan, SPACED_BEHIND, (match) => {
    const pieces = numberOf(match.group(3), match.group(5), match.group(6)) ?? 1;
    return inOrder(match.group(1)) && take('list-each', match.group(1), match.group(4) ? pieces * 2 : pieces, nounOf(match));
  });
  findAll(scan, SPACED_FIRST, (match) => {
    const list = match.group(4);
    const pieces = numberOf(match.group(1));
    const pairs = findLetter(scan, match.from, (list?.[0] ?? match.to) - 1, 'p') !== null;
    return inOrder(list) && take('each-of-list', list, (pieces ?? 1) * (pairs ? 2 : 1), nounOf(match));
  });
  findAll(scan, SET_FIRST, (match) => take('set-list', match.group(2), 2, match.group(1)?.[0] ?? null, true));
  return found;
}
