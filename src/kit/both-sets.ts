/** A kit with plates in both units: a pair in kilograms does for a pair of the next plate in pounds. Common practice, no source. */
import type { KitFigures } from '../listing/settings.ts';
import { kilograms, pounds, type Weight } from '../units/mass.ts';
import type { Thing } from './same-thing.ts';

/** Kilograms to the pounds that they stand in for. They never make a pair with it: only whole pairs count. */
const STANDS_FOR: readonly (readonly [kg: number, lb: number])[] = [
  [20, 45],
  [15, 35],
  [10, 25],
  [5, 10],
  [2.5, 5],
  [1.25, 2.5],
];

const standsFor = ({ value, unit }: Weight): Weight | null => {
  const found = unit === 'kg' ? STANDS_FOR.find(([kg]) => Math.abs(kg - value) < 1e-6) : undefined;
  return found === undefined ? null : pounds(found[1]);
};

type Pieces = Thing & { readonly pieces: number };

/** Things as they count against the needs: in a mixed kit pairs of iron in kilograms under the weight that they stand for. */
export const asCounted = <T extends Pieces>(things: readonly T[], { plates }: Pick<KitFigures, 'plates'>): T[] =>
  things.flatMap((thing): T[] => {
    const weight = plates === 'mixed' && thing.kind === 'plate' && thing.weight !== null ? standsFor(thing.weight) : null;
    if (weight === null) return [thing];
    const odd = thing.pieces % 2;
    return [{ ...thing, weight, pieces: thing.pieces - odd }, ...(odd > 0 ? [{ ...thing, pieces: odd }] : [])];
  });

/** What fills open needs: in a mixed kit iron in kilograms too, where a whole pair is lacking. */
export const fillers = (open: readonly Pieces[], { plates }: Pick<KitFigures, 'plates'>): Thing[] =>
  open.flatMap(({ kind, weight, pieces }): Thing[] => {
    const kg =
      plates === 'mixed' && kind === 'plate' && pieces >= 2 && weight?.unit === 'lb'
        ? STANDS_FOR.find(([, lb]) => lb === weight.value)?.[0]
        : undefined;
    return [{ kind, weight }, ...(kg === undefined ? [] : [{ kind, weight: kilograms(kg) }])];
  });
