/** Mass. A pound is 0.45359237 kg by definition (International yard and pound agreement, 1959; NIST SP 811). */

export type MassUnit = 'lb' | 'kg';

export interface Weight {
  readonly value: number;
  readonly unit: MassUnit;
}

export const POUND_IN_KILOGRAMS = 0.45359237;

export const pounds = (value: number): Weight => ({ value, unit: 'lb' });
export const kilograms = (value: number): Weight => ({ value, unit: 'kg' });

/** Pounds in a weight of either unit. */
export const inPounds = (weight: Weight): number => (weight.unit === 'lb' ? weight.value : weight.value / POUND_IN_KILOGRAMS);

/** Kilograms in a weight of either unit. */
export const inKilograms = (weight: Weight): number => (weight.unit === 'kg' ? weight.value : weight.value * POUND_IN_KILOGRAMS);

/** The same weight in the other unit, or itself. */
export const convert = (weight: Weight, unit: MassUnit): Weight =>
  weight.unit === unit ? weight : { value: unit === 'lb' ? inPounds(weight) : inKilograms(weight), unit };
