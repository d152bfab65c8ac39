/** The published rates, as read from the notices named in src/trip/mileage-rates.ts, and what follows from them. */
import { describe, expect, it } from 'vitest';
import { DEFAULT_SETTINGS } from '../../src/listing/settings.ts';
import { MILEAGE_RATES, perMileOf, rateOf } from '../../src/trip/mileage-rates.ts';

const amount = (id: string): number | undefined => MILEAGE_RATES.find((rate) => rate.id === id)?.amount;

describe('published rates of a driven mile', () => {
  it('IRS, cents a mile: business 65.5, 67, 70, 72.5; medical and moving 22, 21, 21, 20.5 (2023 to 2026)', () => {
    const years = [2023, 2024, 2025, 2026];
    expect(years.map((year) => amount(`irs-full-${year}`))).toEqual([0.655, 0.67, 0.7, 0.725]);
    expect(years.map((year) => amount(`irs-variable-${year}`))).toEqual([0.22, 0.21, 0.21, 0.205]);
  });

  it('AAA fuel agrees with its own price of a gallon at a plausible 24.2 miles to the gallon', () =>
    expect(3.151 / (amount('aaa-fuel-2025') ?? 0)).toBeCloseTo(24.2, 1));

  it('HMRC 55p, after 10,000 miles 25p', () =>
    expect([amount('hmrc-full-2026'), amount('hmrc-after-2026')]).toEqual([0.55, 0.25]));

  it('a rate by the kilometre is more by the mile', () => {
    const rate = MILEAGE_RATES.find(({ per }) => per === 'km');
    expect(rate && perMileOf(rate)).toBeCloseTo(0.4828032, 7);
  });

  it('fuel alone is less than what rises with the miles, and that less than the full cost', () => {
    for (const year of [2023, 2024, 2025, 2026])
      expect(amount(`irs-variable-${year}`)).toBeLessThan(amount(`irs-full-${year}`) ?? 0);
    expect(amount('aaa-fuel-2025')).toBeLessThan(amount('irs-variable-2025') ?? 0);
  });

  it('the default is the variable cost of the newest year in the table', () => {
    const rate = rateOf(DEFAULT_SETTINGS.perMile, DEFAULT_SETTINGS.currency);
    const newest = Math.max(...MILEAGE_RATES.filter(({ currency }) => currency === 'USD').map(({ year }) => year));
    expect(rate).toMatchObject({ covers: 'variable', year: newest });
  });

  it('a figure of the buyer’s own is nobody else’s, and a rate of another currency neither', () => {
    expect(rateOf(0.3333, 'USD')).toBeNull();
    expect(rateOf(0.205, 'EUR')).toBeNull();
  });
});
