/** Place for pickup, words about the terms of sale, sold goods and wanted ads. Invented ads, no source. */
import { describe, expect, it } from 'vitest';
import { cut, goods, readText } from './goods.ts';

const place = (text: string): string | null => readText(`4x45 plates. ${text}`).place?.value ?? null;

describe('place', () => {
  it.each([
    ['Located in Eastwick', 'Eastwick'],
    ['Pickup in Upper Marlow', 'Upper Marlow'],
    ['pick up near North Wick, 40210', 'North Wick, 40210'],
    ['pickup at my house', null],
    ['no place at all', null],
  ])('%s', (text, said) => expect(place(text)).toBe(said));

  it('cites its words', () => {
    const reading = readText('4x45 plates. Located in Eastwick.');
    expect(cut(reading, reading.place?.evidence ?? [])).toBe('Eastwick');
  });

  // As pages show it.
  it.each([
    ['Located in:\tThornwick Sands', 'Thornwick Sands'],
    ['Standort\tMoosbrunn an der Leine', 'Moosbrunn an der Leine'],
    ['Listed 6 days ago in Salt Fork, KY', 'Salt Fork, KY'],
    ['\nLocal pickup only · Dunmarrow, PA · 6.2 mi away', 'Dunmarrow, PA'],
    ['\nStonefleet | 14 miles from you | Posted 09/18/2026', 'Stonefleet'],
    ['\nFerrow Heights · listed 2 days ago', 'Ferrow Heights'],
    ['\nGoose Hollow Rd, Tavish • 3 days ago • 57 views', 'Goose Hollow Rd, Tavish'],
    ['- $225 (East Quillby)', 'East Quillby'],
    ['\nBirch Narrows, ON K0X 0X0 (view map)', 'Birch Narrows, ON'],
    ['\nWhere\tMill Island\nPosted\t2 days ago', 'Mill Island'],
    ['\nOrt: Moosbrunn an der Leine', 'Moosbrunn an der Leine'],
    ['\nTannery Row, posted 3 days ago', 'Tannery Row'],
    ['\nNorth Weir, 14 miles from the ford · posted a week ago', 'North Weir'],
    ['\nI forgot where Tom put the rest', null],
    ['\nTannery posted today', null],
    ['\nBought new, posted today', null],
    ['\nSteel Plates, 20 miles of rust', null],
    ['\nCan Deliver, 20 miles from me', null],
    ['\nFair · 1 mi · Offers welcome', null],
    ['\nUsed - Like New · 3 days ago', null],
    ['$225 (Firm)', null],
    ['Posted in Sporting Goods', null],
  ])('%s', (text, said) => expect(place(text)).toBe(said));

  // A name ends where the capitals end.
  it.each([
    ['Pickup in Eastwick after work', 'Eastwick'],
    ['Located in Eastwick, cash or transfer', 'Eastwick'],
    ['located in\u00a0Eastwick', 'Eastwick'],
  ])('%s', (text, said) => expect(place(text)).toBe(said));
});

describe('sold goods', () => {
  const lines = (text: string): string[] => goods(text).map((line) => line.split(' | ')[0] ?? '');
  it.each<[string, string[]]>([
    ['4x45 plates. 45s are gone', []],
    ['4x45 plates, 2x25 plates. 25s sold.', ['4 plate 45 lb']],
    ['4x45 plates (SOLD), 2x25 plates', ['2 plate 25 lb']],
    ['power rack, barbell sold', ['1 rack ?']],
  ])('%s', (text, said) => expect(lines(text)).toEqual(said));
});

describe('wanted ads', () => {
  it.each(['WTB 4x45 plates', 'ISO barbell and plates', 'Wanted: power rack', 'looking for 45 lb plates, can pay cash'])(
    '%s',
    (text) => {
      const { wanted, items } = readText(text);
      expect({ wanted, items }).toEqual({ wanted: true, items: [] });
    },
  );
  it.each(['4x45 plates, no longer wanted', 'Selling plates 4x45, looking for $120'])('not so: %s', (text) =>
    expect(readText(text).wanted).toBe(false),
  );
});
