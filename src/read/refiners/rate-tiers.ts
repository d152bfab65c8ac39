/** Prices per weight that fall with the weight that is taken: "$1.25/lb, over 200 lb $1.10", "1.10 a lb if you take 200 lb or more, otherwise 1.35". */
import { inPounds } from '../../units/mass.ts';
import type { Price } from '../mention.ts';
import { type Scan, valueAt } from '../text/scan.ts';

interface Tier {
  readonly price: Price;
  /** Least weight in pounds that it holds for; 0 when nothing is said. */
  readonly least: number;
}

/** Least weight in pounds that the words between two tokens ask for; 0 for the whole lot; null when they ask for none. */
function leastBetween(scan: Scan, from: number, to: number): number | null {
  for (let i = from; i <= to; i += 1) {
    if (scan.plain[i] === 'L') return 0;
    if (scan.plain[i] !== 'n' || !'uh'.includes(scan.plain[i + 1] ?? '_')) continue;
    const unit = scan.tokens[i + 1]?.term?.unit ?? 'lb';
    const behind = scan.tokens[i + 2];
    const up = behind?.term?.sense === 'and-up' || (behind?.text === '+' && i + 2 <= to + 1);
    const before = scan.tokens.slice(Math.max(from, i - 3), i);
    const over = before.some(
      ({ term, text }) => (term?.sense === 'bound' && !scan.language.cues.under.is(text)) || term?.sense === 'takes-least',
    );
    if (up || over) return inPounds({ value: valueAt(scan, i) ?? 0, unit });
  }
  return null;
}

/** The rate that holds when all of it is taken; null when the rates are not told apart by weight. */
export function rateForAll(scan: Scan, weighed: readonly Price[], pounds: number | null): Price | null {
  const rates = weighed.filter(({ from }) => from >= 0);
  if (rates.length < 2) return null;
  let spent = false;
  const tiers = rates.map((price, index): Tier => {
    const previous = rates[index - 1];
    const next = rates[index + 1];
    let from = price.from;
    while (from > Math.max(previous ? previous.to + 1 : 0, price.from - 8) && scan.clause[from - 1] === scan.clause[price.from])
      from -= 1;
    const ahead = spent ? null : leastBetween(scan, from, price.from - 1);
    let to = next ? next.from - 1 : Math.min(scan.tokens.length - 1, price.to + 14);
    while (to > price.to && scan.clause[to] !== scan.clause[price.to]) to -= 1;
    const behind = ahead !== null || (next && isOfNext(scan, price, next)) ? null : leastBetween(scan, price.to + 2, to);
    spent = behind !== null;
    return { price, least: ahead ?? behind ?? -1 };
  });
  const steps = tiers.filter(({ least }) => least >= 0);
  const base = tiers.find(({ least }) => least < 0);
  if (steps.length === 0) return null;
  const fits = steps.filter(({ least }) => least === 0 || (pounds !== null && pounds >= least));
  fits.sort((a, b) => a.price.amount - b.price.amount);
  return fits[0]?.price ?? base?.price ?? null;
}

/** "$1.25/lb, over 200 lb $1.10": the words between two rates are the second's; in "1.10 a lb over 200 lb, 1.35 under" they are the first's. */
const isOfNext = (scan: Scan, price: Price, next: Price): boolean => {
  const between = scan.plain.slice(price.to + 3, next.from);
  const parted = between.startsWith(',') || scan.tokens[price.to + 3]?.term?.sense === 'or';
  return parted && !/[,;(-]$/.test(between) && (scan.tokens[next.from - 1]?.term ?? null) !== null;
};
