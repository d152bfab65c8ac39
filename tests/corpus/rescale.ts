/** Texts with every price doubled, or every weight told in the other unit. Null where an ad can't be rewritten without doubt. */
import type { Fact, Reading } from '../../src/listing/reading.ts';
import { convert, inPounds, type MassUnit } from '../../src/units/mass.ts';

const AMOUNT = /([$£€] ?)(\d{1,3}(?:,\d{3})+|\d+)(\.\d{1,2})?(?![\d,]*\d)/g;
/** Ranges, thousands with a k, offers below a price, and amounts that have no sign of their own. */
const UNSURE =
  /[$£€] ?\d[\d.,]*(?:k\b| ?[-–—/] ?[$£€]?\d| to \d)|\d,-|\d ?(?:[$£€]|bucks|dollars|euros?|quid|cents|c\b|p\b|¢|usd|cad|eur|gbp)/i;

const pricesOf = (reading: Reading): (Fact<unknown> | null)[] => [
  reading.asking.amount,
  reading.asking.unitAmount,
  ...reading.items.map((item) => item.ownPrice),
];

/** The text with prices doubled; only where each price of the reading is a number behind a currency sign. */
export function doublePrices(reading: Reading, text: string): string | null {
  if (UNSURE.test(text) || reading.asking.placeholder || reading.language === 'de') return null;
  const prices = pricesOf(reading).filter((fact) => fact !== null);
  const signed = (fact: Fact<unknown>): boolean =>
    fact.evidence.length > 0 &&
    fact.evidence.every(({ start, end }) => /^[$£€] ?\d[\d.,]*$/.test(reading.text.slice(start, end)));
  if (prices.length === 0 || !prices.every(signed)) return null;
  return text.replace(AMOUNT, (_, sign: string, whole: string, cents = '') => {
    const doubled = Number(`${whole.replaceAll(',', '')}${cents}`) * 2;
    return `${sign}${cents === '' ? doubled : doubled.toFixed(2)}`;
  });
}

const WEIGHED = /(?<![\d.,/$£€-])(\d+(?:\.\d+)?)[ -]?(lbs?|pounds?|pounders?|#|kgs?|kilos?)(?![\p{L}\d'])/giu;
const unitOf = (word: string): MassUnit => (/^k/i.test(word) ? 'kg' : 'lb');
const inOther = (value: number, unit: MassUnit): number => convert({ value, unit }, unit === 'lb' ? 'kg' : 'lb').value;

/** Whether every weight that the reading holds is written with its unit right behind it. */
function allNamed(reading: Reading): boolean {
  const weights = reading.items.flatMap((item) => (item.unitWeight ? [item.unitWeight] : []));
  return (
    weights.length > 0 &&
    weights.every((fact) =>
      fact.evidence.every(({ start, end }) => new RegExp(WEIGHED.source, 'iu').test(reading.text.slice(start, end))),
    )
  );
}

/** The text with the other unit's figure in brackets behind every weight: "45 lb (20.4 kg)". */
export function withBothUnits(reading: Reading, text: string): string | null {
  if (!allNamed(reading) || /kg[^\n]*(?:lb|pound|#)|(?:lb|pound|#)[^\n]*kg/i.test(text)) return null;
  return text.replace(WEIGHED, (written, value: string, unit: string) => {
    const other = inOther(Number(value), unitOf(unit));
    const digits = reading.language === 'de' ? other.toFixed(1).replace('.', ',') : other.toFixed(1);
    return `${written} (${digits} ${unitOf(unit) === 'lb' ? 'kg' : 'lb'})`;
  });
}

/** Weights told in both units already, prices by weight, and plates named again by their bare figure ("the 10s", "die 10er"). */
const ELSEWHERE = /\d ?(?:\/|or|=|\() ?\d+ ?(?:kg|lb)|\d(?:'?s|er)\b|\/ ?(?:kg|lb)|[$£€]\d+ ?(?:kg|lb)/i;

/** The text with every weight in the other unit. Not for sets known by their size: those are made in one unit. */
export function inOtherUnit(reading: Reading, text: string): string | null {
  const implied = reading.items.some(({ basis }) => basis === 'implied');
  if (implied || !allNamed(reading) || ELSEWHERE.test(text)) return null;
  return text.replace(WEIGHED, (_, value: string, unit: string) => {
    const other = inOther(Number(value), unitOf(unit)).toFixed(2);
    return `${reading.language === 'de' ? other.replace('.', ',') : other} ${unitOf(unit) === 'lb' ? 'kg' : 'lb'}`;
  });
}

/** Asking amount, unit amount and the items' own prices in minor units. */
export const moneyOf = ({ asking, items }: Reading): (number | null)[] =>
  [asking.amount, asking.unitAmount, ...items.map(({ ownPrice }) => ownPrice)].map((fact) => fact?.value.minor ?? null);

export const countsOf = ({ items }: Reading): (string | number | null)[] =>
  items.flatMap(({ kind, count }) => [kind.value, count?.value ?? null]);

export const poundsOf = ({ items }: Reading): number =>
  items.reduce((sum, { totalWeight }) => sum + (totalWeight ? inPounds(totalWeight.value) : 0), 0);
