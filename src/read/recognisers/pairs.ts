/** "pair of 45s", "2 pairs of 45#", "pair 25lb plates", "45 lb plates, pair", "set of 45s" (two, implied), "set of 4 45s", "set of four 45 lb". */
import type { Quantity } from '../mention.ts';
import { blank, findAll, type Scan, valueAt } from '../text/scan.ts';
import {
  COUNT,
  findLetter,
  isCount,
  isPlateSize,
  isSize,
  isStock,
  MODIFIERS,
  SURE_WEIGHT,
  WEIGHT,
  weightAt,
} from './notation.ts';
import { OWN } from './noun-counts.ts';

const OF = new RegExp(
  `(?:\\(?(${COUNT})\\)?x?${MODIFIERS})?([pt])[-:]?(?:o|E|e|&)?a?(?:\\(?(${COUNT})\\)?x?[-,]?)?${MODIFIERS}(${WEIGHT})(?!x[nd]|-[nd](?:[,.;l]|$))${MODIFIERS}(k?)`,
  'dg',
);
/** "pair of hex dumbbells 40s". */
const NOUN_FIRST = new RegExp(`(?:(${COUNT}))?(p)o?a?${MODIFIERS}(k)[-:,(]?(${SURE_WEIGHT})(?!${MODIFIERS}k|x|-?n)`, 'dg');
const BEHIND = new RegExp(
  `(${SURE_WEIGHT}|n)[-,]?${MODIFIERS}(k?)[-:,]?z?(?:a?(${COUNT})|a)?(p)(?!o|E)(?:\\(?x(${COUNT})\\)?(?!u))?`,
  'dg',
);

/** "45 lb pair, 35 lb pair 25 lb pair": each with its word behind it. */
const RUN = /(?<!p[oE]?a?)(?:n-?[uhs]s?p[,/c]?){2,14}(?![onEx])/dg;

/** "Pair 45 pair 35, 2 pair 10": each with its word before it, to the end. */
const RUN_FIRST = /(?<=^|[l.,;c:(•-])(?:[nd]?po?n-?[uhs]?s?[,/c]?){2,14}(?=[.;l)]|$|M)/dg;

/** "2 sets of 45 lb plates": two sets of two. */
const SETS = /([nd_])[J_](n-?[uh]s?)m{0,2}(k)/dg;

export function readPairs(scan: Scan): Quantity[] {
  const found: Quantity[] = [];
  if (scan.plain.includes('J'))
    findAll(scan, SETS, ({ from, to, group }) => {
      const sets = valueAt(scan, from);
      // Used up among the words of training, "3 sets of 10".
      const [start, end] = group(2) ?? [to, to];
      const weight = weightAt(scan, start, end);
      if (!isCount(sets) || !weight || !isSize(weight.value, weight.unit) || !scan.tokens[to]?.term?.plural) return false;
      if (!scan.tokens[from + 1]?.text.endsWith(' of')) return false;
      found.push({
        rule: 'set-of',
        from,
        to,
        count: 2 * sets,
        countImplied: true,
        weight: weight.value,
        unit: weight.unit,
        noun: to,
      });
      return true;
    });
  findAll(scan, RUN, ({ from, to }) => {
    const run: Quantity[] = [];
    for (let at = from; at <= to; at += 1) {
      if (scan.plain[at] !== 'n') continue;
      const end = at + scan.plain.slice(at, to + 1).indexOf('p');
      const weight = weightAt(scan, at, end - 1);
      if (!weight || !isSize(weight.value, weight.unit)) return false;
      run.push({ rule: 'weight-pair', from: at, to: end, count: 2, weight: weight.value, unit: weight.unit, noun: null });
    }
    found.push(...run);
    return true;
  });
  if (/p.?n.{0,4}p/.test(scan.plain))
    findAll(scan, RUN_FIRST, ({ from, to }) => {
      const run: Quantity[] = [];
      for (let at = from; at <= to; at += 1) {
        if (scan.plain[at] !== 'p') continue;
        const told =
          at > from &&
          'nd'.includes(scan.plain[at - 1] ?? '_') &&
          (at - 1 === from || scan.plain[at - 2] !== 'o') &&
          !'p'.includes(scan.plain[at - 2] ?? '_');
        const start = at + 1 + Number(scan.plain[at + 1] === 'o');
        const length = /^n-?[uhs]?s?/.exec(scan.plain.slice(start, to + 1))?.[0].length ?? 0;
        const weight = weightAt(scan, start, start + length - 1);
        const times = told ? valueAt(scan, at - 1) : 1;
        if (!weight || !isCount(times) || !isSize(weight.value, weight.unit)) return false;
        run.push({
          rule: 'pair-of',
          from: told ? at - 1 : at,
          to: start + length - 1,
          count: 2 * times,
          weight: weight.value,
          unit: weight.unit,
          noun: null,
        });
      }
      found.push(...run);
      return true;
    });
  findAll(scan, OF, ({ from, to, group }) => {
    const word = group(2)?.[0] ?? from;
    const isPair = scan.plain[word] === 'p';
    const times = group(1) ? valueAt(scan, group(1)?.[0] ?? from) : 1;
    const within = group(3) ? valueAt(scan, group(3)?.[0] ?? from) : null;
    const [start, end] = group(4) ?? [to, to];
    const weight = weightAt(scan, start, end);
    if (!weight || times === null || !isSize(weight.value, weight.unit)) return false;
    const noun = group(5)?.[0] ?? null;
    // "Pair 25 50, pair 10 20": a price behind, and no count before.
    const size = group(3)?.[0];
    if (
      isPair &&
      isStock(2 * times) &&
      size !== undefined &&
      within !== null &&
      within >= 10 &&
      isPlateSize(within) &&
      end === start &&
      noun === null
    ) {
      found.push({ rule: 'pair-of', from, to: size, count: 2 * times, weight: within, unit: null, noun: null });
      for (let i = from; i <= size; i += 1) blank(scan, i);
      return 'claimed';
    }
    // "set of 4 fractional plates (1 lb x2, 1/2 lb x2)" are four pieces.
    if (
      !isPair &&
      within === null &&
      end === start &&
      noun !== null &&
      scan.tokens[noun]?.term?.plural &&
      !isPlateSize(weight.value)
    )
      return false;
    const marked = end > start || scan.plain[start] === 'v' || noun !== null;
    // "Each set: 45 lb bar, 2x45": a heading.
    const own = noun !== null && OWN.includes(scan.tokens[noun]?.term?.kind ?? 'plate');
    if (!isPair && scan.plain[word + 1] === ':' && (own || scan.plain[word - 1] === 'e')) return false;
    if (!marked && !isPair && within === null) return false;
    const ended = isPlateSize(weight.value) && weight.value >= 5 && /[,.;lc)$]/.test(scan.plain[end + 1] ?? 'l');
    const followed = /[uhxfnJ]/.test(scan.plain[end + 1] ?? '');
    if (!marked && ((scan.plain[word + 1] !== 'o' && !ended) || followed)) return false;
    if (!isPair && within === null && weight.value > 60 && weight.unit !== 'kg') return false;
    const count = isPair ? times * (within ?? 2) : within === null ? times * 2 : times * within;
    if (isPair ? !isStock(count) : !isCount(count)) return false;
    const countImplied = !isPair && within === null;
    found.push({
      rule: isPair ? 'pair-of' : 'set-of',
      from,
      to,
      count,
      countImplied,
      weight: weight.value,
      unit: weight.unit,
      noun,
    });
    return true;
  });
  findAll(scan, NOUN_FIRST, ({ from, to, group }) => {
    const times = group(1) ? valueAt(scan, from) : 1;
    const [start, end] = group(4) ?? [to, to];
    const weight = weightAt(scan, start, end);
    if (!weight || !isCount(times) || !isSize(weight.value, weight.unit)) return false;
    const kind = scan.tokens[group(3)?.[0] ?? to]?.term?.kind;
    if (kind !== 'dumbbell' && kind !== 'plate' && kind !== 'bumper' && kind !== 'kettlebell') return false;
    found.push({
      rule: 'pair-of-noun',
      from,
      to,
      count: times * 2,
      weight: weight.value,
      unit: weight.unit,
      noun: group(3)?.[0] ?? null,
    });
    return true;
  });
  findAll(scan, BEHIND, ({ from, to, group }) => {
    const [start, end] = group(1) ?? [from, from];
    const weight = weightAt(scan, start, end);
    const noun = group(2)?.[0] ?? null;
    const told = group(3) ?? group(5);
    const times = told ? valueAt(scan, told[0]) : 1;
    // "5s, 10s, 15s, all pairs": of each of them (later-counts.ts).
    const whole = scan.tokens.slice(end + 1, to).some(({ term }) => term?.sense === 'definite' || term?.sense === 'whole');
    if (whole && group(3) === null) return false;
    const bare = end === start && scan.plain[start] === 'n' && noun === null;
    // "Holds 10 pairs" is what goes on it; "I have 5 pair" counts pairs of what was told before.
    if (bare && /[XK][Uazm]{0,2}$/.test(scan.plain.slice(Math.max(0, start - 3), start))) return true;
    if (bare && scan.plain[start - 1] === '%') return false;
    if (!weight || !isCount(times) || !isSize(weight.value, weight.unit)) return false;
    if (end === start && scan.plain[start] === 'n' && !isPlateSize(weight.value)) return false;
    if (
      end === start &&
      scan.plain[start] === 'n' &&
      noun === null &&
      (!/[-:lp|(]/.test(scan.plain[end + 1] ?? 'l') || scan.plain[start - 1] === '(')
    )
      return false;
    // "10 Paar" counts pairs where nobody names plates by bare numbers.
    if (end === start && scan.plain[start] === 'n' && scan.language.code === 'de') return false;
    if (findLetter(scan, from, to, 'M') !== null) return false;
    found.push({ rule: 'weight-pair', from, to, count: times * 2, weight: weight.value, unit: weight.unit, noun });
    return true;
  });
  return found;
}
