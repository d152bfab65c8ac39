/** Length. An inch is 25.4 mm and a mile 1.609344 km by definition (International yard and pound agreement, 1959; NIST SP 811). */

export type DistanceUnit = 'mi' | 'km';

export interface Distance {
  readonly value: number;
  readonly unit: DistanceUnit;
}

export const INCH_IN_MILLIMETRES = 25.4;
export const FOOT_IN_MILLIMETRES = 304.8;
export const MILE_IN_KILOMETRES = 1.609344;

export const inchesToMillimetres = (inches: number): number => inches * INCH_IN_MILLIMETRES;
export const millimetresToInches = (millimetres: number): number => millimetres / INCH_IN_MILLIMETRES;
export const feetToMillimetres = (feet: number): number => feet * FOOT_IN_MILLIMETRES;

export const inMiles = (distance: Distance): number =>
  distance.unit === 'mi' ? distance.value : distance.value / MILE_IN_KILOMETRES;
