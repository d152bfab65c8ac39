/** A slash between weight and count, in lists of two and more (one alone may be two sizes): "45lb/4, 25lb/2", "20 kg/4 Stück, 10 kg/2 Stück", "6/45 lbs, 2/35 lbs". */
import type { Quantity } from '../mention.ts';
import { findAll, type Scan, unitBetween, valueAt } from '../text/scan.ts';
import { isCount, isPlateSize, isSize, UNIT, weightAt } from './notation.ts';

const WEIGHT_FIRST = `n${UNIT}/[nd]j?`;
const COUNT_FIRST = `[nd]/n${UNIT}`;
const APART = '(?:,?c|[,;]|,?l[-•]?)?';
const listOf = (pair: string): RegExp =>
  new RegExp(`(?<![$¢/x]|(?<!(?:^|l))-)${pair}(?:${APART}${pair}){1,19}(?=[.,;:l()!ckz]|$)`, 'dg');
const WEIGHTS_FIRST = listOf(WEIGHT_FIRST);
const COUNTS_FIRST = listOf(COUNT_FIRST);
/** "Kettlebells 53/35/26": sizes behind their noun. */
const NOUN_SIZES = /(k)[-:,]?(n(?:[/]n){1,9}[uh]?)(?=[,.;l)c]|$)/dg;
/** "2/45, 2/35, 2/25": counts, then the sizes that plates have, each once. */
const BARE_CHAIN = /(?<![\dn]|n[/-])n\/n(?:[,;]?c?n\/n){1,11}(?![\dn/-]|[uhqf])/dg;
/** One weight or count of a list. */
const PART = new RegExp(`n${UNIT}|[nd]`, 'g');

export function readSlashes(scan: Scan): Quantity[] {
  const found: Quantity[] = [];
  const take = (rule: string, weightFirst: boolean, from: number, to: number): boolean => {
    const parts = [...scan.plain.slice(from, to + 1).matchAll(PART)].map((part) => {
      const at = from + part.index;
      return { at, end: at + part[0].length - 1 };
    });
    const pairs: Quantity[] = [];
    for (let i = 0; i + 1 < parts.length; i += 2) {
      const [first, second] = [parts[i], parts[i + 1]];
      if (!first || !second) return false;
      const [heavy, counted] = weightFirst ? [first, second] : [second, first];
      const weight = weightAt(scan, heavy.at, heavy.end);
      const count = valueAt(scan, counted.at);
      if (!weight || !isCount(count) || count > 24 || !isSize(weight.value, weight.unit) || isSame(weight.value, count))
        return false;
      const place = { rule, from: first.at, to: second.end };
      pairs.push({ ...place, count, weight: weight.value, unit: weight.unit, noun: null, list: from });
    }
    // "10/15 lb, 25/35 lb" are sizes throughout.
    if (!pairs.some(({ count }) => count !== null && !isPlateSize(count))) return false;
    found.push(...pairs);
    return true;
  };
  if (scan.plain.includes('/'))
    findAll(scan, NOUN_SIZES, ({ from, to, group }) => {
      const { kind, plural } = scan.tokens[from]?.term ?? {};
      const unit = unitBetween(scan, from, to);
      const sizes: number[] = [];
      const [start, end] = group(2) ?? [to, to];
      for (let i = start; i <= end; i += 1) if (scan.plain[i] === 'n') sizes.push(i);
      const weights = sizes.map((at) => valueAt(scan, at) ?? 0);
      const made =
        weights.every((weight) => weight >= 4 && isSize(weight, unit ?? 'lb')) && new Set(weights).size === weights.length;
      if (kind !== 'kettlebell' || !plural || !made) return false;
      sizes.forEach((at, index) => {
        const place = { rule: 'noun-sizes', from: at, to: index === sizes.length - 1 ? end : at, noun: from, list: start };
        found.push({ ...place, count: 1, countImplied: true, weight: weights[index] ?? 0, unit });
      });
      return true;
    });
  findAll(scan, BARE_CHAIN, ({ from, to }) => {
    const at: number[] = [];
    for (let i = from; i <= to; i += 1) if (scan.plain[i] === 'n') at.push(i);
    const values = at.map((i) => valueAt(scan, i) ?? 0);
    const weights = values.filter((_, i) => i % 2 === 1);
    const counts = values.filter((_, i) => i % 2 === 0);
    if (!counts.every((value) => isCount(value) && value <= 12) || !weights.every(isPlateSize)) return false;
    // "10/25, 5/35" may be sizes throughout.
    if (new Set(weights).size < weights.length || counts.every(isPlateSize)) return false;
    at.forEach((place, i) => {
      const [count = 0, weight = 0] = [values[i], values[i + 1]];
      if (i % 2 === 0)
        found.push({
          rule: 'count-slash-weight',
          from: place,
          to: at[i + 1] ?? to,
          count,
          weight,
          unit: null,
          noun: null,
          list: from,
        });
    });
    return true;
  });
  findAll(scan, WEIGHTS_FIRST, ({ from, to }) => take('weight-slash-count', true, from, to));
  findAll(scan, COUNTS_FIRST, ({ from, to }) => take('count-slash-weight', false, from, to));
  return found;
}

/** "5 kg/11, 10 kg/22": the same weight in the other unit. */
const isSame = (one: number, other: number): boolean => Math.abs(Math.max(one / other, other / one) - 2.2) < 0.1;
