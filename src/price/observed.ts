/** What an ad's price says of the going rate: prices per pound or piece of sound goods, where the ad says enough to tell. */
import type { Evaluation } from '../listing/evaluation.ts';
import { type Item, isPlate, type Reading } from '../listing/reading.ts';
import type { RateCategory } from '../listing/settings.ts';
import { inPounds } from '../units/mass.ts';
import { type Currency, inMajor, type Money } from '../units/money.ts';
import { askingPrice } from './asking-price.ts';
import { categoryOf, isByWeight } from './categories.ts';
import { conditionFactor } from './condition.ts';

export interface ObservedPrice {
  readonly category: RateCategory;
  /** Major units of `currency` per pound or per piece, as the category is priced. */
  readonly perUnit: number;
  readonly currency: Currency;
}

/** One line of an ad as it is priced. */
export interface Line {
  readonly item: Item;
  readonly category: RateCategory;
  /** Pounds or pieces; null where the ad doesn't say. */
  readonly quantity: number | null;
  /** What its condition leaves of the worth of a sound one: the going rate is that of sound goods. */
  readonly factor: number;
}

/** Pounds at face value, by which weight is priced; or pieces. */
function quantityOf(item: Item, category: RateCategory): number | null {
  const pieces = item.count?.value ?? null;
  if (!isByWeight(category)) return pieces;
  if (item.totalWeight !== null) return inPounds(item.totalWeight.value);
  return item.unitWeight === null || pieces === null ? null : inPounds(item.unitWeight.value) * pieces;
}

/** Null for goods without a row in the table. */
export function lineOf(item: Item): Line | null {
  const category = categoryOf(item);
  return category && { item, category, quantity: quantityOf(item, category), factor: conditionFactor(item) };
}

/** A price that stands for goods of one category; nothing where it is no figure. */
function observed(category: RateCategory, price: Money, soundUnits: number): ObservedPrice[] {
  const perUnit = inMajor(price) / soundUnits;
  return Number.isFinite(perUnit) && perUnit > 0 ? [{ category, perUnit, currency: price.currency }] : [];
}

/** Lines that the ad gives prices of their own. */
const byLine = (lines: readonly Line[]): ObservedPrice[] =>
  lines.flatMap(({ item, category, quantity, factor }) =>
    item.ownPrice === null || quantity === null ? [] : observed(category, item.ownPrice.value, quantity * factor),
  );

/** One price a pound for whatever there is. */
function byWeight({ asking }: Reading, lines: readonly Line[]): ObservedPrice[] {
  if (asking.unitAmount === null) return [];
  const { minor, currency } = asking.unitAmount.value;
  const pounds = asking.basis === 'per-kilogram' ? inPounds({ value: 1, unit: 'kg' }) : 1;
  const weighed = lines.filter(({ category }) => isByWeight(category));
  return [...new Set(weighed.map(({ category }) => category))].flatMap((category) => {
    const own = weighed.filter((line) => line.category === category);
    const factor = own.reduce((sum, line) => sum + line.factor, 0) / own.length;
    return observed(category, { minor, currency }, pounds * factor);
  });
}

/** Pounds or pieces of sound goods that the lines are worth; null where the ad doesn't say. A total stated for a lot of plates is one. */
function soundUnits(lines: readonly Line[], { worth }: Evaluation): number | null {
  const [first] = lines;
  if (lines.every(({ quantity }) => quantity !== null))
    return lines.reduce((sum, { quantity, factor }) => sum + (quantity ?? 0) * factor, 0);
  const counted = !worth.losses.some(({ reason }) => reason === 'unknown-count' || reason === 'unknown-weight');
  const alike = lines.every(({ item, factor }) => isPlate(item.kind.value) && factor === first?.factor);
  return first && counted && alike ? worth.offered.likely * first.factor : null;
}

/** One price for a lot of one category. A lot of several says nothing of any one of them. */
function byLot(lines: readonly Line[], evaluation: Evaluation): ObservedPrice[] {
  const { reading, worth } = evaluation;
  const categories = new Set(lines.map(({ category }) => category));
  const [category] = categories;
  const price = askingPrice(reading, worth.offered, worth.currency);
  const units = soundUnits(lines, evaluation);
  if (category === undefined || categories.size > 1 || price === null || units === null) return [];
  return observed(category, { minor: price.range.likely, currency: price.currency }, units);
}

/**
 * The prices that an ad asks for sound goods, per pound at face value or per piece. Prices of lines and of a pound count one by one; a
 * price for the lot counts where all of it is one category. Nothing of what a deal-breaker is on, of a stand-in price, of a range, or of
 * an ad that seeks.
 */
export function observedPrices(evaluation: Evaluation): ObservedPrice[] {
  const { reading, flags } = evaluation;
  const { asking, items } = reading;
  if (reading.wanted || !reading.aboutThisTrade || asking.placeholder || asking.high !== null) return [];
  const broken = new Set(flags.filter(({ weight }) => weight === 'deal-breaker').map(({ item }) => item));
  if (broken.has(null)) return [];
  const sound = items.filter(({ id }) => !broken.has(id)).flatMap((item) => lineOf(item) ?? []);
  if (items.some(({ ownPrice }) => ownPrice !== null)) return byLine(sound);
  if (asking.basis === 'per-pound' || asking.basis === 'per-kilogram') return byWeight(reading, sound);
  return sound.length === items.length ? byLot(sound, evaluation) : [];
}
