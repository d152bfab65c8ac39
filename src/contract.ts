/** An evaluation as the JSON contract for tools: sentences said, money in major units, weights in the buyer's unit, rates per pound. */
import type { Contract } from './listing/contract.ts';
import type { Evaluation, Flag, MoneyRange, Rate } from './listing/evaluation.ts';
import type { Fact, Item, Reading } from './listing/reading.ts';
import type { MassUnit, Weight } from './units/mass.ts';
import { convert, inPounds } from './units/mass.ts';
import { exponentOf, inMajor, type Money } from './units/money.ts';
import { type Range, scale } from './units/range.ts';
import type { Message } from './words/message.ts';

type Say = (message: Message) => string;
type RangeOut = Contract['worth']['usable'];

/** Rounds away binary dust without taking away digits that anyone knows. */
const tidy = (value: number, digits: number): number => Number(value.toFixed(digits)) + 0;

const rangeOut = (range: Range, unit: string, digits: number): RangeOut => ({
  low: tidy(range.low, digits),
  likely: tidy(range.likely, digits),
  high: tidy(range.high, digits),
  unit,
});

const moneyOut = (range: MoneyRange, digits = 2, suffix = ''): RangeOut =>
  rangeOut(scale(range, 1 / 10 ** exponentOf(range.currency)), `${range.currency}${suffix}`, digits);

/** A rate per pound whatever unit it is kept in; the rate of a lot as it is. */
function rateOut(rate: Rate | null): RangeOut | null {
  if (rate === null) return null;
  if (rate.per === 'lot') return moneyOut(rate);
  const perPound = scale(rate, 1 / inPounds({ value: 1, unit: rate.per }));
  return moneyOut({ ...perPound, currency: rate.currency }, 4, '/lb');
}

const known = <T>(fact: Fact<T> | null): T | null => fact?.value ?? null;
const weightOut = (fact: Fact<Weight> | null): { value: number; unit: MassUnit } | null =>
  fact === null ? null : { value: tidy(fact.value.value, 4), unit: fact.value.unit };
const majorOut = (fact: Fact<Money> | null): number | null => (fact === null ? null : inMajor(fact.value));
const lengthOut = (fact: Fact<number> | null): number | null => (fact === null ? null : tidy(fact.value, 2));

const itemOut = (item: Item): Contract['reading']['items'][number] => ({
  id: item.id,
  kind: item.kind.value,
  count: known(item.count),
  unitWeight: weightOut(item.unitWeight),
  totalWeight: weightOut(item.totalWeight),
  bore: { fits: known(item.fits), mm: lengthOut(item.boreMm) },
  shaftMm: lengthOut(item.shaftMm),
  lengthMm: lengthOut(item.lengthMm),
  material: known(item.material),
  condition: item.conditions.map((condition) => condition.value),
  ownPrice: majorOut(item.ownPrice),
  basis: item.basis,
  evidence: item.evidence.map(({ start, end }) => ({ start, end })),
});

const readingOut = (reading: Reading, say: Say): Contract['reading'] => ({
  asking: {
    amount: majorOut(reading.asking.amount),
    currency: known(reading.asking.currency),
    basis: reading.asking.basis,
    unitAmount: majorOut(reading.asking.unitAmount),
    firm: known(reading.asking.firm),
    openToOffers: known(reading.asking.openToOffers),
  },
  items: reading.items.map(itemOut),
  statedTotal: weightOut(reading.statedTotal),
  place: known(reading.place),
  aboutThisTrade: reading.aboutThisTrade,
  wanted: reading.wanted,
  doubts: reading.doubts.map((doubt) => ({
    about: doubt.about,
    why: say(doubt.why),
    choices: doubt.choices.map((choice) => say(choice.says)),
  })),
});

const flagOut = (flag: Flag, say: Say): Contract['flags'][number] => ({
  id: flag.id,
  weight: flag.weight,
  item: flag.item,
  says: say(flag.says),
  found: flag.found === null ? null : say(flag.found),
  limit: flag.limit === null ? null : say(flag.limit),
  source: say(flag.source),
});

/** `unit` is the one that weights are given in; `say` makes sentences of messages. */
export function toContract(evaluation: Evaluation, say: Say, unit: MassUnit = 'lb'): Contract {
  const { reading, flags, worth, trip, questions, call } = evaluation;
  return {
    reading: readingOut(reading, say),
    flags: flags.map((flag) => flagOut(flag, say)),
    worth: {
      usable: rangeOut(scale(worth.usable, convert({ value: 1, unit: 'lb' }, unit).value), unit, 2),
      allIn: worth.allIn === null ? null : moneyOut(worth.allIn),
      perUsablePound: rateOut(worth.perUsablePound),
      newDelivered: rateOut(worth.newDelivered),
      goingRate: rateOut(worth.goingRate),
      walkAway: worth.walkAway === null ? null : inMajor(worth.walkAway),
      split: worth.split.map((share) => ({ item: share.item, allIn: inMajor(share.allIn), worth: moneyOut(share.worth) })),
    },
    trip:
      trip === null
        ? null
        : {
            distance: { ...trip.distance, value: tidy(trip.distance.value, 2) },
            cost: moneyOut(trip.cost),
            breakEven: trip.breakEven === null ? null : { ...trip.breakEven },
          },
    questions: questions.map(({ id, about, says, value }) => ({ id, about, says: say(says), value: inMajor(value) })),
    call: { kind: call.kind, says: say(call.says), because: call.because.map(say) },
  };
}
