/** Plates in kilograms and those in pounds that come nearest to them and do the same work. Common practice, no source. */
import { kilograms, pounds, type Weight } from '../units/mass.ts';

const PAIRS: readonly (readonly [kg: number, lb: number])[] = [
  [20, 45],
  [15, 35],
  [10, 25],
  [5, 10],
  [2.5, 5],
  [1.25, 2.5],
];

/** The next plate in the other unit; null for a weight that no such plate has. */
export function nextWeight({ value, unit }: Weight): Weight | null {
  const found = PAIRS.find(([kg, lb]) => Math.abs((unit === 'kg' ? kg : lb) - value) < 1e-6);
  if (found === undefined) return null;
  return unit === 'kg' ? pounds(found[1]) : kilograms(found[0]);
}
