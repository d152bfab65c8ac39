/** Round ticks of an axis that begins at zero. Pure. */

/** Three to five ticks from 0 up to at most `highest` (a positive number; anything else is taken as 1), a round step apart. */
export function ticksTo(highest: number): number[] {
  const top = Number.isFinite(highest) && highest > 0 ? highest : 1;
  const magnitude = 10 ** Math.floor(Math.log10(top / 4));
  const step = [1, 2, 2.5, 5].map((m) => m * magnitude).find((size) => size * 4 >= top * (1 - 1e-9)) ?? 10 * magnitude;
  const count = Math.floor(top / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, index) => Number((index * step).toPrecision(12)));
}
