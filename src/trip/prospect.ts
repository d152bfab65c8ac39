/** What setting out is worth on average: the chance model over all ways in which the unknowns may turn out, counted exactly. */
import type { Prospect } from '../listing/evaluation.ts';
import type { Reading } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import { exponentOf } from '../units/money.ts';
import { distanceOf, distanceUnit } from './distance.ts';
import { breakEven } from './drive.ts';
import { expectedSaving, type State, valueOfKnowingAll } from './questions.ts';
import { savingByDistance } from './saving-curve.ts';

/** Chance of goods that are worth less than `price` and are left at the door. Chances of the states sum to 1. */
export const refusalChance = (states: readonly State[], price: number): number =>
  states.reduce((sum, state) => sum + (state.value < price ? state.chance : 0), 0);

/**
 * Highest price at which E[max(0, value − price)] still pays the drive. That expectation falls along straight lines between the values
 * of the states, so on each piece, from the dearest state down, the price is (Σ chance × value − trip) / Σ chance.
 * Null when not even goods for nothing pay the drive. Without any drive it is the best that the goods may be worth.
 */
export function breakEvenPriceOf(states: readonly State[], trip: number): number | null {
  const dearest = [...states].sort((a, b) => b.value - a.value);
  let chance = 0;
  let sum = 0;
  for (const [index, state] of dearest.entries()) {
    chance += state.chance;
    sum += state.chance * state.value;
    if (chance <= 0) continue;
    const price = (sum - trip) / chance;
    if (price >= (dearest[index + 1]?.value ?? Number.NEGATIVE_INFINITY)) return price < 0 ? null : price;
  }
  return null;
}

/** `drive` is what going there costs, or would cost at an ordinary distance when none is known (`known` false). In minor units. */
export function prospectOf(
  states: readonly State[],
  price: number,
  drive: number,
  reading: Reading,
  settings: Settings,
): Prospect {
  const { currency } = settings;
  const away = distanceOf(reading, settings);
  const money = (minor: number) => ({ minor: Math.round(minor) + 0, currency });
  const saving = expectedSaving(states, price);
  const most = away === null ? null : breakEvenPriceOf(states, drive);
  const minor = 10 ** exponentOf(currency);
  const unit = away?.distance.unit ?? distanceUnit(settings);
  const furthest = breakEven(saving, reading, settings, unit);
  return {
    saving: money(saving),
    afterDrive: away === null ? null : money(saving - drive),
    refusal: refusalChance(states, price),
    knowingAll: money(valueOfKnowingAll(states, price, drive)),
    breakEvenPrice: most === null ? null : money(Math.floor(most / minor + 1e-9) * minor),
    breakEvenDistance: furthest,
    byDistance: savingByDistance(saving, away?.distance ?? null, furthest, reading, settings, unit),
  };
}
