/** What holds of the judgement of every ad in the corpus, whatever is right for it. Relations need no labels and no source. */
import { describe, it } from 'vitest';
import { judge } from '../../src/evaluate.ts';
import type { Worth } from '../../src/listing/evaluation.ts';
import { type Correction, type Item, isPlate, OF_ONE_PIECE, PLANS, type Reading } from '../../src/listing/reading.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../src/listing/settings.ts';
import { convert, POUND_IN_KILOGRAMS, type Weight } from '../../src/units/mass.ts';
import { type Ad, holdsOfEveryTenth as holds, rewritten } from './relation.ts';
import { moneyOf } from './rescale.ts';

/** A buyer in the ad's own currency, at the default rates taken for that currency: nearly every ad can be valued then. */
function buyerOf({ asking }: Reading, changes: Partial<Settings> = {}): Settings {
  const currency = asking.currency?.value ?? 'USD';
  const figures = { low: 0.5, likely: 0.75, high: 1, source: 'own', date: '' };
  const each = { low: 60, likely: 120, high: 200, source: 'own', date: '' };
  const rate = (used: typeof figures, times: number) => ({
    used,
    new: { ...used, low: used.low * times, likely: used.likely * times, high: used.high * times },
    shipping: { ...used, low: 0, likely: 0, high: 0 },
  });
  const byWeight = [
    'iron',
    'machined',
    'calibrated',
    'rubber-coated',
    'bumper',
    'micro',
    'one-inch-plate',
    'dumbbell',
    'kettlebell',
  ];
  const byPiece = ['bar', 'curl-bar', 'hex-bar', 'one-inch-bar', 'rack', 'stands', 'bench', 'collars', 'storage'];
  const rates = {
    ...Object.fromEntries(byWeight.map((category) => [category, rate(figures, 2)])),
    ...Object.fromEntries(byPiece.map((category) => [category, rate(each, 2)])),
  };
  return { ...DEFAULT_SETTINGS, currency, ...(currency === 'USD' ? {} : { rates }), ...changes };
}
const worthOf = (reading: Reading, corrections: readonly Correction[] = [], changes: Partial<Settings> = {}): Worth =>
  judge(reading, buyerOf(reading, changes), corrections).worth;
const most = (worth: Worth): number => worth.walkAway?.minor ?? 0;
const going = (worth: Worth): number => worth.goingWorth?.likely ?? 0;

const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(a), Math.abs(b));
const alike = (name: string, a: object | null, b: object | null): string[] => {
  if (a === null || b === null) return a === b ? [] : [`${name} is only in one`];
  const [first, second] = [Object.values(a), Object.values(b)];
  const differs = first.some((value, at) => (typeof value === 'number' ? !near(value, second[at]) : value !== second[at]));
  return differs ? [`${name} ${JSON.stringify(a)} became ${JSON.stringify(b)}`] : [];
};
/** What differs between two judgements that ought to be the same, but for the unit of rates. */
function differences(a: Worth, b: Worth): string[] {
  return [
    ...alike('usable', a.usable, b.usable),
    ...alike('offered', a.offered, b.offered),
    ...alike('all-in', a.allIn, b.allIn),
    ...alike('going worth', a.goingWorth, b.goingWorth),
    ...alike('new worth', a.newWorth, b.newWorth),
    ...alike('most to pay', a.walkAway, b.walkAway),
    ...alike('first offer', a.openingOffer, b.openingOffer),
  ];
}

/** Faults that are looked for in each kind of goods. */
const worseFor = ({ kind }: Item): string[] => {
  if (isPlate(kind.value)) return ['rust-heavy', 'cracked', 'split-hub', 'home-made'];
  return kind.value.includes('bar')
    ? ['rust-heavy', 'bent', 'seized-sleeves']
    : ['rust-heavy', 'wobbly', 'missing-parts', 'torn'];
};

describe('the worth of every ad', { timeout: 120_000 }, () => {
  it('is never raised by a worse condition', () =>
    holds(({ reading }) => {
      if (reading.items.length === 0) return null;
      const before = worthOf(reading);
      return reading.items.flatMap((item) =>
        worseFor(item)
          .filter((word) => {
            const after = worthOf(reading, [{ path: `${item.id}.condition.${word}`, value: true }]);
            return most(after) > most(before) || going(after) > going(before) + 1e-6;
          })
          .map((word) => `${item.id} ${word}`),
      );
    }, 300));

  const inUnit = (reading: Reading, unit: Weight['unit']): Reading => {
    const turn = <T extends { value: Weight } | null>(fact: T): T =>
      fact === null ? fact : { ...fact, value: convert(fact.value, unit) };
    const items = reading.items.map((item) => ({
      ...item,
      unitWeight: turn(item.unitWeight),
      totalWeight: turn(item.totalWeight),
      capacity: turn(item.capacity),
    }));
    return { ...reading, items, statedTotal: turn(reading.statedTotal) };
  };
  it('is the same in pounds and in kilograms', () =>
    holds(({ reading }) => {
      if (!reading.items.some(({ unitWeight, totalWeight }) => unitWeight ?? totalWeight)) return null;
      const pounds = worthOf(inUnit(reading, 'lb'));
      const kilos = worthOf(inUnit(reading, 'kg'), [], { unit: 'kg' });
      const [perPound, perKilo] = [pounds.perUsablePound?.likely ?? 0, kilos.perUsablePound?.likely ?? 0];
      const rate = near(perPound, perKilo * POUND_IN_KILOGRAMS) ? [] : [`${perPound} a pound became ${perKilo} a kilogram`];
      return [...differences(pounds, kilos), ...rate];
    }, 250));

  const splitItem = (item: Item, pieces: number): Item[] => {
    const { count, unitWeight } = item;
    if (count === null || unitWeight === null) return [item];
    const part = (id: string, value: number): Item => ({
      ...item,
      id,
      count: { ...count, value },
      totalWeight: { ...unitWeight, value: { ...unitWeight.value, value: unitWeight.value.value * value } },
    });
    return [part(item.id, pieces), part(`${item.id}1`, count.value - pieces)];
  };
  const canBeSplit = (item: Item): boolean =>
    isPlate(item.kind.value) &&
    (item.count?.value ?? 0) > 1 &&
    item.unitWeight !== null &&
    item.ownPrice === null &&
    !item.conditions.some(({ rule }) => rule === OF_ONE_PIECE);
  it('is the same when a line of plates is told in two', () =>
    holds(({ reading }) => {
      const lines = reading.items.filter(canBeSplit);
      if (lines.length === 0) return null;
      const before = worthOf(reading);
      return lines.flatMap((line) => {
        const items = reading.items.flatMap((item) =>
          item === line ? splitItem(line, Math.ceil((line.count?.value ?? 0) / 3)) : item,
        );
        return differences(before, worthOf({ ...reading, items })).map((fault) => `${line.id}: ${fault}`);
      });
    }, 200));

  it('is not raised by a thing that counts for nothing', () =>
    holds(({ reading }) => {
      if (reading.items.length === 0) return null;
      const need = [45, 25, 10].map((value) => ({ weight: { value, unit: 'lb' as const }, pieces: 2 }));
      return [{}, { need }, { otherSleeveMm: 25 }].flatMap((changes) => {
        const before = most(worthOf(reading, [], changes));
        return reading.items
          .filter(({ id }) => most(worthOf(reading, [{ path: `${id}.plan`, value: 'nothing' }], changes)) > before)
          .map(({ id }) => `${id} with ${JSON.stringify(changes)}`);
      });
    }, 300));

  it('is paid for to the cent, whatever is kept, sold on or left', () =>
    holds(({ reading }) => {
      const { allIn } = worthOf(reading);
      if (allIn === null || reading.items.length === 0) return null;
      return PLANS.flatMap((first) =>
        PLANS.flatMap((second) => {
          const plans = reading.items.map(({ id }, index) => ({ path: `${id}.plan`, value: index % 2 === 0 ? first : second }));
          const { split } = worthOf(reading, plans);
          const sum = split.reduce((total, share) => total + share.allIn.minor, 0);
          const free = split.every(
            (share, index) =>
              plans[index]?.value !== 'nothing' || share.allIn.minor === 0 || plans.every(({ value }) => value === 'nothing'),
          );
          const price = split.reduce((total, share) => total + share.price.minor, 0);
          // No distance is known here: the price is the whole of it.
          return sum === Math.round(allIn.likely) && price === sum && free
            ? []
            : [`${first}/${second}: ${sum} of ${allIn.likely}`];
        }),
      );
    }, 200));
});

describe('the same price written otherwise', { timeout: 120_000 }, () => {
  const same = (ad: Ad, text: string): string[] | null => {
    if (text === ad.listing.text || ad.listing.offers.length > 0) return null;
    const after = rewritten(ad, text);
    const money = JSON.stringify(moneyOf(after)) === JSON.stringify(moneyOf(ad.reading));
    return [
      ...(money ? [] : [`${moneyOf(ad.reading)} became ${moneyOf(after)}`]),
      ...differences(worthOf(ad.reading), worthOf(after)),
    ];
  };
  it('with its cents', () => holds((ad) => same(ad, ad.listing.text.replace(/\$(\d{2,4})(?![\d.,k])/g, '$$$1.00')), 150));
  it('in cents alone', () =>
    holds(
      (ad) =>
        same(
          ad,
          ad.listing.text.replace(/\$0?\.(\d\d)(?!\d)/g, (_, cents: string) => `${Number(cents)} cents`),
        ),
      4,
    ));
});
