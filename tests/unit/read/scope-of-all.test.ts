/** Which goods a price for all covers: the whole ad, or the goods of its part. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { doubts, offer } from './goods.ts';

const HOME_GYM = '1 rack, 1 bench, 1 bar, 4 plate 45 lb, 2 plate 25 lb';

describe('a price for more goods stands before one for some of them', () => {
  it.each([
    [
      'Olympic bar, 4x45, bench and rack. Plates $200 for the works. Everything $500',
      '500 lot | 1 bar, 4 plate 45 lb =200, 1 bench, 1 rack',
    ],
    [
      '4x45 and 2x25 plates, $150 for the works. Rack $200. Bench $50. Take everything for $350',
      '350 lot | 4 plate 45 lb, 2 plate 25 lb, 1 rack =200, 1 bench =50',
    ],
    [
      'Rack $300, bench $80. Plates: 4x45, 2x35 - $220 takes all of them. $550 takes it all.',
      '550 lot | 1 rack =300, 1 bench =80, 4 plate 45 lb, 2 plate 35 lb',
    ],
    [
      'Squat rack, bench, bar and plates. $600 for everything. Will sell plates separately, $250 for all of them.',
      '600 lot | 1 rack, 1 bench, 1 bar, ? plate =250',
    ],
    [
      'Bumper plates 2x45, 2x35, 2x25 $350 for the lot. Olympic bar $100. $420 for everything',
      '420 lot | 2 bumper 45 lb, 2 bumper 35 lb, 2 bumper 25 lb, 1 bar =100',
    ],
    [
      'Olympic weights 4x45 2x25. $200 for all. Also a bench $40 and a curl bar $30. Whole package $250.',
      '250 lot | 4 plate 45 lb, 2 plate 25 lb, 1 bench =40, 1 curl-bar =30',
    ],
    [
      'Plates: 4x45 $160 for all four, 4x25 $80 for all four, or $220 for everything.',
      '220 lot | 4 plate 45 lb =160, 4 plate 25 lb =80',
    ],
    [
      `Home gym: rack, bench, bar, 4x45, 2x25. $900 for all of it. If you just want the weights $300 for all of them.`,
      `900 lot | ${HOME_GYM}`,
    ],
    ['Price for all: $300. 4x45, 2x25, bar. Price for all plates: $200.', '300 lot | 4 plate 45 lb, 2 plate 25 lb, 1 bar'],
    [
      '$1200 for the entire gym. Breakdown: rack $500, plates $400 for all of them, bar $200, bench $150',
      '1200 lot | 1 rack =500, ? plate =400, 1 bar =200, 1 bench =150',
    ],
    [
      'Langhantelstange, 4x20kg, Rack, Bank. Scheiben zusammen 180 €. Komplettpreis 500 €',
      '500 lot | 1 bar, 4 plate 20 kg =180, 1 rack, 1 bench',
    ],
    [
      'Hantelscheiben 4x20 kg, 4x10 kg 200 € für alle. Hantelbank 50 €. Alles zusammen 230 €',
      '230 lot | 4 plate 20 kg, 4 plate 10 kg, 1 bench =50',
    ],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));
});

describe('where no price is for everything, those of the parts add up', () => {
  it.each([
    ['Plates 4x45 $160 for all four. 4x25 $80 for all four.', '240 lot | 4 plate 45 lb =160, 4 plate 25 lb =80'],
    [
      'Olympic plates $250 for the bunch\n4x45\n4x25\n\nFlat bench $60\nSquat stands $90',
      '400 lot | 4 plate 45 lb, 4 plate 25 lb, 1 bench =60, 2 stands =90',
    ],
    [
      'Rack $200. Bench $50. 4x45 and 2x25 plates $250 for the lot',
      '500 lot | 1 rack =200, 1 bench =50, 4 plate 45 lb, 2 plate 25 lb',
    ],
    [
      'Selling my plates. 45s x4, 25s x2. $240 takes everything. Also have a bench for $40.',
      '280 lot | 4 plate 45 lb, 2 plate 25 lb, 1 bench =40',
    ],
    ['Bench $60. All weights $180, rack $220.', '460 lot | 1 bench =60, ? plate =180, 1 rack =220'],
    [
      'Scheiben 4x20 kg und 4x10 kg zusammen 220 €. Rack 250 €. Bank 80 €.',
      '550 lot | 4 plate 20 kg, 4 plate 10 kg, 1 rack =250, 1 bench =80',
    ],
    ['Kurzhanteln 30 €, Bank 40 €, beide Stangen 50 €', '120 lot | ? dumbbell =30, 1 bench =40, 2 bar =50'],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));
});

describe('a price for all that is for everything', () => {
  it.each([
    ['Rack $200, bench $100, 4x45 plates. $290 for all.', '290 lot | 1 rack =200, 1 bench =100, 4 plate 45 lb'],
    ['Rack $200, bench $50, 4x45 plates, $350 for the lot', '350 lot | 1 rack =200, 1 bench =50, 4 plate 45 lb'],
    ['Rack 250 €, Bank 80 €, Scheiben 4x20kg, alles zusammen 450 €', '450 lot | 1 rack =250, 1 bench =80, 4 plate 20 kg'],
    [
      '4x45 plates and bar. $250 for everything. $225 for everything if picked up this weekend.',
      '250 lot | 4 plate 45 lb, 1 bar',
    ],
    ['4x45, 4x25 olympic. $300 for all. $200 for all without the 45s.', '300 lot | 4 plate 45 lb, 4 plate 25 lb'],
    ['Bench $40, curl bar $30. Both items for $60', '60 lot | 1 bench =40, 1 curl-bar =30'],
    [
      'Bench $40, curl bar $30, dumbbells $40. All three items together $80',
      '80 lot | 1 bench =40, 1 curl-bar =30, ? dumbbell =40',
    ],
    ['Rack $450. 230 lb bumper set $350. Sold together only for $750', '750 lot | 1 rack =450, ? bumper =350'],
    ['2x45 and 2x25: 120$. With bar 180$.', '180 lot | 2 plate 45 lb, 2 plate 25 lb, 1 bar'],
    [
      'Curl bar and trap bar. $60 for the curl bar, $110 for the trap bar, or $150 takes both.',
      '150 lot | 1 curl-bar =60, 1 hex-bar =110',
    ],
    ['Two bars. Olympic bar $100, curl bar $40. Both bars for $120', '120 lot | 2 bar =100, 1 curl-bar =40'],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));

  it('rates for some sizes raise a doubt', () =>
    expect(doubts('$1 per lb for plates under 25, $1.25 for 35s and 45s. I have 4 45s, 2 35s, 6 25s, 8 10s')).toContain(
      'two_prices:asking.amount',
    ));

  it('a doubt where it may be for some: behind goods of its own, and above what the others cost', () => {
    const unclear = 'Rack $200. Bench $50. 4x45 and 2x25 plates $350 for the lot';
    expect(offer(unclear)).toMatch(/^350 lot/);
    expect(doubts(unclear)).toContain('two_prices:asking.amount');
    expect(doubts('Rack $200, bench $100, 4x45 plates. $290 for all.')).toEqual([]);
  });
});
