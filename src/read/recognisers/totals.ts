/** Weight of the lot as a whole: "300 lb set", "650# worth of plates", "300 lbs of weights", "255 lb total", "total weight: 300 lb", "(180 lbs)". */

import { isPlate, type Kind } from '../../listing/reading.ts';
import { inPounds } from '../../units/mass.ts';
import type { Quantity, Total } from '../mention.ts';
import { blank, findAll, type Scan } from '../text/scan.ts';
import { weightAt } from './notation.ts';

const NUMBER = '(n[-.]?[uh]s?q?|n(?=L)|i[-]?[uh])';
/** "430 the lot", "150 alles" are money, "430 total" a weight. */
const MONEY_FOR = /^(?:the lot|the whole lot|as a lot|for .*|takes .*|alles|komplett|fur .*|everything|package.*|bundle.*)$/;
const SET = new RegExp(`${NUMBER}[mkCac]{0,6}(t)`, 'dg');
/** The size behind the set: "Langhantelset 80 kg", "bumper set (230 lb)". */
const SET_FIRST = /([tk])[mC]{0,2}[c:,(-]{0,2}U?(n[uh])(?![-x]?[nd]|[mC]{0,4}k|[spe])/dg;
const SET_NOUN = new RegExp(`${NUMBER}[mC]{0,4}(k)`, 'dg');
/** A hole told between the makes and the noun: "mixed standard (1 inch hole) plates", its measure used up. */
const ASIDE = '(?:\\([_mB]{1,5}\\))?';
const WORTH = new RegExp(`${NUMBER}L?(?:o|b)a?(?:n-?[f"])?[mC]{0,4}${ASIDE}[mC]{0,2}(k)`, 'dg');
const TOTAL_BEHIND = new RegExp(`(?<![xnd])${NUMBER}[mk]{0,4}[(,]?L(?![-:=]?(?:[$]n|n[$]|M))`, 'dg');
/** "maybe 70 lbs worth". */
const WORTH_BEHIND = new RegExp(`(?<![xnd])${NUMBER}([bz])(?![ok])`, 'dg');
/** "total with bar about 110 lb", but not "the lot: 20 kg bar, ...". */
const TOTAL_FIRST = /L[mkoC]{0,2}(?:ca?m?k)?z?[-:=aoU]{0,3}(n[-.]?[uh]s?)(?:[mC]{0,3}(k))?/dg;
/** "Bench press bar & 210 pounds", "bar and 200 lbs": of plates that are named no otherwise. */
const BESIDE_BAR = /k(?:ca?|,ca?)U?(n[-.]?[uh]s?)(?=[.,;:!)lMAw$]|c(?!a?k)|$)/dg;
/** "Hantelscheiben 150 kg", "weights (60 kg)". */
const HEAVY_BEHIND = /(k)[-:,(]?(n[uh])(?![-x]?[nd]|[mC]{0,4}k|[spej])/dg;
const HEAVY = new RegExp(`(?<![xnd])${NUMBER}[mC]{0,4}${ASIDE}[mC]{0,2}(k)`, 'dg');
const BRACKETED = /(?<=_|k|m)[-=]?\(?[=U]{0,2}(n[uh]s?)\)/dg;
const EQUALS = /(?<=_|[)km])[=](?:U)?(n[uh]s?)/dg;

/** Rule of a weight that stands beside a bar and needs plates of its own. */
export const BESIDE = 'weight-beside-bar';

const WEIGHED: readonly Kind[] = ['plate', 'bumper', 'micro', 'dumbbell', 'kettlebell'];

export function readTotals(scan: Scan): Total[] {
  const found: Total[] = [];
  const take = (
    rule: string,
    from: number,
    to: number,
    group: readonly [number, number] | null,
    least: number,
    more: Partial<Total> = {},
  ): boolean => {
    const weight = group ? weightAt(scan, group[0], group[1]) : null;
    if (!weight || inPounds({ value: weight.value, unit: weight.unit ?? 'lb' }) < least || weight.value > 20_000) return false;
    found.push({ rule, from, to, weight: weight.value, unit: weight.unit, set: false, ...more });
    return true;
  };
  findAll(scan, WORTH, ({ from, to, group }) => {
    const noun = scan.tokens[group(2)?.[0] ?? to];
    // "Holds 300 lbs of weight" is what a bench carries.
    const carried = /[KXP]U?$/.test(scan.plain.slice(Math.max(0, from - 2), from));
    return (
      (Boolean(noun?.term?.plural) || (noun?.term?.sense === 'mass' && !carried)) &&
      take('weight-of-goods', from, (group(2)?.[0] ?? to) - 1, group(1), 11) &&
      keepNoun(scan, from, group(2)?.[0] ?? to)
    );
  });
  findAll(
    scan,
    WORTH_BEHIND,
    ({ from, to, group }) => scan.tokens[to]?.text === 'worth' && take('weight-of-goods', from, to, group(1), 20),
  );
  findAll(
    scan,
    SET,
    ({ from, to, group }) => take('set-size', from, to, group(1), 70, { set: true }) && keepNoun(scan, from, to),
  );
  findAll(scan, SET_FIRST, ({ from, to, group }) => {
    const set = scan.tokens[from]?.term?.sense === 'set';
    if (!set && scan.plain[from] === 'k') return false;
    const unit = scan.tokens[to]?.term?.unit;
    // "Weight set, 110 lb".
    const named = scan.plain[from - 1] === 'k' && isPlate(scan.tokens[from - 1]?.term?.kind ?? 'other');
    const least = set ? 10 : named ? 66 : unit === 'kg' ? 60 : 120;
    return take('set-size', from, to, group(2), least, { set: true }) && keepNoun(scan, from, to);
  });
  findAll(scan, SET_NOUN, ({ from, to, group }) => {
    const set = scan.tokens[group(2)?.[0] ?? to]?.term?.sense === 'set';
    return set && take('set-size', from, to, group(1), 10, { set: true }) && keepNoun(scan, from, to);
  });
  findAll(
    scan,
    TOTAL_BEHIND,
    ({ from, to, group }) =>
      scan.tokens[to]?.term?.sense !== 'told' &&
      (/[uh]/.test(scan.plain.slice(from, to)) || !MONEY_FOR.test(scan.tokens[to]?.text ?? '')) &&
      take('total-behind', from, to, group(1), 20) &&
      keepNoun(scan, from, to),
  );
  findAll(scan, TOTAL_FIRST, ({ from, to, group }) => {
    const word = scan.plain.slice(from, group(1)?.[0] ?? to).indexOf('z');
    if (word !== -1 && !/^(?:also|so|is|are|ist|sind|von|at|of)$/.test(scan.tokens[from + word]?.text ?? '')) return false;
    const goods = scan.tokens[group(2)?.[0] ?? from]?.term;
    const ofPlates = group(2) === null || (goods?.plural && WEIGHED.includes(goods.kind ?? 'other'));
    return Boolean(ofPlates) && take('total-first', from, to, group(1), 20) && keepNoun(scan, from, to);
  });
  findAll(scan, BESIDE_BAR, ({ from, to, group }) => {
    const { kind, plural } = scan.tokens[from]?.term ?? {};
    const [start, end] = group(1) ?? [to, to];
    return kind === 'bar' && !plural && take(BESIDE, start, end, [start, end], 61) && keepNoun(scan, start, end);
  });
  findAll(scan, HEAVY, ({ from, to, group }) => {
    const noun = scan.tokens[group(2)?.[0] ?? to]?.term;
    const goods = noun?.kind === 'bumper' || (noun?.plural && noun.kind === 'plate');
    const kilograms = scan.tokens[group(1)?.[1] ?? from]?.term?.unit === 'kg';
    // "Bench with 100 lbs weights": the word for all of them.
    const loosely = /weights$/.test(scan.tokens[group(2)?.[0] ?? to]?.text ?? '');
    return (
      Boolean(goods) &&
      !/[pt]o?a?$/.test(scan.plain.slice(Math.max(0, from - 3), from)) &&
      take('heavy-goods', from, to, group(1), loosely ? 60 : kilograms ? 125 : 105) &&
      keepNoun(scan, from, to)
    );
  });
  findAll(scan, HEAVY_BEHIND, ({ from, to, group }) => {
    const noun = scan.tokens[from]?.term;
    const goods = noun?.plural && (noun.kind === 'plate' || noun.kind === 'bumper');
    const kilograms = scan.tokens[to]?.term?.unit === 'kg';
    // "4x45 plates (180 lbs)" sums what was told: see readSubtotals.
    const sums = scan.plain[from + 1] === '(' && /[nduhsv][mC]{0,3}$/.test(scan.plain.slice(Math.max(0, from - 4), from));
    return !sums && Boolean(goods) && take('heavy-goods', from, to, group(2), kilograms ? 115 : 151) && keepNoun(scan, from, to);
  });
  return found;
}

/** Totals in brackets or behind "=" are read after the quantities, since they sum those. */
export function readSubtotals(scan: Scan, quantities: readonly Quantity[]): Total[] {
  const found: Total[] = [];
  if (quantities.length === 0) return found;
  for (const pattern of [BRACKETED, EQUALS]) {
    findAll(scan, pattern, ({ from, to, group }) => {
      const weight = group(1) ? weightAt(scan, group(1)?.[0] ?? from, group(1)?.[1] ?? to) : null;
      if (!weight || weight.value < 20) return false;
      found.push({ rule: 'subtotal', from, to, weight: weight.value, unit: weight.unit, set: false, bracketed: true });
      return true;
    });
  }
  return found;
}

/** Uses up the weight but leaves the nouns for those who look for what is on offer. */
function keepNoun(scan: Scan, from: number, to: number): 'claimed' {
  for (let i = from; i <= to; i += 1) if (!'kmCt'.includes(scan.plain[i] ?? '_')) blank(scan, i);
  return 'claimed';
}
