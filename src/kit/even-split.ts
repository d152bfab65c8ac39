/** Splitting whole numbers into two heaps as even as can be: the partition problem, solved exactly by sums of subsets. */

export interface EvenSplit {
  /** For each number whether it is in the first heap. */
  readonly first: readonly boolean[];
  /** Sum of the larger heap. */
  readonly larger: number;
}

/**
 * The split whose larger heap is smallest. Numbers are whole and from 0 up, and together at most 10⁷ (time and memory go with their
 * number times their sum); throws otherwise.
 */
export function evenSplit(numbers: readonly number[]): EvenSplit {
  const sum = numbers.reduce((total, one) => total + one, 0);
  if (numbers.some((one) => !(Number.isInteger(one) && one >= 0)) || sum > 1e7)
    throw new RangeError('evenSplit: not such numbers');
  const half = Math.floor(sum / 2);
  // For each sum up to half the last number that completes it, counted from 1; 0 for a sum that can't be made.
  const last = new Int32Array(half + 1);
  last[0] = -1;
  for (const [index, one] of numbers.entries()) {
    if (one === 0) continue;
    for (let at = half; at >= one; at -= 1) if (last[at] === 0 && last[at - one] !== 0) last[at] = index + 1;
  }
  let at = half;
  while (last[at] === 0) at -= 1;
  const larger = sum - at;
  const first = numbers.map(() => false);
  while (at > 0) {
    const index = (last[at] ?? 0) - 1;
    first[index] = true;
    at -= numbers[index] ?? at;
  }
  return { first, larger };
}
