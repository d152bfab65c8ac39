/** A bar measured on a driveway, by whichever way was at hand, as a bow and what follows from it. All lengths in millimetres. */
import type { Correction, Item } from '../listing/reading.ts';
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
  /** Never usable while the measure leaves more open: what is not known to be straight is doubtful. */
  readonly verdict: BowVerdict;
  /** The verdict is not the same over the whole range: a reading at the widest place would settle it. */
  readonly open: boolean;
}

/** Null where the measures can't belong to one bar. */
export function straightnessOf(measure: BarMeasure): Straightness | null {
  const bowMm = bowOf(measure);
  if (bowMm === null) return null;
  const likely = bowVerdict(bowMm.likely);
  const open = bowVerdict(bowMm.low) !== bowVerdict(bowMm.high);
  return { bowMm, verdict: open && likely === 'usable' ? 'doubtful' : likely, open };
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

/** Paths that a measure sets. */
export const straightnessPaths = (bar: string): readonly string[] => [
  `${bar}.condition.bent`,
  `${bar}.condition.straight`,
  `${bar}.bowMm`,
];

/** What a measure says of a bar: its likely bow, and straight or bent. A doubtful one is neither straight, whatever the ad says, nor bent. */
export function straightnessCorrections(bar: string, { bowMm, verdict }: Straightness): Correction[] {
  const [bent = '', straight = '', bow = ''] = straightnessPaths(bar);
  const measured = (path: string, value: boolean): Correction => ({ path, value, basis: 'measured' });
  const found: Correction = { path: bow, value: Math.round(bowMm.likely * 10) / 10, unit: 'mm', basis: 'measured' };
  if (verdict === 'usable') return [measured(straight, true), found];
  if (verdict === 'bent') return [measured(bent, true), found];
  return [measured(bent, false), measured(straight, false), found];
}

/** What was measured of a bar before; null where it never was. */
export function straightnessBefore({
  bowMm,
  conditions,
}: Item): { readonly verdict: BowVerdict; readonly bowMm: number | null } | null {
  const known = conditions.find(({ value, basis }) => basis === 'measured' && (value === 'bent' || value === 'straight'));
  if (known === undefined && bowMm?.basis !== 'measured') return null;
  const verdict = known === undefined ? 'doubtful' : known.value === 'bent' ? 'bent' : 'usable';
  return { verdict, bowMm: bowMm?.basis === 'measured' ? bowMm.value : null };
}
