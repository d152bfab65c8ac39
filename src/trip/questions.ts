/** What it is worth to ask before the drive: exact enumeration over the unknowns, each good or bad by itself. */
import type { Question } from '../listing/evaluation.ts';
import type { Currency } from '../units/money.ts';
import { type Message, message } from '../words/message.ts';
import type { Unknown } from './unknowns.ts';

/** One way in which all unknowns may turn out. */
export interface State {
  readonly chance: number;
  /** For each unknown, whether it is bad here. */
  readonly bad: readonly boolean[];
  /** What the goods are worth paying for, in minor units. */
  readonly value: number;
}

/** All states of `unknowns`: 2^n, with the value of each as `stateValue` gives it. */
export function statesOf(unknowns: readonly Unknown[], stateValue: (bad: readonly boolean[]) => number): State[] {
  return Array.from({ length: 2 ** unknowns.length }, (_, bits) => {
    const bad = unknowns.map((_unknown, index) => ((bits >> index) & 1) === 1);
    const chance = unknowns.reduce((product, unknown, index) => product * (bad[index] ? unknown.chance : 1 - unknown.chance), 1);
    return { chance, bad, value: stateValue(bad) };
  });
}

/** E[max(0, value − price)]: what the goods save on average before the drive, when the buyer may still refuse at the door. */
export function expectedSaving(states: readonly State[], price: number): number {
  const chance = chanceOf(states);
  return chance <= 0 ? 0 : states.reduce((sum, state) => sum + state.chance * Math.max(0, state.value - price), 0) / chance;
}

const chanceOf = (states: readonly State[]): number => states.reduce((sum, state) => sum + state.chance, 0);

/** What being free to go or to stay is worth: the expected saving less the drive, or 0 at home. */
const worthOfGoing = (states: readonly State[], price: number, trip: number): number =>
  Math.max(0, expectedSaving(states, price) - trip);

/**
 * Expected value of an answer before the drive (expected value of sample information): `branches` are the states that are left after
 * each answer. Never below zero.
 */
export function valueOfAnswer(branches: readonly (readonly State[])[], price: number, trip: number): number {
  const informed = branches.reduce((sum, branch) => sum + chanceOf(branch) * worthOfGoing(branch, price, trip), 0);
  return Math.max(0, informed - worthOfGoing(branches.flat(), price, trip));
}

/** Expected value in minor units of knowing unknown number `index` before the drive. */
export const valueOfAsking = (states: readonly State[], index: number, price: number, trip: number): number =>
  valueOfAnswer(
    [true, false].map((bad) => states.filter((state) => state.bad[index] === bad)),
    price,
    trip,
  );

/** Expected value of perfect information: of knowing the state itself. No question is worth more. */
export const valueOfKnowingAll = (states: readonly State[], price: number, trip: number): number =>
  valueOfAnswer(
    states.map((state) => [state]),
    price,
    trip,
  );

/** Unknown price: asked for first, worth what a wasted drive costs. */
export const priceQuestion = (trip: number, currency: Currency, onePiece: boolean): Question => ({
  id: 'price',
  about: 'asking.amount',
  says: message(onePiece ? 'question_price_of_it' : 'question_price'),
  value: { minor: Math.round(trip), currency },
});

/** A question for something that the ad must say before it can be valued at all. */
export const blockingQuestion = (id: string, about: string, says: Message, trip: number, currency: Currency): Question => ({
  id,
  about,
  says,
  value: { minor: Math.round(trip), currency },
});

/** Questions worth asking, the most valuable first. */
export function rankQuestions(
  unknowns: readonly Unknown[],
  states: readonly State[],
  price: number,
  trip: number,
  currency: Currency,
): Question[] {
  return unknowns
    .map((unknown, index) => ({
      id: unknown.id,
      about: unknown.about,
      says: unknown.says,
      value: { minor: Math.round(valueOfAsking(states, index, price, trip)), currency },
    }))
    .filter((question) => question.value.minor > 0)
    .sort((a, b) => b.value.minor - a.value.minor);
}
