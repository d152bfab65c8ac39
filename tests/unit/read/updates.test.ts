/** Ads that were changed after they were written: updates, sold parts, new prices, pieces that are left. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { asked, doubts, offer } from './goods.ts';

const PRICE_OF_REST: readonly (readonly [string, string])[] = [
  [
    'Verkaufe Power Rack, Hantelbank und Langhantel. 450 € VB\nEdit: Bank verkauft! Rack und Stange noch da, zusammen 380 €',
    '380 lot | 1 rack, 1 bar',
  ],
  [
    'Hantelscheiben 50 mm: 4x20, 4x15, 4x10 kg. 300 €\n+++ Update +++ 15er verkauft, Rest 220 €',
    '220 lot | 4 plate 20 kg, 4 plate 10 kg',
  ],
  ['Four 10s, two 5s. EDIT the two 5s got claimed. $30 for the 10s. standard 1 inch', '30 lot | 4 plate 10 lb'],
  ['EDIT: All sold except the bench. $50\nRack $200, bench $60, bar $80', '50 lot | 1 bench'],
  [
    "Selling my weights: 4x45, 4x25, 2x10, olympic. Asking $280 OBO. EDIT Mar 3: 25s are gone! $200 for what's left.",
    '200 lot | 4 plate 45 lb, 2 plate 10 lb',
  ],
  ['Bench and 100 lb of plates - $90 - bench is sold, plates $60', '60 lot | ? plate (100 lb)'],
  [
    'Squat rack, flat bench, olympic bar, 4x45.\n\n$450 for everything\n\nUPDATE: bench is gone, now $380',
    '380 lot | 1 rack, 1 bar, 4 plate 45 lb',
  ],
  [
    'Squat rack and olympic bar with 4x45 and 2x25. $500 OBO\n\nEDIT: price drop $450',
    '450 lot | 1 rack, 1 bar, 4 plate 45 lb, 2 plate 25 lb',
  ],
  ['Hantelbank, Langhantel 20 kg, 4x20 kg Scheiben. 150 €\nUpdate: Bank ist weg, Rest 90', '90 lot | 1 bar 20 kg, 4 plate 20 kg'],
  ['Hantelbank mit Langhantel und 4x10 kg Scheiben 120 €\nUpdate: jetzt nur noch 95 €', '95 lot | 1 bench, 1 bar, 4 plate 10 kg'],
  ['4 x 20 kg und 4 x 10 kg Hantelscheiben, 180 €.\nEdit: die 20er sind verkauft, die 10er noch 60 €', '60 lot | 4 plate 10 kg'],
  ['Olympic plates 4x45, 4x25, 4x10. $320\n\nEdit: 25s sold. Rest $240', '240 lot | 4 plate 45 lb, 4 plate 10 lb'],
  [
    'UPDATE: bench sold, rest is $300\nRack, bench, olympic bar, 2x45, 2x25. $380',
    '300 lot | 1 rack, 1 bar, 2 plate 45 lb, 2 plate 25 lb',
  ],
  [
    'Power rack $300, olympic bar $100, 4 x 45 plates $160\nEDIT: rack is gone. Bar and plates $230 together',
    '230 lot | 1 bar =100, 4 plate 45 lb =160',
  ],
  [
    'Squat rack and 300 lb olympic plates $400\n**EDIT** Rack has been claimed, plates still here $250',
    '250 lot | ? plate (300 lb)',
  ],
  [
    'Barbell 20 kg + 2x20 kg + 2x10 kg bumper plates. £300\nEdited to add: price now £260',
    '260 lot | 1 bar 20 kg, 2 bumper 20 kg, 2 bumper 10 kg',
  ],
  ['Rack + Bank + Stange 400 €. Preisupdate: 350 €', '350 lot | 1 rack, 1 bench, 1 bar'],
  ['Selling my rack, bench, and barbell for $600. Bench sold. Asking $500 for the rest.', '500 lot | 1 rack, 1 bar'],
  [
    'Olympia Langhantel, 2x20, 2x15, 2x10 kg Scheiben. 250 €. EDIT: die 15er sind weg, Rest 200 €',
    '200 lot | 1 bar, 2 plate 20 kg, 2 plate 10 kg',
  ],
  ['Bench and 4 dumbbells 25 lb $100\n\nUpdate - dumbbells gone, bench only $50', '50 lot | 1 bench'],
  [
    'Squat rack, bench and 230 lb of plates. Asking $550\nEdit 5/12 - lowered the price, now 475',
    '475 lot | 1 rack, 1 bench, ? plate (230 lb)',
  ],
  ['Hantelbank, Stange, 6x10 kg Scheiben. VB 200 €. NACHTRAG: Preis jetzt 170 €', '170 lot | 1 bench, 1 bar, 6 plate 10 kg'],
  [
    'Langhantelset: Stange, 4x15 kg, 4x5 kg. 160 €\nPreis nochmal reduziert: 140 €',
    '140 lot | 1 bar, 4 plate 15 kg, 4 plate 5 kg',
  ],
  ['Edit: SOLD the 45s. Remaining: 4x25, 4x10 olympic plates for $100', '100 lot | 4 plate 25 lb, 4 plate 10 lb'],
  [
    '4x45 4x25 4x10 olympic plates $300 for all.\nUPDATE: someone took the 45s. 25s and 10s still here, $120 for them all',
    '120 lot | 4 plate 25 lb, 4 plate 10 lb',
  ],
];

const SEVERAL_UPDATES: readonly (readonly [string, string])[] = [
  [
    'Power rack, bench, 300 lb of olympic plates. $700.\nUPDATE 3/4: reduced to $650\nUPDATE 3/11: reduced to $600',
    '600 lot | 1 rack, 1 bench, ? plate (300 lb)',
  ],
  ['Rack, bar, 4x45. $400. EDIT: make that $350. EDIT: ok $300, come get it', '300 lot | 1 rack, 1 bar, 4 plate 45 lb'],
  ['Olympic bar and 4x45, was asking $300, dropped to $250, now $220 if gone this weekend', '220 lot | 1 bar, 4 plate 45 lb'],
];

const OWN_PRICES: readonly (readonly [string, string])[] = [
  [
    'Kurzhanteln 2x10 kg 20 €, 2x15 kg 30 €, 2x20 kg 40 €. Die 15er sind schon weg.',
    '60 lot | 2 dumbbell 10 kg =20, 2 dumbbell 20 kg =40',
  ],
  ['Rack sold. Still available: bench $60, bar $80.', '140 lot | 1 bench =60, 1 bar =80'],
  ['UPDATE: still have the bench and bar. Rack is sold. Rack $300, bench $90, bar $110.', '200 lot | 1 bench =90, 1 bar =110'],
  ['NO LONGER AVAILABLE: rack. Bench 60$ and bar 90$ still here', '150 lot | 1 bench =60, 1 bar =90'],
  [
    'Verkaufe Hantelbank (reserviert), Langhantel 20 kg 70 € und 4x10 kg Scheiben 60 €',
    '130 lot | 1 bar 20 kg =70, 4 plate 10 kg =60',
  ],
  ['Olympic bar $80, squat rack $200, 4x45 plates $160.\nSOLD the rack', '240 lot | 1 bar =80, 4 plate 45 lb =160'],
  [
    'Squat rack $200\nBench $60\nBar $90\n4x45 plates $180\n\nUPDATE: bar sold\nUPDATE 2: rack now $150',
    '390 lot | 1 rack =150, 1 bench =60, 4 plate 45 lb =180',
  ],
  ['Squat rack $200\nBench $60\nBar $90\n\nUpdate: bench reduced to $40', '330 lot | 1 rack =200, 1 bench =40, 1 bar =90'],
  [
    'Hantelbank 60 €, Langhantel 40 €, 4x10 kg Scheiben 80 €.\nUpdate 05.03.: Hantelbank verkauft.\nUpdate 08.03.: Scheiben jetzt 70 €',
    '110 lot | 1 bar =40, 4 plate 10 kg =70',
  ],
  ['Power Rack 300 €, jetzt 250 €\nFlachbank 80 €', '330 lot | 1 rack =250, 1 bench =80'],
  [
    'Curl bar $40, straight bar $90, trap bar $80\nprice drop on trap bar to $60',
    '190 lot | 1 curl-bar =40, 1 bar =90, 1 hex-bar =60',
  ],
  [
    'HOME GYM SALE\nRack - $400\nBench - $120\nPlates 4x45 - $200\nBar - $150\n**UPDATE** Bench and bar SOLD',
    '600 lot | 1 rack =400, 4 plate 45 lb =200',
  ],
  [
    'Kettlebells 16 kg 30 €, 20 kg 40 €, 24 kg 50 €\nUpdate: 20 kg ist weg',
    '80 lot | 1 kettlebell 16 kg =30, 1 kettlebell 24 kg =50',
  ],
  ['Rack $200 (SOLD), bench $75, dumbbells 2x50 $80', '155 lot | 1 bench =75, 2 dumbbell 50 lb =80'],
  ["Sold the rack so I'm selling the rest: bench $75, 2x50 dumbbells $80", '155 lot | 1 bench =75, 2 dumbbell 50 lb =80'],
  ['Olympic plates: 4x45, 4x25. $240. Edit: found two more 45s, now $300', '300 lot | 6 plate 45 lb, 4 plate 25 lb'],
];

const LEFT_OVER: readonly (readonly [string, string])[] = [
  ['6x45 olympic plates, $240\nEdit: sold two, four left, $160', '160 lot | 4 plate 45 lb'],
  ['8 bumpers 45 lb, $50 each.\nEDIT: 4 sold, 4 left', '200 each of 50 | 4 bumper 45 lb'],
  ['Ten 45 lb olympic plates, $40 each. Update: only six left.', '240 each of 40 | 6 plate 45 lb'],
  ['10 Hantelscheiben 10 kg, je 15 €. Nachtrag: 4 sind schon weg, noch 6 da', '90 each of 15 | 6 plate 10 kg'],
  ['6 bumpers 45 lb $60 each (2 sold)', '240 each of 60 | 4 bumper 45 lb'],
  ['6 bumpers 45 lb $60 each, only 4 remaining', '240 each of 60 | 4 bumper 45 lb'],
  ['20 Hantelscheiben 10 kg je 12 €, noch 14 Stück verfügbar', '168 each of 12 | 14 plate 10 kg'],
];

const LOWERED: readonly (readonly [string, string])[] = [
  ['Langhantel mit 100 kg Scheiben, 200 €, letzter Preis 180 €', '180 lot | 1 bar, ? plate (100 kg)'],
  ['Langhantel 20 kg für 80 €. Preis korrigiert: 70 €', '70 lot | 1 bar 20 kg'],
  ['Squat Rack neu 500 €, jetzt für 250 € abzugeben', '250 lot | 1 rack'],
  ['Olympic plates, 4x45 4x25. Had it listed at $300, no bites, so $260.', '260 lot | 4 plate 45 lb, 4 plate 25 lb'],
  ['Squat stands and bar. $150. Price just dropped! $120', '120 lot | 2 stands, 1 bar'],
  ['$400 now $350 - squat rack, bar and 4x45', '350 lot | 1 rack, 1 bar, 4 plate 45 lb'],
  ['Olympic barbell with 4x45s and 2x35s. $280\nprice lowered to $240!!', '240 lot | 1 bar, 4 plate 45 lb, 2 plate 35 lb'],
  ['Olympic barbell with 4x45s and 2x35s. New price: $240. Old price $280.', '240 lot | 1 bar, 4 plate 45 lb, 2 plate 35 lb'],
  ['Bumper plates 2x45 2x35 2x25. $350 -> $300', '300 lot | 2 bumper 45 lb, 2 bumper 35 lb, 2 bumper 25 lb'],
  ['Bumper plates 2x45 2x35 2x25. ~~$350~~ $300', '300 lot | 2 bumper 45 lb, 2 bumper 35 lb, 2 bumper 25 lb'],
  ['Power rack, reduced from $600 to $500', '500 lot | 1 rack'],
  ['Preis von 300 € auf 250 € reduziert. Power Rack mit Bank', '250 lot | 1 rack, 1 bench'],
  ['Price dropped from $300 to $250. Power rack with bench', '250 lot | 1 rack, 1 bench'],
];

const NO_UPDATES: readonly (readonly [string, string])[] = [
  ['Squat Rack 250€, Neupreis 500€, letzte Woche noch 280€', '250 lot | 1 rack'],
  [
    '$500 Full home gym: rack, bench, bar, 300 lb of plates. Would do $350 without the rack.',
    '500 lot | 1 rack, 1 bench, 1 bar, ? plate (300 lb)',
  ],
  ['Rack $250 obo. Bench free with rack.', '250 lot | 1 rack, 1 bench'],
  ['Power rack and bench. $500\nUpdate: still available. Will take $450.', '450 lot | 1 rack, 1 bench'],
  ['Squat rack $250. Updated photos added Sunday.', '250 lot | 1 rack'],
  ['Update kitchen gym sale: squat rack $250, bench $80', '330 lot | 1 rack =250, 1 bench =80'],
  [
    'Olympic bar and 4x45 plates $220. Edit: still have everything, the rack in the picture is not for sale.',
    '220 lot | 1 bar, 4 plate 45 lb',
  ],
  ['Olympic plates 2x45 2x25. $130. UPDATE: pending pickup Saturday', '130 lot | 2 plate 45 lb, 2 plate 25 lb'],
  ['Olympic plates 2x45 2x25, $130. Sale pending', '130 lot | 2 plate 45 lb, 2 plate 25 lb'],
  ['Update: Preis gesenkt!\n4 x 20 kg Hantelscheiben 120 €', '120 lot | 4 plate 20 kg'],
  ['Everything still available. Rack $200, bench $75. Updated 6/1', '275 lot | 1 rack =200, 1 bench =75'],
  ['Rack $200, bench $75. Now located in storage unit 12.', '275 lot | 1 rack =200, 1 bench =75'],
  ['Squat rack $200. Was going to keep the bench but now selling that too, $75', '275 lot | 1 rack =200, 1 bench =75'],
  ['Selling squat rack, $200. Need it gone by Sunday.', '200 lot | 1 rack'],
  ['Rack, bench and bar, $400. The bench alone is now $90 if you only want that.', '400 lot | 1 rack, 1 bench =90, 1 bar'],
  [
    'Olympic plates: 4x45, 4x25. $240. Edit: added 2x10 for the same price',
    '240 lot | 4 plate 45 lb, 4 plate 25 lb, 2 plate 10 lb',
  ],
  ['Four 45 lb plates. Sold one set already, this is my second set. Olympic $160', '160 lot | 4 plate 45 lb'],
  ['I sold 2 of my racks last month, this is the last one. Power rack, $300', '300 lot | 1 rack'],
  ['Bench sold, rack sold, plates sold. Only the olympic bar left, $100', '100 lot | 1 bar'],
  ['Power rack $500, reduced from $600', '500 lot | 1 rack'],
];

describe('renewed-prices.ts and mark-sold.ts', () => {
  it.each(PRICE_OF_REST)('%s', (text, said) => expect(offer(text)).toBe(said));
  it.each(SEVERAL_UPDATES)('the last of several: %s', (text, said) => expect(offer(text)).toBe(said));
  it.each(OWN_PRICES)('prices of single goods: %s', (text, said) => expect(offer(text)).toBe(said));
  it.each(LOWERED)('lowered: %s', (text, said) => expect(offer(text)).toBe(said));
  it.each(NO_UPDATES)('takes no price for a new one: %s', (text, said) => expect(offer(text)).toBe(said));

  it('keeps what was asked before as a former price, and doubts nothing', () => {
    const text = 'Squat rack, bench, bar. $450\nUPDATE: bench is gone, now $380';
    expect(asked(text)).toEqual(['lot 380 USD | price-sign-first | $380', 'former 450 USD | price-sign-first | $450']);
    expect(doubts(text)).toEqual([]);
  });

  it('takes the newest of updates that are stacked on top', () => {
    expect(offer('EDIT 2: now $300\nEDIT: now $350\nSquat rack and bar. $400')).toBe('300 lot | 1 rack, 1 bar');
  });

  it.each([
    ['Rack, bench and bar for $600. Bench sold.', ['sold_since:asking.amount']],
    ['Rack (sold), bench, bar $200', []],
    ['Rack, bench, bar $600. UPDATE: $500, bench sold', []],
  ])('doubts a price from before something was sold: %s', (text, ids) => expect(doubts(text)).toEqual(ids));
});

describe('left-over.ts', () => {
  it.each(LEFT_OVER)('%s', (text, said) => expect(offer(text)).toBe(said));

  it('leaves a count that tells the rest already', () => {
    expect(offer('3 45 lb olympic plates (was 4, sold one), $90')).toBe('90 lot | 3 plate 45 lb');
  });
});
