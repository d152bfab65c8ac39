/** Lists as people write them by hand: spaces between sizes, pairs counted again, one odd piece at the end. Common practice, no source. */
import { expect, it } from 'vitest';
import { offer } from './goods.ts';

it.each([
  // Sizes in order with nothing between them.
  ['bumpers 10 15 25 45 pairs $300', '300 lot | 2 bumper 10 lb, 2 bumper 15 lb, 2 bumper 25 lb, 2 bumper 45 lb'],
  ['pairs of 45 35 25 olympic plates $300', '300 lot | 2 plate 45 lb, 2 plate 35 lb, 2 plate 25 lb'],
  ['Iron plates 45 35 25 10, 2 of each. $150', '150 lot | 2 plate 45 lb, 2 plate 35 lb, 2 plate 25 lb, 2 plate 10 lb'],
  ["hex db's 25/30/40 pairs $200", '200 lot | 2 dumbbell 25 lb, 2 dumbbell 30 lb, 2 dumbbell 40 lb'],
  ['Hantelscheiben 5 10 15 kg Paare, 100 €', '100 lot | 2 plate 5 kg, 2 plate 10 kg, 2 plate 15 kg'],
  // No order, no list of sizes.
  ['Iron plates 2 45 2 25 4 10 $150', '150 lot | 2 plate 45 lb, 2 plate 25 lb, 4 plate 10 lb'],
  // Pairs that are counted.
  ['Bumpers\n45# pair x2\n25# pair x 3\n$300', '300 lot | 4 bumper 45 lb, 6 bumper 25 lb'],
  ['Bumpers 10kg x1 pair, 15 kg x 2 pairs £300', '300 lot | 2 bumper 10 kg, 4 bumper 15 kg'],
  ['a pair of 35s (x2), olympic plates $60', '60 lot | 4 plate 35 lb'],
  ['Bumpers 10kg x2, one pair of 15 kg £300', '300 lot | 2 bumper 10 kg, 2 bumper 15 kg'],
  // One odd piece.
  ['Olympic plates. Set of 45s, plus a single 10. $165', '165 lot | 2 plate 45 lb, 1 plate 10 lb'],
  ['Olympic plates, 45s x 4, one extra 25. $100', '100 lot | 4 plate 45 lb, 1 plate 25 lb'],
  ['Plates: pair of fives and one lonely two and a half. $10', '10 lot | 2 plate 5 lb, 1 plate 2.5 lb'],
  ['a pair of 45s and one lonely ten. olympic plates. $50', '50 lot | 2 plate 45 lb, 1 plate 10 lb'],
  ['Olympic plates, a pair of 45s. Come after one good 30 minute call. $50', '50 lot | 2 plate 45 lb'],
  ['Olympic plates, a pair of 45s. Park for one extra 25 minutes. $50', '50 lot | 2 plate 45 lb'],
  // The count behind a comma, before the price of each.
  ['Olympic plates\n45 lb plates, 4, $35 each\n5 lb, 22, $4 each', '228 lot | 4 plate 45 lb =140, 22 plate 5 lb =88'],
  ['Plates 25s, 4 of em, 10s 2 of em $40', '40 lot | 4 plate 25 lb, 2 plate 10 lb'],
  ["Dumbells 50's, 2 of em, rubber hex, $75", '75 lot | 2 dumbbell 50 lb'],
  ['Olympic discs: 2 @ 20kg, 4 @ 2.5kg - £90', '90 lot | 2 plate 20 kg, 4 plate 2.5 kg'],
  ['Chrome dumbbells 1kg to 10kg (ten pairs) £150', '150 lot | 20 dumbbell'],
  ['1 x of each: 45, 35 and 25 lb olympic plates $60', '60 lot | 1 plate 45 lb, 1 plate 35 lb, 1 plate 25 lb'],
  [
    'Standard plates: one 25, two 15s, a 12 and three 8s. $20',
    '20 lot | 1 plate 25 lb, 2 plate 15 lb, 1 plate 12 lb, 3 plate 8 lb',
  ],
  ['Olympic plates, two 15s. I have one 25 minutes away. $20', '20 lot | 2 plate 15 lb'],
  ["Olympic plate set: 45's - 6, 35's - 2. $500", '500 lot | 6 plate 45 lb, 2 plate 35 lb'],
  ['Set of 45s - 80 firm. Olympic plates', '80 lot | 2 plate 45 lb'],
  ['Hantelscheiben 20 15 10 kg je 2 Stück 100 €', '100 lot | 2 plate 20 kg, 2 plate 15 kg, 2 plate 10 kg'],
  ['dumbbell pairs 5lb 10lb 15lb $80', '80 lot | 2 dumbbell 5 lb, 2 dumbbell 10 lb, 2 dumbbell 15 lb'],
  ['Hex dumbbells: 10s, 20s (pairs), 30 single. $100', '100 lot | 2 dumbbell 10 lb, 2 dumbbell 20 lb, 1 dumbbell 30 lb'],
  ['Adjustable dumbbells 5-52.5 lb, pair, $200', '200 lot | 2 dumbbell'],
  ['dumbbells 2-25 lb $20', '20 lot | 2 dumbbell 25 lb'],
  ['Dumbbell set 5lb-50lb with rack $600', '600 lot | ? dumbbell, 1 storage'],
  ['Power rack, dumbbells 5lb-50lb. $600', '600 lot | 1 rack, ? dumbbell'],
  ['Two trap bars, one 45 lb, one 60 lb, $200', '200 lot | 1 hex-bar 45 lb, 1 hex-bar 60 lb'],
  ['Bars: (2) olympic 45 lb, (1) EZ curl, (1) trap bar 55 lb $250', '250 lot | 2 bar 45 lb, 1 curl-bar, 1 hex-bar 55 lb'],
  ["Selling 3 bars: one is a 7' olympic, one a 5' standard. $80", '80 lot | 3 bar'],
  ['Garage sale. Weights 10s 25s, 1 bench, 1 bar', '? none | ? plate 10 lb, ? plate 25 lb, 1 bench, 1 bar'],
  ['Olympic bars 45 and 35 lb, $100', '100 lot | ? bar 45 lb, ? bar 35 lb'],
  ['2 dumbbell bars w/ collars, 4x5kg, 4x1.25kg £50', '50 lot | 2 other, 2 collars, 4 plate 5 kg, 4 plate 1.25 kg'],
  ['olympic bar, collars 2x2.5kg £50', '50 lot | 1 bar, 2 collars 2.5 kg'],
  ['Olympic. There are 2 plates each of 45, 25 and 10. $200', '200 lot | 2 plate 45 lb, 2 plate 25 lb, 2 plate 10 lb'],
  ['2 olympic plates each 45 lb. $80', '80 lot | 2 plate 45 lb'],
  ['olympic weight 45lb pair 35lb pair 25lb pair $250', '250 lot | 2 plate 45 lb, 2 plate 35 lb, 2 plate 25 lb'],
  ['olympic plates, pair 45lb pair 35lb $250', '250 lot | 2 plate 45 lb, 2 plate 35 lb'],
  // Of another make at a price of their own.
  [
    'Olympic discs, rubber coated: 4 @ 2.5kg - £90\nTechnique plates, vinyl, 2.5kg, pair, £10',
    '100 lot | 4 plate 2.5 kg =90, 2 plate 2.5 kg =10',
  ],
  // Collars of each bar.
  ['Straight bar and curl bar, each has its 2 spring clips. $25', '25 lot | 1 bar, 1 curl-bar, 4 collars'],
  ['Two olympic bars, each with a pair of collars. $200', '200 lot | 2 bar, 4 collars'],
  ['Two olympic bars $50 each, with a pair of collars', '100 each of 50 | 2 bar, 2 collars'],
])('%s', (text, said) => expect(offer(text)).toBe(said));
