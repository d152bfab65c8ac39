/** What each straight bar of an ad would do under the buyer's load, in sentences. Estimates of a perfect bar. */
import type { Item, Reading } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import { inKilograms, pounds } from '../units/mass.ts';
import { type Message, message, type Param } from '../words/message.ts';
import { stiffnessAgainst } from './beam.ts';
import { bendingOf, dropStress, heldBar, YIELDS } from './bending.ts';

export interface BarEstimate {
  /** Id of the bar. */
  readonly item: string;
  /** The ad gives no shaft: what is most common is reckoned with. */
  readonly assumed: boolean;
  readonly says: readonly Message[];
  /** What it holds for. */
  readonly caution: Message;
}

/** Between the two common competition shafts of 28 and 29 mm (IWF TCRR 2025, IPF Technical Rulebook 2026). */
const COMMON_SHAFT_MM = 28.5;
/** IWF TCRR 2025, 3.3.3: the shaft of the men's bar. */
const MENS_SHAFT_MM = 28;
/** A slip onto a bench: about a hand's breadth. An assumption. */
const FALL_MM = 100;
/** Shafts beyond these are no bars to reckon with, or misread. */
const [THINNEST, THICKEST] = [15, 60];
/** A bar so strong is rare and dear: middle of the upper half of the yield range. An assumption. */
const GOOD_YIELD = (YIELDS.barbell.low + 3 * YIELDS.barbell.high) / 4;

const tens = (value: number): number => Math.round(value / 10) * 10;

function estimate(bar: Item, { loadLb, unit }: Settings): BarEstimate | null {
  const shaft = bar.shaftMm?.value ?? COMMON_SHAFT_MM;
  if (shaft < THINNEST || shaft > THICKEST) return null;
  const kilograms = inKilograms(pounds(loadLb));
  const { stress, centreRise, endDrop } = bendingOf(heldBar(shaft, kilograms));
  const dropped = dropStress(shaft, kilograms, FALL_MM);
  const onPins = dropStress(shaft, kilograms, FALL_MM, 'pins');
  const shareOf = (yielding: number): Param => ({ percent: (100 * stress) / yielding });
  const load: Param = { weight: unit === 'lb' ? pounds(loadLb) : { value: Math.round(kilograms), unit } };
  const says = [
    message('bar_sag', { load, drop: { mm: endDrop }, rise: { mm: centreRise } }),
    message('bar_stress', {
      stress: tens(stress),
      least: shareOf(YIELDS.barbell.high),
      most: shareOf(YIELDS.barbell.low),
      low: tens(YIELDS.barbell.low),
      high: tens(YIELDS.barbell.high),
      mild: tens(YIELDS.mild.low),
    }),
    ...(bar.shaftMm === null
      ? []
      : [message('bar_stiffness', { percent: { percent: 100 * stiffnessAgainst(shaft, MENS_SHAFT_MM) } })]),
    message(dropped > GOOD_YIELD / 2 ? 'bar_drop' : 'bar_drop_holds', {
      height: { mm: FALL_MM },
      stress: tens(dropped),
      pins: tens(onPins),
    }),
  ];
  const assumed = bar.shaftMm === null;
  return {
    item: bar.id,
    assumed,
    says,
    caution: message(assumed ? 'bar_estimate_assumed' : 'bar_estimate', { shaft: { mm: shaft } }),
  };
}

/** One for each straight bar on offer; none for bars said to be bent, for which no such reckoning holds. */
export const estimatesOf = (reading: Reading, settings: Settings): BarEstimate[] =>
  reading.items
    .filter((item) => item.kind.value === 'bar' && !item.conditions.some(({ value }) => value === 'bent'))
    .slice(0, 5)
    .flatMap((bar) => estimate(bar, settings) ?? []);
