import { describe, expect, it } from 'vitest';
import { daysKnown, priceChange, withEditedPrice, withPrice } from '../../../src/finds/history.ts';

const usd = (minor: number) => ({ minor, currency: 'USD' });
const point = (at: number, minor: number, currency = 'USD') => ({ at, minor, currency });
const DAY = 86_400_000;

describe('the price history', () => {
  const one = [point(10, 20_000)];
  it('begins with the first price that is stated', () => expect(withPrice([], usd(100), 5)).toEqual([point(5, 100)]));
  it('stays as it is while nothing changes, or no price is stated', () => {
    expect(withPrice(one, usd(20_000), 20)).toBe(one);
    expect(withPrice(one, null, 20)).toBe(one);
  });
  it('has each change with its time, back to an earlier price too', () =>
    expect(withPrice(withPrice(one, usd(15_000), 20), usd(20_000), 30)).toEqual([...one, point(20, 15_000), point(30, 20_000)]));
  it('tells currencies apart', () => expect(withPrice(one, { minor: 20_000, currency: 'CAD' }, 20)).toHaveLength(2));
  it('never runs backwards', () => expect(withPrice(one, usd(1), 3).at(-1)?.at).toBe(10));
});

describe('a price that the buyer edits', () => {
  const MINUTE = 60_000;
  const one = [point(0, 4000)];
  const typed = (minors: readonly number[], from: number) =>
    minors.reduce<typeof one>((prices, minor, key) => [...withEditedPrice(prices, usd(minor), from + key)], one);
  it('is put right while it is typed, and what was typed in between is no price that was asked', () => {
    expect(typed([300, 3500], MINUTE)).toEqual([point(0, 3500)]);
    expect(typed([300, 4000], MINUTE)).toEqual(one);
    expect(withEditedPrice(one, null, 5)).toBe(one);
  });
  it('later is a new one', () => {
    const fallen = typed([300, 3500], 60 * MINUTE);
    expect(fallen).toEqual([point(0, 4000), point(60 * MINUTE, 3500)]);
    expect(withEditedPrice(fallen, usd(4000), 61 * MINUTE)).toEqual(one);
  });
  it('is a new one too where the clock was moved back', () =>
    expect(withEditedPrice([point(DAY, 4000)], usd(3500), 0)).toEqual([point(DAY, 4000), point(DAY, 3500)]));
});

describe('a price change', () => {
  it('is told in money and as a fraction', () =>
    expect(priceChange([point(1, 20_000)], usd(15_000))).toEqual({
      from: usd(20_000),
      to: usd(15_000),
      by: -5000,
      fraction: -0.25,
    }));
  it('is none without a price on either side, or at the same price', () => {
    expect(priceChange([], usd(1))).toBeNull();
    expect(priceChange([point(1, 5)], null)).toBeNull();
    expect(priceChange([point(1, 5)], usd(5))).toBeNull();
  });
  it('between currencies has no size, and from nothing no fraction', () => {
    expect(priceChange([point(1, 5)], { minor: 5, currency: 'EUR' })).toMatchObject({ by: null, fraction: null });
    expect(priceChange([point(1, 0)], usd(5))).toMatchObject({ by: 5, fraction: null });
  });
});

it('days known are whole, and never below none', () => {
  expect([0, DAY - 1, DAY, 3.5 * DAY].map((passed) => daysKnown(1000, 1000 + passed))).toEqual([0, 0, 1, 3]);
  expect(daysKnown(1000, 0)).toBe(0);
});
