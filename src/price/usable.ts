/** How much of the plate weight on offer the buyer can load: it must fit a sleeve, be sound, and have a mate. All in pounds. */
import type { Loss } from '../listing/evaluation.ts';
import type { Item, Reading } from '../listing/reading.ts';
import { isKept, OF_ONE_PIECE } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import type { Range } from '../units/range.ts';
import { type Fit, fitOf, lotFitOf, sleevesOf } from './fit.ts';
import { oddOnes } from './mates.ts';
import { type Amount, amountsOf } from './plate-amounts.ts';
import { NO_POUNDS, type Pounds, rangeOf, someOf, withChance } from './pounds.ts';

export interface PlateWeight {
  readonly item: Item;
  readonly offered: Range;
  readonly usable: Range;
  /** The same as pounds that add up with those of other lines. */
  readonly pounds: { readonly offered: Pounds; readonly usable: Pounds; readonly sold: Pounds };
  readonly fit: Fit;
  /** Face value of one plate in pounds, where the ad gives it. */
  readonly unit: number | null;
  readonly losses: readonly Loss[];
  /** The ad says neither how many nor how heavy. */
  readonly unknown: boolean;
}

interface Line {
  readonly item: Item;
  readonly amount: Amount;
  readonly fit: Fit;
}

const isFilled = (item: Item): boolean => item.material?.value === 'cement' || item.material?.value === 'vinyl';

/** Faults for which nobody should load a plate: by each, how many pieces of an item are scrap, all of them or the one that the ad speaks of. */
const SCRAP = ['cracked', 'split-hub'] as const;

interface Scrap {
  readonly reason: (typeof SCRAP)[number];
  readonly pieces: number | 'all';
}

const scrapOf = ({ conditions }: Item, pieces: number | null): Scrap[] =>
  SCRAP.flatMap((reason): Scrap[] => {
    const fault = conditions.find(({ value }) => value === reason);
    if (fault === undefined) return [];
    return [{ reason, pieces: fault.rule === OF_ONE_PIECE && pieces !== null && pieces > 1 ? 1 : 'all' }];
  });

const allScrap = ({ item, amount }: Line): Scrap | undefined =>
  scrapOf(item, amount.pieces).find(({ pieces }) => pieces === 'all');

/** Why none of an item's plates can be used, if so. */
function ruin(line: Line): Loss['reason'] | null {
  const { item, fit } = line;
  if (fit.known && fit.chance === 0) return fit.clearanceMm !== null && fit.clearanceMm > 0 ? 'sloppy' : 'wrong-bore';
  return allScrap(line)?.reason ?? (isFilled(item) ? 'cement' : null);
}

function soundPieces(line: Line): number | null {
  const { item, amount } = line;
  if (amount.pieces === null || allScrap(line) !== undefined) return null;
  return Math.max(0, amount.pieces - scrapOf(item, amount.pieces).length);
}

/** What can be sold on: sound plates, whatever the buyer's sleeves; a single one too. */
function soldOn(line: Line): Pounds {
  const { item, amount } = line;
  const sound = soundPieces(line);
  if (allScrap(line) !== undefined || isFilled(item)) return NO_POUNDS;
  return sound === null || amount.pieces === null ? amount.total : someOf(amount.total, sound / amount.pieces);
}

function weigh(line: Line, isOdd: boolean): PlateWeight {
  const { item, amount, fit } = line;
  const offered = rangeOf([amount.total]);
  const made = (usable: Pounds, losses: readonly Loss[]): PlateWeight => ({
    item,
    fit,
    offered,
    usable: rangeOf([usable]),
    pounds: { offered: amount.total, usable, sold: item.plan?.value === 'sell' ? soldOn(line) : NO_POUNDS },
    unit: amount.unit,
    losses,
    unknown: amount.unknown,
  });
  const loss = (reason: Loss['reason'], pounds: number): Loss => ({ item: item.id, reason, pounds });
  if (item.plan?.value === 'nothing') return made(NO_POUNDS, [loss('unwanted', offered.likely)]);
  if (item.plan?.value === 'sell') return made(NO_POUNDS, [loss('sold-on', offered.likely)]);
  const reason = ruin(line);
  if (reason !== null) return made(NO_POUNDS, [loss(reason, offered.likely)]);
  const losses: Loss[] = [];
  let usable = amount.paired;
  const sound = soundPieces(line);
  if (sound !== null && amount.pieces !== null) {
    const each = offered.likely / amount.pieces;
    losses.push(...scrapOf(item, amount.pieces).map(({ reason }) => loss(reason, each)));
    if (isOdd) losses.push(loss('odd', each));
    usable = someOf(usable, (sound - (isOdd ? 1 : 0)) / amount.pieces);
  }
  const { low, likely } = rangeOf([usable]);
  if (amount.doubt !== null) losses.push(loss(amount.doubt, likely - low));
  if (fit.chance < 0.5) losses.push(loss('unknown-bore', likely));
  return made(withChance(usable, fit.chance), losses);
}

/** Whether it fits, at the buyer's own chance where the ad leaves it open. */
const atOwnChance = (fit: Fit, { chances }: Settings): Fit =>
  fit.known || chances.bore === undefined ? fit : { ...fit, chance: 1 - chances.bore };

/** Every plate item with what of it can be used, and why the rest can't. */
export function plateWeights(reading: Reading, settings: Settings): PlateWeight[] {
  const amounts = amountsOf(reading);
  const lot = lotFitOf(reading);
  const sleeves = sleevesOf(settings);
  const lines: Line[] = [];
  for (const item of reading.items) {
    const amount = amounts.get(item.id);
    if (amount !== undefined) lines.push({ item, amount, fit: atOwnChance(fitOf(item, lot, sleeves), settings) });
  }
  const kept = lines.filter((line) => isKept(line.item) && ruin(line) === null);
  const odd = oddOnes(
    kept.map((line) => ({ item: line.item, fit: line.fit, pieces: soundPieces(line), unit: line.amount.unit })),
    settings,
  );
  return lines.map((line) => weigh(line, odd.has(line.item.id)));
}

export const totalOffered = (plates: readonly PlateWeight[]): Range => rangeOf(plates.map((plate) => plate.pounds.offered));
export const totalUsable = (plates: readonly PlateWeight[]): Range => rangeOf(plates.map((plate) => plate.pounds.usable));

/** What all plates on offer truly weigh: likely is the centre of mass. */
export function trueOffered(plates: readonly PlateWeight[]): Range {
  const { low, high } = totalOffered(plates);
  return { low, likely: plates.reduce((sum, plate) => sum + plate.pounds.offered.weight.centre, 0), high };
}
