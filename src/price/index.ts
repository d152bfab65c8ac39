/** What the goods of an ad are worth to the buyer, what they cost, and how the price spreads over them. */
import type { Flag, MoneyRange, Rate, Share, Step, Worth } from '../listing/evaluation.ts';
import { isKept, type Reading } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import { inPounds, type MassUnit } from '../units/mass.ts';
import type { Currency, Money } from '../units/money.ts';
import { exactly, over, type Range, scale, sumIndependent } from '../units/range.ts';
import { askingPrice, type Price } from './asking-price.ts';
import { baselines, sumWorth } from './baselines.ts';
import { type Good, goodsOf, isKeptPlate } from './goods.ts';
import { soundOf } from './sound.ts';
import { aloneOf, splitAllIn } from './split.ts';
import { stepsOf } from './steps.ts';
import { type PlateWeight, totalOffered, totalUsable, trueOffered } from './usable.ts';
import { ceilingOf, openingOffer, savingAt, walkAwayPrice } from './walk-away.ts';

export interface Appraisal {
  readonly worth: Worth;
  readonly goods: readonly Good[];
  readonly price: Price | null;
  /** What the goods are worth paying for at the door, in minor units; null when they can't be valued in the ad's currency. */
  readonly ceiling: number | null;
}

const inCurrency = (range: Range, currency: Currency): MoneyRange => ({ ...range, currency });
const isPlateGood = (good: Good): boolean => good.plate !== null && good.quantity.likely > 0;

/** A usable weight that may be nothing still divides: its low end counts as at least a quarter of the likely weight. */
const divisor = (usable: Range): Range => ({ ...usable, low: Math.max(usable.low, usable.likely / 4) });

/** Price of a usable pound (or kilogram) from the plates' share of the all-in. */
function perUsable(
  shares: readonly Money[],
  goods: readonly Good[],
  allIn: MoneyRange,
  usable: Range,
  unit: MassUnit,
): Rate | null {
  if (usable.likely <= 0) return null;
  const plates = shares.reduce((sum, share, index) => sum + (isKeptPlate(goods[index]) ? share.minor : 0), 0);
  const whole = shares.reduce((sum, share) => sum + share.minor, 0);
  const cost = whole > 0 ? scale(allIn, plates / whole) : exactly(0);
  const perPound = over(cost, divisor(usable));
  return { ...scale(perPound, inPounds({ value: 1, unit })), currency: allIn.currency, per: unit };
}

/**
 * Appraises a reading. `trip` is the cost of the drive in minor units of the buyer's currency, null when the distance isn't known, and
 * `tripSteps` how it was worked out.
 */
export function appraise(
  reading: Reading,
  plates: readonly PlateWeight[],
  flags: readonly Flag[],
  settings: Settings,
  trip: Range | null,
  tripSteps: readonly Step[],
): Appraisal {
  const goods = goodsOf(reading, plates, flags, settings);
  const offered = totalOffered(plates);
  const usable = totalUsable(plates);
  const price = askingPrice(reading, offered, settings.currency);
  const currency = price?.currency ?? reading.asking.currency?.value ?? settings.currency;
  const comparable = currency === settings.currency;
  const valued =
    comparable && goods.some(({ item, prices, quantity }) => !isKept(item) || (prices !== null && quantity.likely > 0));
  const drive = comparable && trip !== null ? trip : exactly(0);

  const allIn = price === null ? null : inCurrency(sumIndependent([price.range, drive]), currency);
  const parts =
    allIn === null || price === null ? [] : splitAllIn({ minor: Math.round(allIn.likely), currency }, price.range.likely, goods);
  const prices = price === null ? [] : splitAllIn({ minor: Math.round(price.range.likely), currency }, price.range.likely, goods);
  const worths = goods.map((good) => good.worth.likely);
  const split: Share[] = parts.map((part, index) => ({
    item: goods[index]?.item.id ?? '',
    allIn: part,
    price: prices[index] ?? { minor: 0, currency },
    alone:
      allIn === null || !valued || goods.length < 2
        ? null
        : aloneOf({ minor: Math.round(allIn.likely), currency }, worths, index),
    worth: inCurrency(comparable ? (goods[index]?.worth ?? exactly(0)) : exactly(0), currency),
  }));
  const ceiling = valued || (comparable && goods.some((good) => good.prices !== null)) ? ceilingOf(goods) : null;
  const walkAway = valued && ceiling !== null ? walkAwayPrice(ceiling, drive.likely, currency) : null;
  const goingWorth = valued ? inCurrency(sumWorth(goods, 'worth'), currency) : null;
  const perUsablePound = allIn === null ? null : perUsable(parts, goods, allIn, usable, settings.unit);
  const mine = goods.filter(({ item }) => isKept(item));
  const base = valued && mine.length > 0 ? baselines(mine.filter(isPlateGood), mine, settings.unit) : null;
  const result: Omit<Worth, 'steps'> = {
    currency,
    usable,
    offered,
    losses: plates.flatMap((plate) => plate.losses),
    surplus: goods.flatMap(({ item, surplus }) => (surplus > 0 ? [{ item: item.id, pounds: surplus }] : [])),
    trueWeight: trueOffered(plates),
    allIn,
    perUsablePound,
    newDelivered: base === null ? null : { ...base.fresh, currency },
    goingRate: base === null ? null : { ...base.used, currency },
    sound: comparable && !valued && goods.every((good) => !good.unknown) ? soundOf(goods, settings) : null,
    goingWorth,
    newWorth: valued ? inCurrency(sumWorth(goods, 'fresh'), currency) : null,
    walkAway,
    saving:
      !valued || price === null ? null : { minor: Math.round(savingAt(goods, price.range.likely, drive.likely)) + 0, currency },
    openingOffer:
      walkAway === null || goingWorth === null ? null : openingOffer(goingWorth.low, price?.range.likely ?? null, walkAway),
    split,
  };
  return {
    worth: { ...result, steps: stepsOf(result, goods, price, tripSteps, comparable ? trip : null, settings) },
    goods,
    price,
    ceiling,
  };
}
