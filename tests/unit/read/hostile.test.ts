/**
 * Texts of a megabyte, made to be slow: the limit is generous, since it guards against time that grows faster than the text.
 * Processor time is measured, so that a busy machine makes no difference.
 */
import { describe, expect, it } from 'vitest';
import { listingFromText, MAX_TEXT } from '../../../src/listing/page-listing.ts';
import { read } from '../../../src/read/index.ts';
import { faultsOfForm } from '../../corpus/essence.ts';

const SECONDS = 5;
const filled = (piece: string, length: number = MAX_TEXT): string =>
  piece.repeat(Math.ceil(length / piece.length)).slice(0, length);

const HOSTILE: readonly (readonly [string, string])[] = [
  ['deep brackets', filled('(', MAX_TEXT / 2) + filled(')', MAX_TEXT / 2)],
  ['brackets of all kinds', filled('([{')],
  ['a million digits', filled('9')],
  ['digits and points', filled('1.')],
  ['digits and commas', filled('1,000,')],
  ['fractions without end', filled('1/2/')],
  ['one endless word', filled('a')],
  ['one endless line of words', filled('some words about nothing in particular ')],
  ['one endless line of quantities', filled('4 x 45 lb. ')],
  ['quantities on lines of their own', filled('4 x 45 lb plates $20\n')],
  ['prices and conditions', filled('olympic sold rust $5 ')],
  ['nouns', filled('bar rack plate bench ')],
  ['modifiers before no noun', filled('olympic iron rubber new ')],
  ['lists of weights', filled('45/35/25/')],
  ['runs of bare numbers', filled('2 45 ')],
  ['dashes', filled('2-45-')],
  ['times', filled('4x45x')],
  ['prices only', filled('$1 ')],
  ['places', filled('located in New Brackwater, ')],
  ['words for no', filled('not no never without ')],
  ['marks without width', filled('\u200b')],
  ['direction marks between letters', filled('4\u202ex\u202d45 ')],
  ['combining marks', `e${filled('\u0301')}`],
  ['halves of characters', filled('\ud83d')],
  ['empty lines', filled('\n')],
  ['spaces', filled(' ')],
  ['cells of a table', filled('Qty\tWeight\tPrice\n4\t45 lb\t$20\n')],
  ['cells on one row', filled('4\t')],
  ['quotes', filled(`2" 7'`)],
  ['German compounds', filled('Hantelscheibenstangen je 20 kg Stück ')],
];

describe('a megabyte is read in time', () => {
  it.each(HOSTILE)(
    '%s',
    (_, text) => {
      const before = process.cpuUsage();
      const reading = read(listingFromText(text));
      const { user, system } = process.cpuUsage(before);
      expect((user + system) / 1e6).toBeLessThan(SECONDS);
      expect(faultsOfForm(reading)).toEqual([]);
    },
    120_000,
  );

  it('says that it did not read to the end', () =>
    expect(read(listingFromText(filled('4 x 45 lb plates $20\n'))).doubts.map(({ id }) => id)).toContain('too_long:text'));
});
