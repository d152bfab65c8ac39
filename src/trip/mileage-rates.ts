/** What a driven mile or kilometre costs, as published: each with its year and what it covers. */
import { MILE_IN_KILOMETRES } from '../units/length.ts';
import { type Message, message } from '../words/message.ts';

export interface MileageRate {
  readonly id: string;
  /** Year that the rate is for, or since which it holds. */
  readonly year: number;
  /** Major units of `currency` for one mile or kilometre. */
  readonly amount: number;
  readonly per: 'mi' | 'km';
  readonly currency: string;
  /** The whole cost of keeping and driving a car; what rises with the miles only (fuel, oil, wear); or fuel alone. */
  readonly covers: 'full' | 'variable' | 'fuel';
  readonly source: 'mileage_irs' | 'mileage_aaa' | 'mileage_hmrc' | 'mileage_brkg';
}

const irs = (year: number, full: number, variable: number): MileageRate[] =>
  [
    { covers: 'variable' as const, amount: variable },
    { covers: 'full' as const, amount: full },
  ].map((one) => ({
    id: `irs-${one.covers}-${year}`,
    year,
    per: 'mi',
    currency: 'USD',
    source: 'mileage_irs',
    ...one,
  }));

/**
 * Newest first within a source. IRS: standard mileage rates, business (full cost) and medical or moving (variable cost only), Notice
 * 2026-10 and those of the years before. AAA: Your Driving Costs 2025, fuel at $3.151 a gallon. HMRC: approved mileage payments, from
 * 6 April 2026, the first 10,000 miles of a year and those after. BRKG: § 5 Bundesreisekostengesetz, by car, from memory.
 */
export const MILEAGE_RATES: readonly MileageRate[] = [
  ...irs(2026, 0.725, 0.205),
  ...irs(2025, 0.7, 0.21),
  ...irs(2024, 0.67, 0.21),
  ...irs(2023, 0.655, 0.22),
  { id: 'aaa-fuel-2025', year: 2025, amount: 0.13, per: 'mi', currency: 'USD', covers: 'fuel', source: 'mileage_aaa' },
  { id: 'hmrc-full-2026', year: 2026, amount: 0.55, per: 'mi', currency: 'GBP', covers: 'full', source: 'mileage_hmrc' },
  { id: 'hmrc-after-2026', year: 2026, amount: 0.25, per: 'mi', currency: 'GBP', covers: 'variable', source: 'mileage_hmrc' },
  { id: 'brkg-full-2014', year: 2014, amount: 0.3, per: 'km', currency: 'EUR', covers: 'full', source: 'mileage_brkg' },
];

/**
 * What is counted unless the buyer says otherwise, in US dollars a mile: the variable cost of the newest year, for the car is there
 * anyway and only the miles come on top.
 */
export const DEFAULT_PER_MILE = 0.205;

/** Major units for one mile. */
export const perMileOf = ({ amount, per }: MileageRate): number => (per === 'mi' ? amount : amount * MILE_IN_KILOMETRES);

/** The published rate that a cost per mile stands for, the newest of those alike; null for a figure of the buyer's own. */
export const rateOf = (perMile: number, currency: string): MileageRate | null =>
  MILEAGE_RATES.find((rate) => rate.currency === currency && Math.abs(perMileOf(rate) - perMile) < 1e-9) ?? null;

const COVERS: Readonly<Record<MileageRate['covers'], string>> = {
  full: 'mileage_covers_full',
  variable: 'mileage_covers_variable',
  fuel: 'mileage_covers_fuel',
};

/** "IRS 2026, running cost only". */
export const mileageSource = (rate: MileageRate): Message =>
  message(rate.source, { year: String(rate.year), covers: { message: message(COVERS[rate.covers]) } });
