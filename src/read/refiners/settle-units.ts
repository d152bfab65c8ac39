/** Gives a unit to weights written without one: from their list, else from the ad's other plates, else from the sizes themselves and the money. */
import type { MassUnit } from '../../units/mass.ts';
import type { Draft } from './draft.ts';
import { firstToken } from './draft.ts';

/** Sizes that are made in pounds only. */
const POUND_ONLY = [45, 35, 100, 7.5];
const KILOGRAM_ONLY = [20, 15, 1.25, 0.5];
const KILOGRAM_MONEY = ['GBP', 'EUR', 'AUD', 'NZD', 'CHF'];

export function settleUnits(drafts: readonly Draft[], currency: string | null, language: 'en' | 'de'): void {
  const weighed = drafts.filter((item) => item.weight !== null);
  const bare = weighed.filter((item) => item.unit === null);
  if (bare.length === 0) return;
  const explicit = weighed.filter((item) => item.unit !== null && !item.kind.endsWith('bar'));
  const values = bare.map((item) => item.weight?.value ?? 0);
  const looksPounds = values.some((value) => POUND_ONLY.includes(value));
  const looksKilograms = values.some((value) => KILOGRAM_ONLY.includes(value));
  for (const item of bare) {
    const inList = explicit.find((other) => item.list !== null && other.list === item.list);
    const nearest = [...explicit].sort(
      (a, b) => Math.abs(firstToken(a) - firstToken(item)) - Math.abs(firstToken(b) - firstToken(item)),
    )[0];
    const guessed: MassUnit = looksPounds
      ? 'lb'
      : (nearest?.unit ??
        (language === 'de' ||
        (currency !== null && KILOGRAM_MONEY.includes(currency) && (looksKilograms || values.every((value) => value <= 25)))
          ? 'kg'
          : 'lb'));
    item.unit = inList?.unit ?? guessed;
  }
}
