/** Weighed plates as people write them down: "46.2 44.8 45.1", "45: 46.2, 44.8 lb", one a line or all in one. */
import { inPounds, type MassUnit, type Weight } from '../units/mass.ts';

export interface Weighing {
  /** What it weighs, as written. */
  readonly weight: Weight;
  /** What is cast on it; null where neither the line nor the caller says. */
  readonly face: Weight | null;
  /** Line it stands in, from 1. */
  readonly line: number;
}

export interface Misread {
  readonly line: number;
  readonly text: string;
  /** `no-weight`: not a number above zero; `far-off`: a number, but no plate of that face value weighs so much; `too-many`: beyond the most. */
  readonly why: 'no-weight' | 'far-off' | 'too-many';
}

export interface Weighings {
  readonly read: readonly Weighing[];
  readonly misread: readonly Misread[];
}

export const MOST_WEIGHINGS = 60;

/** Cast 45s from 41.75 to 59.5 lb have been seen: −7 and +32 per cent. What lies well outside is a slip of the pen. Common practice, no source. */
const FROM = 0.75;
const TO = 1.45;

const UNIT = 'lbs?|pounds?|kgs?|kilos?|pfund';
const FACE = new RegExp(`^\\s*(\\d+(?:[.,]\\d+)?)\\s*(${UNIT})?\\s*s?\\s*[:=]\\s*`, 'i');
const TOKEN = new RegExp(`^(\\d+(?:\\.\\d+)?|\\.\\d+)(${UNIT})?$`, 'i');
const BLANK_BEFORE_UNIT = new RegExp(`(\\d)[ \\t]+(${UNIT})(?=$|[\\s,;])`, 'gi');

const unitOf = (word: string): MassUnit => (/^k/i.test(word) ? 'kg' : 'lb');

/**
 * Decimals with points. A comma between digits is the decimal sign where semicolons part the weights, where every comma of the line stands
 * between digits with one digit behind it ("20,3 19,8"), and where it is the writer's own and no point is there; otherwise it parts weights.
 */
export function withPoints(line: string, decimal: '.' | ',' = '.'): string {
  const commas = [...line.matchAll(/,/g)].length;
  const tenths = [...line.matchAll(/\d,\d(?!\d)/g)].length;
  const isDecimal = line.includes(';') || (commas > 0 && (decimal === ',' || commas === tenths) && !line.includes('.'));
  return isDecimal ? line.replace(/(\d),(?=\d)/g, '$1.') : line;
}

/**
 * Every weight of a text, in `unit` unless one is written behind it (which then holds for that weight). "45:" at the head of a line gives
 * the face value for that line; otherwise it is `face`, and without one nothing is held against it. What can't be read is given back, never dropped in silence.
 */
export function readWeighings(text: string, face: Weight | null, unit: MassUnit, decimal: '.' | ',' = '.'): Weighings {
  const read: Weighing[] = [];
  const misread: Misread[] = [];
  for (const [index, whole] of text.split(/\r?\n/).entries()) {
    const line = index + 1;
    const head = FACE.exec(whole);
    const own = head?.[1] === undefined ? null : Number(head[1].replace(',', '.'));
    const headUnit = head?.[2] === undefined ? (face?.unit ?? unit) : unitOf(head[2]);
    const ofLine = own === null || own <= 0 ? face : { value: own, unit: headUnit };
    const rest = withPoints(whole.slice(head?.[0].length ?? 0), decimal).replace(BLANK_BEFORE_UNIT, '$1$2');
    for (const part of rest.split(/[\s,;]+/).filter((one) => one !== '')) {
      const token = TOKEN.exec(part);
      const weight: Weight = { value: Number(token?.[1]), unit: token?.[2] === undefined ? unit : unitOf(token[2]) };
      const share = ofLine === null ? 1 : inPounds(weight) / inPounds(ofLine);
      if (token === null || !(weight.value > 0)) misread.push({ line, text: part.slice(0, 40), why: 'no-weight' });
      else if (!(share >= FROM && share <= TO)) misread.push({ line, text: part.slice(0, 40), why: 'far-off' });
      else if (read.length >= MOST_WEIGHINGS) misread.push({ line, text: part.slice(0, 40), why: 'too-many' });
      else read.push({ weight, face: ofLine, line });
    }
  }
  return { read, misread };
}
