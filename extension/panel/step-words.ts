/** Results of the calculation in the buyer's units: how they are written, and how a typed one becomes a setting again. */
import type { Step } from '../../src/listing/evaluation.ts';
import { type DistanceUnit, MILE_IN_KILOMETRES } from '../../src/units/length.ts';
import { type MassUnit, POUND_IN_KILOGRAMS } from '../../src/units/mass.ts';
import { type Currency, exponentOf } from '../../src/units/money.ts';
import { type Range, scale } from '../../src/units/range.ts';
import { likelyAndSpan, poundsIn } from '../components/figures.ts';
import type { Words } from '../components/speech.ts';

/** What the buyer thinks in. */
export interface Units {
  readonly mass: MassUnit;
  readonly distance: DistanceUnit;
  /** Of the ad; a step may say another. */
  readonly currency: Currency;
}

const isMoney = (unit: Step['unit']): boolean => unit === 'money' || unit === 'money-per-lb' || unit === 'money-per-mi';
const currencyOf = (step: Step, units: Units): Currency => step.currency ?? units.currency;

/** What one of the core's units is in the buyer's. */
function factorOf(unit: Step['unit'], units: Units): number {
  const miles = units.distance === 'km' ? MILE_IN_KILOMETRES : 1;
  switch (unit) {
    case 'money-per-lb':
      return units.mass === 'kg' ? 1 / POUND_IN_KILOGRAMS : 1;
    case 'money-per-mi':
      return 1 / miles;
    case 'mi':
    case 'mph':
      return miles;
    case 'fraction':
      return 100;
    default:
      return 1;
  }
}

/** Small figures, such as the cents of a mile, need more digits than large ones. */
export const digitsOf = (unit: Step['unit']): number => (unit === 'money-per-mi' ? 4 : 2);

/** The figures as they stand in fields: major units of money, percent, the buyer's units. */
export function inFields(step: Step, units: Units): Range {
  const major = isMoney(step.unit) ? 10 ** exponentOf(currencyOf(step, units)) : 1;
  return scale(step.result, factorOf(step.unit, units) / major);
}

/** Typed figures as the setting has them. */
export const asSetting = (typed: Range, { unit }: Step, units: Units): Range => scale(typed, 1 / factorOf(unit, units));

/** "$0.75 ($0.50 to $1.00) a pound": the result with its range. */
export function resultWords(words: Words, step: Step, units: Units): string {
  const { say, t } = words;
  const { result, unit } = step;
  const ends = (write: (value: number) => string, { low, likely, high }: Range = result): string => {
    const [from, middle, to] = [write(low), write(likely), write(high)];
    return from === to ? middle : t('panel_likely_and_span', { likely: middle, span: t('panel_span', { low: from, high: to }) });
  };
  const shown = scale(result, factorOf(unit, units));
  const currency = currencyOf(step, units);
  switch (unit) {
    case 'money':
      return likelyAndSpan(words, { ...result, currency });
    case 'money-per-lb':
      return t(`panel_step_per_${units.mass}`, { rate: likelyAndSpan(words, { ...shown, currency }) });
    case 'money-per-mi':
      return t(`working_per_${units.distance}`, { rate: ends((value) => say.money({ minor: value, currency }, 'fine'), shown) });
    case 'lb':
      return ends((value) => poundsIn(words, value, units.mass));
    case 'mi':
      return ends((value) => t('panel_distance_value', { distance: { distance: { value, unit: units.distance } } }), shown);
    case 'mph':
      return ends((value) => say.unit(value, units.distance === 'mi' ? 'mph' : 'kmh', 0), shown);
    case 'mm':
      return ends((value) => say.unit(value, 'mm', 1));
    case 'fraction':
      return ends((value) => say.percent(value, 2), shown);
    default:
      return ends((value) => say.number(value));
  }
}
