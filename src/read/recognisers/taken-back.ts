/**
 * Sellers who correct themselves: "six, no wait, four 45s", "4x45, sorry, 2x45", "(edit: sorry only 4)", "Korrektur: es sind nur 5", "*four".
 * What was said first gives way to what was said last.
 */
import type { Place, Quantity } from '../mention.ts';
import { blank, type Scan, valueAt } from '../text/scan.ts';
import { isCount } from './notation.ts';
import { readUpdates, type Update, updateAt } from './updates.ts';

/** What may stand between the words taken back and the word that does it, and between that and the new words. */
const BESIDE_BEFORE = /^[,.;:()\-•lzUAc'"!?%aN]{0,5}$/;
const BESIDE_BEHIND = /^[,.;:(\-•zUAa%'"F!]{0,5}$/;
/** What can't stand around a bare count. */
const NO_COUNT_BEHIND = /^[-x/]?[uhqsfJ$x¢@%vn]/;
const ENDS = /^(?:[,.;!)lc(&k]|$|z)/;
const REACH = 9;

type Strength = 'sure' | 'maybe' | 'update';

function strengthAt(scan: Scan, at: number): Strength | null {
  const sense = scan.tokens[at]?.term?.sense;
  if (sense === 'retract') return 'sure';
  if (sense === 'retract-maybe') return 'maybe';
  return sense === 'update' ? 'update' : null;
}

const sameWeight = (a: Quantity, b: Quantity): boolean =>
  a.weight !== null && a.weight === b.weight && (a.unit === b.unit || a.unit === null || b.unit === null);

/** "Two more 45s", "another pair", "additional 25s": they come on top. */
export const isMore = (scan: Scan, quantity: Place): boolean =>
  scan.tokens
    .slice(Math.max(0, quantity.from - 4), quantity.to + 1)
    .some(({ text, term }) =>
      term?.sense === 'also'
        ? true
        : /^(?:more|another|additional|additionally|added|adding|found|extra|plus|weitere\w*|zusatzlich\w*|dazu|noch|nochmal|gefunden)$/.test(
            text,
          ),
    );

/** The one, with what only the other says. */
const inPlaceOf = (one: Quantity, other: Quantity): Quantity => ({
  ...one,
  unit: one.unit ?? other.unit,
  noun: one.noun ?? other.noun,
});

/** "Originally 160 lb but a 10 got lost": a piece that is gone is none of those on offer. */
const isLost = (scan: Scan, { rule, to }: Quantity): boolean =>
  /^(?:a|lone)-weight/.test(rule) && scan.plain[to + 1] === 'Q' && scan.tokens[to + 1]?.term?.sense !== 'other';

export function takeBack(scan: Scan, quantities: readonly Quantity[]): Quantity[] {
  let kept = resized(
    scan,
    quantities.filter((one) => !isLost(scan, one)),
  );
  const updates = readUpdates(scan);
  for (let at = 0; at < scan.tokens.length; at += 1) {
    const strength = strengthAt(scan, at);
    if (strength)
      kept =
        besides(scan, kept, at, strength) ??
        restated(scan, kept, at, strength, updates) ??
        recounted(scan, kept, at, strength) ??
        kept;
    else if (isStarred(scan, at)) kept = recount(scan, kept, at, at + 1) ?? kept;
  }
  return kept;
}

/** "2 olympic 35s. EDIT: they are 25s not 35s": the size that was told first gives way to the one it is not. */
function resized(scan: Scan, quantities: Quantity[]): Quantity[] {
  if (!scan.plain.includes('N')) return quantities;
  let told = quantities;
  for (const right of quantities) {
    const not = /^[k]?[,(]?[cz]?N[az]{0,2}(?=n)/.exec(scan.plain.slice(right.to + 1, right.to + 8));
    const wrong = not && right.weight !== null ? valueAt(scan, right.to + 1 + not[0].length) : null;
    const first = told.find(({ weight, to, count }) => weight !== null && weight === wrong && to < right.from && count !== null);
    if (!first || wrong === right.weight || (right.count !== null && right.count !== first.count)) continue;
    // "I have 25s, not 35s, and two of the 35s": only what is nowhere told again.
    if (told.some((one) => one !== first && one !== right && one.weight === right.weight)) continue;
    told = told.flatMap((one) =>
      one === right || (one.weight === wrong && one !== first && one.count === null && one.from > right.to)
        ? []
        : one === first
          ? [{ ...first, weight: right.weight, unit: right.unit ?? first.unit, rule: `${first.rule}-corrected` }]
          : [one],
    );
  }
  return told;
}

/** "4x45, scratch that, 2x45": both stand right beside the word. */
function besides(scan: Scan, all: readonly Quantity[], at: number, strength: Strength): Quantity[] | null {
  const before = all.findLast(({ to }) => to < at);
  const behind = all.find(({ from }) => from > at);
  if (!before || !behind || behind.weight === null || before.weight === null) return null;
  if (behind.count === null && before.count !== null) return null;
  if (!BESIDE_BEFORE.test(scan.plain.slice(before.to + 1, at))) return null;
  if (!BESIDE_BEHIND.test(scan.plain.slice(at + 1, behind.from)) || isMore(scan, behind)) return null;
  // Another size takes the place of the first only within the sentence.
  const close = strength !== 'update' && scan.clause[before.to] === scan.clause[behind.from];
  const other = close && (strength === 'sure' || before.count === behind.count);
  if (!sameWeight(before, behind) && !other) return null;
  return all.flatMap((one) => (one === before ? [] : one === behind ? [inPlaceOf(behind, before)] : [one]));
}

/** "Correction: 2x45, not 4": a size told before is told again with its count. */
function restated(
  scan: Scan,
  all: readonly Quantity[],
  at: number,
  strength: Strength,
  updates: readonly Update[],
): Quantity[] | null {
  if (strength === 'maybe' && !opensAnew(scan, at)) return null;
  const clause = scan.clause[at] ?? 0;
  const part = updateAt(updates, at);
  const told = all.filter(({ from, count, partitive }) => {
    if (from < at || count === null || partitive) return false;
    return part ? from <= part.to : (scan.clause[from] ?? 0) - clause <= 1;
  });
  const gone = new Set<Quantity>();
  for (const one of told) {
    if (isMore(scan, one) || scan.plain[one.from - 1] === 'N') continue;
    for (const other of all) {
      // What an update says holds for the text above and below it, a correction for what was said before.
      const earlier = part ? !updateAt(updates, other.from) || other.from < part.from : other.from < at;
      if (earlier && sameWeight(one, other) && other.count !== null && other.count !== one.count) gone.add(other);
    }
  }
  return gone.size > 0 ? all.filter((one) => !gone.has(one)) : null;
}

/** "Sorry, es sind 4x10 kg": the word begins the sentence, and goes on to say how it is. */
const opensAnew = (scan: Scan, at: number): boolean =>
  (at === 0 || scan.clause[at - 1] !== scan.clause[at]) &&
  scan.tokens
    .slice(at + 1, at + 4)
    .some(({ text }) => /^(?:only|just|nur|there are|there's|es sind|it's|its|make that)$/.test(text));

/** "Korrektur: es sind nur 5", "(edit: sorry only 4)": a bare count. */
function recounted(scan: Scan, all: readonly Quantity[], at: number, strength: Strength): Quantity[] | null {
  const clause = scan.clause[at] ?? 0;
  for (let i = at + 1; i <= at + REACH && (scan.clause[i] ?? Number.POSITIVE_INFINITY) - clause <= 1; i += 1) {
    if (!'nd'.includes(scan.letters[i] ?? '_')) continue;
    const told = scan.tokens
      .slice(Math.max(at + 1, i - 3), i)
      .some(({ text }) =>
        /^(?:only|just|nur|nur noch|there are|there is|there's|es sind|sind|sinds|it's|its|have|i have|of)$/.test(text),
      );
    const beside = BESIDE_BEHIND.test(scan.plain.slice(at + 1, i)) && i - at <= 3;
    const closed =
      strength === 'maybe' && i - at <= 2 && /^[,.;!)lk&]/.test(scan.plain.slice(i + 1) || 'l') && isBeside(scan, all, at);
    if (!told && !(beside && (strength === 'sure' || closed))) continue;
    return recount(scan, all, at, i);
  }
  return null;
}

/** "Selling six 45 lb plates. *four": a star before a count that stands alone. */
const isStarred = (scan: Scan, at: number): boolean =>
  scan.tokens[at]?.text === '*' &&
  'nd'.includes(scan.letters[at + 1] ?? '_') &&
  /[l.)]/.test(scan.plain[at + 2] ?? 'l') &&
  !/[xn]/.test(scan.plain[at - 1] ?? 'l');

/** Whether goods stand right before the word. */
function isBeside(scan: Scan, all: readonly Quantity[], at: number): boolean {
  // "Five, sorry four": a count alone.
  if ('nd'.includes(scan.plain[scan.plain[at - 1] === ',' ? at - 2 : at - 1] ?? '_')) return true;
  const last = all.findLast(({ to }) => to < at);
  return last !== undefined && BESIDE_BEFORE.test(scan.plain.slice(last.to + 1, at).replace(/^k/, ''));
}

function recount(scan: Scan, all: readonly Quantity[], at: number, countAt: number): Quantity[] | null {
  const count = valueAt(scan, countAt);
  const behind = scan.plain.slice(countAt + 1, countAt + 3);
  if (!isCount(count) || NO_COUNT_BEHIND.test(behind) || !ENDS.test(behind) || '$'.includes(scan.plain[countAt - 1] ?? '_'))
    return null;
  // "Five, sorry four, 25 lb bumpers".
  const next = all.find(({ from }) => from > countAt);
  if (next?.count === null && next.weight !== null && /^[,:]?$/.test(scan.plain.slice(countAt + 1, next.from))) {
    blank(scan, countAt);
    return all.map((one) => (one === next ? { ...one, count, rule: `${one.rule}-corrected` } : one));
  }
  const open = all.filter(({ to, count: was, weight }) => to < at && was !== null && was !== count && weight !== null);
  const last = open.at(-1);
  if (!last) return null;
  const beside = BESIDE_BEFORE.test(scan.plain.slice(last.to + 1, at));
  blank(scan, countAt);
  const sure = open.length === 1 || beside;
  return all.map((one) =>
    one === last
      ? { ...one, count, countImplied: false, rule: `${one.rule}-corrected`, ...(sure ? {} : { was: one.count ?? count }) }
      : one,
  );
}
