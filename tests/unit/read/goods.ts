/** What an ad says, in one line for each value, for tables of notations: "value | rule that read it | words that it was read from". */
import { listingFromText } from '../../../src/listing/page-listing.ts';
import type { Fact, Item, Reading } from '../../../src/listing/reading.ts';
import { read } from '../../../src/read/index.ts';
import { inMajor, type Money } from '../../../src/units/money.ts';

export const readText = (text: string): Reading => read(listingFromText(text));

/** The words that a value was read from. */
export const cut = (reading: Reading, spans: Item['evidence']): string =>
  spans.map(({ start, end }) => reading.text.slice(start, end)).join(' + ');

/** "4 plate 45 lb | count-times-weight | 4x45 plates"; the rule is that of the count, else of the weight, else of the kind. */
export function goods(text: string): string[] {
  const reading = readText(text);
  return reading.items.map((item) => {
    const { count, unitWeight, kind } = item;
    const weight = unitWeight ? `${unitWeight.value.value} ${unitWeight.value.unit}` : '?';
    const rule = count?.rule ?? unitWeight?.rule ?? kind.rule;
    return `${count?.value ?? '?'} ${kind.value} ${weight} | ${rule} | ${cut(reading, item.evidence)}`;
  });
}

/** Facts of the goods but for their count and weight: "bar-1 shaftMm 28 | shaft | 28 mm shaft". */
export function facts(text: string): string[] {
  const reading = readText(text);
  return reading.items.flatMap((item) => {
    const named: readonly (readonly [string, Fact<unknown> | null])[] = [
      ['fits', item.fits],
      ['boreMm', item.boreMm],
      ['shaftMm', item.shaftMm],
      ['sleeveMm', item.sleeveMm],
      ['lengthMm', item.lengthMm],
      ['diameterMm', item.diameterMm],
      ['heightMm', item.heightMm],
      ['widthMm', item.widthMm],
      ['tensilePsi', item.tensilePsi],
      ['material', item.material],
      ['grade', item.grade],
      ...item.conditions.map((fact) => ['condition', fact] as const),
    ];
    const lines = named.flatMap(([name, fact]) =>
      fact ? [`${item.id} ${name} ${fact.value} | ${fact.rule} | ${cut(reading, fact.evidence)}`] : [],
    );
    const { capacity } = item;
    if (capacity) {
      const { value, unit } = capacity.value;
      lines.push(`${item.id} capacity ${value} ${unit} | ${capacity.rule} | ${cut(reading, capacity.evidence)}`);
    }
    return lines;
  });
}

/** The asking price, basis first: "lot 120 USD | price-sign-first | $120", then unit price, upper end, former prices, delivery and own prices. */
export function asked(text: string): string[] {
  const reading = readText(text);
  const { asking } = reading;
  const line = (name: string, fact: Fact<Money> | null): string[] =>
    fact ? [`${name} ${inMajor(fact.value)} ${fact.value.currency} | ${fact.rule} | ${cut(reading, fact.evidence)}`] : [];
  return [
    ...(asking.amount ? line(asking.basis, asking.amount) : [`${asking.basis}${asking.placeholder ? ' placeholder' : ''}`]),
    ...line('unit', asking.unitAmount),
    ...line('high', asking.high),
    ...asking.former.flatMap((fact) => line('former', fact)),
    ...line('delivery', asking.delivery),
    ...(asking.firm ? [`firm | ${asking.firm.rule} | ${cut(reading, asking.firm.evidence)}`] : []),
    ...(asking.openToOffers
      ? [`open to offers | ${asking.openToOffers.rule} | ${cut(reading, asking.openToOffers.evidence)}`]
      : []),
    ...reading.items.flatMap((item) => line(item.id, item.ownPrice)),
  ];
}

/** The whole offer in one line: "380 lot | 1 bar =80, 4 plate 45 lb", with the own price behind "=". "?" is what the ad does not say. */
export function offer(text: string): string {
  const { asking, items } = readText(text);
  const lines = items.map(({ kind, count, unitWeight, totalWeight, ownPrice }) => {
    const weight = unitWeight ? ` ${unitWeight.value.value} ${unitWeight.value.unit}` : '';
    const total = totalWeight && !count ? ` (${totalWeight.value.value} ${totalWeight.value.unit})` : '';
    return `${count?.value ?? '?'} ${kind.value}${weight}${total}${ownPrice ? ` =${inMajor(ownPrice.value)}` : ''}`;
  });
  const unit = asking.unitAmount ? ` of ${inMajor(asking.unitAmount.value)}` : '';
  return `${asking.amount ? inMajor(asking.amount.value) : '?'} ${asking.basis}${unit} | ${lines.join(', ')}`;
}

/** Ids of the doubts of an ad. */
export const doubts = (text: string): string[] => readText(text).doubts.map(({ id }) => id);
