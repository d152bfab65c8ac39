/** Sellers who correct themselves. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { doubts, goods, offer } from './goods.ts';

const TAKEN_BACK: readonly (readonly [string, string])[] = [
  ['I have five, sorry four, 25 lb bumpers at $30 each', '120 each of 30 | 4 bumper 25 lb'],
  ['Six, no wait, four 45 lb olympic plates and two 25s. $200', '200 lot | 4 plate 45 lb, 2 plate 25 lb'],
  ['I have 6 45s, sorry I mean 4 45s, and 2 25s. Olympic. $200', '200 lot | 4 plate 45 lb, 2 plate 25 lb'],
  ['Olympic plates: 6x45 (sorry, 4x45), 2x25. $200', '200 lot | 4 plate 45 lb, 2 plate 25 lb'],
  ['Olympic weights 4x45, scratch that, 2x45 and 2x35. $150', '150 lot | 2 plate 45 lb, 2 plate 35 lb'],
  ['four 45s, four 25s - oops, make that two 25s - and a bar. Olympic, $220', '220 lot | 4 plate 45 lb, 2 plate 25 lb, 1 bar'],
  ['two 45s i mean two 35s and four 10s olympic asking 90', '90 lot | 2 plate 35 lb, 4 plate 10 lb'],
  ['4x20 kg, ach nein, 4x15 kg Scheiben, 50 mm. 120 €', '120 lot | 4 plate 15 kg'],
  ['Zwei 20 kg Scheiben, äh vier 20 kg Scheiben, olympisch. 140 €', '140 lot | 4 plate 20 kg'],
  ['Ich habe 4 Scheiben 20 kg, nein halt, 5 Scheiben 20 kg. 50 mm. 150 €', '150 lot | 5 plate 20 kg'],
  [
    'okay so ive got two forty fives no wait four forty fives and two twenty fives olympic i want two hundred',
    '200 lot | 4 plate 45 lb, 2 plate 25 lb',
  ],
  ['Vier 10er und zwei 5er Scheiben, ich meine vier 5er. 30 mm, 40 €', '40 lot | 4 plate 10 kg, 4 plate 5 kg'],
];

const RESTATED: readonly (readonly [string, string])[] = [
  ['4x45, 2x25 olympic plates. $180. Typo: 4x25 not 2x25', '180 lot | 4 plate 45 lb, 4 plate 25 lb'],
  ['10 x 5 kg Hantelscheiben (Korrektur: 8 x 5 kg). 50 €', '50 lot | 8 plate 5 kg'],
];

const RECOUNTED: readonly (readonly [string, string])[] = [
  ['Selling six 45 lb plates. *four\nAsking $180', '180 lot | 4 plate 45 lb'],
  ['Selling six 45 lb olympic plates for $180.\nCorrection: there are only four.', '180 lot | 4 plate 45 lb'],
  ['6 Hantelscheiben 20 kg, olympisch, 180 €. Korrektur: es sind nur 5.', '180 lot | 5 plate 20 kg'],
  ['Verkaufe 8 Hantelscheiben à 10 kg. Sorry, verzählt: es sind 7. 90 €', '90 lot | 7 plate 10 kg'],
  ['Selling 6 45 lb plates (edit: only 4 left) and 2 25s. Olympic. $190', '190 lot | 4 plate 45 lb, 2 plate 25 lb'],
  ['6 plates of 45 lb. EDIT: my brother took two of the 45s, so there are 4. Olympic. $190.', '190 lot | 4 plate 45 lb'],
  ['Eight 10 lb plates (actually nine) standard 1". $45', '45 lot | 9 plate 10 lb'],
  ['Ten 25 lb bumper plates... make that eight, my son keeps two. $320', '320 lot | 8 bumper 25 lb'],
];

const PRICES: readonly (readonly [string, string])[] = [
  ['Olympic barbell and plates, two 45s, two 25s. I want 200 no make it 180', '180 lot | 1 bar, 2 plate 45 lb, 2 plate 25 lb'],
  ['Olympic barbell and plates, two 45s, two 25s. $200, actually $180', '180 lot | 1 bar, 2 plate 45 lb, 2 plate 25 lb'],
];

const NOTHING_TAKEN_BACK: readonly (readonly [string, string])[] = [
  ['Sorry no shipping. 4x45 olympic plates, 2x25. $180', '180 lot | 4 plate 45 lb, 2 plate 25 lb'],
  ['I mean it when I say straight: olympic bar, 2x45, 2x25. $180', '180 lot | 1 bar, 2 plate 45 lb, 2 plate 25 lb'],
  ['4x45 olympic plates. Actually weigh 46 each. $180', '180 lot | 4 plate 45 lb'],
  ['Only 4 of the plates are olympic, 4 x 45. Also 2x25. $180', '180 lot | 4 plate 45 lb, 2 plate 25 lb'],
  ['No wait list. 6 45 lb olympic plates and 4 25s. First come first served, $300', '300 lot | 6 plate 45 lb, 4 plate 25 lb'],
  ['Olympic plates 6x45, 4x25, 4x10. Only 4 of the 45s match. $350', '350 lot | 6 plate 45 lb, 4 plate 25 lb, 4 plate 10 lb'],
  ['Scheiben 4x10 kg, 2x5 kg, 30 mm. Sorry, kein Versand. 60 €', '60 lot | 4 plate 10 kg, 2 plate 5 kg'],
  ['Two 45s, four 25s, I believe, sorry if the count is off. Olympic. $150', '150 lot | 2 plate 45 lb, 4 plate 25 lb'],
  ['Two 45s, sorry they are a bit rusty, four 25s. Olympic. $150', '150 lot | 2 plate 45 lb, 4 plate 25 lb'],
];

describe('taken-back.ts', () => {
  it.each(TAKEN_BACK)('said anew right behind: %s', (text, said) => expect(offer(text)).toBe(said));
  it.each(RESTATED)('said anew in another sentence: %s', (text, said) => expect(offer(text)).toBe(said));
  it.each(RECOUNTED)('counted anew: %s', (text, said) => expect(offer(text)).toBe(said));
  it.each(PRICES)('another price: %s', (text, said) => expect(offer(text)).toBe(said));
  it.each(NOTHING_TAKEN_BACK)('leaves goods: %s', (text, said) => expect(offer(text)).toBe(said));

  it('names the rule', () => {
    expect(goods('6 45 lb olympic plates (edit: sorry only 4)')).toEqual([
      '4 plate 45 lb | count-weight-corrected | 6 45 lb olympic plates',
    ]);
  });

  it.each([
    ['6x45, 4x25 olympic plates, $300. Correction: only 2', ['counted_again:plate-2.count']],
    ['6x45 olympic plates, $300. Correction: only 2', []],
    ['6x45, 4x25 (sorry, only 2) olympic plates, $300', []],
  ])('doubts whose count it is: %s', (text, ids) => expect(doubts(text)).toEqual(ids));
});
