/**
 * Weights as whole numbers, so that pounds and kilograms add up without rounding: one unit is 10⁻¹⁰ kg. A pound is 0.45359237 kg by
 * definition (international yard and pound agreement, 1959), so a hundredth of a pound is a whole number of units too. A load of a tonne
 * is 10¹³ units, well within the integers that a number holds exactly (9·10¹⁵).
 */
import type { MassUnit, Weight } from '../units/mass.ts';

/** Whole units of 10⁻¹⁰ kg. */
export type Exact = number;

const UNITS_PER_KILOGRAM = 10_000_000_000;
const UNITS_PER_POUND = 4_535_923_700;

const unitsIn = (unit: MassUnit): number => (unit === 'lb' ? UNITS_PER_POUND : UNITS_PER_KILOGRAM);

/**
 * A weight in whole units, exact for pounds to two decimals and kilograms to four; finer ones are rounded there. Throws on a weight
 * that is negative, not finite, or over a hundred tonnes.
 */
export function exactWeight({ value, unit }: Weight): Exact {
  if (!(value >= 0 && value <= 200_000)) throw new RangeError(`exactWeight: ${value} ${unit} is no weight`);
  const steps = unit === 'lb' ? 100 : 10_000;
  return Math.round(value * steps) * (unitsIn(unit) / steps);
}

/** The weight of so many units, in pounds or kilograms. */
export const weightOf = (exact: Exact, unit: MassUnit): Weight => ({ value: exact / unitsIn(unit), unit });
