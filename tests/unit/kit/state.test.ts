import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { buyList } from '../../../src/kit/buy-list/index.ts';
import { type ConsideredFind, marketOf, partId } from '../../../src/kit/buy-list/market-of.ts';
import { fillsOf } from '../../../src/kit/fills.ts';
import { type Need, needsOf } from '../../../src/kit/needs.ts';
import { piecePrice } from '../../../src/kit/piece-prices.ts';
import { fillsNeed } from '../../../src/kit/same-thing.ts';
import { kitState, type OwnedThing, plateNeed, restCost } from '../../../src/kit/state.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS, settingsSchema } from '../../../src/listing/settings.ts';
import { kilograms, pounds } from '../../../src/units/mass.ts';
import { highsSolver } from '../../tools/buy-list/solvers.ts';

const need = (kind: Need['kind'], pieces: number, weight: Need['weight'] = null): Need => ({
  kind,
  pieces,
  weight,
  because: 'gym',
});
const owned = (
  kind: OwnedThing['kind'],
  pieces: number,
  weight: Need['weight'] = null,
  paid: number | null = null,
): OwnedThing => ({
  kind,
  pieces,
  weight,
  paid,
});

describe('kitState', () => {
  it('counts pieces against needs, what is over, and the money', () => {
    const needs = [need('plate', 6, pounds(45)), need('rack', 1), need('bench', 1)];
    const state = kitState(needs, [owned('plate', 4, pounds(45), 12_000), owned('bench', 2, null, 5000)], 20_000);
    expect(state.open).toEqual([need('plate', 2, pounds(45)), need('rack', 1)]);
    expect(state.surplus).toMatchObject([{ kind: 'bench', pieces: 1 }]);
    expect(state).toMatchObject({ spent: 17_000, left: 3000 });
    expect(kitState(needs, [], null).left).toBeNull();
  });

  it('is complete when all that is needed is owned', () => {
    const needs = needsOf({ best: pounds(405), jump: pounds(2.5), olympicLifts: true, unit: 'lb' });
    const all = needs.map(({ kind, pieces, weight }) => owned(kind, pieces, weight));
    expect(kitState(needs, all, null)).toMatchObject({ open: [], surplus: [] });
  });
});

it.each([
  ['a 20 kg bar for a 45 lb one', { kind: 'bar', weight: kilograms(20) }, need('bar', 1, pounds(45)), true],
  ['no 15 kg bar for it', { kind: 'bar', weight: kilograms(15) }, need('bar', 1, pounds(45)), false],
  ['a bar of unknown weight', { kind: 'bar', weight: null }, need('bar', 1, pounds(45)), true],
  ['no 20 kg plate for a 45', { kind: 'plate', weight: kilograms(20) }, need('plate', 2, pounds(45)), false],
  ['a small plate for a micro plate', { kind: 'plate', weight: pounds(1.25) }, need('micro', 2, pounds(1.25)), true],
  ['no bumper for a plate', { kind: 'bumper', weight: pounds(45) }, need('plate', 2, pounds(45)), false],
  ['a 45 lb bumper for a 20 kg one', { kind: 'bumper', weight: pounds(45) }, need('bumper', 2, kilograms(20)), true],
  ['a 25 lb bumper for a 10 kg one', { kind: 'bumper', weight: pounds(25) }, need('bumper', 2, kilograms(10)), true],
  ['a 15 kg bumper for a 35 lb one', { kind: 'bumper', weight: kilograms(15) }, need('bumper', 2, pounds(35)), true],
  ['no 35 lb bumper for a 20 kg one', { kind: 'bumper', weight: pounds(35) }, need('bumper', 2, kilograms(20)), false],
  ['no plate of unknown weight', { kind: 'plate', weight: null }, need('plate', 2, pounds(45)), false],
] as const)('takes %s', (_what, thing, wanted, fills) => {
  expect(fillsNeed(thing, wanted)).toBe(fills);
});

describe('restCost', () => {
  it('prices what is open at the rates, and names what has none', () => {
    const open = [need('plate', 2, pounds(45)), need('bench', 1), need('platform', 1)];
    const rest = restCost(open, DEFAULT_SETTINGS);
    // 90 lb at $0.75, and a bench at $75.
    expect(rest.used.likely).toBeCloseTo(6750 + 7500, 6);
    expect(rest.unpriced).toEqual([need('platform', 1)]);
    // 90 lb at $1.50 and 7 % tax and $0.45 shipping; a bench at $180, taxed, and $45.
    expect(rest.fresh.likely).toBeCloseTo(90 * (150 * 1.07 + 45) + 18_000 * 1.07 + 4500, 6);
    const built = { used: { low: 1, likely: 2, high: 3 }, fresh: { low: 10, likely: 20, high: 30 } };
    expect(restCost(open, DEFAULT_SETTINGS, built).fresh.likely).toBeCloseTo(rest.fresh.likely + 20, 6);
  });

  it('has no prices in a currency without rates', () => {
    expect(piecePrice(need('bench', 1), { ...DEFAULT_SETTINGS, currency: 'EUR' })).toBeNull();
  });
});

it('gives the plates as the settings want them, of one face value together', () => {
  const plates = plateNeed([
    need('micro', 2, pounds(1.25)),
    need('plate', 4, pounds(10)),
    need('plate', 2, pounds(1.25)),
    need('rack', 1),
  ]);
  expect(plates).toEqual([
    { weight: pounds(10), pieces: 4 },
    { weight: pounds(1.25), pieces: 4 },
  ]);
  expect(settingsSchema.safeParse({ ...DEFAULT_SETTINGS, need: plates }).success).toBe(true);
});

const read = (text: string) => evaluate(listingFromText(text), DEFAULT_SETTINGS);
const find = (id: string, text: string, rest: Partial<ConsideredFind> = {}): ConsideredFind => ({
  id,
  evaluation: read(text),
  place: 'p',
  refusal: 0,
  barred: null,
  same: [],
  ...rest,
});

describe('what an ad fills', () => {
  const needs = [need('plate', 4, pounds(45)), need('plate', 2, pounds(10)), need('bench', 1)];

  it('counts pieces by need', () => {
    const fills = fillsOf(read('Olympic plates, 2 inch hole: 4x45 lb, 2x10 lb, 2x25 lb and a flat bench. $300'), needs, null);
    expect(fills.map(({ need: index, pieces }) => [index, pieces])).toEqual([
      [0, 4],
      [1, 2],
      [2, 1],
    ]);
  });

  it('leaves cracked plates and wrong holes aside', () => {
    expect(fillsOf(read('Two 45 lb plates with 1 inch holes. $40'), needs, null)).toEqual([]);
    expect(fillsOf(read('Pair of cracked 45 lb Olympic plates. $40'), needs, null)).toEqual([]);
  });
});

// Common practice, no source: a bar for a rack is a little over 7 ft long.
it('a bar too short for a rack fills no need for one', () => {
  const bar = [need('bar', 1, pounds(45))];
  expect(fillsOf(read('Olympic bar, 6 ft, 2 inch sleeves. $60'), bar, null)).toEqual([]);
  expect(fillsOf(read('Olympic bar, 7 ft, 2 inch sleeves. $60'), bar, null)).toHaveLength(1);
  const both = { ...DEFAULT_SETTINGS, otherSleeveMm: 25 };
  const narrow = evaluate(listingFromText('1 inch bar, 6 ft. $20'), both);
  expect(fillsOf(narrow, bar, null)).toEqual([]);
  // Its own owner pays for it what such bars bring: common practice, they are five to six feet long.
  expect(narrow.flags.map(({ id }) => id)).not.toContain('short-bar');
});

// Common practice, no source: a pair in kilograms does for a pair of the next plate in pounds.
it('iron in kilograms fills needs in pounds by pairs, in a kit with plates in both units', () => {
  const three = read('Olympic plates, 50 mm hole: 3x20 kg. $100');
  expect(fillsOf(three, [need('plate', 4, pounds(45))], { plates: 'mixed' })).toMatchObject([{ need: 0, pieces: 2 }]);
  expect(fillsOf(three, [need('plate', 4, pounds(45))], { plates: 'lb' })).toEqual([]);
});

describe('marketOf', () => {
  const open = [need('plate', 4, pounds(45)), need('bench', 1), need('platform', 1)];
  const terms = {
    settings: DEFAULT_SETTINGS,
    places: [{ id: 'p', trip: 1000, cash: 500 }],
    budget: null,
    paying: 'asked',
    platform: null,
  } as const;

  it('makes offers of an ad and of its parts with prices of their own, which exclude each other', async () => {
    const parts = find('a', 'Olympic 2 inch plates 4x45 lb $120\nFlat bench $50');
    const { market, unpriced } = marketOf(open, [parts], terms);
    const [plates, bench] = parts.evaluation.reading.items;
    const ids = market.offers.map(({ id }) => id);
    expect(ids).toEqual(expect.arrayContaining([partId('a', plates?.id ?? ''), partId('a', bench?.id ?? '')]));
    for (const { id, excludes } of market.offers) if (id !== 'a') expect(excludes).toContain('a');
    expect(unpriced).toEqual([need('platform', 1)]);
    const list = await buyList(market, await highsSolver());
    expect(list).toMatchObject({ kind: 'kit', proven: true, kit: { fresh: [], spent: 17_500 } });
  });

  it('never takes the same goods twice, and leaves ads without a price aside', () => {
    const text = 'Olympic 2 inch plates 4x45 lb $120';
    const { market, unreckoned } = marketOf(
      open,
      [find('a', text), find('b', text, { same: ['a'] }), find('c', 'Flat bench, make me an offer')],
      terms,
    );
    expect(market.offers.find(({ id }) => id === 'b')?.excludes).toEqual(['a']);
    expect(unreckoned).toEqual(['c']);
  });
});
