/** What must be so for every text that anybody can hand over. */
import fc from 'fast-check';
import { toContract } from '../../../src/contract.ts';
import { judge } from '../../../src/evaluate.ts';
import { contractSchema } from '../../../src/listing/contract.ts';
import { listingFromText, type PageListing } from '../../../src/listing/page-listing.ts';
import type { Fact, Reading } from '../../../src/listing/reading.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { read } from '../../../src/read/index.ts';
import type { Money } from '../../../src/units/money.ts';
import { faultsOfForm } from '../../corpus/essence.ts';
import { english } from '../evaluate/strings.ts';
import { grammarAd } from './grammar.ts';
import { mutated } from './mutations.ts';

const say = english();

function faultsOfValues({ asking, items, sold, statedTotal }: Reading): string[] {
  const faults: string[] = [];
  const expectThat = (fine: boolean, what: string): void => {
    if (!fine) faults.push(what);
  };
  const positive = (value: number): boolean => Number.isFinite(value) && value > 0;
  const amounts: (Fact<Money> | null)[] = [asking.amount, asking.unitAmount, asking.high, asking.delivery, ...asking.former];
  for (const item of [...items, ...sold]) {
    const { id, count, unitWeight, totalWeight, ownPrice, capacity } = item;
    amounts.push(ownPrice);
    expectThat(
      count === null || (Number.isInteger(count.value) && count.value > 0),
      `${id}: count ${count?.value} by ${count?.rule}`,
    );
    for (const weight of [unitWeight, capacity])
      expectThat(weight === null || positive(weight.value.value), `${id}: ${weight?.rule} weighs ${weight?.value.value}`);
    // Rounded: pieces of a millionth of a pound come to nothing.
    const total = totalWeight?.value.value ?? 0;
    expectThat(Number.isFinite(total) && total >= 0, `${id}: ${totalWeight?.rule} weighs ${total}`);
    for (const size of [item.boreMm, item.shaftMm, item.sleeveMm, item.lengthMm, item.diameterMm, item.tensilePsi])
      expectThat(size === null || positive(size.value), `${id}: ${size?.rule} measures ${size?.value}`);
  }
  for (const amount of amounts)
    if (amount) expectThat(Number.isSafeInteger(amount.value.minor) && amount.value.minor >= 0, `amount ${amount.value.minor}`);
  expectThat(statedTotal === null || positive(statedTotal.value.value), `stated total ${statedTotal?.value.value}`);
  return faults;
}

/**
 * To be mended, then taken out here: a doubt about a price that the page marks up, and that is not in the text, cites an empty span of it;
 * "10 - 2.5" is turned to two and a half tens where the other lines have the weight first.
 */
const KNOWN = [/^(?:two_prices|lot_or_each):asking\.\w+: 0 to 0 of/, /count [\d.]+ by [\w-]+-turned$/];

/** Everything that is wrong with the answer to one listing; throws what the core throws. */
export function faultsOf(listing: PageListing): string[] {
  const reading = read(listing);
  const faults = [...faultsOfForm(reading), ...faultsOfValues(reading)];
  if (JSON.stringify(read(listing)) !== JSON.stringify(reading)) faults.push('read otherwise the second time');
  const contract = contractSchema.safeParse(toContract(judge(reading, DEFAULT_SETTINGS), say));
  if (!contract.success) faults.push(`contract: ${JSON.stringify(contract.error.issues).slice(0, 300)}`);
  for (const { id, choices } of reading.doubts)
    for (const { corrections } of choices)
      faults.push(
        ...faultsOfValues(judge(reading, DEFAULT_SETTINGS, corrections).reading).map((fault) => `${id} settled: ${fault}`),
      );
  return faults.filter((fault) => !KNOWN.some((known) => known.test(fault)));
}

const priced: fc.Arbitrary<Partial<PageListing>> = fc.record({
  priceText: fc.oneof(
    fc.constant(null),
    fc.constantFrom('$120', '1.200 €', '', 'Free', '$$$', '9'.repeat(90)),
    fc.string({ maxLength: 20 }),
  ),
  language: fc.constantFrom(null, 'en-US', 'de', 'de-AT', 'xx', ''),
  title: fc.oneof(
    fc.constant(''),
    grammarAd.map((text) => text.slice(0, 60)),
  ),
  struck: fc.array(
    fc.tuple(fc.nat({ max: 300 }), fc.nat({ max: 80 })).map(([start, length]) => ({ start, end: start + length })),
    { maxLength: 3 },
  ),
});

/** Listings of generated ads and of damaged ones of `texts`. */
export const listings = (texts: readonly string[]): fc.Arbitrary<PageListing> =>
  fc
    .tuple(fc.oneof(grammarAd, mutated(texts)), fc.oneof(fc.constant({}), priced))
    .map(([text, more]) => ({ ...listingFromText(text, 'page'), ...more }));

/** The property of all: fast-check shrinks what breaks it. */
export const alwaysFine = (texts: readonly string[]) =>
  fc.property(listings(texts), (listing) => {
    const faults = faultsOf(listing);
    if (faults.length > 0) throw new Error(faults.slice(0, 5).join('\n'));
  });
