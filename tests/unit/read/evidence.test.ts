/** Which words a value is read from: what the panel highlights when the buyer asks "where does it say so?". */
import { describe, expect, it } from 'vitest';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { read } from '../../../src/read/index.ts';
import { cut, readText } from './goods.ts';

const countWords = (text: string): string[] => {
  const reading = readText(text);
  return reading.items.map((item) => cut(reading, item.count?.evidence ?? []));
};

describe('the words of a count', () => {
  it.each([
    ['4x45 plates', '4x45 plates'],
    ['(4) 45 lb plates', '(4) 45 lb plates'],
    ['two pairs of 45 lb plates', 'two pairs of 45 lb plates'],
  ])('%s', (text, words) => expect(countWords(text)[0]).toBe(words));

  // The count is known, but the words that give it are not cited.
  it.fails.each([
    ['2 each of 45, 25 lb plates', '2 each'],
    ['45s, 25s, a pair of each', 'pair of each'],
    ['45 lb plates. Four of them.', 'Four of them'],
    ['Item\tQty\nPlate 25 lb\t4', '4'],
    ['barbell, collars x2', 'x2'],
    ['plates 45 45 25 25', '45 45'],
  ])('%s', (text, words) => expect(countWords(text).join(' ')).toContain(words));

  it.fails('takes the closing bracket in', () => expect(countWords('45s (x4)')).toEqual(['45s (x4)']));
});

describe('evidence', () => {
  it('indexes the text with the title before it', () => {
    const reading = read({ ...listingFromText('They are in the garage. $120'), title: '4x45 olympic plates' });
    expect(reading.text.startsWith('4x45 olympic plates\n')).toBe(true);
    expect(reading.items.map((item) => cut(reading, item.evidence))).toEqual(['4x45 olympic plates']);
    expect(cut(reading, reading.asking.amount?.evidence ?? [])).toBe('$120');
  });

  it('is of the text as it came, whatever signs it came in', () => {
    const reading = readText('\ufeffSelling\u200b ４×４５ lb\u00a0plates, “olympic”, $\u200b120');
    expect(reading.items.map((item) => cut(reading, item.evidence))).toEqual(['４×４５ lb\u00a0plates']);
    expect(cut(reading, reading.asking.amount?.evidence ?? [])).toBe('$\u200b120');
  });

  it('counts goods told twice once, and cites both', () => {
    const reading = readText('Olympic plates 4x45\n\nFour 45 lb plates, good shape');
    expect(reading.items.map(({ count }) => count?.value)).toEqual([4]);
    expect(reading.items[0]?.evidence.length).toBeGreaterThan(1);
  });

  // The price stands beside the text, in the page's own price element: there are no words to cite.
  it('of a doubt is never an empty span', () => {
    const reading = read({ ...listingFromText('Olympic plates 4x45 lb, $300'), priceText: '$120' });
    expect(reading.doubts.length).toBeGreaterThan(0);
    for (const { evidence } of reading.doubts) for (const { start, end } of evidence) expect(start).toBeLessThan(end);
  });
});
