/** Plates that can't be loaded for want of a mate. */
import type { Weight } from '../units/mass.ts';
import { exactWeight } from './exact-weight.ts';
import type { OwnedPlates } from './plates.ts';

/** Weights of which an odd number is owned, heaviest first: one of each lies idle. Plates of another thickness are no mates either. */
export function oddPlates(owned: readonly OwnedPlates[]): Weight[] {
  const groups = new Map<string, { readonly weight: Weight; pieces: number }>();
  for (const { weight, pieces, thicknessMm } of owned) {
    const key = `${exactWeight(weight)} ${thicknessMm ?? 0}`;
    const group = groups.get(key) ?? { weight, pieces: 0 };
    group.pieces += pieces;
    groups.set(key, group);
  }
  return [...groups.values()]
    .filter(({ pieces }) => pieces % 2 === 1)
    .map(({ weight }) => weight)
    .sort((a, b) => exactWeight(b) - exactWeight(a));
}
