import { beforeAll, describe, expect, it } from 'vitest';
import { type BuyList, buyList, type Kit, type Market, type Offer, type Solve } from '../../../src/kit/buy-list/index.ts';
import { alternatives, leftOut, priceCut, withCut } from '../../../src/kit/buy-list/others.ts';
import { highsSolver } from '../../tools/buy-list/solvers.ts';

let solve: Solve;
beforeAll(async () => {
  solve = await highsSolver();
});

const offer = (id: string, price: number, fills: Record<string, number>, rest: Partial<Offer> = {}): Offer => ({
  id,
  place: id,
  price,
  refusal: 0,
  fills: Object.entries(fills).map(([need, pieces]) => ({ need, pieces })),
  otherResale: 0,
  excludes: [],
  barred: null,
  ...rest,
});

/** Two 45s at $90 new and a bar at $300, each offer at a place of its own with a trip of $10, $6 of it cash. */
const market = (offers: readonly Offer[], rest: Partial<Market> = {}): Market => ({
  needs: [
    { id: '45', pieces: 2, fresh: 9000, resale: 3000 },
    { id: 'bar', pieces: 1, fresh: 30_000, resale: 15_000 },
  ],
  offers,
  places: [...new Set(offers.map(({ place }) => place))].map((id) => ({ id, trip: 1000, cash: 600 })),
  budget: null,
  ...rest,
});

const kitOf = (list: BuyList): Kit => {
  if (list.kind !== 'kit') throw new Error(`no kit but ${list.kind}`);
  return list.kit;
};
const best = async (it: Market): Promise<Kit> => kitOf(await buyList(it, solve));

describe('worked by hand', () => {
  it('buys everything new where nothing is on offer', async () => {
    expect(await buyList(market([]), solve)).toMatchObject({
      kind: 'kit',
      proven: true,
      kit: {
        cost: 48_000,
        spent: 48_000,
        chosen: [],
        places: [],
        fresh: [
          { need: '45', pieces: 2 },
          { need: 'bar', pieces: 1 },
        ],
      },
    });
  });

  it('counts the trip once for two ads at one place, and the cash part of it as spent', async () => {
    const kit = await best(
      market([offer('a', 8000, { '45': 2 }, { place: 'p' }), offer('b', 12_000, { bar: 1 }, { place: 'p' })]),
    );
    expect(kit).toMatchObject({ chosen: ['a', 'b'], cost: 21_000, spent: 20_600, places: ['p'], fresh: [], surplus: [] });
  });

  it('takes a part or its whole, never both', async () => {
    const whole = offer('whole', 22_000, { '45': 2, bar: 1 }, { place: 'p' });
    const part = offer('part', 7000, { '45': 2 }, { place: 'p', excludes: ['whole'] });
    expect((await best(market([whole, part]))).chosen).toEqual(['whole']);
    // Whole 230, part and a new bar 380: at 390 for the whole it is the part.
    expect((await best(market([{ ...whole, price: 39_000 }, part]))).chosen).toEqual(['part']);
  });

  it('values what is over at resale: four 45s for $150 cost $90 with two sold on, and $10 to fetch', async () => {
    const kit = await best(market([offer('four', 15_000, { '45': 4 })]));
    expect(kit.cost).toBe(30_000 + 15_000 - 2 * 3000 + 1000);
    expect(kit.surplus).toEqual([{ offer: 'four', need: '45', pieces: 2 }]);
    expect(kit.spent).toBe(30_000 + 15_000 + 600);
  });

  it('buys nothing only to sell it on, not even a bargain', async () => {
    // Ten 45s for $20 would fetch $300; two are used, of eight no more counts than 0.9 of their part of the price: 8 × $1.80.
    const kit = await best(market([offer('lot', 2000, { '45': 10 })]));
    expect(kit.cost).toBe(30_000 + 2000 - 8 * 180 + 1000);
    // With both plates and bar there, a second lot is left.
    const two = market([offer('a', 2000, { '45': 10 }, { place: 'p' }), offer('b', 2000, { '45': 10 }, { place: 'p' })]);
    expect((await best(two)).chosen).toHaveLength(1);
  });

  it('takes the cheap ad of two even where the cap on resale bites', async () => {
    // $10 and a trip of $5 against $40 next door: $15 is less. Counting resale up to 0.9 of the price as if all were surplus would say $6 and $4.
    const it = market([offer('far', 1000, { '45': 2 }), offer('near', 4000, { '45': 2 })], {
      places: [
        { id: 'far', trip: 500, cash: 500 },
        { id: 'near', trip: 0, cash: 0 },
      ],
    });
    expect((await best(it)).chosen).toEqual(['far']);
  });

  it('counts a refusal at the door: new instead, and the trip in any case', async () => {
    const kit = await best(market([offer('a', 6000, { '45': 2 }, { refusal: 0.25 })]));
    expect(kit.cost).toBe(30_000 + 0.75 * 6000 + 0.25 * 18_000 + 1000);
  });

  it('leaves barred ads alone', async () => {
    expect((await best(market([offer('a', 100, { bar: 1 }, { barred: 'bent' })]))).chosen).toEqual([]);
  });

  it('keeps within the budget, or says by how much the least money is over it', async () => {
    const offers = [offer('a', 20_000, { bar: 1 }), offer('b', 8000, { '45': 2 })];
    expect(await buyList(market(offers, { budget: 29_200 }), solve)).toMatchObject({ kind: 'kit', kit: { spent: 29_200 } });
    expect(await buyList(market(offers, { budget: 29_199 }), solve)).toMatchObject({
      kind: 'short',
      by: 1,
      kit: { spent: 29_200 },
    });
  });

  it('tells what nobody offers and no shop has', async () => {
    const needs = [{ id: 'rack', pieces: 1, fresh: null, resale: 0 }];
    expect(await buyList({ needs, offers: [], places: [], budget: null }, solve)).toEqual({
      kind: 'impossible',
      needs: ['rack'],
    });
  });

  it('tells the price at which an ad comes in', async () => {
    const it = market([offer('a', 8000, { '45': 2 }), offer('b', 11_000, { '45': 2 })]);
    const kit = await best(it);
    expect(leftOut(it, kit)).toEqual(['b']);
    // At $30 off it costs as much as the other; a cent more and it is in.
    expect(await priceCut(it, kit, 'b', solve)).toEqual({ offer: 'b', cut: 3001, above: 3001 });
    expect((await best(withCut(it, 'b', 3001))).chosen).toEqual(['b']);
  });

  it('compares by the money that it takes where the budget falls short of every list', async () => {
    // b takes $90 and $6 to fetch against $60 and $6 of a, and saves nothing; c is dear, but no shop has a rack.
    const it = market(
      [offer('a', 6000, { '45': 2 }), offer('b', 9000, { '45': 2 }, { refusal: 0.9 }), offer('c', 20_000, { bar: 1 })],
      {
        budget: 1000,
      },
    );
    const list = await buyList(it, solve);
    if (list.kind !== 'short') throw new Error(list.kind);
    expect(list.kit).toMatchObject({ chosen: ['a', 'c'], spent: 27_200 });
    expect(leftOut(it, list.kit, 'spent')).toEqual(['b']);
    // $30 off is as much money as a; a cent more and it is the one that takes the least.
    expect(await priceCut(it, list.kit, 'b', solve, 'spent')).toMatchObject({ cut: 3001 });
    const cut = await buyList(withCut(it, 'b', 3001), solve);
    expect(cut).toMatchObject({ kind: 'short', kit: { chosen: ['b', 'c'], spent: 27_199 } });
    const others: number[] = [];
    for await (const { kit } of alternatives(it, list.kit, solve, 3, 'spent')) others.push(kit.spent - list.kit.spent);
    // b for a; without c a bar of $300 for $206; without a two 45s of $180 for $66.
    expect(others).toEqual([3000, 9400, 11_400]);
  });

  it('does not call for a cut that no cut would do', async () => {
    const it = market([offer('a', 100, { '45': 2 }), offer('b', 5000, { '45': 2 })], {
      places: [
        { id: 'a', trip: 0, cash: 0 },
        { id: 'b', trip: 4000, cash: 4000 },
      ],
    });
    expect(await priceCut(it, await best(it), 'b', solve)).toMatchObject({ cut: null });
  });

  it('gives as alternatives lists that do without something of each before', async () => {
    const it = market([offer('a', 8000, { '45': 2 }), offer('b', 9000, { '45': 2 }), offer('c', 10_000, { bar: 1 })]);
    const kit = await best(it);
    const found: Kit[] = [];
    for await (const one of alternatives(it, kit, solve)) found.push(one.kit);
    expect(kit.chosen).toEqual(['a', 'c']);
    expect(found.map(({ chosen }) => chosen)).toEqual([['b', 'c'], ['c'], ['a']]);
  });
});

it.each([
  ['a price in fractions', market([offer('a', 0.5, {})])],
  ['a price below zero', market([offer('a', -1, {})])],
  ['a need that is not there', market([offer('a', 1, { '35': 1 })])],
  ['a place that is not there', { ...market([offer('a', 1, {})]), places: [] }],
  ['a chance over one', market([offer('a', 1, {}, { refusal: 1.5 })])],
  ['the same offer twice', market([offer('a', 1, {}), offer('a', 1, {})])],
])('refuses %s', async (_what, wrong) => {
  await expect(buyList(wrong, solve)).rejects.toThrow(RangeError);
});

describe('what the buyer must have', () => {
  const offers = [offer('a', 5000, { 45: 2 }), offer('b', 9000, { 45: 2 }), offer('c', 4000, {})];

  it('is bought though it is dearer, or fills nothing', async () => {
    expect((await best(market(offers))).chosen).toEqual(['a']);
    // In place of a, $40 dearer; c fills nothing and costs its price and its trip.
    const free = await best(market(offers));
    const forced = await best(market(offers, { must: [['b']] }));
    expect(forced.chosen).toEqual(['b']);
    expect(forced.cost - free.cost).toBe(4000);
    const idle = await best(market(offers, { must: [['c']] }));
    expect(idle.chosen).toEqual(['a', 'c']);
    expect(idle.cost - free.cost).toBe(5000);
  });

  it('is one of a group, the cheapest', async () => {
    expect((await best(market(offers, { must: [['b', 'a']] }))).chosen).toEqual(['a']);
  });
});
