/**
 * Numbers that nothing else in the ad explains, in an ad that tells no price: the words on both sides, its place in the line and in the ad, and
 * how round it is speak for a price or against one.
 */
import type { Price, Quantity, Total } from '../mention.ts';
import { begins, endsIn } from '../text/says.ts';
import { lettersOf, type Scan, valueAt } from '../text/scan.ts';
import { isPlateSize } from './notation.ts';

/** What stands right behind or before a number of another sort: a unit, a size, a count of goods, a name, a lift, a capacity. */
const OTHER_BEHIND = /^(?:-?[uhqsfJIkmBSTGKPxj¢%@&"'oCX]|[.:/-]n|-[zk]|M|[(]?n)/;
const OTHER_BEFORE = /(?:[xhXNFVDHGBSTofn/'"%KPM]|n[-.])$/;
/** "Supports up to 700", "benched 225": a few words before. */
const LOAD_BEFORE = /[KPXB][acz:=Um]{0,3}$/;
/** "Retails at 180". */
const FORMER_BEFORE = /F[azU:=-]{1,2}$/;
/** "Can deliver for 20". */
const DELIVERY_BEFORE = /D[zwU:=]{0,2}$/;
const TERMS = /^[,(]?[AOR£L]|^[,(c]?c?D[zwU:=]{0,2}[$n]|^[,(]?cnD/;

/** No piece of a lot weighs more. */
const HEAVIEST = 100;
const LEAST_WORDED = 10;
const LEAST = 25;
const MOST = 20_000;
/** From this on it is read as the price; from the other on it is a doubt. */
const CLEAR = 3;
const LIKELY = 1;

/** From this on a number that has no rival is assumed to be it. */
const ASSUMED = 1.5;
const LEAST_ASSUMED = 40;
const isYear = (value: number): boolean => value >= 1950 && value <= 2050;

export interface LeftNumbers {
  /** Those that are read as the price. */
  readonly clear: readonly Price[];
  /** Those that may be it. */
  readonly likely: readonly Price[];
  /** A total without a unit that is money after all. */
  readonly spent: Total | null;
}

export const NONE_LEFT: LeftNumbers = { clear: [], likely: [], spent: null };

/** Weight of all pieces, where every line tells it: what a number may be the sum of. */
export const sumOf = (quantities: readonly Quantity[]): number =>
  quantities.reduce((sum, { count, weight }) => sum + (count ?? 1) * (weight ?? 0), 0);

/** How much speaks for a price; null where the number is something else. */
function evidenceFor(scan: Scan, at: number): number | null {
  const value = valueAt(scan, at) ?? 0;
  const behind = scan.plain.slice(at + 1, at + 8);
  const about = scan.plain[at - 1] === 'U' ? 1 : 0;
  const end = at - about;
  const before = scan.plain.slice(Math.max(0, end - 8), end);
  const token = scan.tokens[at];
  const previous = scan.tokens[at - 1];
  // "Model R-300", "R300".
  const named = token?.glued === true && (previous?.type === 'word' || (previous?.text === '-' && previous.glued));
  const thousands = scan.tokens[at + 1]?.glued === true && scan.tokens[at + 1]?.type === 'word';
  if (named || thousands || endsIn(scan, end, 'numbered') || begins(scan, at + 1, 'numbers')) return null;
  const wordBefore = endsIn(scan, end, 'before-price');
  const gone = scan.tokens[at + 1]?.term?.sense === 'be-gone';
  const wordBehind =
    gone || begins(scan, at + 1, 'behind-price') || (behind.startsWith(',') && begins(scan, at + 2, 'behind-price'));
  // "Two fifty, two forty": sizes of pairs.
  if (scan.plain[at] === 'i' && before.endsWith('d')) return null;
  if (FORMER_BEFORE.test(before) || /Y[a-z]{0,5}$/.test(before)) return null;
  if (DELIVERY_BEFORE.test(before) || behind.startsWith('D')) return null;
  if (!wordBehind && OTHER_BEHIND.test(behind)) return null;
  // "Rack and plates 4x45 260", "rack, bench and bar 280": more than any goods before it weigh.
  const behindGoods = value > HEAVIEST && /(?:k|nxn)$/.test(before) && !/^[nx]/.test(behind);
  if (!wordBefore && !behindGoods && (OTHER_BEFORE.test(before) || LOAD_BEFORE.test(before))) return null;
  const opens = /(?:^|[l.;!?,:•(-])$/.test(before);
  const closes = /^[)]?(?:[l.;!?,•]|$)/.test(behind);
  const last =
    /^[.!)]{0,3}(?:l{0,3}$|$)/.test(scan.plain.slice(at + 1, at + 6)) || (scan.tokens[at]?.line === 0 && behind.startsWith('l'));
  // "45, 35, 10": one of a list.
  const listed = /n,$/.test(before) || (/n[uhqs],$/.test(before) && isPlateSize(value)) || /^,c?n/.test(behind);
  let score = about + Number(behindGoods) / 2 - Number(listed) + Number(opens) + Number(closes) + Number(last && closes);
  if (wordBefore) score += 2;
  if (wordBehind || TERMS.test(behind)) score += 2;
  if (/^L(?:[,.;!)l]|$)/.test(behind)) score += 1;
  if (/[AL£][:=-]?$/.test(before)) score += 2;
  if (value % 5 !== 0 && value % 10 !== 9) score -= 1;
  if (!wordBehind && behind.startsWith('z')) score -= 1;
  const worded = score >= 2 && (wordBefore || wordBehind || TERMS.test(behind));
  return value < (worded ? LEAST_WORDED : LEAST) || value > MOST || !Number.isInteger(value) ? null : score;
}

/** Bars weigh so much, where they are counted in a sum. */
const BARS = [0, 45, 44, 33, 35, 20, 15, 25];

/** "160 total", and the weights told are no 160: money. Near to their sum, or with no weight told, it may be either. */
function bareTotal(scan: Scan, totals: readonly Total[], sum: number, guessed: boolean): LeftNumbers | null {
  const total = totals.find(({ rule, unit }) => rule === 'total-behind' && unit === null);
  if (!total || total.weight < LEAST || scan.tokens[total.to + 1]?.term?.sense === 'measured') return null;
  const apart = Math.min(...BARS.map((bar) => Math.abs(sum + bar - total.weight))) / total.weight;
  const { from, weight } = total;
  const price: Price = { rule: 'number-left', from, to: from, amount: weight, currency: null, role: 'asking', sure: false };
  // "A set of 45s, a set of 35s. 160 total": what they weigh if a set is a pair, or what they cost.
  if (apart <= 0.02) return guessed ? { clear: [], likely: [price], spent: null } : null;
  const cash = /^[,]?[£RO]/.test(scan.plain.slice(total.to + 1, total.to + 3));
  if (!cash && (sum === 0 || apart <= 0.1)) return { clear: [], likely: [price], spent: null };
  return { clear: [price], likely: [], spent: total };
}

/** Read last, when all quantities have taken their numbers. */
export function readLeftNumbers(scan: Scan, quantities: readonly Quantity[], totals: readonly Total[]): LeftNumbers {
  const found: { price: Price; score: number }[] = [];
  const sum = sumOf(quantities);
  const total = bareTotal(
    scan,
    totals,
    sum,
    quantities.some(({ countImplied }) => countImplied),
  );
  if (total?.spent) return total;
  for (const { index: at } of lettersOf(scan).matchAll(/[ni]/g)) {
    const amount = valueAt(scan, at) ?? 0;
    const score = amount === sum ? null : evidenceFor(scan, at);
    if (score === null || score < LIKELY || (score < CLEAR && isPlateSize(amount) && amount <= 55)) continue;
    found.push({ price: { rule: 'number-left', from: at, to: at, amount, currency: null, role: 'asking', sure: false }, score });
  }
  const most = Math.max(0, ...found.map(({ score }) => score));
  const best = found.filter(({ score }) => score === most).map(({ price }) => price);
  if (most >= CLEAR) return { ...NONE_LEFT, clear: best };
  // "Barbell set 175 come get it": the only number that is nothing else is assumed to be the price, with a doubt.
  const [only] = found.length === 1 && !total ? best : [];
  if (only && most >= ASSUMED && only.amount >= LEAST_ASSUMED && only.amount % 5 === 0 && !isYear(only.amount)) {
    const assumed: Price = { ...only, rule: 'number-perhaps' };
    return { ...NONE_LEFT, clear: [assumed], likely: [assumed] };
  }
  return { ...NONE_LEFT, likely: [...(total?.likely ?? []), ...found.map(({ price }) => price)] };
}
