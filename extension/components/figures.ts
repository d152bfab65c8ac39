/** Money ranges in words, with no more digits than the range is known to. */
import type { MoneyRange, Rate } from '../../src/listing/evaluation.ts';
import { convert, type MassUnit, pounds, type Weight } from '../../src/units/mass.ts';
import { inMajor, type Money } from '../../src/units/money.ts';
import type { Figures } from '../../src/words/write-figures.ts';
import type { Words } from './speech.ts';

const WHOLE_FROM = 20;

const moneyOf = (minor: number, range: MoneyRange): Money => ({ minor: Math.round(minor), currency: range.currency });

export function figure({ say }: Words, minor: number, range: MoneyRange): string {
  const money = moneyOf(minor, range);
  const whole = money.minor === 0 || inMajor(moneyOf(range.likely, range)) >= WHOLE_FROM;
  return say.money(money, whole ? 'whole' : 'cents');
}

/** "$0.55 to $0.92", or one figure when both ends read the same. */
export function span(words: Words, range: MoneyRange): string {
  const low = figure(words, range.low, range);
  const high = figure(words, range.high, range);
  return low === high ? low : words.t('panel_span', { low, high });
}

export const likely = (words: Words, range: MoneyRange): string => figure(words, range.likely, range);

/** "$0.71 ($0.55 to $0.92)" */
export function likelyAndSpan(words: Words, range: MoneyRange): string {
  const one = likely(words, range);
  const both = span(words, range);
  return one === both ? one : words.t('panel_likely_and_span', { likely: one, span: both });
}

/** Unit words for a rate: "a usable pound". */
export const perWords = ({ t }: Words, rate: Rate): string => t(`panel_per_${rate.per}`);

/** Pounds in the buyer's unit, whole from 20 up. */
export function poundsIn({ say }: Words, value: number, unit: MassUnit): string {
  const weight = convert(pounds(value), unit);
  return say.weight(weight, Math.abs(weight.value) >= WHOLE_FROM ? 0 : 1);
}

/** Weights of one unit, one after the other, as the buyer's own decimal sign allows: "46.2, 44.8" or "46,2; 44,8". */
export const weightsWritten = ({ number, decimal }: Pick<Figures, 'number' | 'decimal'>, weights: readonly Weight[]): string =>
  weights.map(({ value }) => number(value)).join(decimal === ',' ? '; ' : ', ');
