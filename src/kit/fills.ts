/** What an ad would fill of a kit's open needs. */
import type { Evaluation } from '../listing/evaluation.ts';
import type { Item, Kind } from '../listing/reading.ts';
import { inPounds, type Weight } from '../units/mass.ts';
import type { Need } from './needs.ts';
import { fillsNeed, isPlateKind } from './same-thing.ts';

/** Why pieces can't be loaded by this buyer, or aren't meant to be kept. An odd piece is not among them: its mate may be in another ad. */
const UNFIT: ReadonlySet<string> = new Set(['wrong-bore', 'cracked', 'cement', 'sloppy', 'sold-on', 'unwanted']);

/** Sound pieces of an item; 0 when the ad says neither how many nor lets it be worked out. What is no plate and has no count is one. */
export function soundPieces(item: Item, { flags, worth }: Evaluation): number {
  if (flags.some((flag) => flag.item === item.id && flag.weight === 'deal-breaker')) return 0;
  const weight = item.unitWeight?.value ?? null;
  const each = weight === null ? 0 : inPounds(weight);
  const total = item.totalWeight === null ? 0 : inPounds(item.totalWeight.value);
  const plate = isPlateKind(item.kind.value);
  const worked = plate ? (each > 0 ? Math.floor(total / each + 1e-6) : 0) : 1;
  const count = item.count?.value ?? worked;
  const lost = worth.losses
    .filter((loss) => loss.item === item.id && UNFIT.has(loss.reason))
    // Losses are in true pounds, which lie a little off face value.
    .reduce((sum, { pounds }) => sum + (each > 0 ? Math.round(pounds / each) : count), 0);
  return Math.max(0, Math.floor(count) - lost);
}

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
