/** Where the kit stands: what is still needed, what is over, what was spent, and what the rest would cost. */
import type { Settings } from '../listing/settings.ts';
import { inPounds, type Weight } from '../units/mass.ts';
import { type Range, scale, sumShared } from '../units/range.ts';
import type { Need } from './needs.ts';
import { type PiecePrice, piecePrice } from './piece-prices.ts';
import { fillsNeed, isPlateKind, type Thing } from './same-thing.ts';

export interface OwnedThing extends Thing {
  readonly pieces: number;
  /** What was paid for all of it, without the drive, in minor units; null for what was there before, or came for nothing. */
  readonly paid: number | null;
}

export interface KitState<N extends Need = Need, T extends OwnedThing = OwnedThing> {
  /** Needs with the pieces that are still lacking, those with none left out. */
  readonly open: readonly N[];
  /** What is owned beyond the needs, with the pieces that are over. */
  readonly surplus: readonly T[];
  /** Minor units. */
  readonly spent: number;
  /** Of the budget; below zero when it was overspent; null without a budget. */
  readonly left: number | null;
}

/** `budget` in minor units, for the whole kit. Pieces count one by one: an odd plate waits for its mate. */
export function kitState<N extends Need, T extends OwnedThing>(
  needs: readonly N[],
  owned: readonly T[],
  budget: number | null,
): KitState<N, T> {
  const lacking = needs.map((need) => ({ need, pieces: need.pieces }));
  const surplus: T[] = [];
  for (const thing of owned) {
    if (!(Number.isInteger(thing.pieces) && thing.pieces >= 0))
      throw new RangeError(`kitState: ${thing.pieces} is no number of pieces`);
    let over = thing.pieces;
    for (const one of lacking) {
      if (!fillsNeed(thing, one.need)) continue;
      const taken = Math.min(over, one.pieces);
      one.pieces -= taken;
      over -= taken;
    }
    if (over > 0) surplus.push({ ...thing, pieces: over });
  }
  const spent = owned.reduce((sum, { paid }) => sum + (paid ?? 0), 0);
  return {
    open: lacking.flatMap(({ need, pieces }) => (pieces > 0 ? [{ ...need, pieces }] : [])),
    surplus,
    spent,
    left: budget === null ? null : budget - spent,
  };
}

/** What open needs cost, in minor units. */
export interface RestCost {
  /** At the going rate for used goods, and new with tax and shipping. Errors of one rate go together: low and high add in full. */
  readonly used: Range;
  readonly fresh: Range;
  /** Needs that no rate prices; not in the sums. */
  readonly unpriced: readonly Need[];
}

/** `platform` is what building one costs (platform.ts), for there is no rate for it; null leaves it unpriced. */
export function restCost(open: readonly Need[], settings: Settings, platform: PiecePrice | null = null): RestCost {
  const used: Range[] = [];
  const fresh: Range[] = [];
  const unpriced: Need[] = [];
  for (const need of open) {
    const price = need.kind === 'platform' ? platform : piecePrice(need, settings);
    if (price === null) unpriced.push(need);
    else {
      used.push(scale(price.used, need.pieces));
      fresh.push(scale(price.fresh, need.pieces));
    }
  }
  return { used: sumShared(used), fresh: sumShared(fresh), unpriced };
}

/** The plates still lacking as the setting `need` wants them: by face value, whatever the kind, heaviest first. */
export function plateNeed(open: readonly Need[]): { weight: Weight; pieces: number }[] {
  const plates: { weight: Weight; pieces: number }[] = [];
  for (const { kind, weight, pieces } of open) {
    if (!isPlateKind(kind) || weight === null) continue;
    const known = plates.find((one) => fillsNeed({ kind: 'plate', weight }, { kind: 'plate', weight: one.weight }));
    if (known === undefined) plates.push({ weight, pieces });
    else known.pieces += pieces;
  }
  return plates.sort((a, b) => inPounds(b.weight) - inPounds(a.weight));
}
