/** A bar measured on a driveway, by whichever way was at hand, as a bow and what follows from it. All lengths in millimetres. */
import type { Correction } from '../listing/reading.ts';
import { type BowVerdict, bowFromCircle, bowFromString, bowFromWobble, bowVerdict } from '../mechanics/bow.ts';
import { exactly, type Range } from '../units/range.ts';

export type BarMeasure =
  /** Highest less lowest reading at the bend while the bar turns once. */
  | { readonly way: 'wobble'; readonly readingMm: number }
  /** A string along the shaft: its distance from the shaft at the widest place, wherever that is. */
  | { readonly way: 'string'; readonly offsetMm: number }
  /** The same where the widest place can't be got at: how far from one end of the string, and the string's length. */
  | { readonly way: 'stringAt'; readonly offsetMm: number; readonly atMm: number; readonly lengthMm: number }
  /** The circle that the end draws on two supports that stand evenly under the shaft. */
  | {
      readonly way: 'circle';
      readonly circleMm: number;
      readonly spanMm: number;
      readonly overhangMm: number;
      /** From the support away from the end that is watched. */
      readonly bendMm: number;
      readonly shaftMm: number;
    };

export interface Straightness {
  readonly bowMm: Range;
  readonly verdict: BowVerdict;
  /** The verdict is not the same over the whole range: a reading at the widest place would settle it. */
  readonly open: boolean;
}

/** Null where the measures can't belong to one bar. */
export function straightnessOf(measure: BarMeasure): Straightness | null {
  const bowMm = bowOf(measure);
  if (bowMm === null) return null;
  return { bowMm, verdict: bowVerdict(bowMm.likely), open: bowVerdict(bowMm.low) !== bowVerdict(bowMm.high) };
}

function bowOf(measure: BarMeasure): Range | null {
  try {
    if (measure.way === 'stringAt') return bowFromString(measure.offsetMm, measure.atMm, measure.lengthMm);
    if (measure.way === 'string') return measure.offsetMm >= 0 ? exactly(measure.offsetMm) : null;
    if (measure.way === 'wobble') return exactly(bowFromWobble(measure.readingMm));
    return exactly(bowFromCircle({ ...measure, bendOnShaftMm: measure.bendMm + (measure.shaftMm - measure.spanMm) / 2 }));
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

/** Paths that a verdict sets. */
export const straightnessPaths = (bar: string): readonly string[] => [`${bar}.condition.bent`, `${bar}.condition.straight`];

/** What a verdict says of a bar. A doubtful one is neither straight, whatever the ad says, nor bent. */
export function straightnessCorrections(bar: string, verdict: BowVerdict): Correction[] {
  const [bent = '', straight = ''] = straightnessPaths(bar);
  const measured = (path: string, value: boolean): Correction => ({ path, value, basis: 'measured' });
  if (verdict === 'usable') return [measured(straight, true)];
  if (verdict === 'bent') return [measured(bent, true)];
  return [measured(bent, false), measured(straight, false)];
}
