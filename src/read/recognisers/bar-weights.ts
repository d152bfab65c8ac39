/** What a bar weighs, told by a verb and without a unit: "the bar is another 45", "bar weighs 45", "die Stange wiegt 20". */
import type { Kind } from '../../listing/reading.ts';
import type { Quantity } from '../mention.ts';
import { says } from '../text/says.ts';
import { findAll, type Scan, valueAt } from '../text/scan.ts';

const WEIGHS = /k,?[zP]{1,2}(?:z|y|U){0,2}(n)(?=[.,;!l)z]|c|$)/dg;
/** "My bathroom scale says 19." */
const SCALE = /z[zyA]U?(n)(?=[.,;!l)]|$)/dg;
const BARS: readonly (Kind | undefined)[] = ['bar', 'curl-bar', 'hex-bar'];
/** Weights of bars in pounds and kilograms. Common practice, no source. */
const BAR_WEIGHTS = [45, 44, 55, 35, 33, 30, 25, 20, 18, 15, 60];

export function readBarWeights(scan: Scan): Quantity[] {
  const found: Quantity[] = [];
  findAll(scan, WEIGHS, ({ from, to }) => {
    const kind = scan.tokens[from]?.term?.kind;
    const weight = valueAt(scan, to) ?? 0;
    const verb = [from + 1, from + 2, from + 3].some((at) => at < to && says(scan, at, 'weighs'));
    // "Bar is 60": what it costs, for hardly a bar weighs so much.
    if (weight === 60 && scan.tokens[to - 1]?.term?.sense === 'is') return false;
    if (!verb || scan.tokens[from]?.term?.plural || !BARS.includes(kind) || !BAR_WEIGHTS.includes(weight)) return false;
    found.push({ rule: 'bar-weighs', from: to, to, count: null, weight, unit: null, noun: from });
    return true;
  });
  if (found.length === 0)
    findAll(scan, SCALE, ({ from, to }) => {
      const weight = valueAt(scan, to) ?? 0;
      const bars = [...scan.plain].flatMap((letter, at) => (letter === 'k' ? [at] : []));
      const [bar] = bars;
      const only = bar !== undefined && bars.every((at) => BARS.includes(scan.tokens[at]?.term?.kind));
      if (!only || !says(scan, from, 'scale') || weight < 5 || weight > 60) return false;
      found.push({ rule: 'bar-weighs', from: to, to, count: null, weight, unit: null, noun: bar });
      return true;
    });
  return found;
}
