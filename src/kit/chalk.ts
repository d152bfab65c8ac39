/** A pairing in letters to chalk on the plates, and why each pair stands the way round it does. */
import type { Pair, Pairing, WeighedPlate } from './pairing.ts';

export interface ChalkedPair extends Pair {
  /** A, B, … within the plates of one face value. */
  readonly letter: string;
  /** Letters, with face value, of the pairs that lean to the other side and so make up for this one. */
  readonly against: readonly { readonly face: number; readonly letter: string }[];
}

/** A to Z, then AA: never ends. */
export const letterOf = (index: number): string =>
  (index >= 26 ? letterOf(Math.floor(index / 26) - 1) : '') + String.fromCharCode(65 + (index % 26));

/** The pairs, heaviest face value first and by weight within, each with its letter. */
export function chalked({ pairs }: Pick<Pairing, 'pairs'>): ChalkedPair[] {
  const weight = ({ left, right }: Pair): number => left.pounds + right.pounds;
  const sorted = [...pairs].sort((a, b) => b.face - a.face || weight(b) - weight(a));
  const seen = new Map<number, number>();
  const lettered = sorted.map((pair) => {
    const index = seen.get(pair.face) ?? 0;
    seen.set(pair.face, index + 1);
    return { ...pair, letter: letterOf(index) };
  });
  return lettered.map((pair) => ({
    ...pair,
    against: lettered.filter((other) => other.difference * pair.difference < 0).map(({ face, letter }) => ({ face, letter })),
  }));
}

/** The worst difference in pounds when plates of a face value are put on in the order given, the first of each two on the left. */
export function worstAsGiven(plates: readonly WeighedPlate[]): number {
  const groups = new Map<number, number[]>();
  for (const { face, pounds } of plates) groups.set(face, [...(groups.get(face) ?? []), pounds]);
  let [left, right] = [0, 0];
  for (const weights of groups.values()) {
    for (let at = 0; at + 1 < weights.length; at += 2) {
      const difference = (weights[at] ?? 0) - (weights[at + 1] ?? 0);
      if (difference > 0) left += difference;
      else right -= difference;
    }
  }
  return Math.round(Math.max(left, right) * 100) / 100;
}
