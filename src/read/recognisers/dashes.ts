/** A count and a weight joined by a dash or colon: "2 - 45lb", "4-45s", "45 lb plates - 4", "45s: 4", "45 lb = 2", "plates - 2@45, 2@5 = $90", "qty 4: 45 lb", "45 lb qty 2", table cells "45 lb | 4". */
import type { Quantity } from '../mention.ts';
import { blank, findAll, type Scan, valueAt } from '../text/scan.ts';
import { COUNT, isCount, isPlateSize, isSize, isStock, MODIFIERS, UNIT, weightAt } from './notation.ts';

const COUNT_FIRST = new RegExp(
  `(?:(?<!(?<!^|l)-)|(?=n@))(?:j:?)?(${COUNT})(?:j)?[-:=|@]{1,2}(?:a)?${MODIFIERS}(n${UNIT}|v|n(?=[l,;.|()k_cz]|m|$|(?<=@n)[-=]{1,2}[M_$])|i${UNIT})(?!x|-(?!M)|(?<=n)n)${MODIFIERS}(k?)`,
  'dg',
);
const WEIGHT_FIRST = new RegExp(
  `(n${UNIT}|v|n(?=${MODIFIERS}k)|(?<=^-?|l-?•?|•|[,:;])n|n(?=[-:=,(]{0,2}j[:=-]?x?[nd](?![uhqs])))${MODIFIERS}(k?)(?:[-:=|,(]{0,2}j[:=-]?(?:x)?(${COUNT})(?![uhqs])\\)?|[-:=|@]{1,2}(?:x)?(${COUNT})(?:x|e|p|j|t)?(?![uhqsn$¢.fJ/_-]|-n))`,
  'dg',
);

/** "2-45 4-25 4-10": dashes without a space, counts or weights first throughout. */
const CHAIN = /(?<![\dn]|n-)n-n(?:[,;]?n-n){1,11}(?![\dn-])/dg;

export function readDashes(scan: Scan): Quantity[] {
  const found: Quantity[] = [];
  findAll(scan, CHAIN, ({ from, to }) => {
    const at: number[] = [];
    for (let i = from; i <= to; i += 1) if (scan.plain[i] === 'n') at.push(i);
    const values = at.map((i) => valueAt(scan, i) ?? 0);
    const halves = [values.filter((_, i) => i % 2 === 0), values.filter((_, i) => i % 2 === 1)];
    const glued = at.every(
      (i, index) => index % 2 === 0 || (scan.tokens[i]?.glued === true && scan.tokens[i - 1]?.glued === true),
    );
    const fits = ([counts = [], weights = []]: number[][]): boolean =>
      counts.every((value) => isCount(value) && value <= 20) &&
      weights.every(isPlateSize) &&
      new Set(weights).size === weights.length;
    const turned = !fits(halves) && fits([...halves].reverse());
    if (!glued || (!turned && !fits(halves))) return false;
    for (let i = 0; i < at.length; i += 2) {
      const [first = 0, second = 0] = values.slice(i, i + 2);
      const place = { rule: 'dashed-chain', from: at[i] ?? from, to: at[i + 1] ?? to };
      found.push({
        ...place,
        count: turned ? second : first,
        weight: turned ? first : second,
        unit: null,
        noun: null,
        list: from,
      });
    }
    return true;
  });
  findAll(scan, WEIGHT_FIRST, ({ from, to, group }) => {
    const [start, end] = group(1) ?? [from, from];
    const weight = weightAt(scan, start, end);
    const count = valueAt(scan, (group(3) ?? group(4))?.[0] ?? to);
    // "45 lb ...... 64 pcs": the word may stand behind the count too.
    const told = scan.plain.slice(from, to + 2).includes('j');
    const pieces = told ? isStock(count) : isCount(count) && count <= 40;
    if (!weight || count === null || !pieces || !isSize(weight.value, weight.unit)) return false;
    // "Qty 4 45 lb plates, qty 2 25 lb plates": the count stands before each.
    if (told && /j[:=-]?[nd]x?[mC]{0,2}$/.test(scan.plain.slice(Math.max(0, from - 6), from))) return false;
    const bare = start === end && scan.plain[start] === 'n' && group(2) === null;
    if (bare && told && !isPlateSize(weight.value)) return false;
    // "3 bars: one is 7 ft" counts bars.
    const named = group(2) ? scan.tokens[group(2)?.[0] ?? from]?.term?.kind : undefined;
    if (
      start === end &&
      scan.plain[start] === 'n' &&
      named &&
      !['plate', 'bumper', 'micro', 'dumbbell', 'kettlebell'].includes(named)
    )
      return false;
    if (bare && !told && !(isPlateSize(weight.value) && (weight.value >= 12.5 || !isCount(weight.value)) && count <= 12))
      return false;
    const pairs = scan.plain[to] === 'p';
    found.push({
      rule: 'weight-dash-count',
      from,
      to,
      count: pairs ? count * 2 : count,
      weight: weight.value,
      unit: weight.unit,
      noun: group(2)?.[0] ?? null,
    });
    return true;
  });
  findAll(scan, COUNT_FIRST, ({ from, to, group }) => {
    const count = valueAt(scan, group(1)?.[0] ?? from);
    const [start, end] = group(2) ?? [to, to];
    const weight = weightAt(scan, start, end);
    if (!weight || !isCount(count) || count > 40 || !isSize(weight.value, weight.unit)) return false;
    const bare = start === end && scan.plain[start] === 'n';
    if (bare && !isPlateSize(weight.value) && !(isPlateSize(count) && isCount(weight.value))) return false;
    // "voted 5-2 against" is a score.
    if (bare && scan.plain[end + 1] === 'z' && scan.plain[from - 1] === 'z') return false;
    const noun = group(3)?.[0] ?? null;
    // "dumbbells 5-50 lb" is a range of sizes.
    const beside = noun ?? from - 1 - Number(/[:,(]/.test(scan.plain[from - 1] ?? 'l'));
    const handheld = ['dumbbell', 'kettlebell'].includes(scan.tokens[beside]?.term?.kind ?? 'other');
    if (handheld && count >= 5 && count < weight.value && scan.tokens[from + 1]?.glued) return false;
    const either = bare && isPlateSize(count);
    const quantity = { rule: 'count-dash-weight', from, count, weight: weight.value, unit: weight.unit, either };
    // "2-10s barbell is 7 foot": one bar behind several of a size is the next thing that is named, not what they are.
    const next = noun === null || count < 2 ? undefined : scan.tokens[noun]?.term;
    const ownWeight = noun !== null && /^n-?[uh]/.test(scan.plain.slice(noun + 1, noun + 4));
    if (next?.kind?.endsWith('bar') && next.plural !== true && (ownWeight || 'sv'.includes(scan.plain[end] ?? '_'))) {
      found.push({ ...quantity, to: end, noun: null });
      for (let i = from; i <= end; i += 1) blank(scan, i);
      return 'claimed';
    }
    found.push({ ...quantity, to, noun });
    return true;
  });
  return found;
}
