/** A count in brackets: "(4) 45s", "(2) 10#", "(2x) 45", "45 lb (2)", "45s (x4)", "20 Pound (2X)", "45 lb plates (pair)", "(qty 2) 45 lb". */
import type { Quantity } from '../mention.ts';
import { findAll, type Scan, valueAt } from '../text/scan.ts';
import { COUNT, findLetter, isCount, isPlateSize, isSize, MODIFIERS, UNIT, WEIGHT, weightAt } from './notation.ts';

const BEFORE = new RegExp(
  `\\([jx]?(${COUNT})[xje]?p?\\)[-:e]?(?:(p|t)o?)?a?${MODIFIERS}(${WEIGHT})(?!x[nd])${MODIFIERS}(k?)`,
  'dg',
);
const AFTER = new RegExp(
  `(n${UNIT}?|v)[-,]?${MODIFIERS}(k?)[-,:.]?\\((?:[jxU:%]{0,2}(${COUNT})(?:x|e|p|j[.]?|t|L|oa?L?|&|k|zz?)?|(?:t?o?)(${COUNT})|a?(p)(?:zz?)?)\\)`,
  'dg',
);

/** "2 reds (25 kg), 2 blues (20 kg)": pieces by the name of their colour, with the weight in brackets. */
const CALLED = /([nd])([zm]{1,2})\((n[-]?[uh])\)/dg;

export function readBrackets(scan: Scan): Quantity[] {
  const found: Quantity[] = [];
  let last = -9;
  findAll(scan, CALLED, ({ from, to, group }) => {
    const count = valueAt(scan, from);
    const [start, end] = group(3) ?? [to, to];
    const weight = weightAt(scan, start, end);
    const opens = from === 0 || scan.clause[from - 1] !== scan.clause[from] || /[,:;(c.l|•-]/.test(scan.plain[from - 1] ?? 'l');
    const words = scan.tokens.slice(from + 1, start - 1);
    const named = words.every(({ text, type, term }) => type === 'word' && (term !== null || text.length > 3));
    if (!weight || !isCount(count) || count > 24 || !opens || !named || !isSize(weight.value, weight.unit)) return false;
    found.push({ rule: 'called-by-colour', from, to, count, weight: weight.value, unit: weight.unit, noun: null });
    return true;
  });
  findAll(scan, AFTER, ({ from, to, group }) => {
    const [start, end] = group(1) ?? [from, from];
    const weight = weightAt(scan, start, end);
    // In "(2) 45 (4) 25" the count stands before; in "45 (2) 25 (4)" each match begins where the last one ended.
    const before = scan.plain.slice(Math.max(0, from - 9), from);
    // A bracket with a length in it counts nothing: "olympic (2 inch): 45 lb (2)".
    if (/\)[-:e]?[mC]{0,2}$/.test(before) && !/\([^()]{0,3}[f"'][^()]?\)[-:e]?[mC]{0,2}$/.test(before) && from - last > 2)
      return false;
    const at = group(3) ?? group(4);
    const number = at ? valueAt(scan, at[0]) : 2;
    const pairs = at !== null && findLetter(scan, at[1], to, 'p') !== null;
    if (!weight || !isCount(number) || !isSize(weight.value, weight.unit)) return false;
    // "6 medium plates (25)": the weight stands in the brackets.
    const bare = end === start && scan.plain[start] === 'n' && group(2) !== null;
    if (bare && at !== null && number >= 15 && isPlateSize(number) && isCount(weight.value) && weight.value <= 20) return false;
    last = to;
    // "Olympic bars 20 kg (5)": the noun stands before its weight.
    const named = scan.plain[from - 1] === 'k' && group(2) === null && end > start ? scan.tokens[from - 1]?.term : undefined;
    const bars = named?.kind?.endsWith('bar') === true && named.plural === true && weight.value >= 5;
    found.push({
      rule: at ? 'count-behind-in-brackets' : 'pair-behind-in-brackets',
      from,
      to,
      count: pairs ? number * 2 : number,
      weight: weight.value,
      unit: weight.unit,
      noun: bars ? from - 1 : (group(2)?.[0] ?? null),
    });
    return true;
  });
  findAll(scan, BEFORE, ({ from, to, group }) => {
    const count = valueAt(scan, group(1)?.[0] ?? from);
    const [start, end] = group(3) ?? [to, to];
    const weight = weightAt(scan, start, end);
    if (!weight || !isCount(count) || !isSize(weight.value, weight.unit)) return false;
    const pairs = group(2) && scan.plain[group(2)?.[0] ?? 0] === 'p';
    const noun = group(4)?.[0] ?? null;
    found.push({
      rule: 'bracketed-count',
      from,
      to,
      count: pairs ? count * 2 : count,
      weight: weight.value,
      unit: weight.unit,
      noun,
    });
    return true;
  });
  return found;
}
