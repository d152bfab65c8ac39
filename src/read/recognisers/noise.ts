/** Numbers that are neither weights nor prices: phone numbers, dates, times, years, room sizes, lifts and bodies, timber, addresses. They are used up first. */
import { begins } from '../text/says.ts';
import { findAll, type Scan, valueAt } from '../text/scan.ts';

const PHONE = /\(?n\)?[-.]?(?:n[-.]?)?n/dg;
const LONG = /n/dg;
const TIME = /n:n/dg;
const DATE = /n[/.-]n[/.-]n/dg;
const OTHER_UNITS = /(?:n-)?nJ/dg;
const ROOM = /(?:n(?:[-]?f|"|')?x){1,2}n(?:[-]?f|"|')?/dg;
/** "4x4s", "3x3 uprights", "built of 2x12": sizes of timber, tubes, mats and rooms, where the clause speaks of those. */
const SIZES = /n(?:f|["'])?xn(?:f|["'])?s?(?![uhq])/dg;
const LIFTS = /P[azoycw:=U]{0,3}n[uh]?(?:[cazo]{1,2}n[uh]?)?/dg;
const LIFT_BEHIND = /(?<=[zacP])n[uh]?P/dg;
/** "bench 185x5 squat 275", "squat 275, bench 185": a bench that is lifted. */
const BENCHED = /(?<=_[,/c]{0,2})kn[uh]?(?:xn)?|k(?:n[uh]?(?:xn)?|__{1,3})(?=[,/cz]{0,2}[P_])/dg;
const PROGRAM = /nxn(?=[PJ])/dg;
/** "#12" is a number of a house or a lot; "12#" is twelve pounds. */
const NUMBERED = /hn(?:-n)?(?![uhqs])/dg;
/** "Under 30 lb: $1.25/lb": a step of a price list. */
const STEP = /Un[uh]s?[:=-]{1,2}(?=\$)/dg;
const AGED = /n(?=-?J)/dg;
/** "From the 70s", "early 80s": a decade. */
const DECADE = /[zU]a?ns(?![mC]{0,3}k)/dg;
const BEFORE_DECADE = /^(?:(?:from|in|since|of)(?: the)?|early|late|mid|back in the)$/;

const digits = (scan: Scan, at: number): number =>
  scan.tokens[at]?.text.replace(/[.,]\d{1,2}$/, '').replace(/\D/g, '').length ?? 0;

/** Whether words of timber, tubes, mats or rooms stand near in the clause. */
function speaksOfSizes(scan: Scan, from: number, to: number): boolean {
  for (let i = Math.max(0, from - 7); i <= Math.min(scan.tokens.length - 1, to + 9); i += 1) {
    if (scan.clause[i] !== scan.clause[from]) continue;
    const token = scan.tokens[i];
    const named = token?.text.split(' ').some((word) => scan.language.dictionary.get(word)?.term?.sense === 'sizes');
    if (named || token?.term?.sense === 'sizes' || token?.term?.material === 'wood') return true;
  }
  return false;
}

/** "4 x 20 kg, true mass 19.9 / 20.1 / 20.3 / 20.4 kg": what the pieces told before weigh on a scale. */
const WEIGHED_OUT = /z[:=isU]{0,2}n[uh]?(?:[,/c-]{1,2}n[uh]?){0,12}/dg;
/** "45 lb each, give or take 2 lb": by how much it may be wrong. */
const TOLERANCE = /z[aU]?n[uh]?/dg;
/** "I used to pull 3 plates": a lift told in plates. */
const PULLED = /zn(?=k)/dg;
/** "Min. purchase 100 lb": what a buyer must take at least. */
const LEAST = /z[.:]?[oU]?n[uh]/dg;

/** "2x10 x 12 ft, 14 boards … $8 each for 2x10": a size that was one of timber is one wherever it stands again. */
function claimRepeated(scan: Scan): void {
  const pair = (at: number): string => `${valueAt(scan, at)}x${valueAt(scan, at + 2)}`;
  const sizes = new Set<string>();
  const timber = (at: number): boolean =>
    scan.letters[at] === '_' && scan.plain.slice(at, at + 4) === 'nxnx' && scan.plain.slice(at + 4, at + 6) === 'nf';
  for (let i = 0; i + 2 < scan.tokens.length; i += 1) if (timber(i)) sizes.add(pair(i));
  if (sizes.size > 0) findAll(scan, /nxn(?![uhqs])/dg, ({ from }) => sizes.has(pair(from)));
}

export function claimNoise(scan: Scan): void {
  findAll(scan, PHONE, ({ from, to }) => {
    const lengths: number[] = [];
    for (let i = from; i <= to; i += 1) if (scan.plain[i] === 'n') lengths.push(digits(scan, i));
    const shape = lengths.join('-');
    return (
      shape === '3-3-4' ||
      (shape === '3-4' && scan.plain[from + 1] === '-') ||
      shape === '5-6' ||
      shape === '4-6' ||
      shape === '5-3-3' ||
      shape === '4-3-4' ||
      shape === '4-3-3'
    );
  });
  findAll(scan, LONG, ({ from }) => {
    const token = scan.tokens[from];
    const value = token?.value ?? 0;
    if (!token || token.text.includes(',')) return false;
    const previous = scan.tokens[from - 1];
    // "M16", "BT9", "L4": part of a name.
    if (
      token.glued &&
      previous?.type === 'word' &&
      (previous.term === null || scan.plain[from - 1] === 'z') &&
      previous.text.length <= 3 &&
      previous.text !== 'x'
    )
      return true;
    if (digits(scan, from) >= 7) return true;
    const before = scan.plain[from - 1] ?? 'l';
    const after = scan.plain[from + 1] ?? 'l';
    const year = /^(19[4-9]\d|20[0-4]\d)$/.test(token.text);
    return (
      year &&
      after !== 'f' &&
      !'$'.includes(before) &&
      !'uh$'.includes(after) &&
      !(before === ':' && scan.plain[from - 2] === 'A') &&
      before !== 'A' &&
      value > 0
    );
  });
  findAll(
    scan,
    TIME,
    ({ from, to }) => digits(scan, to) === 2 && scan.tokens[to]?.glued === true && (valueAt(scan, from) ?? 99) <= 24,
  );
  findAll(scan, DATE, ({ from, to }) => digits(scan, to) === 4 && (valueAt(scan, from) ?? 99) <= 31);
  findAll(scan, WEIGHED_OUT, ({ from }) => {
    if (scan.tokens[from]?.term?.sense !== 'measured') return false;
    for (let i = from - 1; i > 0 && scan.clause[i] === scan.clause[from]; i -= 1)
      if ('uh'.includes(scan.plain[i] ?? '_') && scan.plain[i - 1] === 'n') return true;
    return false;
  });
  findAll(scan, PULLED, ({ from, to }) => scan.tokens[from]?.term?.sense === 'pull' && (valueAt(scan, to) ?? 9) <= 8);
  if (scan.senses.has('tolerance')) findAll(scan, TOLERANCE, ({ from }) => scan.tokens[from]?.term?.sense === 'tolerance');
  findAll(scan, LEAST, ({ from }) => scan.tokens[from]?.term?.sense === 'least');
  findAll(scan, PROGRAM, () => true);
  findAll(scan, SIZES, ({ from, to }) => {
    const first = valueAt(scan, from) ?? 0;
    const numbers = [first];
    for (let i = from + 1; i <= to; i += 1) if (scan.plain[i] === 'n') numbers.push(valueAt(scan, i) ?? 0);
    const second = numbers[1] ?? 0;
    const sized = (first <= 12 && second <= 14) || (first === second && first >= 30);
    // No plates are cast at 2, 3, 4 or 6 pounds; posts and boards are sold in those sizes.
    const timber = [1, 2, 3, 4, 6, 8].includes(first) && ([2, 3, 4, 6].includes(second) || (first === 2 && second === 12));
    // "a 2x8 or 2x10": one piece of it is no count of plates.
    const before = scan.tokens[from - 1];
    const one = /^an?$/.test(before?.text ?? '') || (before?.term?.sense === 'or' && scan.letters[from - 2] === '_');
    return timber || one || (sized && speaksOfSizes(scan, from, to));
  });
  findAll(scan, NUMBERED, ({ from }) => scan.plain[from - 1] !== 'n' || scan.tokens[from]?.glued === false);
  findAll(scan, OTHER_UNITS, () => true);
  findAll(scan, STEP, ({ from }) => scan.tokens[from]?.term?.sense === 'bound');
  findAll(scan, AGED, () => true);
  findAll(scan, DECADE, ({ from, to }) => {
    const words = scan.tokens.slice(from, to - 1).map(({ text }) => text);
    return BEFORE_DECADE.test(words.join(' ')) && [50, 60, 70, 80, 90].includes(valueAt(scan, to - 1) ?? 0);
  });
  findAll(scan, ROOM, ({ from, to }) => {
    // "Bar is 27mm x 230cm": its shaft and its length.
    const units = scan.tokens.slice(from, to + 1).flatMap(({ term }) => term?.length ?? []);
    if (units[0] === 'mm' && units.length === 2 && units[1] !== 'mm') return false;
    let lengths = 0;
    let numbers = 0;
    for (let i = from; i <= to; i += 1) {
      if ('f"\''.includes(scan.plain[i] ?? '_')) lengths += 1;
      if (scan.plain[i] === 'n') numbers += 1;
    }
    const timber =
      numbers === 2 &&
      valueAt(scan, from) === 2 &&
      [3, 4, 6, 8, 12].includes(valueAt(scan, to) ?? 0) &&
      !'uhsk'.includes(scan.plain[to + 1] ?? 'l');
    return lengths > 0 || numbers === 3 || timber;
  });
  claimRepeated(scan);
  // "I'm thinking like 95" asks for it.
  findAll(scan, LIFTS, ({ from }) => scan.tokens[from]?.text !== 'weighs' && !begins(scan, from + 1, 'before-price'));
  findAll(scan, LIFT_BEHIND, () => true);
  findAll(scan, BENCHED, ({ from, to }) => {
    const noun = scan.tokens[from]?.term;
    // "Bench 80 and I'm not coming off that."
    const said = scan.tokens.slice(Math.max(0, from - 5), to + 6);
    const lifts = said.some(({ term, text }) => term?.code === 'P' && !/^i'?m$/.test(text));
    return noun?.kind === 'bench' && !noun.plural && lifts && (valueAt(scan, from + 1) ?? 0) >= 65;
  });
}
