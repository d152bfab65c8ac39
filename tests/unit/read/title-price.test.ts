/** A price in the title beside prices in the text. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { doubts, offer } from './goods.ts';

const SAME_LOT: readonly (readonly [string, string])[] = [
  ['Olympic plates $250\n\n4 x 45 lb, 2 x 25 lb. Price is $220.', '220 lot | 4 plate 45 lb, 2 plate 25 lb'],
  ['Power rack and bench - $400\nRack with pins and a flat bench. $380 cash.', '380 lot | 1 rack, 1 bench'],
  ['Squat rack $300\nSquat rack with bench, $280', '280 lot | 1 rack, 1 bench'],
  ['Hantelbank 80 €\nHantelbank verstellbar, wie neu. 70 € VB', '70 lot | 1 bench'],
  ['Olympic Barbell - $120\n7ft olympic barbell, straight, 45 lb. $100 cash today.', '100 lot | 1 bar 45 lb'],
];

const OUTDATED: readonly (readonly [string, string])[] = [
  ['4 45 lb olympic plates $160\nTwo 45 lb plates left. $80.', '80 lot | 2 plate 45 lb'],
  ['OLYMPIC PLATES - $200\n\n4x45, 2x25. Asking $230 firm, title price is old.', '230 lot | 4 plate 45 lb, 2 plate 25 lb'],
  [
    'Hantelset 120 kg - 200 €\n\nLanghantel 20 kg, Scheiben 4x20 kg, 2x10 kg. Preis im Titel ist alt, es sind 170 €.',
    '170 lot | 1 bar 20 kg, 4 plate 20 kg, 2 plate 10 kg',
  ],
];

const LOT_OF_PARTS: readonly (readonly [string, string])[] = [
  ['Barbell and rack $500\nThe barbell is $150 and the rack is $350.', '500 lot | 1 bar =150, 1 rack =350'],
  ['Gym bundle $700\nRack $400, bench $150, bar $200 if sold separately', '700 lot | 1 rack =400, 1 bench =150, 1 bar =200'],
  [
    'Rack, bench, bar - $600\nWill sell separately: rack $350, bench $100, bar $180',
    '600 lot | 1 rack =350, 1 bench =100, 1 bar =180',
  ],
];

const NO_CONFLICT: readonly (readonly [string, string])[] = [
  ['Olympic plates 200 lb $150\nFour 45s and two 10s. $150. No trades.', '150 lot | 4 plate 45 lb, 2 plate 10 lb'],
  ['Adjustable bench $80\nAdjustable bench, barely used. Paid $200. $80 firm.', '80 lot | 1 bench'],
  ['Adjustable bench $80\nBarely used. Retails for $200 new.', '80 lot | 1 bench'],
  [
    'Bumper plate set 160 lb - $240\nPair of 45s, pair of 25s, pair of 10s. $240 or $2/lb if you only want some.',
    '240 lot of 2 | 2 bumper 45 lb, 2 bumper 25 lb, 2 bumper 10 lb',
  ],
];

describe('title-price.ts', () => {
  it.each(SAME_LOT)('the text holds, and the title is doubted: %s', (text, said) => {
    expect(offer(text)).toBe(said);
    expect(doubts(text)).toContain('two_prices:asking.amount');
  });
  it.each(OUTDATED)('the text says that the title is old: %s', (text, said) => {
    expect(offer(text)).toBe(said);
    expect(doubts(text)).not.toContain('two_prices:asking.amount');
  });
  it.each(LOT_OF_PARTS)('the title is for all of it: %s', (text, said) => expect(offer(text)).toBe(said));
  it.each(NO_CONFLICT)('%s', (text, said) => expect(offer(text)).toBe(said));

  it('adds what the title and the text price apart', () => {
    expect(offer('Squat rack $350\nSquat rack as shown. Also a flat bench, $60.')).toMatch(/^410 lot/);
  });
});

describe('a list without a title', () => {
  it.each([
    ['4x45 lb plates $200\n2x25 lb plates $40\nbench $50', 290],
    ['45 lb plates x4 $200\n25 lb x2 $150\n10 lb x2 $100\nflat bench $50', 500],
    ['- 2 x 20 kg Scheiben 70 €\n- 2 x 10 kg Scheiben 35 €\n- SZ-Stange 10 kg 25 €', 130],
  ])('%s: its first line is one of the list', (text, sum) => {
    expect(offer(text)).toMatch(new RegExp(`^${sum} lot`));
  });
});
