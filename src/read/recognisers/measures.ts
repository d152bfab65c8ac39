/** Bore, shaft, sleeve, length, capacity and tensile strength, in mm, cm, inches with fractions, feet and inches. */
import { NOMINAL_BORE } from '../../listing/reading.ts';
import { FOOT_IN_MILLIMETRES, INCH_IN_MILLIMETRES } from '../../units/length.ts';
import type { Fact, Measure } from '../mention.ts';
import { saysWithin } from '../text/says.ts';
import { blank, findAll, type Scan, unitBetween, valueAt } from '../text/scan.ts';

const LENGTH = "((?:n/)?n[-.]?(?:f|\"|''|')|[dai]f)";
/** "2 in. hole": the point of an abbreviation. */
const POINT = '[.]?';
const GAP = '[azmCocyU:=.(|-]{0,4}';
const CAPACITY = /K[azoUw:]{0,4}(n[-]?(?:[uh]|(?!n)))|(n[-]?[uh])[mzck]{0,3}K/dg;
const TENSILE = /(n)(?:z)?I|I[az:]{0,2}(n)/dg;
const FEET = /(n[-]?(?:f|'))-?(?:c)?(n[-]?(?:f|"|''))?/dg;
const BORE_BEHIND = new RegExp(`${LENGTH}${POINT}[mzaco]{0,3}B`, 'dg');
const BORE_FIRST = new RegExp(`B[azmCocyU:=.(k|-]{0,5}${LENGTH}`, 'dg');
/** "The hole is 50", "holes are tight, about 50.5 mm". */
const BORE_BARE = /B[azmU:=.(-]{0,4}(n)(?=[,.;l)]|$)/dg;
const BORE_ASIDE = new RegExp(`B[azmCocyU]{0,5},[azU]{0,4}${LENGTH}`, 'dg');
const SLEEVE_BEHIND = new RegExp(`${LENGTH}[mzaoCD]{0,2}T`, 'dg');
const SLEEVE_FIRST = new RegExp(`T${GAP}${LENGTH}`, 'dg');
const SHAFT_BEHIND = new RegExp(`${LENGTH}[ma]{0,2}S`, 'dg');
const SHAFT_FIRST = new RegExp(`S${GAP}${LENGTH}`, 'dg');
const BAR_OF = new RegExp(`${LENGTH}[mCk]{0,4}(k)`, 'dg');
const GOODS_OF = new RegExp(`${LENGTH}-?[mC]{0,4}([kt])`, 'dg');
const BAR_IS = new RegExp(`(k)[zacmyUSG,:(=-]{0,4}${LENGTH}`, 'dg');
const ALONE = new RegExp(`${LENGTH}(?!-?[xGk])`, 'dg');
const OVERALL = new RegExp(`${LENGTH}-?G|G${GAP}${LENGTH}`, 'dg');

/** Millimetres of the length between two tokens ("1 1/4 in", "28mm", "7'", `2"`), or null. */
function millimetres(scan: Scan, group: readonly [number, number] | null): number | null {
  if (!group) return null;
  // "an inch" is one.
  const value = scan.plain[group[0]] === 'a' ? 1 : valueAt(scan, group[0]);
  const unit = scan.tokens[group[1]];
  if (value === null || !unit) return null;
  const length =
    unit.term?.length ?? (unit.text === '"' || scan.plain[group[1] - 1] === "'" ? 'in' : unit.text === "'" ? 'ft' : null);
  const factor = { mm: 1, cm: 10, m: 1000, in: INCH_IN_MILLIMETRES, ft: FOOT_IN_MILLIMETRES };
  return length === null ? null : Math.round(value * factor[length] * 100) / 100;
}

/** "2 inch hole" names the sleeve that the hole is for: nobody has measured it. */
const isNominal = (scan: Scan, mm: number, from: number, to: number): boolean =>
  (mm === INCH_IN_MILLIMETRES || mm === 2 * INCH_IN_MILLIMETRES) &&
  !scan.tokens.slice(from, to + 1).some(({ term }) => term?.length === 'mm' || term?.length === 'cm');

/** "Uprights 2x3, 1 inch holes", "rack with 5/8 in holes": holes of a frame, with no goods told between. */
function isOfFrame(scan: Scan, from: number): boolean {
  for (let i = from - 1; i >= Math.max(0, from - 15) && scan.clause[i] === scan.clause[from]; i -= 1) {
    const term = scan.tokens[i]?.term;
    if ('suhvB'.includes(scan.plain[i] ?? '_')) return false;
    if (term?.part || term?.kind) return FRAMES.includes(term.part ?? term.kind ?? 'other');
  }
  return false;
}

/** Words that say in which direction a size is. */
const UPWARD = /^(?:tall|high|height|hoch|höhe|gesamthöhe)$/;
const ACROSS = /^(?:wide|width|breit|breite)$/;

/** "About two inches across": the family of the hole, and no measure of it. */
export const VAGUE_BORE = 'bore-vague';

const BARS = ['bar', 'curl-bar', 'hex-bar'];
/** Bars whose grip is as thick as a sleeve. */
const isThick = (scan: Scan, at: number): boolean => scan.tokens[at]?.term?.sense === 'thick';
const FRAMES = ['rack', 'stands', 'bench', 'storage'];

export function readMeasures(scan: Scan): Fact[] {
  const found: Fact[] = [];
  const kindAt = (at: number | undefined) => (at === undefined ? undefined : scan.tokens[at]?.term?.kind);
  const push = (measure: Measure, value: number, rule: string, from: number, to: number, unit?: 'lb' | 'kg' | null): void => {
    // "Some have the 2 inch hole": which is not said.
    if (measure === 'boreMm' && scan.tokens.slice(Math.max(0, from - 4), from).some(({ term }) => term?.sense === 'unknown'))
      return;
    // "NOT the 1 inch ones" says nothing of the goods.
    if (/N[a-z]{0,3}$/.test(scan.plain.slice(Math.max(0, from - 4), from)) && scan.clause[from - 1] === scan.clause[from]) return;
    const nominal = measure === 'boreMm' && isNominal(scan, value, from, to);
    // Nor is "about 5 cm" a measure of a hole.
    const whole = nominal || (measure === 'boreMm' && scan.tokens[to]?.term?.length === 'cm' && Number.isInteger(value / 10));
    const vague =
      (whole && /^[^.;]*U/.test(scan.plain.slice(from, to + 4))) ||
      (whole && /U.?$/.test(scan.plain.slice(Math.max(0, from - 2), from)));
    const hearsay = scan.plain.slice(Math.max(0, from - 4), to + 3).includes('y');
    found.push({
      measure,
      value,
      rule: vague ? VAGUE_BORE : nominal ? NOMINAL_BORE : rule,
      from,
      to,
      ...(unit === undefined ? {} : { unit }),
      ...(hearsay ? { hearsay } : {}),
    });
  };
  findAll(scan, TENSILE, ({ from, to, group }) => {
    const at = (group(1) ?? group(2))?.[0] ?? from;
    const value = valueAt(scan, at) ?? 0;
    const psi = value < 1000 ? value * 1000 : value;
    if (psi < 20_000 || psi > 400_000) return true;
    push('tensilePsi', psi, 'tensile', from, to);
    return true;
  });
  findAll(scan, CAPACITY, ({ from, to, group }) => {
    const [start, end] = group(1) ?? group(2) ?? [from, to];
    const value = valueAt(scan, start) ?? 0;
    const unit = unitBetween(scan, start, end);
    if (value < 100 || (unit === null && value > 3000)) return false;
    push('capacity', value, 'capacity', from, to, unit);
    return true;
  });
  const near = (pattern: RegExp, rule: string, judge: (mm: number, from: number, to: number) => Measure | null): void =>
    findAll(scan, pattern, ({ from, to, group }) => {
      const mm = millimetres(scan, group(1) ?? group(2));
      const measure = mm === null ? null : judge(mm, from, to);
      if (mm === null || measure === null) return false;
      push(measure, mm, rule, from, to);
      return true;
    });
  const boreOf = (mm: number, from: number): Measure | null =>
    isOfFrame(scan, from) ? 'otherMm' : mm >= 20 && mm <= 60 ? 'boreMm' : null;
  near(BORE_BEHIND, 'bore', boreOf);
  near(SLEEVE_BEHIND, 'sleeve', (mm) => (mm >= 20 && mm <= 60 ? 'sleeveMm' : mm > 60 && mm < 600 ? 'otherMm' : null));
  // "The ends are 2 inches thick": of the sleeves.
  const ofEnds = (from: number): boolean => {
    let first = from;
    while (from - first < 5 && scan.clause[first - 1] === scan.clause[from]) first -= 1;
    return saysWithin(scan, first, from, 'turning');
  };
  near(SHAFT_BEHIND, 'shaft', (mm, from) =>
    mm >= 45 && mm <= 60 && ofEnds(from)
      ? 'sleeveMm'
      : mm >= 22 && mm <= 60
        ? 'shaftMm'
        : mm > 150 && mm < 500
          ? 'diameterMm'
          : mm < 22
            ? 'otherMm'
            : null,
  );
  findAll(scan, FEET, ({ from, to, group }) => {
    const feet = millimetres(scan, group(1));
    const inches = group(2) ? millimetres(scan, group(2)) : 0;
    if (feet === null || inches === null || (group(2) && inches >= FOOT_IN_MILLIMETRES)) return false;
    const total = Math.round((feet + inches) * 100) / 100;
    const isFeet = (scan.tokens[group(1)?.[1] ?? to]?.term?.length ?? 'ft') === 'ft';
    const [behind = '', after = ''] = scan.tokens.slice(to + 1, to + 3).map(({ text }) => text);
    const tall = UPWARD.test(behind) && !/^ceiling/.test(after);
    const elsewhere = !tall && /^-?(tall|high|ceiling|ceilings|wide|deep|height|room|garage|x)/.test(behind);
    if (!isFeet || total < 900 || total > 2600 || elsewhere) return false;
    // In "7 ft and 4 x 45" the "and" is none of it.
    const end = (group(2) ?? group(1))?.[1] ?? to;
    push(tall ? 'heightMm' : 'lengthMm', total, 'feet', from, end);
    for (let i = from; i <= end; i += 1) blank(scan, i);
    return 'claimed';
  });
  near(BORE_FIRST, 'bore', boreOf);
  near(BORE_ASIDE, 'bore', (mm) => (mm >= 48 && mm <= 55 ? 'boreMm' : null));
  findAll(scan, BORE_BARE, ({ from, to, group }) => {
    const value = valueAt(scan, group(1)?.[0] ?? to) ?? 0;
    if (!(value >= 49 && value <= 54) && !(value >= 24 && value <= 32)) return false;
    push('boreMm', value, 'bore-bare', from, to);
    return true;
  });
  near(SLEEVE_FIRST, 'sleeve', (mm) => (mm >= 20 && mm <= 60 ? 'sleeveMm' : null));
  near(SHAFT_FIRST, 'shaft', (mm) => (mm >= 22 && mm <= 60 ? 'shaftMm' : mm > 150 && mm < 500 ? 'diameterMm' : null));
  findAll(scan, BAR_OF, ({ from, to, group }) => {
    const mm = millimetres(scan, group(1));
    const kind = kindAt(group(2)?.[0]);
    if (mm === null || !kind || !BARS.includes(kind)) return false;
    if (mm > 900 && mm < 2600) push('lengthMm', mm, 'bar-length', from, group(1)?.[1] ?? to);
    else if (mm >= 48 && mm <= 53 && isThick(scan, group(2)?.[0] ?? to)) push('shaftMm', mm, 'axle', from, group(1)?.[1] ?? to);
    else if (mm >= 48 && mm <= 53) push('fits50', 50, 'bar-of-two-inches', from, group(1)?.[1] ?? to);
    // Millimetres measure a shaft, inches name the kind of bar.
    else if (mm >= 24 && mm <= 25.5 && scan.tokens[group(1)?.[1] ?? to]?.term?.length === 'mm')
      push('shaftMm', mm, 'bar-shaft', from, group(1)?.[1] ?? to);
    else if (mm >= 24 && mm <= 25.5) push('fits25', 25, 'bar-of-one-inch', from, group(1)?.[1] ?? to);
    else if (mm > 25.5 && mm < 48) push('shaftMm', mm, 'bar-shaft', from, group(1)?.[1] ?? to);
    else return false;
    for (let i = from; i <= (group(1)?.[1] ?? to); i += 1) blank(scan, i);
    return 'claimed';
  });
  findAll(scan, GOODS_OF, ({ from, to, group }) => {
    const mm = millimetres(scan, group(1));
    const kind = kindAt(group(2)?.[0]);
    if (mm === null || (kind !== undefined && !['plate', 'bumper', 'micro', 'collars'].includes(kind))) return false;
    const end = group(1)?.[1] ?? to;
    if (mm >= 48 && mm <= 55) push('fits50', mm, 'goods-of-two-inches', from, end);
    else if (mm >= 24 && mm <= 32) push('fits25', mm, 'goods-of-one-inch', from, end);
    else return false;
    for (let i = from; i <= end; i += 1) blank(scan, i);
    return 'claimed';
  });
  findAll(scan, BAR_IS, ({ from, to, group }) => {
    const mm = millimetres(scan, group(2));
    const kind = kindAt(group(1)?.[0]);
    const bar = kind !== undefined && BARS.includes(kind);
    if (mm === null || kind === undefined) return false;
    const start = group(2)?.[0] ?? from;
    if (bar && mm > 900 && mm < 2600) push('lengthMm', mm, 'bar-length', start, to);
    else if (bar && mm > 25.5 && mm <= 40) push('shaftMm', mm, 'bar-shaft', start, to);
    else if (bar && mm >= 24 && mm <= 25.5)
      push(scan.tokens[to]?.term?.length === 'mm' ? 'shaftMm' : 'fits25', mm, 'bar-shaft', start, to);
    else if (mm >= 48 && mm <= 53 && bar && isThick(scan, from)) push('shaftMm', mm, 'axle', start, to);
    else if (mm >= 48 && mm <= 53 && (bar || kind === 'plate')) push('fits50', mm, 'goods-of-two-inches', start, to);
    else if (!bar && kind === 'plate' && mm >= 24 && mm <= 32) push('fits25', mm, 'goods-of-one-inch', start, to);
    else return false;
    for (let i = start; i <= to; i += 1) blank(scan, i);
    return 'claimed';
  });
  // A bare length behind a bar in a list of its measures: "20 kg, 28 mm, 2.2 m".
  near(ALONE, 'bar-measure', (mm, from, to) => {
    let i = from - 1;
    while (i >= 0 && from - i < 30 && scan.plain[i] !== 'k' && scan.tokens[i]?.term?.sense !== 'lifter') i -= 1;
    const bar = scan.tokens[i]?.term?.sense === 'lifter' || (scan.plain[i] === 'k' && BARS.includes(kindAt(i) ?? 'other'));
    // "Mixed 28 and 29 mm": which of them is not said.
    if (/n[c/-]$/.test(scan.plain.slice(Math.max(0, from - 2), from)) && mm < 50) return null;
    if (!bar || scan.plain[to + 1] === 'x' || scan.plain[from - 1] === 'x') return null;
    // A bar "of one inch" is of the one-inch family, whatever its shaft measures.
    if (mm === INCH_IN_MILLIMETRES) return 'fits25';
    return mm > 1100 && mm < 2600 ? 'lengthMm' : mm >= 24 && mm <= 40 ? 'shaftMm' : null;
  });
  near(OVERALL, 'length', (mm, from, to) => {
    const direction = scan.tokens.slice(from, to + 1).map(({ text }) => text);
    if (direction.some((word) => UPWARD.test(word))) return 'heightMm';
    if (direction.some((word) => ACROSS.test(word))) return 'widthMm';
    return mm > 900 && mm < 2600 ? 'lengthMm' : 'otherMm';
  });
  return found;
}
