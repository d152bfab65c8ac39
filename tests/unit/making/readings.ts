/** Readings made by hand, for tests of what comes after the reader. */
import type { Asking, Condition, Fact, Item, Kind, Reading } from '../../../src/listing/reading.ts';
import { NO_FACTS } from '../../../src/listing/reading.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';
import type { Weight } from '../../../src/units/mass.ts';
import { money } from '../../../src/units/money.ts';

export const fact = <T>(value: T): Fact<T> => ({ value, basis: 'stated', rule: 'test', evidence: [] });

type Plain = {
  [K in keyof Item]?: Item[K] extends Fact<infer T> | null ? T : never;
};

/** An item with the values given, as stated facts; total weight follows count and unit weight. */
export function item(id: string, kind: Kind, values: Omit<Plain, 'kind'> = {}, conditions: readonly Condition[] = []): Item {
  const base: Item = {
    id,
    kind: fact(kind),
    ...NO_FACTS,
    conditions: conditions.map((word) => fact(word)),
    basis: 'stated',
    evidence: [],
  };
  const facts = Object.fromEntries(Object.entries(values).map(([key, value]) => [key, fact(value)]));
  const made: Item = { ...base, ...facts };
  if (made.totalWeight !== null || made.count === null || made.unitWeight === null) return made;
  const { value, unit } = made.unitWeight.value;
  return { ...made, totalWeight: fact({ value: value * made.count.value, unit }) };
}

export const lb = (value: number): Weight => ({ value, unit: 'lb' });
export const kg = (value: number): Weight => ({ value, unit: 'kg' });

/** Plates of one weight, "4 x 45 lb", with 50 mm holes unless said otherwise. */
export const plates = (id: string, count: number, unitWeight: Weight, values: Omit<Plain, 'kind'> = { fits: '50mm' }): Item =>
  item(id, 'plate', { count, unitWeight, ...values });

export function reading(
  items: readonly Item[],
  price: number | null,
  changes: Partial<Reading> = {},
  asking: Partial<Asking> = {},
): Reading {
  return {
    text: '',
    language: 'en',
    asking: {
      amount: price === null ? null : fact(money(price, 'USD')),
      basis: price === null ? 'none' : 'lot',
      unitAmount: null,
      high: null,
      currency: price === null ? null : fact('USD'),
      firm: null,
      openToOffers: null,
      former: [],
      delivery: null,
      placeholder: false,
      ...asking,
    },
    items,
    sold: [],
    statedTotal: null,
    place: null,
    distance: null,
    aboutThisTrade: true,
    wanted: false,
    terms: [],
    doubts: [],
    ...changes,
  };
}

export const settings = (changes: Partial<Settings> = {}): Settings => ({ ...DEFAULT_SETTINGS, ...changes });
