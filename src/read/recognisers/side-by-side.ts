/** Count right before the weight: "2 45 lb", "2 10lbs", "two 15 lb and one 25 lb", "six 45s", "4 olympic 25 lb plates", "two of the 45s", "a 25". */
import type { Quantity } from '../mention.ts';
import { blank, findAll, type Scan, valueAt } from '../text/scan.ts';
import { COUNT, isCount, isPlateSize, isSize, MODIFIERS, UNIT, WEIGHT, weightAt } from './notation.ts';

const COUNTED = new RegExp(
  `(?<![$])(?:\\(?(${COUNT}|i)\\)?)(?:j\\.?o?e?|e(?!o)|o)?${MODIFIERS}(n${UNIT}|v|d${UNIT}|i${UNIT}|[ni](?=${MODIFIERS}k))(?!x)${MODIFIERS}(k?)`,
  'dg',
);
/** The noun between count and weight: "3 plates 45 lb", "2 dumbbells of 25", "4 plates 20kg". */
const NOUN_BETWEEN = new RegExp(
  `(${COUNT})(?:[ej]\\.?)?${MODIFIERS}(k)(?:o|@|x|z?e|z|c)?[-:(,]?[Uy]?(n${UNIT}?|i${UNIT}|v)(?![xf$"'-]|\\([jx]?[nd]|${MODIFIERS}k)`,
  'dg',
);
/** "6 pcs 11 lb, 2 pcs 8.8": the unit is that of the pieces before. */
const PIECES_BARE = /([nd])j(n)(?=[,.;l)c]|$|m{0,3}k)/dg;
/** "2 ea 10, 2 ea 15". */
const EACH_BARE = /([nd])e(n)(?=[,.;l)c(]|$)/dg;
/** A bare pair of numbers behind a quantity that was sure: "eight 25s, two 35s, one 45". */
const CHAIN = /(?<=_\)?(?:,c?|z?c|,a|l[-•]?))([nd])x?(n)(?![\duhfJ$¢xnqs"'/-])/dg;
/** "8 discs of 45, 4 of 25, 2 of 10"; "Six plates of twenty kilos. Two of fifteen." */
const CHAIN_OF = /(?<=_\)?(?:[,.;]c?|c|,a|[,.]?l[-•]?))([nd])o([nid])(?=[,.;lc)]|$)/dg;
/** "a 45, a 25, a 3": the article counts one. */
const CHAIN_ONE = /(?<=_,)a(n)(?=[,.;lc]|$)/dg;
/** "One 25, two 15s": one bare piece before a quantity that was sure. */
const CHAIN_BEFORE = /(?<![$nd])d(n)(?=(?:,c?|c)a?_)/dg;
/** "12 mens, 20 kg", "7 x women's 15 kg": bars by those who lift them. */
const LIFTERS = /([nd])x?(m)m?[,:-]?(n[-]?u)(?!x|m{0,3}k)/dg;
const LONGEST_CHAIN = 12;
const ARTICLE = new RegExp(`a${MODIFIERS}(${WEIGHT})(?![-x]?n|[fJ$¢"']|[-]f)${MODIFIERS}(k?)`, 'dg');
const RUN = /(?:(?<=^|[l:•,.(c-])|(?<=[km][-:]?))[nd]n(?:,?c?[nd]n){1,11}(?![\duhn])/dg;

/** Whether the word between a noun and its weight joins them: "2 dumbbells at 25", "2 Hanteln mit 10 kg". */
function isLink(scan: Scan, at: number): boolean {
  const token = scan.tokens[at];
  const letter = scan.plain[at] ?? 'l';
  if (letter === 'c') return token?.term?.sense === 'with';
  if (letter !== 'z' || scan.plain[at + 1] === 'e') return true;
  return /^(at|weighing|is|are)$/.test(token?.text ?? '') || token?.term?.sense === 'weighs';
}

export function readSideBySide(scan: Scan): Quantity[] {
  const found: Quantity[] = [];
  if (scan.senses.has('lifter'))
    findAll(scan, LIFTERS, ({ from, to, group }) => {
      const count = valueAt(scan, from);
      const [start, end] = group(3) ?? [to, to];
      const weight = weightAt(scan, start, end);
      if (scan.tokens[group(2)?.[0] ?? to]?.term?.sense !== 'lifter' || !weight || !isCount(count)) return false;
      found.push({ rule: 'count-weight', from, to, count, weight: weight.value, unit: weight.unit, noun: null });
      return true;
    });
  findAll(scan, NOUN_BETWEEN, ({ from, to, group }) => {
    const count = valueAt(scan, from);
    const noun = group(2)?.[0] ?? to;
    const [start, end] = group(3) ?? [to, to];
    const weight = weightAt(scan, start, end);
    const kind = scan.tokens[noun]?.term?.kind;
    const weighed = kind === 'plate' || kind === 'bumper' || kind === 'micro' || kind === 'dumbbell' || kind === 'kettlebell';
    if (!weight || !weighed || !isCount(count) || !isSize(weight.value, weight.unit) || !isLink(scan, noun + 1)) return false;
    if (start === end && scan.plain[start] === 'n' && !isPlateSize(weight.value)) return false;
    found.push({ rule: 'count-noun-weight', from, to, count, weight: weight.value, unit: weight.unit, noun });
    return true;
  });
  findAll(scan, COUNTED, ({ from, to, group }) => {
    const at = group(1)?.[0] ?? from;
    const count = valueAt(scan, at);
    const [start, end] = group(2) ?? [to, to];
    const weight = weightAt(scan, start, end);
    if (!weight || !isCount(count) || count > 48 || !isSize(weight.value, weight.unit)) return false;
    const partitive = scan.tokens[at + 1]?.text === 'of the';
    const named = group(3)?.[0] ?? null;
    // "2 2.5s clips" are plates, then clips; "4 10's olympic bar" are plates, then the bar.
    const noun = named === null ? undefined : scan.tokens[named]?.term;
    const apart =
      'sv'.includes(scan.plain[end] ?? '_') &&
      (noun?.kind === 'collars' ||
        (noun?.plural !== true && ['bar', 'curl-bar', 'hex-bar', 'rack', 'bench'].includes(noun?.kind ?? '')));
    found.push({
      partitive,
      rule: 'count-weight',
      from: at,
      to,
      count,
      weight: weight.value,
      unit: weight.unit,
      noun: apart ? null : named,
    });
    if (!apart) return true;
    for (let i = from; i <= end; i += 1) blank(scan, i);
    return 'claimed';
  });
  findAll(scan, PIECES_BARE, ({ from, to, group }) => {
    const count = valueAt(scan, from);
    const weight = valueAt(scan, group(2)?.[0] ?? to);
    const last = found.findLast((one) => one.to < from && one.unit !== null && scan.clause[one.to] === scan.clause[from]);
    if (!last || !isCount(count) || weight === null || !isSize(weight, last.unit)) return false;
    found.push({ rule: 'count-weight', from, to, count, weight, unit: last.unit, noun: null });
    return true;
  });
  findAll(scan, EACH_BARE, ({ from, to }) => {
    const count = valueAt(scan, from);
    const weight = valueAt(scan, to);
    if (!isCount(count) || weight === null || !isPlateSize(weight)) return false;
    found.push({ rule: 'count-each-weight', from, to, count, weight, unit: null, noun: null });
    return true;
  });
  // Each link of a chain makes the next one sure, so the search goes on while it finds some.
  for (let links = 0, before = -1; links < LONGEST_CHAIN && found.length > before; links += 1) {
    before = found.length;
    findAll(scan, CHAIN, ({ from, to, group }) => {
      const count = valueAt(scan, from);
      const weight = valueAt(scan, group(2)?.[0] ?? to);
      // "Two 35 lb kettlebells, one 53": those come in more sizes than plates.
      const held = ['dumbbell', 'kettlebell'].includes(scan.tokens[from - 2]?.term?.kind ?? 'plate') && isSize(weight ?? 0, 'lb');
      if (!isCount(count) || count > 20 || weight === null || !(isPlateSize(weight) || held)) return false;
      found.push({ rule: 'count-weight-in-list', from, to, count, weight, unit: null, noun: null });
      return true;
    });
    findAll(scan, CHAIN_OF, ({ from, to }) => {
      const count = valueAt(scan, from);
      const weight = valueAt(scan, to);
      const of = scan.tokens[from + 1]?.text === 'of' || scan.tokens[from + 1]?.term?.sense === 'marked';
      if (!of || !isCount(count) || count > 20 || weight === null || !isPlateSize(weight)) return false;
      found.push({ rule: 'count-of-weight-in-list', from, to, count, weight, unit: null, noun: null });
      return true;
    });
  }
  // "2 45 2 25 4 10": bare pairs of numbers, count then weight.
  findAll(scan, RUN, ({ from, to }) => {
    const numbers: number[] = [];
    for (let i = from; i <= to; i += 1) if ('nd'.includes(scan.plain[i] ?? '_')) numbers.push(i);
    if (numbers.length % 2 !== 0) return false;
    const pairs: Quantity[] = [];
    for (let i = 0; i < numbers.length; i += 2) {
      const [first = 0, second = 0] = numbers.slice(i, i + 2);
      const count = valueAt(scan, first);
      const weight = valueAt(scan, second);
      if (!isCount(count) || count > 20 || weight === null || !isPlateSize(weight)) return false;
      pairs.push({ rule: 'run-of-counts', from: first, to: second, count, weight, unit: null, noun: null, list: from });
    }
    found.push(...pairs);
    return true;
  });
  findAll(scan, ARTICLE, ({ from, to, group }) => {
    const [start, end] = group(1) ?? [to, to];
    const weight = weightAt(scan, start, end);
    if (!weight || !isSize(weight.value, weight.unit)) return false;
    const noun = group(2)?.[0] ?? null;
    const bare = start === end;
    const token = scan.tokens[from];
    const single = token?.term?.sense === 'one';
    const one = token?.text === 'a' || token?.text === 'an' || single;
    // "a 45, a 25, a 3": any size goes on from the last.
    const last = found[found.length - 1];
    const listed = last?.rule === 'a-weight' && from - last.to <= 2;
    if (!one || (bare && noun === null && !isPlateSize(weight.value) && !listed)) return false;
    if ((scan.plain[end] === 's' && !single) || scan.plain[start] === 'v' || (noun !== null && scan.tokens[noun]?.term?.plural))
      return false;
    if (scan.plain[to + 1] === 't' || scan.plain[to + 1] === 'o') return false;
    found.push({ rule: 'a-weight', from, to, count: 1, weight: weight.value, unit: weight.unit, noun });
    return true;
  });
  const starts = new Set(found.map(({ from }) => from));
  findAll(scan, CHAIN_BEFORE, ({ from, to }) => {
    const weight = valueAt(scan, to);
    if (valueAt(scan, from) !== 1 || weight === null || !isPlateSize(weight) || ![2, 3, 4].some((next) => starts.has(to + next)))
      return false;
    found.push({ rule: 'a-weight-in-list', from, to, count: 1, weight, unit: null, noun: null });
    return true;
  });
  findAll(scan, CHAIN_ONE, ({ from, to }) => {
    const weight = valueAt(scan, to);
    if (weight === null || !isSize(weight, null)) return false;
    found.push({ rule: 'a-weight-in-list', from, to, count: 1, weight, unit: null, noun: null });
    return true;
  });
  return found;
}
