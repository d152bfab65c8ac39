/** What an ad would fill of a kit's open needs. */
import type { Evaluation } from '../listing/evaluation.ts';
import { type Item, isKept, type Kind, OF_ONE_PIECE } from '../listing/reading.ts';
import type { KitFigures } from '../listing/settings.ts';
import { inPounds, type Weight } from '../units/mass.ts';
import { asCounted } from './both-sets.ts';
import type { Need } from './needs.ts';
import { fillsNeed, isPlateKind } from './same-thing.ts';

/** Pieces of an item; 0 when the ad says neither how many nor lets it be worked out. What is no plate and has no count is one. */
function piecesOf(item: Item): number {
  if (item.count !== null) return item.count.value;
  if (!isPlateKind(item.kind.value)) return 1;
  const each = item.unitWeight === null ? 0 : inPounds(item.unitWeight.value);
  const total = item.totalWeight === null ? 0 : inPounds(item.totalWeight.value);
  return each > 0 ? Math.floor(total / each + 1e-6) : 0;
}

/**
 * How many of `pieces` nobody should load, or this buyer can't, most likely can't, or doesn't mean to. An odd piece is not among them: its mate
 * may be in another ad.
 */
function unfit(item: Item, { flags, worth }: Evaluation, pieces: number): number {
  if (!isKept(item) || flags.some((flag) => flag.item === item.id && flag.weight === 'deal-breaker')) return pieces;
  const isLost = worth.losses.some((loss) => loss.item === item.id && loss.reason === 'unknown-bore');
  return isLost ? pieces : item.conditions.filter(({ rule }) => rule === OF_ONE_PIECE).length;
}

const soundOf = (item: Item, evaluation: Evaluation, pieces: number): number =>
  Math.max(0, Math.floor(pieces) - unfit(item, evaluation, pieces));

/** Flags on bars that a rack and 50 mm plates have no use for, though their owner may. */
const OTHER_BARS: ReadonlySet<string> = new Set(['short-bar', 'one-inch-bar']);

/** Sound pieces of an item that the ad lets be counted, of such as a kit needs. */
const soundPieces = (item: Item, evaluation: Evaluation): number =>
  evaluation.flags.some((flag) => flag.item === item.id && OTHER_BARS.has(flag.id))
    ? 0
    : soundOf(item, evaluation, piecesOf(item));

export interface Sorted {
  readonly item: Item;
  /** Pieces that can be used, and those that can't. */
  readonly sound: number;
  readonly unfit: number;
}

/** What the buyer means to keep of an ad that was bought. A thing that is named is there: one of it where nobody counted. */
export const sortGoods = (evaluation: Evaluation): Sorted[] =>
  evaluation.reading.items.filter(isKept).map((item) => {
    const pieces = Math.floor(piecesOf(item)) || 1;
    const sound = soundOf(item, evaluation, pieces);
    return { item, sound, unfit: pieces - sound };
  });

/** What an ad offers of things that can be used, by its items: kind, weight of one, and sound pieces. */
export interface Offered {
  readonly kind: Kind;
  readonly weight: Weight | null;
  readonly pieces: number;
}

export const offersOf = (evaluation: Evaluation): Offered[] =>
  evaluation.reading.items.flatMap((item): Offered[] => {
    const pieces = soundPieces(item, evaluation);
    return pieces === 0 ? [] : [{ kind: item.kind.value, weight: item.unitWeight?.value ?? null, pieces }];
  });

export interface Fill {
  /** The item's id. */
  readonly item: string;
  /** Index in the needs. */
  readonly need: number;
  /** All sound pieces of it, more than needed too. */
  readonly pieces: number;
}

/** Items of an ad that fill needs, each the first need that it fits. In a kit with plates in both units pairs of iron in kilograms fill those in pounds. */
export function fillsOf(evaluation: Evaluation, needs: readonly Need[], kit: Pick<KitFigures, 'plates'> | null): Fill[] {
  const goods = evaluation.reading.items.map((item) => ({
    item: item.id,
    kind: item.kind.value,
    weight: item.unitWeight?.value ?? null,
    pieces: soundPieces(item, evaluation),
  }));
  return (kit === null ? goods : asCounted(goods, kit)).flatMap(({ item, pieces, ...thing }): Fill[] => {
    const need = needs.findIndex((one) => fillsNeed(thing, one));
    return need < 0 || pieces === 0 ? [] : [{ item, need, pieces }];
  });
}
