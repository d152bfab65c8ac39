/**
 * Sizes by which an ad names the sleeve that goods are made for: "50er Bohrung", "50 mm Aufnahme", "Durchmesser 30 mm" of plates,
 * "passend auf 30/31 mm Stangen", "all 50 mm". Read around the plain measures: telling words before them, bare sizes after them.
 */
import { isPlate, type Kind, NOMINAL_BORE } from '../../listing/reading.ts';
import { INCH_IN_MILLIMETRES } from '../../units/length.ts';
import type { Fact, Measure } from '../mention.ts';
import { says } from '../text/says.ts';
import { blank, findAll, type Scan, valueAt } from '../text/scan.ts';

const SIZE = '((?:n/)?n[-.]?f)';
const NICKNAMED = /(ns|m)(B|T)/dg;
const FOR_BARS = new RegExp(`[Xw][azmC]{0,3}(${SIZE}|ns)[mC]{0,2}k`, 'dg');
const WORD_BEHIND = new RegExp(`${SIZE}[mazoCD]{0,2}([TS])`, 'dg');
const WORD_FIRST = new RegExp(`([TS])[azmCocyU:=.(-]{0,4}${SIZE}`, 'dg');
/** "2 inch steel insert", "Stahlring 50,4 mm": the hole by the ring around it. */
const SIZED = /(?:n\/)?n[-.]?[f"]/dg;
const METRES = /(nfn)(?![uhqfx$s¤])/dg;
/** "... 1 inch. Clips included": a size that is a sentence of its own. */
const INCHES_ALONE = /(?<=^|[.;l()]z?|[,c]z)(n)(?:-?f|")(?=[.;l)]|$)/dg;
/** Sizes of one or two inches that end what is said. */
const INCHES = /n(?:-?f|")(?=[.:;,l)cM$]|$)/dg;
/** "4 25s, 4 10s, 2 inch", "4x45 2 inch and 4x10 1 inch": behind plates told by their weights. */
const BEHIND_WEIGHTS = /(?:ns,?|v,?|nu,?|xn,?|uk,?|sk,?|k\(?)$/;
/** "10 kg plates cast iron 1in": a size that ends a line of plates. */
const INCHES_LAST = /(?<=[kms_])(n)(?:-?f|")(?=[.;l)]|$)/dg;
const BARE = new RegExp(`${SIZE}(?=[,.;:l)(c|C•m/]|$)|(?<=[uk)])${SIZE}(?![xn])(?=[LMA$z])`, 'dg');

/** Sleeve that a hole or shaft end of so many millimetres belongs to: 48 to 53 is the 50 mm one, 24 to 32 the one-inch family. */
const systemOf = (mm: number): 'fits50' | 'fits25' | null =>
  mm >= 48 && mm <= 53 ? 'fits50' : mm >= 24 && mm <= 32 ? 'fits25' : null;

/** Millimetres of the size between two tokens; null when it is not in mm or cm. */
function millimetres(scan: Scan, [from, to]: readonly [number, number]): number | null {
  const value = valueAt(scan, from);
  const unit = scan.tokens[to]?.term?.length;
  if (value === null || (unit !== 'mm' && unit !== 'cm')) return null;
  return unit === 'cm' ? value * 10 : value;
}

/** Millimetres of inches that are one word of the dictionary ("two inch hole"). */
function inchesOf(scan: Scan, at: number): number | null {
  const term = scan.tokens[at]?.term;
  return term?.length === 'in' && term.value !== undefined ? term.value * INCH_IN_MILLIMETRES : null;
}

/** Kind of the last noun before a place, in its line where that is where to stop. */
function kindBefore(scan: Scan, at: number, reach = 20, stop = 'l'): Kind | undefined {
  for (let i = at - 1; i >= 0 && at - i < reach && scan.plain[i] !== stop; i -= 1)
    if (scan.plain[i] === 'k') return scan.tokens[i]?.term?.kind;
  return undefined;
}

/** "All 2 inch: …", "everything is 1 inch", "the plates are all 2 inch": words for the whole before a size. */
function isOfAll(scan: Scan, at: number): boolean {
  let whole = false;
  for (let i = at - 1; i >= 0 && at - i < 5 && scan.clause[i] === scan.clause[at]; i -= 1) {
    const term = scan.tokens[i]?.term;
    const sense = term?.sense;
    if (scan.plain[i] === 'k') return term?.plural === true && (isPlate(term.kind ?? 'other') || term.kind === 'bar');
    // "They are 2 inch."
    if (i < at - 1 && /^(?:they|these|those)$/.test(scan.tokens[i]?.text ?? '')) whole = true;
    else if (sense === 'whole' || (sense === 'definite' && scan.plain[i] === 'z') || scan.plain[i] === 'L') whole = true;
    else if (sense !== 'is') break;
  }
  return whole;
}

export function readNamedSizes(scan: Scan): Fact[] {
  const found: Fact[] = [];
  const push = (measure: Measure, value: number, rule: string, from: number, to: number): true => {
    found.push({ measure, value, rule, from, to });
    return true;
  };
  findAll(scan, NICKNAMED, ({ from, to, group }) => {
    const inches = inchesOf(scan, from);
    const mm = inches ?? millimetres(scan, group(1) ?? [from, from]);
    const system = mm === null ? null : systemOf(mm);
    if (mm === null || system === null) return false;
    const bore = scan.plain[to] === 'B';
    return push(bore ? 'boreMm' : system, mm, bore && inches !== null ? NOMINAL_BORE : 'nicknamed-size', from, to);
  });
  findAll(scan, FOR_BARS, ({ to, group }) => {
    const [start, end] = group(1) ?? [to, to];
    const mm = millimetres(scan, [start, end]);
    const system = mm === null ? null : systemOf(mm);
    if (mm === null || system === null || scan.tokens[to]?.term?.kind !== 'bar') return false;
    push(system, mm, 'for-bars-of', start, end);
    for (let i = start; i <= end; i += 1) blank(scan, i);
    return 'claimed';
  });
  const worded = (from: number, to: number, size: readonly [number, number] | null, word: number): boolean => {
    const mm = size ? millimetres(scan, size) : null;
    const system = mm === null ? null : systemOf(mm);
    if (mm === null || system === null || scan.tokens[word]?.term?.sense !== 'fit') return false;
    if (scan.plain[word] === 'T' || system === 'fits50') return push(system, mm, 'sleeve-size', from, to);
    const kind = kindBefore(scan, from);
    if (kind !== undefined && isPlate(kind)) return push('boreMm', mm, 'bore', from, to);
    if (kind === undefined || !kind.endsWith('bar')) return push(system, mm, 'sleeve-size', from, to);
    return push('shaftMm', mm, 'shaft', from, to);
  };
  findAll(scan, WORD_BEHIND, ({ from, to, group }) => worded(from, to, group(1), to));
  findAll(scan, WORD_FIRST, ({ from, to, group }) => worded(from, to, group(2), from));
  const inserted = (size: readonly [number, number] | null, word: number | undefined, from: number, to: number): boolean => {
    if (!size || word === undefined || !says(scan, word, 'insert')) return false;
    const value = valueAt(scan, size[0]) ?? 0;
    const unit = scan.tokens[size[1]]?.text === '"' ? 'in' : scan.tokens[size[1]]?.term?.length;
    const mm = unit === 'in' ? value * INCH_IN_MILLIMETRES : millimetres(scan, size);
    const system = mm === null ? null : systemOf(mm);
    if (mm === null || system === null) return false;
    // A whole size names the sleeve, a part of a millimetre was measured.
    return push(Number.isInteger(value) && mm !== 51 ? system : 'boreMm', mm, 'insert-size', from, to);
  };
  findAll(scan, SIZED, ({ from, to }) => {
    let word = to + 1;
    while (word - to < 4 && 'mC'.includes(scan.plain[word] ?? '_') && !says(scan, word, 'insert')) word += 1;
    if (inserted([from, to], word, from, word)) return true;
    word = from - 1;
    while (from - word < 4 && 'azmU:=(-'.includes(scan.plain[word] ?? '_') && !says(scan, word, 'insert')) word -= 1;
    return inserted([from, to], word, word, to);
  });
  findAll(scan, METRES, ({ from, to }) => {
    const metres = valueAt(scan, from) ?? 0;
    const rest = valueAt(scan, to) ?? 0;
    if (
      scan.tokens[from + 1]?.term?.length !== 'm' ||
      ![1, 2].includes(metres) ||
      !Number.isInteger(rest) ||
      rest < 10 ||
      rest > 99
    )
      return false;
    return push('lengthMm', metres * 1000 + rest * 10, 'metres-and-centimetres', from, to);
  });
  return found;
}

/**
 * Bare sizes ("4 x 20 kg, 50 mm", "all 50 mm") once the plain measures are read. Where bars go by the thickness of their ends, as in German
 * ads, a bar of 30 mm is of the one-inch family (common practice, no source).
 */
export function readBareSizes(scan: Scan, facts: readonly Fact[]): Fact[] {
  const found: Fact[] = [];
  findAll(scan, BARE, ({ from, to }) => {
    const mm = millimetres(scan, [from, to]);
    const system = mm === null ? null : systemOf(mm);
    if (mm === null || system === null || 'xGK'.includes(scan.plain[from - 1] ?? 'l') || scan.tokens[to]?.term?.length !== 'mm')
      return false;
    // In English a bare "28 mm" is as likely a shaft: only plates named before it make it a hole.
    if (system === 'fits25' && scan.language.code === 'en' && !isPlate(kindBefore(scan, from) ?? 'bar')) return false;
    // Nobody names a sleeve "50.4 mm" or "51 mm": somebody measured the holes.
    const range = /n[z-]$/.test(scan.plain.slice(Math.max(0, from - 2), from));
    const measured = system === 'fits50' && mm !== 50 && !range && isPlate(kindBefore(scan, from, 40, '') ?? 'bar');
    found.push({ measure: measured ? 'boreMm' : system, value: mm, rule: 'bare-size', from, to });
    return true;
  });
  findAll(scan, INCHES_ALONE, ({ from, to, group }) => {
    const [start] = group(1) ?? [from];
    const value = valueAt(scan, start);
    if ((value !== 1 && value !== 2) || scan.tokens[to]?.term?.length === 'ft') return false;
    found.push({ measure: value === 2 ? 'fits50' : 'fits25', value: value * 25.4, rule: 'inches-alone', from: start, to });
    return true;
  });
  findAll(scan, INCHES_LAST, ({ from, to, group }) => {
    const [start] = group(1) ?? [from];
    const value = valueAt(scan, start);
    const kind = kindBefore(scan, start);
    if ((value !== 1 && value !== 2) || !kind || !isPlate(kind) || scan.tokens[to]?.term?.length === 'ft') return false;
    found.push({ measure: value === 2 ? 'fits50' : 'fits25', value: value * 25.4, rule: 'inches-last', from: start, to });
    return true;
  });
  findAll(scan, INCHES, ({ from, to }) => {
    const value = valueAt(scan, from);
    if ((value !== 1 && value !== 2) || scan.tokens[to]?.term?.length === 'ft') return false;
    const kind = kindBefore(scan, from);
    const behind = BEHIND_WEIGHTS.test(scan.plain.slice(Math.max(0, from - 4), from)) && (kind === undefined || isPlate(kind));
    if (!behind && !isOfAll(scan, from)) return false;
    const rule = behind ? 'inches-behind' : 'inches-of-all';
    found.push({ measure: value === 2 ? 'fits50' : 'fits25', value: value * INCH_IN_MILLIMETRES, rule, from, to });
    return true;
  });
  if (scan.language.code !== 'de') return found;
  for (const fact of facts)
    if (fact.measure === 'shaftMm' && fact.value >= 29.5 && fact.value <= 31.5)
      found.push({ ...fact, measure: 'fits25', rule: 'thirty-millimetre-bar' });
  return found;
}
