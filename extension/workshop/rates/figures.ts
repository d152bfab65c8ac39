/** Prices per pound or piece as this screen writes them: in the buyer's currency and unit. */
import type { MoneyRange } from '../../../src/listing/evaluation.ts';
import type { RateCategory, Settings } from '../../../src/listing/settings.ts';
import { isByWeight } from '../../../src/price/categories.ts';
import { POUND_IN_KILOGRAMS } from '../../../src/units/mass.ts';
import { exponentOf } from '../../../src/units/money.ts';
import { type Range, scale } from '../../../src/units/range.ts';
import type { Words } from '../../components/speech.ts';

/** What a price per pound is in the buyer's unit of weight; 1 for what is priced by the piece. */
export const factorOf = (category: RateCategory, { unit }: Settings): number =>
  isByWeight(category) && unit === 'kg' ? 1 / POUND_IN_KILOGRAMS : 1;

/** Major units per pound as money in the buyer's unit. */
export const moneyOf = (range: Range, category: RateCategory, settings: Settings): MoneyRange => ({
  ...scale(range, factorOf(category, settings) * 10 ** exponentOf(settings.currency)),
  currency: settings.currency,
});

/** "a pound", "a kilogram", "each". */
export const perWords = ({ t }: Words, category: RateCategory, { unit }: Settings): string =>
  t(isByWeight(category) ? `rates_per_${unit}` : 'rates_per_piece');

export const nameOf = ({ t }: Words, category: RateCategory): string => t(`category_${category.replaceAll('-', '_')}`);
