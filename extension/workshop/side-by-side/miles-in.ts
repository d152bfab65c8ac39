/** A distance in the unit in which the buyer thinks, rounded: it is an assumption. */
import { MILE_IN_KILOMETRES } from '../../../src/units/length.ts';
import type { MassUnit } from '../../../src/units/mass.ts';
import type { Param } from '../../../src/words/message.ts';

/** Kilometres for whom weighs in kilograms, to the nearest. */
export const milesIn = (miles: number, unit: MassUnit): Param => ({
  distance: unit === 'kg' ? { value: Math.round(miles * MILE_IN_KILOMETRES), unit: 'km' } : { value: miles, unit: 'mi' },
});
