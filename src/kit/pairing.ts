/**
 * Which weighed plates go together, and which of a pair on which side, so that the two sides differ least over all loads.
 *
 * A pair with difference d, the heavier plate on the left, puts the left side d over. A load takes any of the pairs, so the worst load
 * is the one that takes all pairs heavy on one side and none of the others: max(L, R), where L and R are the sums of the differences of
 * the pairs that are heavy on the left and on the right. Neighbours in order of weight are the best pairs: of four plates a ≤ b ≤ c ≤ d,
 * pairing a with b and c with d never makes L or R larger. Against (a,c),(b,d): on one side b−a + d−c ≤ c−a + d−b, on opposite sides
 * b−a ≤ c−a and d−c ≤ d−b. Against (a,d),(b,c): b−a + d−c ≤ d−a, and nothing is left for the other side. What remains is to split the
 * differences evenly, which is solved exactly by sums of subsets, for weighings are whole numbers of hundredths of a pound.
 */
import { evenSplit } from './even-split.ts';

export interface WeighedPlate {
  readonly id: string;
  /** What is cast on it, in pounds: only plates of the same face value pair. */
  readonly face: number;
  /** What it weighs, in pounds. */
  readonly pounds: number;
}

export interface Pair {
  readonly face: number;
  readonly left: WeighedPlate;
  readonly right: WeighedPlate;
  /** Left less right, in pounds. */
  readonly difference: number;
}

export interface Pairing {
  readonly pairs: readonly Pair[];
  /** Plates without a mate: for each odd face value the one whose absence helps most. */
  readonly alone: readonly WeighedPlate[];
  /** Worst difference of the two sides over all loads, in pounds. */
  readonly worst: number;
  /** No other pairing has a smaller worst difference. False where too many face values have an odd plate to try every choice of them. */
  readonly proven: boolean;
  /** Worst difference as a fraction of the load that has it, the bar included. */
  readonly worstShare: number;
}

/** Weighings count in hundredths of a pound: no scale for plates shows more. */
const STEPS = 100;
const stepsOf = (pounds: number): number => Math.round(pounds * STEPS);

/** The pairing with the smallest worst difference; of equals the one with the smallest sum of differences. `barPounds` is the bar with its collars. */
export function pairUp(plates: readonly WeighedPlate[], barPounds: number): Pairing {
  const groups = new Map<number, WeighedPlate[]>();
  for (const plate of plates) {
    if (!(plate.pounds > 0 && Number.isFinite(plate.pounds))) throw new RangeError(`pairUp: ${plate.pounds} is no weight`);
    groups.set(plate.face, [...(groups.get(plate.face) ?? []), plate]);
  }
  const options = [...groups.entries()].sort(([a], [b]) => b - a).map(([, group]) => waysToPair(group));
  let best: {
    readonly ways: readonly Way[];
    readonly side: readonly boolean[];
    readonly worst: number;
    readonly sum: number;
  } | null = null;
  const proven = options.reduce((product, ways) => product * ways.length, 1) <= MOST_CHOICES;
  for (const ways of choices(proven ? options : options.map(firstBySpread))) {
    const differences = ways.flatMap(({ pairs }) => pairs.map(([heavy, light]) => stepsOf(heavy.pounds) - stepsOf(light.pounds)));
    const sum = differences.reduce((total, one) => total + one, 0);
    if (best !== null && sum / 2 > best.worst) continue;
    const { first, larger } = evenSplit(differences);
    if (best === null || larger < best.worst || (larger === best.worst && sum < best.sum)) {
      best = { ways, side: first, worst: larger, sum };
    }
  }
  const ways = best?.ways ?? [];
  const pairs = ways
    .flatMap(({ pairs }) => pairs)
    .map(([heavy, light], index): Pair => {
      const [left, right] = best?.side[index] ? [heavy, light] : [light, heavy];
      return { face: heavy.face, left, right, difference: (stepsOf(left.pounds) - stepsOf(right.pounds)) / STEPS };
    });
  return {
    pairs,
    alone: ways.flatMap(({ alone }) => alone),
    worst: (best?.worst ?? 0) / STEPS,
    proven,
    worstShare: Math.max(worstShare(pairs, barPounds, 1), worstShare(pairs, barPounds, -1)),
  };
}

interface Way {
  /** Heavier first. */
  readonly pairs: readonly (readonly [WeighedPlate, WeighedPlate])[];
  readonly alone: readonly WeighedPlate[];
}

const neighbours = (sorted: readonly WeighedPlate[]): Way['pairs'] =>
  sorted.flatMap((plate, index): Way['pairs'] => {
    const next = sorted[index + 1];
    return index % 2 === 0 && next !== undefined ? [[plate, next]] : [];
  });

/** Ways to pair one face value: neighbours; of an odd number each plate in an odd place may stay alone (one in an even place never helps more). */
function waysToPair(group: readonly WeighedPlate[]): Way[] {
  const sorted = [...group].sort((a, b) => b.pounds - a.pounds || (a.id < b.id ? -1 : 1));
  if (sorted.length % 2 === 0) return [{ pairs: neighbours(sorted), alone: [] }];
  return sorted
    .map((alone, index) => ({ alone, index }))
    .filter(({ index }) => index % 2 === 0)
    .map(({ alone, index }) => ({ pairs: neighbours(sorted.filter((_, other) => other !== index)), alone: [alone] }));
}

/** So many combinations of plates left alone are tried; beyond, each face value takes its own best. */
const MOST_CHOICES = 20_000;

const choices = (options: readonly (readonly Way[])[]): Way[][] =>
  options.reduce<Way[][]>((made, ways) => made.flatMap((before) => ways.map((way) => [...before, way])), [[]]);

/** Of the ways to pair one face value the one whose differences are least in sum. */
function firstBySpread(ways: readonly Way[]): readonly Way[] {
  const spread = ({ pairs }: Way): number => pairs.reduce((sum, [heavy, light]) => sum + heavy.pounds - light.pounds, 0);
  return [...ways].sort((a, b) => spread(a) - spread(b)).slice(0, 1);
}

/**
 * The largest share (difference of the sides over the whole load) among all loads, by Dinkelbach's method for ratios: for a guess q the
 * best load takes every pair with sign·d − q·weight above zero, and its ratio is the next guess; it ends in few steps, exactly.
 */
function worstShare(pairs: readonly Pair[], barPounds: number, sign: 1 | -1): number {
  let share = 0;
  for (let step = 0; step < 100; step += 1) {
    const taken = pairs.filter(({ difference, left, right }) => sign * difference - share * (left.pounds + right.pounds) > 0);
    const difference = taken.reduce((sum, pair) => sum + sign * pair.difference, 0);
    const load = taken.reduce((sum, { left, right }) => sum + left.pounds + right.pounds, barPounds);
    const next = load > 0 ? Math.max(0, difference / load) : 0;
    if (next <= share + 1e-12) return share;
    share = next;
  }
  return share;
}
