/** Settings that are one number: how each is read, shown in the buyer's units, typed and put back. */
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';
import { MILE_IN_KILOMETRES } from '../../../src/units/length.ts';
import { POUND_IN_KILOGRAMS } from '../../../src/units/mass.ts';
import { exponentOf } from '../../../src/units/money.ts';
import { type Decimal, parseAmount, parseMillimetres, parseNumber } from '../../components/parse-input.ts';
import type { Words } from '../../components/speech.ts';

/** What a number is: it decides the unit in which it is shown and how it may be typed. */
export type Quantity = 'money' | 'money-per-mile' | 'speed' | 'mm' | 'weight' | 'percent' | 'days';

export interface Figure {
  readonly name: string;
  readonly quantity: Quantity;
  readonly read: (settings: Settings) => number | null;
  /** The part that changes of the settings as they are now. Null only where `optional`. */
  readonly write: (value: number | null, settings: Settings) => Partial<Settings>;
  /** An emptied field means: none. */
  readonly optional?: boolean;
  /** Limits in the setting's own unit, wide enough for anybody. */
  readonly low: number;
  readonly high: number;
}

type NumberName = 'perMile' | 'hourWorth' | 'speedMph' | 'tolls' | 'salesTax' | 'margin' | 'sleeveMm' | 'loadLb' | 'halfLifeDays';
type OptionalName = 'otherSleeveMm' | 'longestMm' | 'payloadLb' | 'ceilingMm';

const number = (name: NumberName, quantity: Quantity, low: number, high: number): Figure => ({
  name,
  quantity,
  low,
  high,
  read: (settings) => settings[name],
  write: (value) => (value === null ? {} : { [name]: value }),
});
const optional = (name: OptionalName, quantity: Quantity, low: number, high: number): Figure => ({
  name,
  quantity,
  low,
  high,
  optional: true,
  read: (settings) => settings[name],
  write: (value) => ({ [name]: value }),
});

const VAN: Figure = {
  name: 'van',
  quantity: 'money',
  low: 0,
  high: 100_000,
  optional: true,
  read: ({ van }) => van?.cost ?? null,
  write: (cost) => ({ van: cost === null ? null : { cost, per: 'trip' } }),
};

export const DRIVE: readonly Figure[] = [
  number('perMile', 'money-per-mile', 0, 1000),
  number('hourWorth', 'money', 0, 100_000),
  number('speedMph', 'speed', 1, 200),
  number('tolls', 'money', 0, 100_000),
  VAN,
  optional('longestMm', 'mm', 300, 20_000),
  optional('payloadLb', 'weight', 20, 50_000),
];
export const GEAR: readonly Figure[] = [
  number('sleeveMm', 'mm', 20, 60),
  optional('otherSleeveMm', 'mm', 20, 60),
  number('loadLb', 'weight', 1, 3000),
  optional('ceilingMm', 'mm', 1000, 20_000),
];
export const DEAL: readonly Figure[] = [
  number('margin', 'percent', 0, 0.9),
  number('salesTax', 'percent', 0, 1),
  number('halfLifeDays', 'days', 1, 10_000),
];

/** What one of the setting's own units is in those of the field. */
export function factorOf(quantity: Quantity, { unit }: Settings): number {
  const metric = unit === 'kg';
  if (quantity === 'percent') return 100;
  if (quantity === 'weight') return metric ? POUND_IN_KILOGRAMS : 1;
  if (quantity === 'speed') return metric ? MILE_IN_KILOMETRES : 1;
  if (quantity === 'money-per-mile') return metric ? 1 / MILE_IN_KILOMETRES : 1;
  return 1;
}

export const digitsOf = (quantity: Quantity): number => {
  if (quantity === 'money-per-mile') return 4;
  return quantity === 'weight' || quantity === 'mm' ? 1 : 2;
};

export const parserOf = (quantity: Quantity): ((text: string, decimal: Decimal) => number | null) => {
  if (quantity === 'mm') return parseMillimetres;
  if (quantity === 'percent') return (text, decimal) => parseNumber(text.replace(/\s*%\s*$/, ''), decimal);
  return quantity === 'money' || quantity === 'money-per-mile' ? parseAmount : parseNumber;
};

/** Key of the words for the field's unit; `currency` goes in. */
export function unitKey(quantity: Quantity, { unit }: Settings): string {
  const metric = unit === 'kg';
  if (quantity === 'weight') return `settings_unit_${unit}`;
  if (quantity === 'speed') return metric ? 'settings_unit_kmh' : 'settings_unit_mph';
  if (quantity === 'money-per-mile') return metric ? 'settings_unit_money_km' : 'settings_unit_money_mi';
  return `settings_unit_${quantity}`;
}

export const standardOf = (figure: Figure): number | null => figure.read(DEFAULT_SETTINGS);

/** The default in words, in the buyer's units: "15%", "45 lb", "$0.67 a mile". Null where there is none. */
export function standardWords({ say, t }: Words, figure: Figure, settings: Settings): string | null {
  const standard = standardOf(figure);
  if (standard === null) return null;
  const { quantity } = figure;
  const value = standard * factorOf(quantity, settings);
  const digits = digitsOf(quantity);
  const metric = settings.unit === 'kg';
  const amount = { minor: value * 10 ** exponentOf(settings.currency), currency: settings.currency };
  if (quantity === 'money') return say.money(amount);
  if (quantity === 'money-per-mile') return t(`working_per_${metric ? 'km' : 'mi'}`, { rate: say.money(amount, 'fine') });
  if (quantity === 'percent') return say.percent(value, digits);
  if (quantity === 'weight') return say.unit(value, settings.unit, digits);
  if (quantity === 'speed') return say.unit(value, metric ? 'kmh' : 'mph', digits);
  return say.unit(value, quantity, digits);
}
