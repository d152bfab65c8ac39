/**
 * The shortest round over several stops, from home to home, exactly; and a fair share of it for each stop. Dynamic programming over the
 * sets of stops (Held & Karp 1962, A dynamic programming approach to sequencing problems; Bellman 1962).
 */

/** Distances in any one unit: row i, column j is the way from i to j, and number 0 is home. Ways need not be the same back. */
export type Distances = readonly (readonly number[])[];

export interface Route {
  /** Numbers of the stops, 1 and up, in the order in which they are visited. */
  readonly order: readonly number[];
  /** From home over all stops and home again. */
  readonly length: number;
}

/** The table doubles with each stop: ten are done in a few milliseconds, thirteen in some tens. */
const MOST_STOPS = 13;

/** Throws a RangeError unless the table is square, not negative, finite, and of home and at most thirteen stops. */
function check(distances: Distances): number {
  const size = distances.length;
  if (size < 1 || size > MOST_STOPS + 1) throw new RangeError(`route: ${size - 1} stops, not 0 to ${MOST_STOPS}`);
  const good = (row: readonly number[]): boolean => row.length === size && row.every((way) => way >= 0 && Number.isFinite(way));
  if (!distances.every(good)) throw new RangeError('route: the table of distances is not square, or holds what is no distance');
  return size - 1;
}

/** Shortest rounds over every set of stops; sets are bits, stop 1 being the lowest. */
interface Rounds {
  readonly stops: number;
  /** Length of the shortest round over each set. */
  readonly length: Float64Array;
  /** Last stop of it, counted from 0. */
  readonly last: Int8Array;
  /** Stop before `stop` on the shortest way from home over `set` that ends there, at set × stops + stop; −1 for home. */
  readonly before: Int8Array;
}

function roundsOver(distances: Distances): Rounds {
  const stops = check(distances);
  const flat = Float64Array.from(distances.flat());
  const size = stops + 1;
  const sets = 2 ** stops;
  /** Shortest way from home over all of a set, ending at a stop of it. */
  const way = new Float64Array(sets * stops).fill(Number.POSITIVE_INFINITY);
  const before = new Int8Array(sets * stops).fill(-1);
  const length = new Float64Array(sets);
  const last = new Int8Array(sets).fill(-1);
  for (let set = 1; set < sets; set += 1) {
    length[set] = Number.POSITIVE_INFINITY;
    for (let end = 0; end < stops; end += 1) {
      if (((set >> end) & 1) === 0) continue;
      const rest = set & ~(1 << end);
      const at = set * stops + end;
      if (rest === 0) way[at] = flat[end + 1] ?? 0;
      for (let prior = 0; prior < stops; prior += 1) {
        if (((rest >> prior) & 1) === 0) continue;
        const over = (way[rest * stops + prior] ?? 0) + (flat[(prior + 1) * size + end + 1] ?? 0);
        if (over < (way[at] ?? 0)) {
          way[at] = over;
          before[at] = prior;
        }
      }
      const round = (way[at] ?? 0) + (flat[(end + 1) * size] ?? 0);
      if (round < (length[set] ?? 0)) {
        length[set] = round;
        last[set] = end;
      }
    }
  }
  return { stops, length, last, before };
}

/** The shortest round over all stops; of several alike always the same one. Throws a RangeError on a bad table. */
export function shortestRound(distances: Distances): Route {
  const { stops, length, last, before } = roundsOver(distances);
  let set = 2 ** stops - 1;
  const order: number[] = [];
  for (let stop = last[set] ?? -1; stop >= 0; ) {
    order.unshift(stop + 1);
    const prior = before[set * stops + stop] ?? -1;
    set &= ~(1 << stop);
    stop = prior;
  }
  return { order, length: length.at(-1) ?? 0 };
}

/**
 * Each stop's share of the shortest round, in the order of the stops: the Shapley value (Shapley 1953), what a stop adds to the round on
 * average over all orders in which the stops might be decided on. Shares sum to the round; stops alike pay alike. Where no way is
 * longer than a detour over another stop, no share is negative. Throws a RangeError on a bad table.
 */
export function fairShares(distances: Distances): number[] {
  const { stops, length } = roundsOver(distances);
  /** Chance that just a set of this size is decided on before a stop: size! (stops − size − 1)! / stops!. */
  const weight = Array.from({ length: stops }, () => 1 / stops);
  for (let size = 1; size < stops; size += 1) weight[size] = ((weight[size - 1] ?? 0) * size) / (stops - size);
  const shares = new Array<number>(stops).fill(0);
  for (let set = 0; set < length.length; set += 1) {
    const size = bitsIn(set);
    for (let stop = 0; stop < stops; stop += 1) {
      if (((set >> stop) & 1) === 1) continue;
      const adds = (length[set | (1 << stop)] ?? 0) - (length[set] ?? 0);
      shares[stop] = (shares[stop] ?? 0) + (weight[size] ?? 0) * adds;
    }
  }
  return shares;
}

function bitsIn(set: number): number {
  let count = 0;
  for (let rest = set; rest > 0; rest &= rest - 1) count += 1;
  return count;
}
