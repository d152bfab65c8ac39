/** Sheets that a platform is built of, as they are sold. */
import { FOOT_IN_MILLIMETRES, INCH_IN_MILLIMETRES } from '../units/length.ts';
import { type Range, range } from '../units/range.ts';

export type SheetId = 'plywood-15/32' | 'plywood-19/32' | 'plywood-23/32' | 'plywood-3/4' | 'mdf-3/4' | 'rubber-3/4';

export interface Sheet {
  readonly id: SheetId;
  readonly material: 'plywood' | 'mdf' | 'rubber';
  /** As it is sold, in mm, short side first. */
  readonly shortMm: number;
  readonly longMm: number;
  readonly thicknessMm: Range;
  /** Pounds of one; null when not known. */
  readonly pounds: number | null;
  /** Price of one in US dollars, an assumption. */
  readonly price: Range;
}

const inches = (low: number, high: number): Range => {
  const [from, to] = [low * INCH_IN_MILLIMETRES, high * INCH_IN_MILLIMETRES];
  return range(from, (from + to) / 2, to);
};
const FEET_4 = 4 * FOOT_IN_MILLIMETRES;
export const FEET_8 = 8 * FOOT_IN_MILLIMETRES;
const plywood = (id: SheetId, low: number, high: number, price: Range): Sheet => ({
  id,
  material: 'plywood',
  shortMm: FEET_4,
  longMm: FEET_8,
  thicknessMm: inches(low, high),
  pounds: null,
  price,
});

/**
 * Plywood: limits of thickness by PS 1 for the performance category, sheets 48 × 96 in. MDF: sold 49 × 97 in, a 3/4 in sheet about 99 lb;
 * ±0.005 in is common practice, no source. Stall mats 4 × 6 ft, 3/4 in, about 100 lb; 1/16 in either way is an assumption. All prices are assumptions.
 */
export const SHEETS: Readonly<Record<SheetId, Sheet>> = {
  'plywood-15/32': plywood('plywood-15/32', 0.438, 0.5, range(20, 28, 40)),
  'plywood-19/32': plywood('plywood-19/32', 0.563, 0.625, range(26, 36, 50)),
  'plywood-23/32': plywood('plywood-23/32', 0.688, 0.75, range(32, 45, 65)),
  'plywood-3/4': plywood('plywood-3/4', 0.719, 0.781, range(45, 60, 85)),
  'mdf-3/4': {
    id: 'mdf-3/4',
    material: 'mdf',
    shortMm: 49 * INCH_IN_MILLIMETRES,
    longMm: 97 * INCH_IN_MILLIMETRES,
    thicknessMm: inches(0.745, 0.755),
    pounds: 99,
    price: range(40, 52, 70),
  },
  'rubber-3/4': {
    id: 'rubber-3/4',
    material: 'rubber',
    shortMm: FEET_4,
    longMm: 6 * FOOT_IN_MILLIMETRES,
    thicknessMm: inches(0.6875, 0.8125),
    pounds: 100,
    price: range(45, 60, 85),
  },
};
