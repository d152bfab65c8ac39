/** How many of those that the seller has are on offer: "I have 8, only selling 4", "10 x 45 lb plates, keeping 4", "habe 8, verkaufe nur 4". */
import type { Quantity } from '../mention.ts';
import { says } from '../text/says.ts';
import { blank, type Scan, valueAt } from '../text/scan.ts';
import { isCount } from './notation.ts';
import { countBefore } from './nouns.ts';

/** How far back what the seller has may be told, in clauses. */
const CLAUSES = 2;
/** The number ends the clause, or "of them" follows. */
const ENDS = /^(?:[,.;!)l&]|$|o[zej]?(?:[,.;!)l]|$)|c[zA]|z[.;!)l])/;

interface Part {
  /** Token of the number. */
  readonly at: number;
  readonly count: number;
  readonly kept: boolean;
}

function readParts(scan: Scan): Part[] {
  const parts: Part[] = [];
  for (let verb = 0; verb < scan.tokens.length - 1; verb += 1) {
    const kept = says(scan, verb, 'keeps');
    if (!kept && !says(scan, verb, 'sells')) continue;
    const at = verb + 1 + Number(says(scan, verb + 1, 'only'));
    const count = valueAt(scan, at);
    const number = 'nd'.includes(scan.plain[at] ?? '_') && scan.letters[at] !== 'M';
    if (number && isCount(count) && ENDS.test(scan.plain.slice(at + 1, at + 5))) parts.push({ at, count, kept });
  }
  return parts;
}

/** The last goods without a weight told before, with more pieces. */
function nounBefore(scan: Scan, { at, count }: Part): { noun: number; count: number } | null {
  for (let i = at - 1; i >= 0 && (scan.clause[at] ?? 0) - (scan.clause[i] ?? 0) <= 1; i -= 1) {
    if (scan.letters[i] !== 'k') continue;
    const whole = countBefore(scan, i).count;
    return whole !== null && whole > count ? { noun: i, count: whole } : null;
  }
  return null;
}

export function sellPart(scan: Scan, quantities: readonly Quantity[]): Quantity[] {
  let told = [...quantities];
  for (const part of readParts(scan)) {
    const near = (one: Quantity): boolean =>
      one.to < part.at && (scan.clause[part.at] ?? 0) - (scan.clause[one.to] ?? 0) <= CLAUSES;
    const whole = told.findLast((one) => near(one) && one.weight !== null);
    const left = (count: number): number => (part.kept ? count - part.count : part.count);
    if (whole) {
      // Of several sizes it is not said which of them.
      const sizes = told.filter((one) => near(one) && scan.clause[one.to] === scan.clause[whole.to]);
      if (whole.count === null || whole.count <= part.count || sizes.length > 1) continue;
      const count = left(whole.count);
      told = told.map((one) => (one === whole ? { ...whole, count, countImplied: false, rule: `${whole.rule}-in-part` } : one));
    } else {
      const noun = nounBefore(scan, part);
      if (!noun) continue;
      scan.nounCounts.set(noun.noun, left(noun.count));
    }
    blank(scan, part.at);
  }
  return told;
}
