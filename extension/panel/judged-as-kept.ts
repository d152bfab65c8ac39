/** A kept ad judged with everything that the buyer said about it. */
import type { evaluate as Evaluate } from '../../src/evaluate.ts';
import type { Evaluation } from '../../src/listing/evaluation.ts';
import type { Correction } from '../../src/listing/reading.ts';
import type { Settings } from '../../src/listing/settings.ts';
import type { KeptAd } from '../store/index.ts';
import { adKey } from './ad-key.ts';
import { corrections, forAd, startSession } from './session.ts';
import { unpackEdits } from './stored-edits.ts';

export interface Judged {
  readonly evaluation: Evaluation;
  /** The same ad with more corrections behind the buyer's. */
  readonly withMore: (more: readonly Correction[]) => Evaluation;
}

export function judgedAsKept(
  evaluate: typeof Evaluate,
  { listing, edits }: Pick<KeptAd, 'listing' | 'edits'>,
  settings: Settings,
): Judged {
  const session = unpackEdits(startSession(adKey(listing), listing), edits, evaluate(listing, settings).reading.doubts);
  const own = forAd(settings, session);
  const said = corrections(session);
  return { evaluation: evaluate(listing, own, said), withMore: (more) => evaluate(listing, own, [...said, ...more]) };
}
