/** Values of corrections as quantities, in the unit that the correction names. Null when the value can't stand there. */
import type { Correction } from '../listing/reading.ts';
import { type Distance, feetToMillimetres, inchesToMillimetres } from '../units/length.ts';
import type { Weight } from '../units/mass.ts';
import { type Currency, type Money, money } from '../units/money.ts';

/** Nothing on offer in an ad is larger than this, in any unit; keeps sums finite. */
const MOST = 1e7;

export function parseNumber({ value }: Correction): number | null {
  const number = typeof value === 'string' && value.trim() !== '' ? Number(value) : value;
  return typeof number === 'number' && Number.isFinite(number) && number >= 0 && number <= MOST ? number : null;
}

export function parseCount(correction: Correction): number | null {
  const number = parseNumber(correction);
  return number !== null && Number.isInteger(number) && number > 0 ? number : null;
}

export function parseWeight(correction: Correction): Weight | null {
  const value = parseNumber(correction);
  const unit = correction.unit ?? 'lb';
  return value === null || value === 0 || (unit !== 'lb' && unit !== 'kg') ? null : { value, unit };
}

/** At most so many pieces are weighed one by one. */
const MOST_WEIGHED = 200;

/**
 * Several weights in one text, "46.2, 44.8, 45.1", all in the correction's unit. Commas, semicolons and blanks part them; the decimal
 * sign is a point, or a comma where semicolons part the weights ("20,3; 19,8").
 */
export function parseWeights(correction: Correction): Weight[] | null {
  const { value } = correction;
  if (typeof value === 'number') return parseWeights({ ...correction, value: String(value) });
  if (typeof value !== 'string') return null;
  const text = value.includes(';') ? value.replace(/(\d),(?=\d)/g, '$1.') : value;
  const parts = text.split(/[\s,;]+/).filter((part) => part !== '');
  if (parts.length === 0 || parts.length > MOST_WEIGHED) return null;
  const weights = parts.flatMap((part) => parseWeight({ ...correction, value: part }) ?? []);
  return weights.length === parts.length ? weights : null;
}

export function parseDistance(correction: Correction): Distance | null {
  const value = parseNumber(correction);
  const unit = correction.unit ?? 'mi';
  return value === null || (unit !== 'mi' && unit !== 'km') ? null : { value, unit };
}

const LENGTHS: Readonly<Record<string, (value: number) => number>> = {
  mm: (value) => value,
  cm: (value) => value * 10,
  m: (value) => value * 1000,
  in: inchesToMillimetres,
  ft: feetToMillimetres,
};

/** A length in millimetres. */
export function parseLength(correction: Correction): number | null {
  const value = parseNumber(correction);
  const convert = LENGTHS[correction.unit ?? 'mm'];
  return value === null || value === 0 || convert === undefined ? null : convert(value);
}

/** An amount of money: the correction's unit is a currency, else `currency` is. */
export function parseMoney(correction: Correction, currency: Currency): Money | null {
  const value = parseNumber(correction);
  const unit = correction.unit ?? currency;
  return value === null || !/^[A-Z]{3}$/.test(unit) ? null : money(value, unit);
}
