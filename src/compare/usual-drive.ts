/** Lots of which some have a drive that is known and some have none: a drive counted for one alone would make the other win by its silence. */
import type { Evaluation } from '../listing/evaluation.ts';
import type { Correction } from '../listing/reading.ts';
import { ORDINARY_MILES } from '../trip/outlook.ts';

/** One way in miles: as near, as usual and as far as a seller may be of whom nobody said where. Assumptions. */
export const USUAL_MILES = { near: 5, usual: ORDINARY_MILES, far: 60 } as const;

export interface Lot {
  /** With the usual drive where it is assumed. */
  readonly evaluation: Evaluation;
  /** The same near by and far off, where the drive is assumed; else null. */
  readonly apart: { readonly near: Evaluation; readonly far: Evaluation } | null;
  /** What was assumed, as corrections; none where nothing was. */
  readonly assumed: readonly Correction[];
}

const at = (miles: number): readonly Correction[] => [{ path: 'distance', value: miles, unit: 'mi' }];

/**
 * Lots ready to be held against each other. Where every one that has a price has a drive, or none has, they stay as they are; else those
 * without are judged at the usual distance. `judge` judges lot number `index` with more corrections behind the buyer's.
 */
export function withUsualDrive(
  evaluations: readonly Evaluation[],
  judge: (index: number, more: readonly Correction[]) => Evaluation,
): readonly Lot[] {
  const priced = evaluations.filter(({ worth }) => worth.allIn !== null);
  const some = priced.some(({ trip }) => trip !== null) && priced.some(({ trip }) => trip === null);
  return evaluations.map((evaluation, index): Lot => {
    if (!some || evaluation.worth.allIn === null || evaluation.trip !== null) return { evaluation, apart: null, assumed: [] };
    const assumed = at(USUAL_MILES.usual);
    const apart = { near: judge(index, at(USUAL_MILES.near)), far: judge(index, at(USUAL_MILES.far)) };
    return { evaluation: judge(index, assumed), apart, assumed };
  });
}
