/** What is left of counted goods: "sold two, four left", "two of the 45s sold", "4 sind schon weg, noch 6 da". */
import type { Quantity } from '../mention.ts';
import { blank, findAll, type Scan, valueAt } from '../text/scan.ts';
import { isCount } from './notation.ts';

/** "four left", "only six remaining". */
const LEFT = /([nd])(p?)k?&/dg;
/** "noch 6 da", "nur noch 4 Stück". */
const STILL = /([zA])([nd])(?=[zjk&.,;!)l]|$)/dg;
/** "sold two", "sold 2 of them". */
const SOLD_SO_MANY = /Y([nd])(?=[.,;!)lcz&]|$)/dg;
/** "4 sold", "two are gone", "4 sind schon weg". */
const SO_MANY_SOLD = /([nd])[zac]{0,2}Y/dg;
const SOLD_BEHIND = /^[mk]{0,2}(?:[zF%]{0,2})Y/;
const TAKEN = /(?:^| )(?:took|bought|takes|kept|keeping|keep|sold|behalte|behalt|verkauft)$/;

const LEFT_BEHIND = /^(?:\S+ )?(?:left|remaining|ubrig)\b/;
const ONLY_BEFORE = /(?:\bnur noch|\bonly left:?)$/;

const words = (scan: Scan, from: number, to: number): string =>
  scan.tokens
    .slice(Math.max(0, from), Math.max(0, to))
    .map(({ text }) => text)
    .join(' ');

/** "Some odd 1.25 kg plates. Four of the 1.25s I think": the count of those told without one. */
function supposed(scan: Scan, all: readonly Quantity[], part: Quantity): Quantity[] {
  const opens = part.from === 0 || scan.clause[part.from - 1] !== scan.clause[part.from];
  const open = all.filter(({ weight, count, to }) => weight === part.weight && count === null && to < part.from);
  if (!opens || open.length !== 1 || !/^[,]?(?:y|[.l]|$)/.test(scan.plain.slice(part.to + 1, part.to + 3))) return [...all];
  const said = { count: part.count, countImplied: scan.plain.slice(part.to + 1, part.to + 3).includes('y') };
  return all
    .filter((one) => one !== part)
    .map((one) => (one === open[0] ? { ...one, ...said, rule: `${one.rule}-counted-later` } : one));
}

export function readLeftOver(scan: Scan, quantities: readonly Quantity[]): Quantity[] {
  if (!/[Y&]/.test(scan.plain) && !scan.text.toLowerCase().includes('noch') && !quantities.some(({ partitive }) => partitive))
    return [...quantities];
  let kept = [...quantities];
  /** The goods of which so many are left, told right before or alone of their count. */
  const target = (at: number, least: number, exact = false): Quantity | null => {
    const open = kept.filter(
      ({ to, from, count, weight, partitive }) =>
        (exact ? to < at : from !== at) && count !== null && weight !== null && !partitive && count > least,
    );
    const before = open.findLast(({ to }) => to < at);
    const near = before && (scan.clause[at] ?? 0) - (scan.clause[before.to] ?? 0) <= 2 ? before : undefined;
    return near ?? (open.length === 1 ? (open[0] ?? null) : null);
  };
  const put = (one: Quantity, count: number): void => {
    kept = kept.map((other) => (other === one ? { ...one, count, countImplied: false, rule: `${one.rule}-left` } : other));
  };
  // "Two of the 45s sold": fewer of those told, of which the ad goes on to speak.
  for (const part of quantities.filter(({ partitive, weight }) => partitive && weight !== null)) {
    const sold = SOLD_BEHIND.exec(scan.plain.slice(part.to + 1, part.to + 6));
    const taken = scan.tokens.slice(Math.max(0, part.from - 2), part.from).find(({ text }) => TAKEN.test(text));
    const whole = kept.find(
      ({ weight, count, partitive }) => weight === part.weight && !partitive && count !== null && count > (part.count ?? 0),
    );
    if (!sold && !taken && part.count) kept = supposed(scan, kept, part);
    if ((!sold && !taken) || !whole?.count || !part.count) continue;
    put(whole, whole.count - part.count);
    if (sold) blank(scan, part.to + sold[0].length);
    else if (scan.plain[part.from - 1] === 'Y') blank(scan, part.from - 1);
    kept = kept.map((other) => (other === part ? { ...part, count: null, partitive: false } : other));
  }
  // "Two 45 lb plates left" below a title that says four.
  for (const one of quantities.filter(({ count, weight, partitive }) => count !== null && weight !== null && !partitive)) {
    if (!LEFT_BEHIND.test(words(scan, one.to + 1, one.to + 3)) && !ONLY_BEFORE.test(words(scan, one.from - 2, one.from)))
      continue;
    kept = kept.filter(
      (other) => other === one || other.weight !== one.weight || other.to > one.from || (other.count ?? 0) <= (one.count ?? 0),
    );
  }
  const leftClauses = new Set<number | undefined>();
  const left = (at: number, last: number, pairs: boolean): boolean | 'claimed' => {
    const pieces = valueAt(scan, at);
    const count = pieces !== null && pairs ? pieces * 2 : pieces;
    if (!isCount(count)) return false;
    leftClauses.add(scan.clause[at]);
    const one = target(at, count);
    if (!one) return false;
    put(one, count);
    for (let i = at; i <= last; i += 1) blank(scan, i);
    return 'claimed';
  };
  findAll(scan, LEFT, ({ from, to, group }) =>
    /^(?:left|remaining|ubrig)$/.test(scan.tokens[to]?.text ?? '') ? left(from, to, group(2) !== null) : false,
  );
  findAll(scan, STILL, ({ from, to }) => {
    const behind = scan.tokens[to + 1]?.text ?? '';
    if (
      !/^(?:nur )?noch$/.test(scan.tokens[from]?.text ?? '') ||
      !/^(?:da|ubrig|vorhanden|verfugbar|zu haben|stuck|stk|stuck da|stuck vorhanden|stuck verfugbar)$/.test(behind)
    )
      return false;
    return left(to, to, false);
  });
  const gone = (at: number, soldAt: number): boolean | 'claimed' => {
    const count = valueAt(scan, at);
    if (!isCount(count) || isTold(scan, at)) return false;
    const one = target(at, count, true);
    if (!one?.count) return false;
    // "Six 45s, no wait, four 45s, I sold two": the second count is what is left of the first.
    const before = kept.findLast((other) => other !== one && other.weight === one.weight && other.to < one.from);
    if (before?.count === one.count + count && isTakenBack(scan, before.to, one.from)) {
      blank(scan, at);
      blank(scan, soldAt);
      return 'claimed';
    }
    if (!leftClauses.has(scan.clause[at])) put(one, one.count - count);
    blank(scan, at);
    blank(scan, soldAt);
    return 'claimed';
  };
  findAll(scan, SOLD_SO_MANY, ({ from, to }) => gone(to, from));
  findAll(scan, SO_MANY_SOLD, ({ from, to }) => gone(from, to));
  return kept;
}

/** Whether the seller corrects himself between two tokens. */
const isTakenBack = (scan: Scan, from: number, to: number): boolean =>
  scan.tokens.slice(from + 1, to).some(({ term }) => term?.sense === 'retract' || term?.sense === 'retract-maybe');

/** "(was 4, sold one)": the count before the sale is told; what stands elsewhere is the rest. */
const isTold = (scan: Scan, at: number): boolean => /F[nd]?[,c]?[^.;l]{0,3}$/.test(scan.plain.slice(Math.max(0, at - 5), at));
