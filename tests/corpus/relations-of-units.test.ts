/** The same ad at twice the price, or with its weights in the other unit, over the whole corpus. */
import { describe, it } from 'vitest';
import type { Reading } from '../../src/listing/reading.ts';
import { type Ad, holds, holdsOfAll, rewritten } from './relation.ts';
import { countsOf, doublePrices, inOtherUnit, moneyOf, poundsOf, withBothUnits } from './rescale.ts';

/** Ads whose text holds all that is read: no price of the page, no numbers in a title of their own. */
const isPlain = ({ listing, reading }: Ad): boolean =>
  listing.offers.length === 0 && listing.priceText === null && !/\d/.test(listing.title) && reading.items.length > 0;

describe('other prices and units', { timeout: 120_000 }, () => {
  it('twice the prices are twice the asking price, and the same goods', () =>
    holds(
      (ad) => {
        const text = isPlain(ad) ? doublePrices(ad.reading, ad.listing.text) : null;
        if (text === null) return null;
        const after = rewritten(ad, text);
        const twice = moneyOf(ad.reading).map((minor) => minor && minor * 2);
        const same = JSON.stringify(twice) === JSON.stringify(moneyOf(after)) && after.asking.basis === ad.reading.asking.basis;
        return same && JSON.stringify(countsOf(after)) === JSON.stringify(countsOf(ad.reading))
          ? []
          : [`${twice} became ${moneyOf(after)}`];
      },
      150,
      {
        'bars-racks/thick-bar-inch-and-a-quarter.txt': 'one price is spelled in a way that is not doubled',
        'hand/dollar-a-pound-no-total.txt':
          'the rate for all is spelled too ("a dollar a pound you take all") and is not doubled',
        'hand/urethane-kg-canada.txt': 'half a cent is rounded up',
        'short/strongman-hundred-kilo-pairs.txt': 'above a limit a price is not taken for one of a kilogram',
      },
    ));

  type Rewrite = (reading: Reading, text: string) => string | null;
  const sameGoods = (rewrite: Rewrite, ad: Ad, compare: (reading: Reading) => unknown = countsOf): string[] | null => {
    const text = isPlain(ad) ? rewrite(ad.reading, ad.listing.text) : null;
    if (text === null || text === ad.listing.text) return null;
    const after = rewritten(ad, text);
    const [before, now] = [poundsOf(ad.reading), poundsOf(after)];
    const same = Math.abs(before - now) <= 0.01 * Math.max(1, before);
    const alike = JSON.stringify(compare(after)) === JSON.stringify(compare(ad.reading));
    return same && alike ? [] : [`${before} lb became ${now} lb`];
  };

  const both = (hashes: boolean) => (ad: Ad) => (ad.listing.text.includes('#') === hashes ? sameGoods(withBothUnits, ad) : null);
  it('the figure of the other unit in brackets adds nothing', () => holds(both(false), 100));
  // "45# (20.4 kg)" is not joined to one weight: the sign is not taken for a unit there.
  it.fails('nor does it behind #', () => holdsOfAll(both(true), 5));
  // The kind is left out: a plate of 2.5 lb is one of 1.13 kg then, which the trade counts as a micro plate.
  const pieces = ({ items }: Reading): number => items.reduce((sum, { count }) => sum + (count?.value ?? 0), 0);
  const odd = 'no plates are cast in the odd figures that rounding gives, and without a word of the trade they are none';
  it('weights in the other unit are as heavy', () =>
    holds((ad) => sameGoods(inOtherUnit, ad, pieces), 80, {
      'blind/pair-of-100s.txt':
        'DEFECT: "45.36 kg plates" above "pair of 45.36 kg olympic plates" makes two plates with no weight each',
      'hand/bumper-crumb-rubber.txt': odd,
      'hand/retired-lifter-selling-the-good-stuff.txt': odd,
      'hand4/forum-price-list-plus-actual.txt': odd,
      'long/coach-replacing-bumpers.txt': 'DEFECT: "the two 10s" are read as goods of their own beside 22.05 lb',
      'long/old-powerlifter-downsizing-calibrated.txt': 'pieces of collars',
      'long/reserved-and-available-rows.html': 'DEFECT: the row of 2 x 25 kg, available, is lost in kilograms',
      'long/total-that-does-not-add-up.txt': '"a bar and the 10s" in words',
      's5/kg-calibrated-steel.txt': odd,
      's8/b-calibrated-twenty-fives-posted.txt': odd,
      's5/lawn-mower-and-weights.txt': odd,
      's6/cracked-bumpers-one-bad.txt': odd,
      's5/urethane-pairs-from-hotel.txt':
        'the ends of a series stay in words, and its steps in rounded figures do not lead from one to the other',
      's6/concrete-homemade-plates.txt': odd,
      's9/meet-lifter-kilo-set.txt': 'pieces of collars',
      's6/forty-fives-forty-or-all.txt': odd,
      'short/each-price-with-equals-sign.txt': odd,
      'short/mixed-pounds-and-kilos-apart.txt': odd,
      'short/rusty-yard-find.txt': odd,
    }));
});
