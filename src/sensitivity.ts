/**
 * Which single assumption, moved within its own range, turns the call. A door of its own beside `evaluate`, for it judges the same
 * reading again and again: whoever shows the outcome asks for it when the answer stands.
 */
import { judge } from './evaluate.ts';
import type { CallKind, Evaluation } from './listing/evaluation.ts';
import type { RateCategory, Settings } from './listing/settings.ts';
import { isByWeight } from './price/categories.ts';
import { type Assumption, type AssumptionKind, assumptionsOf } from './trip/assumptions.ts';
import { saidOf } from './trip/turn-words.ts';
import type { Message } from './words/message.ts';

export interface Turn {
  readonly id: AssumptionKind;
  readonly category: RateCategory | null;
  /** "This turns to “Leave it” if the going rate (plain iron) is less than $0.58/lb". */
  readonly says: Message;
  readonly from: CallKind;
  readonly to: CallKind;
  /** The value at which the call turns, in the units of its assumption. */
  readonly at: number;
  readonly unit: 'money-per-lb' | 'money' | 'lb' | 'fraction' | 'mi';
  /** Whether it turns below or above that value. */
  readonly side: 'below' | 'above';
  /** How far that is off, as a part of the way from what is assumed to the end of the range: 0 to 1. */
  readonly shift: number;
}

/** Values tried on each side before the nearest turn is closed in on. */
const TRIES = 2;
/** Halvings: the threshold is known to a 1024th of half the range. */
const HALVINGS = 10;

interface Found {
  readonly at: number;
  readonly to: CallKind;
}

/**
 * The nearest value towards `end` at which the call is another: the first of a few steps that differs, then bisection. A call that turns
 * and turns back between two steps is missed.
 */
function nearest({ range, at }: Assumption, end: number, from: CallKind, kindAt: (settings: Settings) => CallKind): Found | null {
  let same = range.likely;
  for (let step = 1; step <= TRIES; step++) {
    let other = range.likely + ((end - range.likely) * step) / TRIES;
    let to = kindAt(at(other));
    if (to === from) {
      same = other;
      continue;
    }
    for (let halving = 0; halving < HALVINGS; halving++) {
      const middle = (same + other) / 2;
      const kind = kindAt(at(middle));
      if (kind === from) same = middle;
      else [other, to] = [middle, kind];
    }
    return { at: other, to };
  }
  return null;
}

function unitOf({ kind, category }: Assumption): Turn['unit'] {
  if (kind === 'usable') return 'lb';
  if (kind === 'distance') return 'mi';
  if (kind === 'per-mile' || kind === 'hour') return 'money';
  if (category === null) return 'fraction';
  return isByWeight(category) ? 'money-per-lb' : 'money';
}

/**
 * The turns of an evaluation that was made with `settings`, the nearest first; none when no single assumption turns it. Null where there is
 * nothing to turn: no price, or nothing that can be valued.
 */
export function turnsOf(evaluation: Evaluation, settings: Settings): Turn[] | null {
  const { reading, worth, call, trip } = evaluation;
  if (worth.walkAway === null || worth.allIn === null) return null;
  // The reading has the corrections in it already.
  const base: Settings = { ...settings, corrections: [] };
  const kindAt = (changed: Settings): CallKind => judge(reading, changed).call.kind;
  const from = call.kind;
  // "Worth the drive up to 42 miles" says its distance already.
  const distanceTold = trip !== null || from === 'go';
  const turns: Turn[] = [];
  for (const assumption of assumptionsOf(reading, worth, base, distanceTold)) {
    const { kind, category, range } = assumption;
    const unit = unitOf(assumption);
    for (const side of ['below', 'above'] as const) {
      const end = side === 'below' ? range.low : range.high;
      const found = end === range.likely ? null : nearest(assumption, end, from, kindAt);
      if (found === null) continue;
      const { at, to } = found;
      const shift = (at - range.likely) / (end - range.likely);
      turns.push({
        id: kind,
        category,
        says: saidOf({ kind, category, unit, side, at, to }, settings),
        from,
        to,
        at,
        unit,
        side,
        shift,
      });
    }
  }
  return turns.sort((a, b) => a.shift - b.shift);
}
