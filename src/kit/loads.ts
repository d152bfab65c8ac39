/** What can be loaded: every total from the empty bar up, the widest gap between them, and how to load a wanted one. */
import type { Weight } from '../units/mass.ts';
import { type Exact, exactWeight } from './exact-weight.ts';
import { type Denomination, denominations, emptyBar, type LoadedBar, type OwnedPlates } from './plates.ts';
import { sideSums } from './sides.ts';

/** One plate weight and how many of it go on each side. */
export interface OnEachSide {
  readonly weight: Weight;
  readonly count: number;
}

export interface Load {
  /** Bar, collars and both sides, in units of 10⁻¹⁰ kg. */
  readonly total: Exact;
  /** Heaviest first, as they go on the bar: the fewest plates that make it. */
  readonly side: readonly OnEachSide[];
  readonly platesPerSide: number;
  /** Sleeve that they take, in mm; plates of unknown thickness take none. */
  readonly thicknessMm: number;
}

export interface Gap {
  readonly from: Exact;
  readonly to: Exact;
}

/** Every total that can be loaded, ascending. Both sides are the same, so a total is the bar plus twice a side. */
export function loadsOf(owned: readonly OwnedPlates[], bar: LoadedBar): Load[] {
  const plates = denominations(owned);
  const empty = emptyBar(bar);
  return [...sideSums(plates, bar.sleeveMm)]
    .map(([sum, { counts, plates: platesPerSide, thickness }]) => ({
      total: empty + 2 * sum,
      side: sideOf(plates, counts),
      platesPerSide,
      thicknessMm: thickness,
    }))
    .sort((a, b) => a.total - b.total);
}

const sideOf = (plates: readonly Denomination[], counts: readonly number[]): OnEachSide[] =>
  plates.flatMap(({ weight }, index) => {
    const count = counts[index] ?? 0;
    return count > 0 ? [{ weight, count }] : [];
  });

/** The widest step between neighbouring totals up to `target`, itself counted as wanted; null when the empty bar is above it. Ties: the lowest. */
export function widestGap(loads: readonly Load[], target: Weight): Gap | null {
  const top = exactWeight(target);
  const totals = loads.map(({ total }) => total).filter((total) => total <= top);
  if (totals.length === 0) return null;
  let widest: Gap = { from: totals[0] ?? 0, to: totals[0] ?? 0 };
  for (const [index, from] of totals.entries()) {
    const to = totals[index + 1] ?? top;
    if (to - from > widest.to - widest.from) widest = { from, to };
  }
  return widest;
}

/** The loads next to a wanted total: the same one twice when it can be made exactly; null where there is none on that side. */
export function nearestLoads(
  loads: readonly Load[],
  target: Weight,
): { readonly under: Load | null; readonly over: Load | null } {
  const wanted = exactWeight(target);
  let [low, high] = [0, loads.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((loads[middle]?.total ?? 0) < wanted) low = middle + 1;
    else high = middle;
  }
  const over = loads[low] ?? null;
  return over?.total === wanted ? { under: over, over } : { under: loads[low - 1] ?? null, over };
}
