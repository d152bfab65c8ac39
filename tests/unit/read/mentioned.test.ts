/** Goods that a sentence only speaks of, and those that the seller keeps. Forms that sellers write: common practice, no source. */
import { expect, it } from 'vitest';
import { offer } from './goods.ts';

const counted = (text: string): string => offer(text).split(' | ')[1] ?? '';

it.each([
  ['4x45 olympic plates $100. My buddy took the bar when he moved.', '4 plate 45 lb'],
  ['Olympic bar 45 lb, slight bend from my brother dropping it across a bench. $40', '1 bar 45 lb'],
  ['Squat stands $50. No space for a rack in here.', '2 stands'],
  ['4x35 olympic plates. People keep turning up with the wrong bar.', '4 plate 35 lb'],
  ['Power rack $200, 2 inch spacing through the bench zone.', '1 rack'],
  ["5 ft olympic bar. Won't fit a normal width rack. $45", '1 bar'],
  ['Olympic bar. I only used it with bumpers. $100', '1 bar'],
  ["Bar end is mushroomed so plates don't slide on that side. Olympic bar $10", '1 bar'],
  ['35 lb olympic plates, I have 6. My partner moved and took his bar and his bumpers with him.', '6 plate 35 lb'],
  ['Hantelscheiben 4x10 kg 30 mm. Mein Bruder hat die Stange mitgenommen. 40 €', '4 plate 10 kg'],
])('only spoken of: %s', (text, goods) => expect(counted(text)).toBe(goods));

it.each([
  ['Selling 4x45 plates, and I am throwing in the bar. $150', '4 plate 45 lb, 1 bar'],
  ['Olympic plates 4x45. They come with a bar. $150', '4 plate 45 lb, 1 bar'],
  ['Moved house and the bench has to go. 2x45 plates and the bar too. $100', '1 bench, 2 plate 45 lb, 1 bar'],
  ['My son left behind a bar and four 45 lb plates. $80', '1 bar, 4 plate 45 lb'],
  ['Found a bar in the shed. 2x45 plates too. $50', '1 bar, 2 plate 45 lb'],
  ['The bar is straight. The bench is solid. 4x45 plates. $200 for everything', '1 bar, 1 bench, 4 plate 45 lb'],
  ['Scheiben 4x10 kg. Dazu gebe ich die Stange. 40 €', '4 plate 10 kg, 1 bar'],
  ["Son left for college and didn't take his bench, barbell, 2 45 lb plates. $80", '1 bench, 1 bar, 2 plate 45 lb'],
])('offered: %s', (text, goods) => expect(counted(text)).toBe(goods));

it.each([
  ["Olympic bar 7ft with 4x45. You don't get the rack its sitting in.", '1 bar, 4 plate 45 lb'],
  ['Keeping my rack, bench and bar. Selling 6 x 45 olympic plates', '6 plate 45 lb'],
  ["Two 25 kg plates. $360 for the plates above, I'm keeping my 15s and 5s because I still train", '2 plate 25 kg'],
  ["Eight deep dish 45s. Also not for sale: the bar, so don't ask.", '8 plate 45 lb'],
  ['Half rack and bench. The plates (4x45, 2x25) and bar in the pictures are NOT for sale.', '1 rack, 1 bench'],
  ['Bench $100. The squat rack, bar and the 4x45s in the photo stay with me.', '1 bench'],
  ['Bumpers 4x45. Not included: bar, bench, 2x35.', '4 bumper 45 lb'],
  [
    'Power Rack und Langhantel. Die Hantelbank, die SZ-Stange und die Scheiben (4x10 kg) auf dem Bild sind nicht dabei.',
    '1 rack, 1 bar',
  ],
  [
    '255 lb olympic weight set MINUS the 10s. The common set (2x45 2x35 2x25 2x10 4x5 2x2.5) but the two 10s got stolen.',
    '2 plate 45 lb, 2 plate 35 lb, 2 plate 25 lb, 4 plate 5 lb, 2 plate 2.5 lb',
  ],
])('kept: %s', (text, goods) => expect(counted(text)).toBe(goods));

it.each([
  ['Half rack, bench $100, 4x45 plates $80, bar not included.', '1 rack, 1 bench, 4 plate 45 lb =80'],
  ['4x45, 2x25, olympic plates. Bar and bench are not included.', '4 plate 45 lb, 2 plate 25 lb'],
  ['Keeping the bar, bench $50, 4x45 olympic plates $80', '1 bench =50, 4 plate 45 lb =80'],
  ["Squat rack. I'm keeping the bench but selling the bar and 2x45 plates", '1 rack, 1 bar, 2 plate 45 lb'],
  ['Everything but the bar: bench $50, 2x45 plates $60', '1 bench =50, 2 plate 45 lb =60'],
])('sold beside what is kept: %s', (text, goods) => expect(counted(text)).toBe(goods));
