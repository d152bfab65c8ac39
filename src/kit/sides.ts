/** Every weight that can stand on one side of the bar, with the fewest plates that make it and room on the sleeve. */
import type { Exact } from './exact-weight.ts';
import type { Denomination } from './plates.ts';

/** One way to make a weight on a side. `counts` has a number for each denomination, in their order. */
interface Way {
  readonly counts: readonly number[];
  readonly plates: number;
  readonly thickness: number;
}

/** So many different weights on one side are looked at: more than any gym can make. Beyond, the heaviest are left out. */
const MOST_SUMS = 200_000;

/** Of the ways to make a weight keep those that are best in plates or in room: fewer plates may be thicker. */
function keepBest(ways: readonly Way[]): Way[] {
  const sorted = [...ways].sort((a, b) => a.plates - b.plates || a.thickness - b.thickness);
  const kept: Way[] = [];
  for (const way of sorted) if (kept.every((better) => better.thickness > way.thickness)) kept.push(way);
  return kept;
}

/**
 * All sums of at most `pairs` plates of each denomination on one side that fit into `room` mm, as sum in units → the way with fewest
 * plates (of equals the one that takes least room). Exact: whole numbers throughout. The empty side is among them.
 */
export function sideSums(plates: readonly Denomination[], room: number | null): Map<Exact, Way> {
  let sums = new Map<Exact, Way[]>([[0, [{ counts: [], plates: 0, thickness: 0 }]]]);
  for (const { each, pairs, thickness } of plates) {
    const next = new Map<Exact, Way[]>();
    for (const [sum, ways] of sums) {
      for (let count = 0; count <= pairs; count += 1) {
        const wider = ways
          .map((way) => ({
            counts: [...way.counts, count],
            plates: way.plates + count,
            thickness: way.thickness + count * thickness,
          }))
          .filter((way) => room === null || way.thickness <= room);
        if (wider.length === 0) break;
        const key = sum + count * each;
        next.set(key, [...(next.get(key) ?? []), ...wider]);
      }
    }
    for (const [sum, ways] of next) if (ways.length > 1) next.set(sum, keepBest(ways));
    sums = next.size <= MOST_SUMS ? next : new Map([...next].sort(([a], [b]) => a - b).slice(0, MOST_SUMS));
  }
  return new Map([...sums].flatMap(([sum, [best]]) => (best === undefined ? [] : [[sum, best]])));
}
