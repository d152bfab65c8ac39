/** Gives a unit to weights written without one: from their list, else from the ad's other plates, else from the sizes themselves and the money. */
import type { MassUnit } from '../../units/mass.ts';
import type { Total } from '../mention.ts';
import type { Scan } from '../text/scan.ts';
import type { Draft } from './draft.ts';
import { firstToken } from './draft.ts';

/** Sizes that are made in pounds only. */
const POUND_ONLY = [45, 35, 100, 7.5];
const KILOGRAM_ONLY = [20, 15, 1.25, 0.5];
const KILOGRAM_MONEY = ['GBP', 'EUR', 'AUD', 'NZD', 'CHF'];

/** Unit named in the line before the weights, with no number of its own: "discs (kg): 2 x 20", "bumpers in lb: ...", or in the heading right above. */
function lineUnit(scan: Scan, item: Draft): MassUnit | null {
  const first = firstToken(item);
  const line = scan.tokens[first]?.line ?? 0;
  for (let i = first - 1; i >= Math.max(0, first - 60); i -= 1) {
    const token = scan.tokens[i];
    if (!token || token.line < line - 1) return null;
    if (token.line < line && token.type !== 'line' && scan.plain.slice(i + 1, first).split('l').length > 2) return null;
    const unit = token.term?.unit;
    if (unit && scan.tokens[i - 1]?.type !== 'number' && scan.plain[i - 1] !== 'r') return unit;
  }
  return null;
}

/** "100 kg of bumpers, 2 x 20, 2 x 15, 2 x 10, 2 x 5": the unit of a total that the bare weights add up to. */
function unitOfSum(bare: readonly Draft[], totals: readonly Total[]): MassUnit | null {
  if (bare.length < 2 || bare.some(({ count }) => count === null)) return null;
  const sum = bare.reduce((all, { count, weight }) => all + (count?.value ?? 0) * (weight?.value ?? 0), 0);
  return totals.find(({ weight }) => Math.abs(weight - sum) < 0.5)?.unit ?? null;
}

export function settleUnits(
  scan: Scan,
  drafts: readonly Draft[],
  currency: string | null,
  language: 'en' | 'de',
  perKilogram = false,
  totals: readonly Total[] = [],
): void {
  const weighed = drafts.filter((item) => item.weight !== null);
  const bare = weighed.filter((item) => item.unit === null);
  if (bare.length === 0) return;
  const summed = unitOfSum(bare, totals);
  for (const item of bare) item.unit = summed ?? lineUnit(scan, item);
  const explicit = weighed.filter((item) => item.unit !== null && !item.kind.endsWith('bar'));
  const values = bare.filter((item) => item.unit === null).map((item) => item.weight?.value ?? 0);
  // Dumbbells of 7.5 kg and the like are common where nothing is sold by the pound.
  const looksPounds = language !== 'de' && values.some((value) => POUND_ONLY.includes(value));
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
        perKilogram ||
        (currency !== null && KILOGRAM_MONEY.includes(currency) && (looksKilograms || values.every((value) => value <= 25)))
          ? 'kg'
          : 'lb'));
    item.unit ??= inList?.unit ?? guessed;
  }
}
