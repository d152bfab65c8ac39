/** A kit with plates in both units: a pair in kilograms does for a pair of the next plate in pounds. Common practice, no source. */
import type { KitFigures } from '../listing/settings.ts';
import { nextWeight } from './next-weight.ts';
import type { Thing } from './same-thing.ts';

type Pieces = Thing & { readonly pieces: number };

/** What iron in kilograms counts as. They never make a pair with it: only whole pairs count. */
const standsFor = ({ kind, weight }: Pieces) => (kind === 'plate' && weight?.unit === 'kg' ? nextWeight(weight) : null);

/** Things as they count against the needs: in a mixed kit pairs of iron in kilograms under the weight that they stand for. */
export const asCounted = <T extends Pieces>(things: readonly T[], { plates }: Pick<KitFigures, 'plates'>): T[] =>
  things.flatMap((thing): T[] => {
    const weight = plates === 'mixed' ? standsFor(thing) : null;
    if (weight === null) return [thing];
    const odd = thing.pieces % 2;
    return [{ ...thing, weight, pieces: thing.pieces - odd }, ...(odd > 0 ? [{ ...thing, pieces: odd }] : [])];
  });

/** What fills open needs: in a mixed kit iron in kilograms too, where a whole pair is lacking. */
export const fillers = (open: readonly Pieces[], { plates }: Pick<KitFigures, 'plates'>): Thing[] =>
  open.flatMap(({ kind, weight, pieces }): Thing[] => {
    const kg = plates === 'mixed' && kind === 'plate' && pieces >= 2 && weight?.unit === 'lb' ? nextWeight(weight) : null;
    return [{ kind, weight }, ...(kg === null ? [] : [{ kind, weight: kg }])];
  });
