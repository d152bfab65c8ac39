/** Made-up markets from a seed: the same seed gives the same market. Shaped like a used market: lots of several things, parts, shared trips. */
import type { Market, Offer } from '../../../src/kit/buy-list/index.ts';

/** Numbers from 0 up to 1 (mulberry32, public domain). */
export function numbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Id, pieces, new and used price in cents. */
const NEEDS = [
  ['bar', 1, 32_000, 16_000],
  ['rack', 1, 125_000, 50_000],
  ['bench', 1, 22_000, 7500],
  ['45', 8, 9000, 3400],
  ['25', 4, 5000, 1900],
  ['10', 4, 2000, 750],
  ['5', 2, 1000, 375],
  ['2.5', 2, 500, 190],
  ['bumper-10', 2, 6000, 3000],
  ['collars', 2, 1600, 600],
] as const;

export interface Size {
  readonly offers: number;
  readonly needs?: number;
  /** Chance that a budget is set. */
  readonly budgets?: number;
}

export function madeMarket(seed: number, { offers: count, needs: kinds = NEEDS.length, budgets = 0.5 }: Size): Market {
  const next = numbers(seed);
  const between = (low: number, high: number): number => Math.floor(low + next() * (high - low + 1));
  const needs = [...NEEDS]
    .sort(() => next() - 0.5)
    .slice(0, kinds)
    .map(([id, pieces, fresh, resale]) => ({ id, pieces, fresh: next() < 0.05 ? null : fresh, resale }));
  const places = Array.from({ length: Math.ceil(count * 0.8) }, (_, index) => {
    const trip = between(200, 4500);
    return { id: `place-${index}`, trip, cash: Math.floor(trip * 0.6) };
  });
  const offers: Offer[] = [];
  while (offers.length < count) {
    const fills = needs
      .filter(() => next() < 2.2 / needs.length)
      .map(({ id, pieces }) => ({ need: id, pieces: between(1, Math.min(10, pieces * 2)) }));
    const worth = fills.reduce((sum, { need, pieces }) => sum + pieces * (needs.find(({ id }) => id === need)?.resale ?? 0), 0);
    const price = next() < 0.03 ? 0 : Math.round(worth * (0.25 + next() * 1.6));
    const before = offers.at(-1);
    offers.push({
      id: `offer-${offers.length}`,
      place: places[Math.floor(next() * places.length)]?.id ?? '',
      price,
      refusal: next() < 0.4 ? Math.floor(next() * 60) / 100 : 0,
      fills,
      otherResale: next() < 0.2 ? between(500, 6000) : 0,
      excludes: before !== undefined && next() < 0.15 ? [before.id] : [],
      barred: next() < 0.05 ? 'flag' : null,
    });
  }
  const fresh = needs.reduce((sum, need) => sum + need.pieces * (need.fresh ?? need.resale), 0);
  return { needs, offers, places, budget: next() < budgets ? Math.round(fresh * (0.15 + next() * 0.7)) : null };
}
