/** Looks ahead to what the buyer may find: the unknowns, the states they can take, and which of them would turn the decision. */
import { flagsOnWorth } from '../flags/index.ts';
import type { Prospect, Question } from '../listing/evaluation.ts';
import { isOnePiece, type Reading } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import { goodsOf } from '../price/goods.ts';
import type { Appraisal } from '../price/index.ts';
import { withLikelyBars } from '../price/likely-bars.ts';
import { type PlateWeight, plateWeights } from '../price/usable.ts';
import { ceilingOf } from '../price/walk-away.ts';
import { correct } from '../read/correct.ts';
import { message } from '../words/message.ts';
import { driveCostAt } from './drive.ts';
import { prospectOf } from './prospect.ts';
import { blockingQuestion, priceQuestion, rankQuestions, statesOf } from './questions.ts';
import { PARTS, partOf, type Unknown, unknownsOf } from './unknowns.ts';

export interface Outlook {
  readonly questions: readonly Question[];
  readonly prospect: Prospect | null;
  /** Unknowns, likely enough to be bad, that would make the drive not worth it. */
  readonly decisive: readonly Unknown[];
}

/** A drive of this many miles stands for an unknown distance when questions are weighed. An assumption. */
export const ORDINARY_MILES = 20;
/** Below this chance of a bad answer one just drives. An assumption. */
const LIKELY_ENOUGH = 0.1;

/** What one part of the goods is worth with every combination of the answers that bear on it, by bits of the unknowns' numbers. */
function worthOfPart(
  reading: Reading,
  unknowns: readonly Unknown[],
  part: Unknown['part'],
  settings: Settings,
): (bad: readonly boolean[]) => number {
  // Among 1-inch plates alone a bar is taken for one of theirs, so that the holes tell of bars and curl bars too.
  const bears = ({ id, part: its }: Unknown): boolean => its === part || id === 'bore';
  const own = unknowns.flatMap((unknown, index) => (bears(unknown) ? [{ unknown, index }] : []));
  const known = new Map<number, number>();
  return (bad) => {
    const bits = own.reduce((sum, { index }, place) => sum + (bad[index] ? 2 ** place : 0), 0);
    const before = known.get(bits);
    if (before !== undefined) return before;
    const answers = own.flatMap(({ unknown, index }) => (bad[index] ? unknown.bad : unknown.good));
    const changed = withLikelyBars(correct(reading, answers).reading);
    const items = changed.items.filter((item) => partOf(item) === part);
    const plates = part === 'plates' ? plateWeights(changed, settings) : [];
    const goods = goodsOf({ ...changed, items }, plates, flagsOnWorth({ ...changed, items }, plates, settings), settings);
    const worth = ceilingOf(goods);
    known.set(bits, worth);
    return worth;
  };
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
  const drive = trip ?? driveCostAt(reading, ORDINARY_MILES, settings);
  const blocking: Question[] = [];
  const { currency } = settings;
  if (price === null) blocking.push(priceQuestion(drive, currency, isOnePiece(reading)));
  // What is good for nothing need not be weighed.
  const unweighed = appraisal.goods.find(({ plate, unknown }) => plate !== null && unknown);
  if (unweighed !== undefined) {
    blocking.push(blockingQuestion('weights', `${unweighed.item.id}.totalWeight`, message('question_weights'), drive, currency));
  }
  const unknowns = unknownsOf(reading, plates, settings);
  if (ceiling === null || worth.walkAway === null) {
    // Plates that most likely don't fit are worth nothing yet: whether they do is what it hangs on.
    const bore = unknowns.find(({ id }) => id === 'bore');
    if (bore !== undefined && worth.losses.some(({ reason }) => reason === 'unknown-bore'))
      blocking.push(blockingQuestion('bore', bore.about, bore.says, drive, currency));
    return { questions: blocking, prospect: null, decisive: [] };
  }

  // Plates, bars and the rest are worth what they are worth apart from each other, so each is valued only for the answers that bear on it.
  const parts = PARTS.map((part) => worthOfPart(reading, unknowns, part, settings));
  const states = statesOf(unknowns, (bad) => parts.reduce((sum, worth) => sum + worth(bad), 0));
  // Without a price the goods are taken at what a careful buyer would offer.
  const asked = price?.range.likely ?? worth.openingOffer?.minor ?? 0;
  const questions = rankQuestions(unknowns, states, asked, drive, currency);
  const decisive = unknowns.filter((unknown, index) => {
    const alone = states.find((state) => state.bad.every((bad, other) => bad === (other === index)));
    return unknown.chance >= LIKELY_ENOUGH && alone !== undefined && alone.value - asked - (trip ?? 0) < 0;
  });
  // Goods that the ad does not weigh may be worth anything: no average can be told.
  const told = price !== null && appraisal.goods.every((good) => !good.unknown);
  const prospect = !told ? null : prospectOf(states, asked, drive, reading, settings);
  return { questions: [...blocking, ...questions], prospect, decisive };
}
