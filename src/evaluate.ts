/** The one door: an ad and the buyer's settings in, the answer out. No clock, no chance, no network: the same input gives the same answer. */
import { cautionsOf } from './flags/cautions.ts';
import { raiseFlags } from './flags/index.ts';
import type { Evaluation } from './listing/evaluation.ts';
import type { PageListing } from './listing/page-listing.ts';
import type { Correction, Reading } from './listing/reading.ts';
import type { Settings } from './listing/settings.ts';
import { estimatesOf } from './mechanics/estimates.ts';
import { exchangeSteps, pricedInOwn } from './price/exchange.ts';
import { appraise } from './price/index.ts';
import { withLikelyBars } from './price/likely-bars.ts';
import { plateWeights } from './price/usable.ts';
import { correct } from './read/correct.ts';
import { read } from './read/index.ts';
import { decide } from './trip/call.ts';
import { driveOf, tripOf } from './trip/drive.ts';
import { lookAhead } from './trip/outlook.ts';
import { tripSteps } from './trip/steps.ts';

export const evaluate = (listing: PageListing, settings: Settings, corrections: readonly Correction[] = []): Evaluation =>
  judge(read(listing, readAs(settings, corrections)), settings, corrections);

/** The language to read in: the buyer's word for this ad, else the setting, else null for the ad's own. */
function readAs(settings: Settings, corrections: readonly Correction[]): Reading['language'] | null {
  const said = corrections.findLast(({ path }) => path === 'language')?.value ?? settings.language;
  return said === 'en' || said === 'de' ? said : null;
}

/** Judges a reading: correct → usable weight → flags → worth → trip → questions → call. */
export function judge(asRead: Reading, settings: Settings, corrections: readonly Correction[] = []): Evaluation {
  const { reading, applied } = correct(asRead, [...settings.corrections, ...corrections]);
  const priced = withLikelyBars(pricedInOwn(reading, settings));
  const plates = plateWeights(priced, settings);
  const flags = raiseFlags(priced, plates, settings);
  const drive = driveOf(priced, settings);
  const appraisal = appraise(priced, plates, flags, settings, drive?.total ?? null, tripSteps(drive, settings));
  const { questions, prospect, decisive } = lookAhead(priced, plates, appraisal, settings, drive?.total.likely ?? null);
  const { ceiling, price } = appraisal;
  const onPaper = ceiling === null || price === null ? null : ceiling - price.range.likely;
  const trip = tripOf(drive, reading, settings, prospect?.saving.minor ?? onPaper);
  const call = decide({ reading: priced, flags, appraisal, trip, prospect, decisive, settings });
  const worth = { ...appraisal.worth, steps: [...exchangeSteps(reading, price, settings), ...appraisal.worth.steps] };
  const estimates = estimatesOf(reading, settings);
  const cautions = cautionsOf(reading, flags);
  return { reading, corrections: applied, flags, estimates, cautions, worth, trip, prospect, questions, call };
}
