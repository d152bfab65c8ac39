/** A stack of washers as a micro plate: how many, what they cost beside bought ones, and whether they go on. */

import { inchesToMillimetres } from '../units/length.ts';
import { exactly, type Range, scale } from '../units/range.ts';
import { stackFor, type Washer, type WasherStack, washerClearance, washerPounds } from './washers.ts';

export interface WasherOffer {
  /** One stack; a bar takes two. */
  readonly stack: WasherStack;
  /** What one stack may weigh within the standard's thickness, in pounds. */
  readonly pounds: Range;
  /** Washers for both sides, and what they cost in minor units; null without a price. */
  readonly forBoth: number;
  readonly cost: number | null;
  /** The same weight as bought micro plates, in minor units; null without a rate. */
  readonly bought: Range | null;
}

export interface WasherWish {
  /** One side's stack, in pounds, and how far off it may be. */
  readonly pounds: number;
  readonly tolerance: number;
  /** Price of one washer, and of a pound of micro plates new and delivered, in minor units. */
  readonly each: number | null;
  readonly microPerPound: Range | null;
}

/** `weighed`: what one washer weighed on a scale, in pounds; it goes before the reckoned weight. Throws on a wish that is not above zero. */
export function washerOffer(washer: Washer, wish: WasherWish, weighed: number | null = null): WasherOffer {
  const one = weighed === null ? washerPounds(washer) : exactly(weighed);
  const stack = stackFor(wish.pounds, one.likely, inchesToMillimetres(washer.thicknessIn), wish.tolerance);
  const forBoth = 2 * stack.washers;
  return {
    stack,
    pounds: scale(one, stack.washers),
    forBoth,
    cost: wish.each === null ? null : wish.each * forBoth,
    bought: wish.microPerPound && scale(wish.microPerPound, 2 * wish.pounds),
  };
}

/** Under this clearance in mm paint or a burr stops it. An assumption. */
const TIGHT = 0.5;
/** Over this it hangs visibly off the middle, which does no harm in so light a stack. An assumption. */
const LOOSE = 4;

export type WasherFit = 'no' | 'tight' | 'yes' | 'loose';

/** Whether it goes on a sleeve of so many mm. */
export function washerFit(washer: Washer, sleeveMm: number): WasherFit {
  const clearance = washerClearance(washer, sleeveMm);
  if (clearance < 0) return 'no';
  if (clearance < TIGHT) return 'tight';
  return clearance > LOOSE ? 'loose' : 'yes';
}
