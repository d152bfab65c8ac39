/** Terms of sale in the words of ads; forms that sellers write, common practice, no source. */
import { expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { readTerms } from '../../../src/read/recognisers/terms.ts';

const told = (text: string): string => {
  const found = readTerms(text);
  for (const { evidence } of found) for (const { start, end } of evidence) expect(text.slice(start, end)).not.toBe('');
  return found.map(({ value }) => value).join(', ');
};

it.each([
  ['Bar $80, no trade no test', 'no-test'],
  ['Sold untested, cash only', 'no-test'],
  ['Cannot be tested, it is in storage', 'no-test'],
  ['Langhantel, keine Besichtigung', 'no-test'],
  ['300 lb set. Stock photo. $120', 'stock-photo'],
  ['Pictures are from the internet, mine looks the same', 'stock-photo'],
  ['New in box, ships from our warehouse', 'stock-photo'],
  ['Hantelset, Symbolbild', 'stock-photo'],
  ['Deposit required before you come', 'paid-ahead'],
  ['Payment in advance, I will ship', 'paid-ahead'],
  ['I accept wire transfer or gift cards', 'paid-ahead'],
  ['Crypto only', 'paid-ahead'],
  ['$50 deposit\u00a0required', 'paid-ahead'],
  ['Versand nur gegen Vorkasse', 'paid-ahead'],
  ['Untested, stock photos, payment up front', 'no-test, stock-photo, paid-ahead'],
])('%s', (text, terms) => expect(told(text)).toBe(terms));

it.each([
  ['No stock photos, these are my plates'],
  ['Never pay in advance and beware of anybody who wants gift cards only'],
  ['Do not send a wire transfer'],
  ['No trades. Six in stock'],
  ['Tested and straight'],
  ['Cash on pickup, no deposit required'],
  ['$50 deposit holds it until Saturday'],
  ['Keine Vorkasse, nur Abholung'],
])('%s: nothing of the kind', (text) => expect(told(text)).toBe(''));

// US Federal Trade Commission, advice to buyers: who wants a wire transfer, gift cards or crypto is to be left; ask for photos of the item.
it('raises its flags from the words of an ad', () => {
  const text = 'Olympic bar 45 lb, stock photo, no test. Pay by gift card before pickup. $100';
  const { flags, cautions } = evaluate(listingFromText(text), DEFAULT_SETTINGS);
  expect(flags.map(({ id }) => id)).toEqual(expect.arrayContaining(['pay-ahead', 'no-test', 'stock-wording']));
  expect(cautions.map(({ kind }) => kind)).toContain('money');
});
