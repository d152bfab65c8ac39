/** A kept ad judged with everything that the buyer said about it. */
import type { evaluate as Evaluate } from '../../src/evaluate.ts';
import type { Evaluation } from '../../src/listing/evaluation.ts';
import type { Correction } from '../../src/listing/reading.ts';
import type { Settings } from '../../src/listing/settings.ts';
import type { Place } from '../../src/trip/great-circle.ts';
import type { KeptAd } from '../store/index.ts';
import { adKey } from './ad-key.ts';
import { corrections, forAd, startSession } from './session.ts';
import { unpackEdits } from './stored-edits.ts';

export interface Judged {
  readonly evaluation: Evaluation;
  /** Where the seller is, as far as anybody knows. */
  readonly sellerAt: Place | null;
  /** The same ad with more corrections behind the buyer's. */
  readonly withMore: (more: readonly Correction[]) => Evaluation;
}

/** `supposed`: the place that the ad names, where that is clear. */
export function judgedAsKept(
  evaluate: typeof Evaluate,
  { listing, edits }: Pick<KeptAd, 'listing' | 'edits'>,
  settings: Settings,
  supposed: Place | null = null,
): Judged {
  // Only a doubt that was settled is looked for in the reading.
  const settled = edits.changes.some(({ by }) => by === 'doubt');
  const doubts = settled ? evaluate(listing, settings).reading.doubts : [];
  const session = unpackEdits(startSession(adKey(listing), listing), edits, doubts);
  const own = forAd(settings, session, supposed);
  const said = corrections(session);
  return {
    evaluation: evaluate(listing, own, said),
    sellerAt: own.sellerAt,
    withMore: (more) => evaluate(listing, own, [...said, ...more]),
  };
}
