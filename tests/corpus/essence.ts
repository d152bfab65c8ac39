/** What a reading says, without where it says it: two texts that mean the same have the same essence. */

import type { Span } from '../../src/listing/page-listing.ts';
import type { Asking, Fact, Item, Reading } from '../../src/listing/reading.ts';

const said = <T>(fact: Fact<T> | null): T | null => fact?.value ?? null;

export const goodsOf = (item: Item) => ({
  kind: item.kind.value,
  count: said(item.count),
  unitWeight: said(item.unitWeight),
  totalWeight: said(item.totalWeight),
  fits: said(item.fits),
  boreMm: said(item.boreMm),
  shaftMm: said(item.shaftMm),
  lengthMm: said(item.lengthMm),
  material: said(item.material),
  conditions: item.conditions.map(({ value }) => value).sort(),
  ownPrice: said(item.ownPrice),
});

const askedOf = (asking: Asking) => ({
  amount: said(asking.amount),
  basis: asking.basis,
  unitAmount: said(asking.unitAmount),
  high: said(asking.high),
  currency: said(asking.currency),
  firm: said(asking.firm),
  openToOffers: said(asking.openToOffers),
  former: asking.former.map(said),
  delivery: said(asking.delivery),
  placeholder: asking.placeholder,
});

export const essence = (reading: Reading) => ({
  language: reading.language,
  aboutThisTrade: reading.aboutThisTrade,
  wanted: reading.wanted,
  asking: askedOf(reading.asking),
  items: reading.items.map((item) => ({ id: item.id, ...goodsOf(item) })),
  sold: reading.sold.map(goodsOf),
  statedTotal: said(reading.statedTotal),
  place: said(reading.place),
  terms: reading.terms.map(said),
  doubts: reading.doubts.map(({ id }) => id),
});

const factsOf = (item: Item): readonly (Fact<unknown> | null)[] => [
  item.kind,
  item.count,
  item.unitWeight,
  item.totalWeight,
  item.fits,
  item.boreMm,
  item.shaftMm,
  item.sleeveMm,
  item.lengthMm,
  item.capacity,
  item.tensilePsi,
  item.diameterMm,
  item.material,
  item.grade,
  item.ownPrice,
  ...item.conditions,
];

/** Every span of a reading with the name of what it is evidence of. */
export function spansOf(reading: Reading): (Span & { readonly of: string })[] {
  const { asking } = reading;
  const named: [string, readonly Span[]][] = [...reading.items, ...reading.sold].flatMap((item): [string, readonly Span[]][] => [
    [item.id, item.evidence],
    ...factsOf(item).flatMap((fact): [string, readonly Span[]][] => (fact ? [[`${item.id} ${fact.rule}`, fact.evidence]] : [])),
  ]);
  const lone: readonly (Fact<unknown> | null)[] = [
    asking.amount,
    asking.unitAmount,
    asking.high,
    asking.currency,
    asking.firm,
    asking.openToOffers,
    ...asking.former,
    asking.delivery,
    reading.statedTotal,
    reading.place,
    reading.distance,
    ...reading.terms,
  ];
  for (const fact of lone) if (fact) named.push([fact.rule, fact.evidence]);
  for (const doubt of reading.doubts) named.push([doubt.id, doubt.evidence]);
  return named.flatMap(([of, spans]) => spans.map((span) => ({ ...span, of })));
}

const twice = (ids: readonly string[]): string[] => ids.filter((id, at) => ids.indexOf(id) < at).map((id) => `${id} twice`);

/** Faults of a reading that no text excuses: spans outside the text or empty, an item's id given twice. */
export const faultsOfForm = (reading: Reading): string[] => [
  ...spansOf(reading)
    .filter(({ start, end }) => !(Number.isInteger(start) && start >= 0 && start < end && end <= reading.text.length))
    .map(({ of, start, end }) => `${of}: ${start} to ${end} of ${reading.text.length}`),
  ...twice(reading.items.map(({ id }) => id)),
];

export const doubtsTwice = (reading: Reading): string[] => twice(reading.doubts.map(({ id }) => id));
