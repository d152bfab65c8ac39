/** What an answer rests on that might be otherwise: each assumption with its range, and the settings under another value of it. */
import type { Worth } from '../listing/evaluation.ts';
import type { Reading } from '../listing/reading.ts';
import type { RateCategory, RateCell, Settings, UnknownId } from '../listing/settings.ts';
import { categoryOf } from '../price/categories.ts';
import { cellOf, pricesOf } from '../price/rates.ts';
import { plateWeights } from '../price/usable.ts';
import { exponentOf } from '../units/money.ts';
import type { Range } from '../units/range.ts';
import { MILEAGE_RATES, perMileOf } from './mileage-rates.ts';
import { unknownsOf } from './unknowns.ts';

export type AssumptionKind = 'used' | 'new' | 'usable' | UnknownId | 'per-mile' | 'hour' | 'margin' | 'distance';

export interface Assumption {
  readonly kind: AssumptionKind;
  /** Of a rate only. */
  readonly category: RateCategory | null;
  /** `likely` is what the answer rests on. Major units of money (per pound or piece, a mile, an hour), pounds, fractions, or miles. */
  readonly range: Range;
  /** The settings as if it had this value, everything else as it was. */
  readonly at: (value: number) => Settings;
}

/** The buyer's margin may as well be so much more or less. An assumption. */
const MARGIN_SLACK = 0.1;
/** Chances of a bad answer may as well be half or twice as large. An assumption. */
const CHANCE_FACTOR = 2;
const MOST_CHANCE = 0.9;
/**
 * An hour on the road, as parts of what it is taken to be worth: 35 to 60 % of an hour's pay around 50 %, US DOT guidance on the value of
 * travel time, seen in a transcription.
 */
const HOUR: Range = { low: 0.35 / 0.5, likely: 1, high: 0.6 / 0.5 };
/** How far off a seller of unknown distance may be, in miles. An assumption. */
const FARTHEST = 100;

const scaled = (cell: RateCell, factor: number): RateCell => ({
  ...cell,
  low: cell.low * factor,
  likely: cell.likely * factor,
  high: cell.high * factor,
});

const withCells = (settings: Settings, category: RateCategory, cells: Partial<Record<'used' | 'new', RateCell>>): Settings => ({
  ...settings,
  rates: { ...settings.rates, [category]: { ...settings.rates[category], ...cells } },
});

/** New delivered in major units: tax and shipping with it. */
function deliveredOf(category: RateCategory, settings: Settings): Range | null {
  const prices = pricesOf(category, settings);
  if (prices === null) return null;
  const unit = 10 ** exponentOf(settings.currency);
  const { low, likely, high } = prices.delivered;
  return { low: low / unit, likely: likely / unit, high: high / unit };
}

/** The new cell with which delivered comes to so much less or more; never below nothing. */
function newCellFor(category: RateCategory, settings: Settings, change: number): RateCell | null {
  const cell = cellOf(category, 'new', settings);
  if (cell === null || cell.likely <= 0) return null;
  return scaled(cell, Math.max(0, 1 + change / (cell.likely * (1 + settings.salesTax))));
}

/** What a category goes for used, the whole cell moving with it: low and high are how ads stray around it. */
function usedRate(category: RateCategory, settings: Settings): Assumption | null {
  const cell = cellOf(category, 'used', settings);
  if (cell === null || cell.likely <= 0) return null;
  return {
    kind: 'used',
    category,
    range: cell,
    at: (value) => withCells(settings, category, { used: scaled(cell, value / cell.likely) }),
  };
}

function newRate(category: RateCategory, settings: Settings): Assumption | null {
  const range = deliveredOf(category, settings);
  if (range === null) return null;
  return {
    kind: 'new',
    category,
    range,
    at(value) {
      const cell = newCellFor(category, settings, value - range.likely);
      return cell === null ? settings : withCells(settings, category, { new: cell });
    },
  };
}

/** Usable plate pounds: plates that are so much lighter or fewer are worth as much as if each pound were worth so much less. */
function usableWeight(plates: ReadonlySet<RateCategory>, usable: Range, settings: Settings): Assumption | null {
  if (plates.size === 0 || usable.likely <= 0) return null;
  const at = (value: number): Settings => {
    const factor = value / usable.likely;
    return [...plates].reduce((changed, category) => {
      const used = cellOf(category, 'used', settings);
      const delivered = deliveredOf(category, settings);
      const fresh = delivered === null ? null : newCellFor(category, settings, delivered.likely * (factor - 1));
      return used === null || fresh === null ? changed : withCells(changed, category, { used: scaled(used, factor), new: fresh });
    }, settings);
  };
  return { kind: 'usable', category: null, range: usable, at };
}

const chanceOf = (kind: UnknownId, likely: number, settings: Settings): Assumption => ({
  kind,
  category: null,
  range: { low: likely / CHANCE_FACTOR, likely, high: Math.max(likely, Math.min(MOST_CHANCE, likely * CHANCE_FACTOR)) },
  at: (value) => ({ ...settings, chances: { ...settings.chances, [kind]: value } }),
});

/** From the least to the most that is published of a mile in the buyer's currency; else half to twice, an assumption. */
function mileRange({ perMile, currency }: Settings): Range {
  const published = MILEAGE_RATES.filter((rate) => rate.currency === currency).map(perMileOf);
  if (published.length === 0) return { low: perMile / 2, likely: perMile, high: perMile * 2 };
  return { low: Math.min(perMile, ...published), likely: perMile, high: Math.max(perMile, ...published) };
}

function ofTheDrive(settings: Settings, distanceKnown: boolean): Assumption[] {
  const { hourWorth, margin } = settings;
  const hour = { low: hourWorth * HOUR.low, likely: hourWorth, high: hourWorth * HOUR.high };
  const room = {
    low: Math.min(margin, Math.max(0, margin - MARGIN_SLACK)),
    likely: margin,
    high: Math.max(margin, Math.min(0.9, margin + MARGIN_SLACK)),
  };
  const one = (kind: AssumptionKind, range: Range, at: Assumption['at']): Assumption => ({ kind, category: null, range, at });
  return [
    one('per-mile', mileRange(settings), (perMile) => ({ ...settings, perMile })),
    one('hour', hour, (value) => ({ ...settings, hourWorth: value })),
    one('margin', room, (value) => ({ ...settings, margin: value })),
    ...(distanceKnown
      ? []
      : [one('distance', { low: 0, likely: 0, high: FARTHEST }, (value) => ({ ...settings, distance: { value, unit: 'mi' } }))]),
  ];
}

/** All assumptions that bear on a reading. `distanceKnown`: somebody has said how far it is. */
export function assumptionsOf(reading: Reading, worth: Worth, settings: Settings, distanceKnown: boolean): Assumption[] {
  const plates = plateWeights(reading, settings);
  const ofPlates = new Set<RateCategory>();
  const categories = new Set<RateCategory>();
  for (const item of reading.items) {
    const category = categoryOf(item);
    if (category === null) continue;
    categories.add(category);
    if (plates.some((plate) => plate.item.id === item.id)) ofPlates.add(category);
  }
  const chances = new Map(unknownsOf(reading, plates, settings).map(({ id, chance }) => [id, chance]));
  return [
    ...[...categories].flatMap((category) => [usedRate(category, settings), newRate(category, settings)]),
    usableWeight(ofPlates, worth.usable, settings),
    ...[...chances].map(([kind, chance]) => chanceOf(kind, chance, settings)),
    ...ofTheDrive(settings, distanceKnown),
  ].filter((one) => one !== null);
}
