/** A weight with no count: "45 lb plate" (one), "45 lb plates", "45s", "25 lb dumbbells", "Olympic bar 45 lb", "bar weighs 20 kg"; dumbbell ranges. */
import { isPlate } from '../../listing/reading.ts';
import type { Quantity } from '../mention.ts';
import { blank, findAll, type Scan, valueAt } from '../text/scan.ts';
import { isPlateSize, isSize, MODIFIERS, UNIT, weightAt } from './notation.ts';
import { OWN } from './noun-counts.ts';

/** Between the bar and its weight a remark in brackets may stand: "hex bar (trap bar) 60 lb". */
const BAR_WEIGHT = new RegExp(
  `(k)(?:_{1,3}[,/]?)?(?:\\([zmCka_'"f]{1,5}\\),?)?[mCz]{0,2}(?:[-:,(=]{0,2}|[zPo]{0,1}U?)(n[-U]?[uh])\\)?(?!${MODIFIERS}(?:k|t|o|L)|x|s|-?n(?![f"']))`,
  'dg',
);
/** "45 lb 7' bar": the bar's length between. */
const LONG_BAR = /(?<![ndxv(])(n-?[uh])[,-]?(?:n-?['f]|_{2,3})[mC]{0,2}(k)/dg;
const RANGE = new RegExp(`(n)${UNIT}?(-|z|(?<=u)-)(n)${UNIT}${MODIFIERS}(k)?`, 'dg');
const WEIGHT_NOUN = new RegExp(`([nid]${UNIT}|v|n(?=${MODIFIERS}k))${MODIFIERS}(k?)`, 'dg');
/** "20 single dumbbell", "45 lb single plate". */
const SINGLE = new RegExp(`(n${UNIT}?)(d)${MODIFIERS}(k)`, 'dg');
/** "Dumbbells 10s, 20s (pairs), 30 single". */
const SINGLE_BARE = new RegExp(`(n${UNIT}?)(d)`, 'dg');
/** "One lonely 30", "a lone 45", "a single 10", "one extra 25", "one two and a half". */
const LONE = new RegExp(`([da])(m{1,2}|d|(?=i))(n${UNIT}?|[id])(?![nxudhfJ$¢"'/@-])`, 'dg');
const NOUN_WEIGHT = new RegExp(`(k)[-:,]?(n[-]?[uh])(?![-x]?[nd]|${MODIFIERS}k|[pejt(|:=-])`, 'dg');

/** "Bar 45", and behind the bar's length: "Bar: 7', 45, chrome". */
const BAR_BARE = /(?<=(?:^|l[•-]?|[,:;.])m?)(k)(?:[-:]?|[-:]?[n_]['f_],)(n)(?=[l,.;]|$)|(?<![nd][mC]{0,2})(k)\((n)\)/dg;
const BAR_WEIGHTS = [45, 44, 35, 33, 20, 15];

export function readSingleWeights(scan: Scan): Quantity[] {
  const found: Quantity[] = [];
  const kindAt = (at: number) => scan.tokens[at]?.term?.kind;
  findAll(scan, BAR_BARE, ({ from, to, group }) => {
    const value = valueAt(scan, group(4)?.[0] ?? to);
    if (kindAt(from) !== 'bar' || value === null || !BAR_WEIGHTS.includes(value)) return false;
    found.push({
      rule: 'bar-weight',
      from,
      to,
      count: 1,
      countImplied: true,
      weight: value,
      unit: value > 20 ? 'lb' : 'kg',
      noun: from,
    });
    return true;
  });
  findAll(scan, BAR_WEIGHT, ({ from, to, group }) => {
    const kind = kindAt(from);
    const [start, end] = group(2) ?? [to, to];
    const weight = weightAt(scan, start, end);
    const link = scan.tokens[start - 1]?.text ?? '';
    const bar = kind === 'bar' || kind === 'curl-bar' || kind === 'hex-bar';
    const frame = (kind === 'rack' || kind === 'bench') && /^weigh/.test(link) && weight !== null && weight.value >= 20;
    if (!weight || !(bar ? weight.value >= 5 && weight.value <= 75 : frame)) return false;
    if (scan.plain[start - 1] === 'P' && !/^weigh/.test(link)) return false;
    if (
      scan.plain[start - 1] === 'z' &&
      !['weighs', 'weigh', 'weighing', 'is', 'at'].includes(link) &&
      link !== 'the' &&
      scan.tokens[start - 1]?.term?.sense !== 'weighs'
    )
      return false;
    const told = scan.nounCounts.get(from);
    const one = told === undefined && scan.tokens[from]?.term?.plural !== true;
    found.push({
      rule: 'bar-weight',
      from,
      to,
      count: told ?? (one ? 1 : null),
      countImplied: one,
      weight: weight.value,
      unit: weight.unit,
      noun: from,
    });
    return true;
  });
  findAll(scan, LONG_BAR, ({ from, to, group }) => {
    const weight = weightAt(scan, from, group(1)?.[1] ?? from);
    const { kind, plural } = scan.tokens[to]?.term ?? {};
    if (!weight || kind !== 'bar' || plural || weight.value < 10 || weight.value > 60) return false;
    if (!/^n?-?['f]/.test(scan.plain.slice((group(1)?.[1] ?? from) + 1, to).replace(',', ''))) return false;
    found.push({ rule: 'bar-weight', from, to, count: 1, countImplied: true, weight: weight.value, unit: weight.unit, noun: to });
    return true;
  });
  findAll(scan, RANGE, ({ from, to, group }) => {
    const link = scan.tokens[group(2)?.[0] ?? from]?.text;
    const low = valueAt(scan, from);
    const high = valueAt(scan, group(3)?.[0] ?? to);
    if (
      (link !== '-' &&
        link !== 'to' &&
        link !== 'through' &&
        link !== 'thru' &&
        scan.tokens[group(2)?.[0] ?? from]?.term?.sense !== 'to') ||
      low === null ||
      high === null ||
      low >= high ||
      high > 150
    )
      return false;
    const noun = group(4)?.[0] ?? null;
    if (link === '-' && noun !== null && isPlate(kindAt(noun) ?? 'other') && Number.isInteger(low) && low <= 8) return false;
    found.push({ rule: 'weight-range', from, to, count: null, weight: null, unit: null, noun });
    return true;
  });
  findAll(scan, SINGLE, ({ from, to, group }) => {
    const weight = weightAt(scan, from, group(1)?.[1] ?? from);
    const single = scan.tokens[group(2)?.[0] ?? to]?.term?.sense === 'single' && scan.tokens[to]?.term?.plural !== true;
    if (!weight || !single || !isSize(weight.value, weight.unit)) return false;
    found.push({ rule: 'single-weight', from, to, count: 1, weight: weight.value, unit: weight.unit, noun: to });
    return true;
  });
  findAll(scan, SINGLE_BARE, ({ from, to, group }) => {
    const weight = weightAt(scan, from, group(1)?.[1] ?? from);
    // "Ständer (2 einzelne)" counts what stands before the bracket.
    if (weight?.unit === null && scan.plain[from - 1] === '(' && to === from + 1 && OWN.includes(kindAt(from - 2) ?? 'plate'))
      return false;
    const single = scan.tokens[to]?.term?.sense === 'single' && /[,.;lc)]/.test(scan.plain[to + 1] ?? 'l');
    if (!weight || !single || !isSize(weight.value, weight.unit)) return false;
    found.push({ rule: 'single-weight', from, to, count: 1, weight: weight.value, unit: weight.unit, noun: null });
    return true;
  });
  findAll(scan, LONE, ({ from, to, group }) => {
    const [start, end] = group(3) ?? [to, to];
    const weight = weightAt(scan, start, end);
    const one = scan.plain[from] === 'a' || valueAt(scan, from) === 1;
    const [first, last] = group(2) ?? [to, from];
    const words = scan.tokens.slice(first, last + 1).map(({ term }) => term?.sense);
    // "One extra 25." counts where nothing follows that the number could be of.
    const ends = scan.plain[from] === 'd' && /[,.;lc)]/.test(scan.plain[to + 1] ?? 'l');
    const lone = words.includes('lone') || (words[0] === 'single' && ends) || (scan.plain[from] === 'a' && words[0] === 'single');
    const size =
      weight !== null && (isPlateSize(weight.value) || (scan.plain[start] === 'n' && lone && isSize(weight.value, weight.unit)));
    if (!weight || !one || !size || !(lone || (ends && scan.plain[start] !== 'd'))) return false;
    found.push({ rule: 'lone-weight', from, to, count: 1, weight: weight.value, unit: weight.unit, noun: null });
    return true;
  });
  findAll(scan, NOUN_WEIGHT, ({ from, to, group }) => {
    const kind = kindAt(from);
    const weight = weightAt(scan, group(2)?.[0] ?? to, to);
    if (
      !weight ||
      !kind ||
      !['plate', 'bumper', 'micro', 'dumbbell', 'kettlebell'].includes(kind) ||
      !isSize(weight.value, weight.unit)
    )
      return false;
    const one = scan.tokens[from]?.term?.plural !== true;
    const piece = { rule: 'noun-weight', count: one ? 1 : null, countImplied: one, noun: from };
    found.push({ ...piece, from, to, weight: weight.value, unit: weight.unit });
    // "Kettlebell 16 kg and 24 kg": the noun holds for the next one too.
    const next = /^(?:,c?|c|\/)(n[-]?[uh])(?![-x]?[nd]|[mC]{0,4}k|[pejt(|:=-])/.exec(scan.letters.slice(to + 1, to + 7).join(''));
    if (!one || !next || kind === 'plate') return true;
    const end = to + next[0].length;
    const start = end - (next[1]?.length ?? 1) + 1;
    const other = weightAt(scan, start, end);
    if (!other || !isSize(other.value, other.unit) || other.value === weight.value) return true;
    found.push({ ...piece, from: start, to: end, weight: other.value, unit: other.unit });
    for (let i = from; i <= end; i += 1) if (i !== from) blank(scan, i);
    return true;
  });
  findAll(scan, WEIGHT_NOUN, ({ from, to, group }) => {
    const [start, end] = group(1) ?? [from, from];
    const weight = weightAt(scan, start, end);
    const noun = group(2)?.[0] ?? null;
    if (!weight || !isSize(weight.value, weight.unit)) return false;
    const bare = end === start && scan.plain[start] === 'n';
    // "from the 70s" is a decade; "45s" are plates.
    if (scan.plain[end] === 's' && end === start + 1 && noun === null && !isPlateSize(weight.value)) return false;
    const kind = noun === null ? null : kindAt(noun);
    // "8 Scheiben" are eight where nobody names plates by bare numbers.
    if (bare && scan.language.code === 'de') return false;
    if (bare && kind !== 'plate' && kind !== 'bumper' && kind !== 'dumbbell' && kind !== 'kettlebell') return false;
    // "6 plates" are six: none is cast at six pounds.
    if (bare && noun !== null && scan.tokens[noun]?.term?.plural && !isPlateSize(weight.value)) return false;
    // "12 dumbbells" is a count.
    if (bare && noun !== null && (kind === 'dumbbell' || kind === 'kettlebell') && scan.tokens[noun]?.term?.plural) return false;
    if (noun !== null && (kind === 'rack' || kind === 'bench' || kind === 'other' || kind === 'storage' || kind === 'stands'))
      return false;
    const plural =
      scan.plain[start] === 'v' || scan.plain[end] === 's' || (noun !== null && scan.tokens[noun]?.term?.plural === true);
    const one = noun !== null && !plural;
    found.push({
      rule: one ? 'one-weight' : 'weight-alone',
      from,
      to,
      count: one ? 1 : null,
      countImplied: one,
      weight: weight.value,
      unit: weight.unit,
      noun,
    });
    return true;
  });
  return found;
}
