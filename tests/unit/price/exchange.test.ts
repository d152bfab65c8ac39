/** Prices in another currency. Rates of exchange here are invented. */
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS, settingsSchema } from '../../../src/listing/settings.ts';
import { inOwn } from '../../../src/price/exchange.ts';
import { money } from '../../../src/units/money.ts';
import { english } from '../../tools/evaluate/strings.ts';
import { settings } from '../making/readings.ts';

const say = english();
const AD = 'Olympic plates 4 x 45 lb with 2 inch holes, €100 for all';
const judged = (ad: string, exchange: Record<string, number>) => evaluate(listingFromText(ad), settings({ exchange }));

describe('an ad in another currency', () => {
  it('is not compared without a rate, and says that one can be set', () => {
    const { call, worth } = judged(AD, { GBP: 1.3 });
    expect([call.kind, worth.walkAway, worth.currency]).toEqual(['ask', null, 'EUR']);
    expect(say(call.because[0] ?? { key: '' })).toContain('set what one EUR is worth to you');
  });

  it("is compared at the buyer's own rate, and the working says so", () => {
    const { reading, worth, call } = judged(AD, { EUR: 1.25 });
    expect(worth.currency).toBe('USD');
    expect(worth.allIn?.likely).toBe(12500);
    expect(call.kind).not.toBe('ask');
    const [first] = worth.steps;
    expect(first?.id).toBe('exchange');
    expect(first && say(first.label)).toBe('Asked in EUR, at your own rate of 1.25 USD for one EUR');
    expect(first?.source && say(first.source)).toBe('Your own figure');
    expect(first?.result.likely).toBe(12500);
    // What is shown of the ad stays as the ad has it.
    expect(reading.asking.amount?.value).toEqual(money(100, 'EUR'));
  });

  it('gives the answer of an ad in dollars at the same price', () => {
    const converted = judged(AD, { EUR: 1.25 });
    const own = judged(AD.replace('€100', '$125'), {});
    expect({ ...converted.worth, steps: converted.worth.steps.slice(1) }).toEqual(own.worth);
    expect(converted.call).toEqual(own.call);
    expect(converted.questions).toEqual(own.questions);
  });

  it('converts prices by weight and of single lines without rounding each', () => {
    const perPound = judged('Olympic plates 4 x 45 lb, €0.55/lb', { EUR: 1.1 });
    expect(perPound.worth.allIn?.likely).toBeCloseTo(0.55 * 1.1 * 180 * 100, 6);
    const lines = judged('Olympic plates\n2 x 45 lb €40\n2 x 25 lb €20', { EUR: 2 });
    expect(lines.worth.split.map(({ allIn }) => allIn.minor)).toEqual([8000, 4000]);
  });
});

it('minds that currencies differ in their minor units', () => {
  expect(inOwn({ minor: 15000, currency: 'JPY' }, settings({ exchange: { JPY: 0.0067 } })).minor).toBeCloseTo(10050, 6);
  expect(inOwn(money(80, 'EUR'), settings())).toEqual(money(80, 'EUR'));
});

it('takes no rate of nothing or less, nor one for what is no currency', () => {
  const parses = (exchange: unknown): boolean => settingsSchema.safeParse({ ...DEFAULT_SETTINGS, exchange }).success;
  expect([{ EUR: 1.1 }, { EUR: 0 }, { EUR: -1 }, { euro: 1 }].map(parses)).toEqual([true, false, false, false]);
});
