/** What a barbell gym needs, from what its lifter does: the list to start from, which the buyer edits. Common practice, no source. */
import type { Kind } from '../listing/reading.ts';
import { convert, inPounds, kilograms, type MassUnit, pounds, type Weight } from '../units/mass.ts';

export interface Lifter {
  /** The best lift, bar included: a deadlift as a rule. */
  readonly best: Weight;
  /** Smallest jump between two loads, both sides together. */
  readonly jump: Weight;
  /** Snatches and cleans are done: bumpers are dropped. */
  readonly olympicLifts: boolean;
  /** Unit of the plates that are bought. */
  readonly unit: MassUnit;
}

/** One thing that is needed. `weight` for plates and the bar; null for a rack, bench, platform. */
export interface Need {
  readonly kind: Kind | 'platform';
  readonly weight: Weight | null;
  /** Pieces, not pairs. */
  readonly pieces: number;
  /** Why: a key's tail of the strings. */
  readonly because: 'heavy' | 'steps' | 'micro' | 'pull-height' | 'drop' | 'gym' | 'own';
}

/** Pairs of the plates under the heaviest, by unit: with them every step of the smallest of these (both sides) can be loaded. */
const STEPS: Readonly<
  Record<MassUnit, { readonly heavy: number; readonly others: readonly (readonly [number, number])[]; readonly bar: number }>
> = {
  // 25s: one pair; 10s: two; 5s: one; 2.5s: one. In kilograms the same ladder as nearly as its plates allow.
  lb: {
    heavy: 45,
    others: [
      [25, 1],
      [10, 2],
      [5, 1],
      [2.5, 1],
    ],
    bar: 45,
  },
  kg: {
    heavy: 20,
    others: [
      [10, 1],
      [5, 2],
      [2.5, 1],
      [1.25, 1],
    ],
    bar: 20,
  },
};

/** Two to six pairs of the heaviest, by strength. */
const FEWEST_HEAVY = 2;
const MOST_HEAVY = 6;

/** A lifter gets stronger: the plates should do for this much more than the best lift. An assumption. */
const ROOM_TO_GROW = 1.1;

/** Pairs of the heaviest plates so that with all others the best lift, and some more, can be loaded. */
export function heavyPairs({ best, unit }: Pick<Lifter, 'best' | 'unit'>): number {
  const { heavy, others, bar } = STEPS[unit];
  const inUnit = (weight: Weight): number => inPounds(weight) / inPounds({ value: 1, unit });
  const light = others.reduce((sum, [weight, pairs]) => sum + 2 * weight * pairs, 0);
  const pairs = Math.ceil((inUnit(best) * ROOM_TO_GROW - bar - light) / (2 * heavy));
  return Math.min(MOST_HEAVY, Math.max(FEWEST_HEAVY, pairs));
}

/** So many pairs of micro plates at most: finer jumps than that are nobody's. An assumption. */
const MOST_MICRO = 6;

/**
 * Micro plates for jumps that the smallest plates can't make, heaviest first: half the jump, and pairs that each double the one before up to
 * the smallest plates, so that with them no step is larger than the jump. Of 1 lb that is 0.5, 1 and 2 lb.
 */
function microPlates({ jump, unit }: Lifter): Need[] {
  const [lightest] = STEPS[unit].others.at(-1) ?? [2.5];
  const smallest = convert({ value: lightest, unit }, jump.unit).value;
  const needs: Need[] = [];
  for (let value = jump.value / 2; value < smallest - 1e-6 && needs.length < MOST_MICRO; value *= 2) {
    needs.unshift({ kind: 'micro', weight: { value, unit: jump.unit }, pieces: 2, because: 'micro' });
  }
  return needs;
}

/** Bumpers: three pairs, 10, 15 and 20 kg, for who drops the bar; else one pair of 10 kg, to pull a light bar from the right height. */
function bumpers({ olympicLifts }: Lifter): Need[] {
  const weights = olympicLifts ? [20, 15, 10] : [10];
  return weights.map((value) => ({
    kind: 'bumper' as const,
    weight: kilograms(value),
    pieces: 2,
    because: olympicLifts ? ('drop' as const) : ('pull-height' as const),
  }));
}

/** The whole gym for a lifter, plates heaviest first. Throws unless best lift and jump are above zero. */
export function needsOf(lifter: Lifter): Need[] {
  if (!(inPounds(lifter.best) > 0 && inPounds(lifter.jump) > 0)) throw new RangeError('needsOf: weights must be above zero');
  const { unit } = lifter;
  const { heavy, others } = STEPS[unit];
  const plate = (value: number, pairs: number, because: Need['because']): Need => ({
    kind: 'plate',
    weight: { value, unit },
    pieces: 2 * pairs,
    because,
  });
  const gym = (kind: Need['kind'], pieces: number, weight: Weight | null = null): Need => ({
    kind,
    weight,
    pieces,
    because: 'gym',
  });
  return [
    gym('bar', 1, unit === 'kg' ? kilograms(20) : pounds(45)),
    gym('collars', 2),
    plate(heavy, heavyPairs(lifter), 'heavy'),
    ...others.map(([value, pairs]) => plate(value, pairs, 'steps')),
    ...microPlates(lifter),
    ...bumpers(lifter),
    gym('rack', 1),
    gym('bench', 1),
    gym('platform', 1),
  ];
}
