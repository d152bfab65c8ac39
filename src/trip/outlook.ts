/** Looks ahead to what the buyer may find: the unknowns, the states they can take, and which of them would turn the decision. */
import { raiseFlags } from '../flags/index.ts';
import type { Question } from '../listing/evaluation.ts';
import type { Reading } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import { goodsOf } from '../price/goods.ts';
import type { Appraisal } from '../price/index.ts';
import { type PlateWeight, plateWeights } from '../price/usable.ts';
import { ceilingOf } from '../price/walk-away.ts';
import { correct } from '../read/correct.ts';
import { message } from '../words/message.ts';
import { costPerMileAway } from './drive.ts';
import { blockingQuestion, priceQuestion, rankQuestions, statesOf } from './questions.ts';
import { type Unknown, unknownsOf } from './unknowns.ts';

export interface Outlook {
  readonly questions: readonly Question[];
  /** Unknowns, likely enough to be bad, that would make the drive not worth it. */
  readonly decisive: readonly Unknown[];
}

/** A drive of this many miles stands for an unknown distance when questions are weighed. An assumption. */
const ORDINARY_MILES = 20;
/** Below this chance of a bad answer one just drives. An assumption. */
const LIKELY_ENOUGH = 0.1;

function worthWhen(reading: Reading, settings: Settings): number {
  const plates = plateWeights(reading, settings.sleeveMm);
  return ceilingOf(goodsOf(reading, plates, raiseFlags(reading, plates, settings), settings));
}

/** `trip` in minor units, null when the distance isn't known. */
export function lookAhead(
  reading: Reading,
  plates: readonly PlateWeight[],
  appraisal: Appraisal,
  settings: Settings,
  trip: number | null,
): Outlook {
  const { ceiling, price, worth } = appraisal;
  const drive = trip ?? ORDINARY_MILES * costPerMileAway(settings);
  const blocking: Question[] = [];
  const { currency } = settings;
  if (price === null) blocking.push(priceQuestion(drive, currency));
  const unweighed = plates.find((plate) => plate.unknown);
  if (unweighed !== undefined) {
    blocking.push(blockingQuestion('weights', `${unweighed.item.id}.totalWeight`, message('question_weights'), drive, currency));
  }
  if (ceiling === null || worth.walkAway === null) return { questions: blocking, decisive: [] };

  const unknowns = unknownsOf(reading, plates, settings.sleeveMm);
  const states = statesOf(unknowns, (bad) =>
    worthWhen(
      correct(
        reading,
        unknowns.flatMap((unknown, index) => (bad[index] ? unknown.bad : unknown.good)),
      ).reading,
      settings,
    ),
  );
  // Without a price the goods are taken at what a careful buyer would offer.
  const asked = price?.range.likely ?? worth.openingOffer?.minor ?? 0;
  const questions = rankQuestions(unknowns, states, asked, drive, currency);
  const decisive = unknowns.filter((unknown, index) => {
    const alone = states.find((state) => state.bad.every((bad, other) => bad === (other === index)));
    return unknown.chance >= LIKELY_ENOUGH && alone !== undefined && alone.value - asked - (trip ?? 0) < 0;
  });
  return { questions: [...blocking, ...questions], decisive };
}
