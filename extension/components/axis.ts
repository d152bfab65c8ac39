/** An axis from zero to a round number, with up to five round ticks. Pure. */

/** Ticks from 0 to the first round number at or above `highest` (any positive number; otherwise the axis is 0 to 1). */
export function ticksTo(highest: number): number[] {
  const top = Number.isFinite(highest) && highest > 0 ? highest : 1;
  const magnitude = 10 ** Math.floor(Math.log10(top / 4));
  const step = [1, 2, 2.5, 5, 10].map((m) => m * magnitude).find((size) => size * 4 >= top * (1 - 1e-9)) ?? 10 * magnitude;
  const count = Math.max(1, Math.ceil(top / step - 1e-9));
  return Array.from({ length: count + 1 }, (_, index) => Number((index * step).toPrecision(12)));
}
