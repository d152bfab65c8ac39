/** Weight of the lot as a whole, and set sizes. What a "300 lb set" holds is common practice, no source. */
import { describe, expect, it } from 'vitest';
import { cut, goods, readText } from './goods.ts';

const total = (text: string): string => {
  const reading = readText(text);
  const fact = reading.statedTotal;
  return fact ? `${fact.value.value} ${fact.value.unit} | ${fact.rule} | ${cut(reading, fact.evidence)}` : 'none';
};

describe('totals.ts', () => {
  it.each([
    ['300 lb olympic set with bar', '300 lb | set-size'],
    ['300# Olympic Weight Set', '300 lb | set-size'],
    ['100 kg bumper set', '100 kg | set-size'],
    ['650# worth of plates', '650 lb | weight-of-goods'],
    ['300 lbs of weights and a bar', '300 lb | weight-of-goods'],
    ['255 lb total, olympic plates 4x45 3x25', '255 lb | total-behind'],
    ['total weight: 300 lb, olympic plates and bar', '300 lb | total-first'],
    ['olympic plates, 500 lbs total', '500 lb | total-behind'],
    ['4x45 plates (180 lbs)', 'none'],
    ['4x45 plates', 'none'],
  ])('%s is %s', (text, said) => expect(total(text).split(' | ').slice(0, 2).join(' | ')).toBe(said));

  it('cites the words of the weight', () => {
    expect(total('650# worth of plates')).toContain('650#');
    expect(total('olympic plates, 500 lbs total')).toContain('500 lbs');
  });

  it('gives a set its usual plates, marked as implied, with a doubt about the bar', () => {
    const { items, doubts } = readText('300 lb olympic set with bar');
    const plates = items.filter(({ kind }) => kind.value === 'plate');
    expect(plates.every(({ basis }) => basis === 'implied')).toBe(true);
    expect(plates.map(({ count, unitWeight }) => `${count?.value}x${unitWeight?.value.value}`)).toEqual([
      '2x45',
      '2x35',
      '2x25',
      '2x10',
      '4x5',
      '2x2.5',
    ]);
    expect(doubts.map(({ id }) => id)).toContain('set_bar:statedTotal');
  });

  it('leaves goods of a total without pieces open', () =>
    expect(goods('650# worth of plates').map((line) => line.split(' | ')[0])).toEqual(['? plate ?']));

  it.each([
    ['2 x 45 lb plates', '2 plate 45 lb'],
    ['2 x 25 kg iron plates', '2 plate 25 kg'],
    ['2x25kg bumpers', '2 bumper 25 kg'],
    ['4 x 50 kg plates', '4 plate 50 kg'],
  ])('counts pieces, heavy as they are, as pieces: %s', (text, said) =>
    expect(goods(text).map((line) => line.split(' | ')[0])).toEqual([said]),
  );
  it('pair of 50 kg olympic plates', () =>
    expect(goods('pair of 50 kg olympic plates').map((line) => line.split(' | ')[0])).toEqual(['2 plate 50 kg']));
});
