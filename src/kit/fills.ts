/** What an ad would fill of a kit's open needs. */
import type { Evaluation } from '../listing/evaluation.ts';
import { type Item, isKept, type Kind } from '../listing/reading.ts';
import { inPounds, type Weight } from '../units/mass.ts';
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
  const losses = worth.losses.filter((loss) => loss.item === item.id);
  if (losses.some(({ reason }) => reason === 'unknown-bore')) return pieces;
  const each = item.unitWeight === null ? 0 : inPounds(item.unitWeight.value);
  return (
    losses
      .filter(({ reason }) => reason === 'cracked')
      // Losses are in true pounds, which lie a little off face value.
      .reduce((sum, { pounds }) => sum + (each > 0 ? Math.round(pounds / each) : pieces), 0)
  );
}

const soundOf = (item: Item, evaluation: Evaluation, pieces: number): number =>
  Math.max(0, Math.floor(pieces) - unfit(item, evaluation, pieces));

/** Sound pieces of an item that the ad lets be counted. */
export const soundPieces = (item: Item, evaluation: Evaluation): number => soundOf(item, evaluation, piecesOf(item));

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

/** Items of an ad that fill needs, each the first need that it fits. */
export function fillsOf(evaluation: Evaluation, needs: readonly Need[]): Fill[] {
  return evaluation.reading.items.flatMap((item): Fill[] => {
    const thing = { kind: item.kind.value, weight: item.unitWeight?.value ?? null };
    const need = needs.findIndex((one) => fillsNeed(thing, one));
    const pieces = soundPieces(item, evaluation);
    return need < 0 || pieces === 0 ? [] : [{ item: item.id, need, pieces }];
  });
}
