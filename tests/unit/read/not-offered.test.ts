/** Goods that an ad names and does not offer: what a holder takes, what is sought in trade, parts of a frame. Common practice, no source. */
import { expect, it } from 'vitest';
import { offer, readText } from './goods.ts';

it.each([
  ['Bar holder that takes 5 bars, $25. Olympic bar 45 lb $90', '115 lot | 1 storage =25, 1 bar 45 lb =90'],
  ['Gun rack for 6 bars $40, 1 olympic bar 45lb $100', '140 lot | 1 storage =40, 1 bar 45 lb =100'],
  ['Olympic bar 45 lb and a tree with room for two more bars. $80', '80 lot | 1 bar 45 lb, 1 storage'],
  ['Trap bar, open on one side, 50 lbs, takes 2" plates. $200', '200 lot | 1 hex-bar 50 lb'],
  ['Micro plates, .5 and 1 lb pairs for olympic bar. $25', '25 lot | 2 micro 0.5 lb, 2 micro 1 lb'],
  ['Rack with 2 olympic bars $40', '40 lot | 1 rack, 2 bar'],
  // What the seller would rather have.
  ['Olympic bar $80. Looking for two 35s and a 10 in trade', '80 lot | 1 bar'],
  ['Womens bar 15 kg. After a 20kg one in the same shape, or £140', '140 lot | 1 bar 15 kg'],
  ['4x45 olympic plates. Looking for $100', '100 lot | 4 plate 45 lb'],
  ['Selling 4 25s, olympic. Would consider trades for 10s or 5s or a curl bar. $40', '40 lot | 4 plate 25 lb'],
  // One frame for two lifts, and a bench's part.
  ['combo rack (bench + squat in one frame), the bench pad was re-covered. $800', '800 lot | 1 rack'],
  ['squat/bench combo rack $800', '800 lot | 1 rack'],
  ['bench and squat rack $200', '200 lot | 1 bench, 1 rack'],
  ['5 foot bar with threaded ends, one star nut is missing. $20', '20 lot | 1 bar'],
  // A weight and a measure before the bar.
  ['a 15 kg 25mm bar, bearings $100', '100 lot | 1 bar 15 kg'],
  ['a 10 kg plate and a 7 ft bar $100', '100 lot | 1 plate 10 kg, 1 bar'],
])('%s', (text, said) => expect(offer(text)).toBe(said));

it('sells what it is tired of, whoever the seller is after', () =>
  expect(readText('Swap 15kg womens bar, spins well, $140. After a 20kg mens bar').wanted).toBe(false));
