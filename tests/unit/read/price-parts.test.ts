/** Totals from parts, prices for some of the goods, prices in words. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { offer, readText } from './goods.ts';

const PARTS: readonly (readonly [string, string])[] = [
  ["45 lb plates fifty bucks a piece, got four. Bar's another hundred. Olympic.", '300 lot | 4 plate 45 lb =200, 1 bar =100'],
  ["Rack's $300, bench's $80.", '380 lot | 1 rack =300, 1 bench =80'],
  ['Bumper Plates, Stückpreis 40 €, vier Stück à 20 kg', '160 each of 40 | 4 bumper 20 kg'],
  [
    'Hantelscheiben: 4 x 10kg (je 15€), 4 x 5kg (je 8€), 4 x 2,5kg (je 4€)',
    '108 lot | 4 plate 10 kg =60, 4 plate 5 kg =32, 4 plate 2.5 kg =16',
  ],
  [
    'Asking 60 per pair for the 45s and 40 per pair for the 25s, four of each. olympic',
    '200 lot | 4 plate 45 lb =120, 4 plate 25 lb =80',
  ],
  ["The rack is $250, the bench $80 and I'll throw in the mats", '330 lot | 1 rack =250, 1 bench =80'],
  ['45 lb plates $50 each, got four. Bar extra $100. Olympic.', '300 lot | 4 plate 45 lb =200, 1 bar =100'],
  ['Four 45 lb olympic plates, $40 each. Bar is another $90.', '250 lot | 4 plate 45 lb =160, 1 bar =90'],
  ['4x45 at $45 each plus the bar for $100', '280 lot | 4 plate 45 lb =180, 1 bar =100'],
  ['Rack $350 bar $160, both $480', '480 lot | 1 rack =350, 1 bar =160'],
  ['Bench $50 squat stands $70 or $100 for both', '100 lot | 1 bench =50, 2 stands =70'],
  ['Full power cage and a deadlift bar. Cage $350 bar $160, take both for $480', '480 lot | 1 rack =350, 1 bar =160'],
  ['Power Rack und Langhantel 20 kg. Rack 350 €, Stange 120 €, beides 420 €', '420 lot | 1 rack =350, 1 bar 20 kg =120'],
  [
    'Bumpers. 10s are $15, 25s are $35, 45s are $60. Per plate. I have two 10s, four 25s and one 45.',
    '230 lot | 2 bumper 10 lb =30, 4 bumper 25 lb =140, 1 bumper 45 lb =60',
  ],
  ['Langhanteln 20 kg (3 Stk.) je 60 €, Flachbänke (2 Stk.) je 45 €', '270 lot | 3 bar 20 kg =180, 2 bench =90'],
  [
    'Olympic plates 45 lb: $45 ea (I have 4), 25 lb: $25 ea (I have 2), bar $100',
    '330 lot | 4 plate 45 lb =180, 2 plate 25 lb =50, 1 bar =100',
  ],
  ['Rack plus bar $500, bench another $60', '560 lot | 1 rack, 1 bar, 1 bench =60'],
  [
    'Olympic bar, 2x45, 2x25 $200. Bench is an extra $50 if you want it.',
    '250 lot | 1 bar, 2 plate 45 lb, 2 plate 25 lb, 1 bench =50',
  ],
  [
    '45s $50 each, 25s $30 each. I have 4 of each. Bar is $100 more. Olympic.',
    '420 lot | 4 plate 45 lb =200, 4 plate 25 lb =120, 1 bar =100',
  ],
  ['Six 45 lb plates at $40 apiece, and a 7 foot olympic bar for $90', '330 lot | 6 plate 45 lb =240, 1 bar =90'],
  ['4 Scheiben à 20 kg, Stück 35 €. Die Stange kostet 70 €.', '210 lot | 4 plate 20 kg =140, 1 bar =70'],
  [
    'Bumpers: 45s $60, 35s $50, 25s $40. Prices are each. Have 2 of each.',
    '300 lot | 2 bumper 45 lb =120, 2 bumper 35 lb =100, 2 bumper 25 lb =80',
  ],
  [
    'Dumbbells 20 lb $20, 30 lb $30, 40 lb $40. Prices are per pair, one pair each.',
    '90 lot | 2 dumbbell 20 lb =20, 2 dumbbell 30 lb =30, 2 dumbbell 40 lb =40',
  ],
];

const BARE_LISTS: readonly (readonly [string, string])[] = [
  ['Rack 300, bench 80, bar 100, or 430 the lot', '430 lot | 1 rack =300, 1 bench =80, 1 bar =100'],
  ['Flat bench 40, squat rack 120, 2x45 plates 80', '240 lot | 1 bench =40, 1 rack =120, 2 plate 45 lb =80'],
  ['Squat stands 40, bench 30, all in for 60', '60 lot | 2 stands =40, 1 bench =30'],
  ['Rack 250 bench 80 bar 90', '420 lot | 1 rack =250, 1 bench =80, 1 bar =90'],
  ['Hantelbank 40, Langhantel 30, 4x10 kg Scheiben 50', '120 lot | 1 bench =40, 1 bar =30, 4 plate 10 kg =50'],
];

const SO_MANY_FOR: readonly (readonly [string, string])[] = [
  ['Bumper 20 kg, das Paar 90 €, drei Paar da.', '270 pair of 90 | 6 bumper 20 kg'],
  ['25 kg bumpers, £100 a pair, two pairs available.', '200 pair of 100 | 4 bumper 25 kg'],
  ['2 for $100, 45 lb olympic plates, I have 6', '300 pair of 100 | 6 plate 45 lb'],
  ['45 lb olympic plates, two for $90. Four available.', '180 pair of 90 | 4 plate 45 lb'],
  ['Three for $100, 45 lb plates olympic, I have 6 of them', '200 lot | 6 plate 45 lb'],
];

const FOR_ALL: readonly (readonly [string, string])[] = [
  ['8 Gewichtsscheiben je 10 kg, pro Stück 12 €, alle zusammen 80 €', '80 lot of 12 | 8 plate 10 kg'],
  ['Plates $1 a pound or $250 if you take all 300 pounds', '250 lot of 1 | ? plate (300 lb)'],
  [
    '45 lb plates (4): $50/ea. 25 lb plates (2): $30/ea. Olympic bar: $100. Take it all for $320.',
    '320 lot | 4 plate 45 lb =200, 2 plate 25 lb =60, 1 bar =100',
  ],
  ['Bar $75, plates $150 (2x45, 2x25), or all of it for two hundred', '200 lot | 1 bar =75, 2 plate 45 lb, 2 plate 25 lb'],
  ['2x 45 lb bumpers £80\n2x 35 lb bumpers £60\nBuy the lot for £120', '120 lot | 2 bumper 45 lb =80, 2 bumper 35 lb =60'],
  [
    'Langhantelstange 20 kg 90 €, Scheiben 2x20 kg 80 €, 2x10 kg 40 €. Alles zusammen 190 €.',
    '190 lot | 1 bar 20 kg =90, 2 plate 20 kg =80, 2 plate 10 kg =40',
  ],
  ['Bar only $80, with plates (2x45, 2x25) $200', '200 lot | 1 bar =80, 2 plate 45 lb, 2 plate 25 lb'],
  ['Stange 50 €, mit Scheiben (4x10 kg) 110 €', '110 lot | 1 bar =50, 4 plate 10 kg'],
  [
    'Kettlebells. 35 lb $35. 44 lb $44. 53 lb $53. All three $120',
    '120 lot | 1 kettlebell 35 lb =35, 1 kettlebell 44 lb =44, 1 kettlebell 53 lb =53',
  ],
  ['Rack $300, bench $80, bar $100. $430 for everything.', '430 lot | 1 rack =300, 1 bench =80, 1 bar =100'],
  ['4x20 kg, 4x10 kg Hantelscheiben. 150 alles oder 2 €/kg', '150 lot of 2 | 4 plate 20 kg, 4 plate 10 kg'],
  [
    '50 mm: 2x20 kg, 2x10 kg -> 90 €\n30 mm: 4x5 kg, 6x2,5 kg -> 35 €\nBei Komplettabnahme 110 €.',
    '110 lot | 2 plate 20 kg, 2 plate 10 kg, 4 plate 5 kg, 6 plate 2.5 kg',
  ],
  ['Rack and bench, 200 for the lot', '200 lot | 1 rack, 1 bench'],
  ['Langhantel und 100 kg Scheiben, 150 komplett', '150 lot | 1 bar, ? plate (100 kg)'],
  ['10 plates 10 lb, $10 each or all for $80', '80 lot of 10 | 10 plate 10 lb'],
];

const IN_WORDS: readonly (readonly [string, string])[] = [
  ['Langhantel 20 kg und 4x10 kg Scheiben für hundertfünfzig', '150 lot | 1 bar 20 kg, 4 plate 10 kg'],
  ['2x45 lb and 2x25 lb plates, olympic, seventy five for the lot', '75 lot | 2 plate 45 lb, 2 plate 25 lb'],
  ['4x45 olympic plates, a hundred and twenty', '120 lot | 4 plate 45 lb'],
  ['The rack is worth 350 alone. Rack, bar, 4x45 for 500.', '500 lot | 1 rack, 1 bar, 4 plate 45 lb'],
];

const NO_PRICES: readonly (readonly [string, string])[] = [
  ['Squat rack. $200 today, $220 tomorrow', '200 lot | 1 rack'],
  ['Squat rack $200 plus $20 if you need me to drop it off', '200 lot | 1 rack'],
  ['Power rack 84 tall, bench 48 long, $300', '300 lot | 1 rack, 1 bench'],
  ['Gewichte 4x20, 4x10, 120 kg gesamt, 180 €', '180 lot | 4 plate 20 kg, 4 plate 10 kg'],
  ['2 plates 45 lb for $80 olympic', '80 lot | 2 plate 45 lb'],
  ['100 pounds of olympic plates. 2x45 and a 10.', '? none | 2 plate 45 lb, 1 plate 10 lb'],
  ['45 pound olympic plates, 4 of them, 35 pound bar. 200 cash', '200 lot | 4 plate 45 lb, 1 bar 35 lb'],
  [
    'Power rack, olympic bar and 300 lb of plates for $600. The bar alone cost me $250.',
    '600 lot | 1 rack, 1 bar, ? plate (300 lb)',
  ],
  [
    '50 mm: 2x20 kg, 2x10 kg 90 €\n30 mm: 4x5 kg, 6x2,5 kg 35 €',
    '125 lot | 2 plate 20 kg, 2 plate 10 kg, 4 plate 5 kg, 6 plate 2.5 kg',
  ],
];

const STERLING: readonly (readonly [string, string])[] = [
  ['6 x 20 kg olympic plates, 25 pounds each', '150 each of 25 | 6 plate 20 kg'],
  [
    'Cast iron weights, 1 inch, 90 lbs all in: 4x15lb, 2x10lb, 2x5lb. 35 pounds cash.',
    '35 lot | 4 plate 15 lb, 2 plate 10 lb, 2 plate 5 lb',
  ],
  ['Olympic plates 2 x 20kg, 2 x 10kg. 80 pounds ono, collection from Tirford', '80 lot | 2 plate 20 kg, 2 plate 10 kg'],
  [
    'Ninety pounds of cast iron plates for forty pounds. 4x15lb, 2x10lb, 2x5lb.',
    '40 lot | 4 plate 15 lb, 2 plate 10 lb, 2 plate 5 lb',
  ],
  ['Barbell and 4x45 lb plates. Asking one hundred and fifty pounds.', '150 lot | 1 bar, 4 plate 45 lb'],
  ['Kettlebell 24kg, thirty pounds', '30 lot | 1 kettlebell 24 kg'],
  ['4 x 45lb plates. A hundred pounds ono. Collection only.', '100 lot | 4 plate 45 lb'],
  ['Olympic 20 kg bar. Eighty pounds, no offers.', '80 lot | 1 bar 20 kg'],
];

const NO_STERLING: readonly (readonly [string, string])[] = [
  ['200 pounds of olympic plates, $150', '150 lot | ? plate (200 lb)'],
  ['100 pounds of olympic plates. 2x45 and a 10.', '? none | 2 plate 45 lb, 1 plate 10 lb'],
  ['Bench, holds 600 pounds cash only. $50', '50 lot | 1 bench'],
  ['Weights for sale. 250 pounds total for 150 dollars. 4x45, 2x35.', '150 lot | 4 plate 45 lb, 2 plate 35 lb'],
  ['Bar holds 700 pounds no problem. 7ft olympic, 45lb. $90', '90 lot | 1 bar 45 lb'],
  ['I have 200 pounds of plates: 4x45lb and 2x10lb. Two hundred bucks', '200 lot | 4 plate 45 lb, 2 plate 10 lb'],
  ['45lb plates, 4 of them. Each weighs 45 pounds exactly. $160', '160 lot | 4 plate 45 lb'],
];

describe('prices of parts', () => {
  it.each(PARTS)('%s', (text, said) => expect(offer(text)).toBe(said));
  it.each(BARE_LISTS)('bare numbers in turn: %s', (text, said) => expect(offer(text)).toBe(said));
  it.each(SO_MANY_FOR)('so many at a time: %s', (text, said) => expect(offer(text)).toBe(said));
  it.each(FOR_ALL)('for all: %s', (text, said) => expect(offer(text)).toBe(said));
  it.each(IN_WORDS)('in words: %s', (text, said) => expect(offer(text)).toBe(said));
  it.each(NO_PRICES)('takes nothing else for a price: %s', (text, said) => expect(offer(text)).toBe(said));

  it('adds up lots that have names of their own', () => {
    expect(offer('Olympic 2x45, 4x10. Standard 2x25.\nOlympic lot $140, standard lot $40.')).toMatch(/^180 lot \|/);
  });

  it('multiplies a rate with the weight of goods that are named twice once', () => {
    expect(offer('Discs, kg. 8 x 25, 4 x 20. £3 per kilo. The 25s have chipped paint.')).toMatch(/^840 per-kilogram of 3 /);
  });

  it('two things at one price are two prices', () => {
    expect(offer('Barbell $100\nBench $100')).toMatch(/^200 lot/);
    expect(offer('Plates 2 x 45 lb $50, 2 x 35 lb $50')).toMatch(/^100 lot/);
    expect(offer('Hex dumbbells:\n2 x 10 kg 40 €\n1 x 20 kg 40 € (the other one is lost)')).toMatch(/^80 lot/);
    expect(offer('Flat bench $75\nBench with a bar $75')).toMatch(/^75 lot/);
    expect(offer('4x45 lb plates $100\n4x45 lb plates. $100')).toMatch(/^100 lot/);
  });

  it('takes goods beside a rate for no goods of the rate', () => {
    expect(offer('Plates are a dollar a pound: 4x45, 2x25. Bar is $80.')).toMatch(/^310 per-pound of 1 .*1 bar =80$/);
  });
});

describe('words about offers', () => {
  it.each([
    ['4x20 kg Scheiben. 320 Euro, bitte keine Fragen wie "letzter Preis"', [true, null]],
    ['4x20 kg Scheiben. 320 Euro, letzter Preis', [true, null]],
    ['4x20 kg Scheiben olympisch, um hundertachtzig euro oder machts ma a anbot', [null, true]],
  ])('%s', (text, [firm, open]) => {
    const { asking } = readText(text);
    expect([asking.firm?.value ?? null, asking.openToOffers?.value ?? null]).toEqual([firm, open]);
  });
});

describe('pounds-sterling.ts', () => {
  it.each(STERLING)('%s', (text, said) => expect(offer(text)).toBe(said));
  it.each(NO_STERLING)('weight: %s', (text, said) => expect(offer(text)).toBe(said));
});

describe('whole-lot.ts', () => {
  it.each([
    ['265 lb olympic plate set minus one 10. So 4-45s, 2-25s, 1-10, 2-5s, 2-2.5s. $145', null],
    ['Langhantelset 80 kg, eine Scheibe fehlt. Stange, 4x10 kg, 3x5 kg. 60 €', null],
    ['Used to be a 300 lb set, missing two 45s. Olympic bar, 2x45, 2x35. $200', null],
    ['Squat rack and 200 lb of plates. $300', null],
    ['Hantelset 100 kg\nStange 10 kg, 4x10, 4x5, 4x2,5 kg. Insgesamt also 80 kg. 130 €', '80 kg'],
    ['Bar and 255 lb of plates. $220', '255 lb'],
    ['300 lb olympic set, 2x45, 2x35. $200', '300 lb'],
  ])('stated total: %s', (text, total) => {
    const { statedTotal } = readText(text);
    expect(statedTotal ? `${statedTotal.value.value} ${statedTotal.value.unit}` : null).toBe(total);
  });

  it('leaves out what is missing', () => {
    expect(offer('Olympic set, missing the collars and missing two 45s. Bar, 2x45, 2x35. $200')).toBe(
      '200 lot | 1 bar, 2 plate 45 lb, 2 plate 35 lb',
    );
  });
});
