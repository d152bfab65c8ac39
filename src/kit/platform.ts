/**
 * A lifting platform of sheets that comes out flush with the rack's floor: layers of plywood and MDF crossed on one another, rubber on top.
 * Deliberately simple: a square or rectangle of whole sheets side by side, each layer at right angles to the one below.
 */
import { INCH_IN_MILLIMETRES } from '../units/length.ts';
import { type Range, range, scale, sumIndependent, sumShared } from '../units/range.ts';
import { type CutSheet, cutList } from './platform-cuts.ts';
import { FEET_8, SHEETS, type SheetId } from './platform-sheets.ts';

export interface PlatformWish {
  /** Height of the rack's floor over the ground, which the top has to meet. */
  readonly rackFloorMm: number;
  /** Room for the platform. */
  readonly widthMm: number;
  readonly depthMm: number;
  /** How far the top may lie over or under the rack's floor: over that it trips people. */
  readonly toleranceMm: number;
  /** Layers from the ground up. Left out, the stack that comes nearest is taken. */
  readonly layers?: readonly SheetId[];
}

/** How high the top comes against the rack's floor. */
export interface Flushness {
  /** Height of the stack in mm: errors of layers of one sheet type go together, those of different types are independent. */
  readonly heightMm: Range;
  /** `flush` at the likely thickness; and whether it stays so over the whole range of thickness. */
  readonly flush: boolean;
  readonly surely: boolean;
  /** Thickness to add under the platform (above zero) or under the rack (below zero) at the likely thickness; 0 when flush. */
  readonly shimMm: number;
}

export interface PlatformPlan extends Flushness {
  readonly layers: readonly SheetId[];
  readonly widthMm: number;
  readonly depthMm: number;
  readonly sheets: readonly CutSheet[];
  /** Whole sheets to buy, by type. */
  readonly bought: readonly { readonly sheet: SheetId; readonly count: number }[];
  /** Screws in all, and how long they may be at most, so that none comes out below. Null where one layer is nothing to screw to. */
  readonly screws: { readonly count: number; readonly longestMm: number } | null;
  /** Nothing holds its sheets to each other: there is one layer of wood at most, and more than one sheet in a layer. */
  readonly loose: boolean;
  /** The rack's floor is higher than any stack that is planned, by more than a sheet: no shim makes that good. */
  readonly tooLow: boolean;
  /** The room is larger than what is planned. */
  readonly isPart: boolean;
  /** Pounds, where every sheet's weight is known. */
  readonly pounds: number | null;
  /** US dollars, sheets and screws. */
  readonly price: Range;
  /** It is screwed from both faces, or its underside has to be reached: turning it over takes two people, at least. */
  readonly turnWithTwo: boolean;
}

/** Adds up layers; errors of one sheet type are shared, for they come from one lot. */
function stackOf(layers: readonly SheetId[]): Range {
  const types = [...new Set(layers)];
  return sumIndependent(
    types.map((type) => sumShared(layers.filter((layer) => layer === type).map((layer) => SHEETS[layer].thicknessMm))),
  );
}

export function flushness(layers: readonly SheetId[], rackFloorMm: number, toleranceMm: number): Flushness {
  const heightMm = stackOf(layers);
  const off = rackFloorMm - heightMm.likely;
  const within = (height: number): boolean => Math.abs(rackFloorMm - height) <= toleranceMm + 1e-9;
  const flush = within(heightMm.likely);
  return { heightMm, flush, surely: flush && within(heightMm.low) && within(heightMm.high), shimMm: flush ? 0 : off };
}

const WOODS: readonly SheetId[] = ['plywood-15/32', 'plywood-19/32', 'plywood-23/32', 'plywood-3/4', 'mdf-3/4'];
/** More layers are heavier and dearer than a shim. */
const MOST_WOOD = 4;
/** The thinnest sheet that is planned with: what lacks more is not shimmed but built otherwise. */
const MOST_SHIM_MM = 12;

/** The stack nearest to the rack's floor; of equals, the one of fewer layers, then the cheaper one. Rubber on top, and under it two layers of wood at least where they fit. */
export function nearestLayers(rackFloorMm: number): SheetId[] {
  const fewest = stackOf(['plywood-15/32', 'plywood-15/32', 'rubber-3/4']).likely > rackFloorMm + 10 ? 0 : 2;
  const stacks: SheetId[][] = [];
  const add = (woods: readonly SheetId[], from: number): void => {
    if (woods.length >= fewest) stacks.push([...woods, 'rubber-3/4']);
    if (woods.length === MOST_WOOD) return;
    for (let at = from; at < WOODS.length; at += 1) add([...woods, WOODS[at] ?? 'plywood-23/32'], at);
  };
  add([], 0);
  const off = (layers: readonly SheetId[]): number => Math.abs(stackOf(layers).likely - rackFloorMm);
  const cost = (layers: readonly SheetId[]): number => layers.reduce((sum, layer) => sum + SHEETS[layer].price.likely, 0);
  // Half a millimetre is nothing beside the tolerance of the sheets.
  const step = (layers: readonly SheetId[]): number => Math.round(off(layers) * 2);
  stacks.sort((a, b) => step(a) - step(b) || a.length - b.length || cost(a) - cost(b));
  return stacks[0] ?? ['rubber-3/4'];
}

/** One screw per so much of each way, over every joint of two layers. Common practice, no source. */
const SCREW_GRID_MM = 12 * INCH_IN_MILLIMETRES;
const SCREW_EDGE_MM = 2 * INCH_IN_MILLIMETRES;
/** A box of 100, in US dollars: an assumption. */
const SCREW_BOX = { count: 100, price: range(8, 12, 18) } as const;

/**
 * A plan for a platform as large as the room, up to 8 × 8 ft. Throws a RangeError on a room or height that is not above zero, and on
 * layers that are no stack (none, or rubber under wood).
 */
export function platformPlan(wish: PlatformWish): PlatformPlan {
  const { rackFloorMm, toleranceMm } = wish;
  if (!(rackFloorMm > 0 && wish.widthMm > 0 && wish.depthMm > 0 && toleranceMm >= 0)) {
    throw new RangeError('platformPlan: height and room must be above zero');
  }
  const layers = [...(wish.layers ?? nearestLayers(rackFloorMm))];
  const woods = layers.filter((layer) => SHEETS[layer].material !== 'rubber');
  const firstRubber = layers.findIndex((layer) => SHEETS[layer].material === 'rubber');
  if (layers.length === 0 || (firstRubber >= 0 && firstRubber < woods.length))
    throw new RangeError('platformPlan: no stack of layers');
  const widthMm = Math.min(wish.widthMm, FEET_8);
  const depthMm = Math.min(wish.depthMm, FEET_8);
  const sheets = cutList(layers, SHEETS, widthMm, depthMm);
  const types = [...new Set(layers)];
  const bought = types.map((sheet) => ({ sheet, count: sheets.filter((one) => one.sheet === sheet).length }));
  const screws = woods.length < 2 ? null : screwsFor(woods, widthMm, depthMm);
  const weights = bought.map(({ sheet, count }) => ({ pounds: SHEETS[sheet].pounds, count }));
  const flushed = flushness(layers, rackFloorMm, toleranceMm);
  const boxes = screws === null ? 0 : Math.ceil(screws.count / SCREW_BOX.count);
  return {
    ...flushed,
    layers,
    widthMm,
    depthMm,
    sheets,
    bought,
    screws,
    loose: screws === null && bought.some(({ count }) => count > 1),
    tooLow: flushed.shimMm > MOST_SHIM_MM,
    isPart: widthMm < wish.widthMm || depthMm < wish.depthMm,
    pounds: weights.some(({ pounds }) => pounds === null)
      ? null
      : weights.reduce((sum, { pounds, count }) => sum + (pounds ?? 0) * count, 0),
    price: sumIndependent([
      ...bought.map(({ sheet, count }) => scale(SHEETS[sheet].price, count)),
      scale(SCREW_BOX.price, boxes),
    ]),
    turnWithTwo: woods.length > 0,
  };
}

/** From each face a grid of screws; with two layers one face does. The longest ends 3 mm above the ground with every layer at its thinnest. */
function screwsFor(woods: readonly SheetId[], widthMm: number, depthMm: number): NonNullable<PlatformPlan['screws']> {
  const along = (length: number): number => Math.max(2, Math.ceil((length - 2 * SCREW_EDGE_MM) / SCREW_GRID_MM) + 1);
  const faces = woods.length > 2 ? 2 : 1;
  return { count: faces * along(widthMm) * along(depthMm), longestMm: Math.floor(stackOf(woods).low - 3) };
}
