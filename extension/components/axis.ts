/** A scale from zero in per cent of the drawing's width, with round ticks. Pure. */
import { ticks } from 'd3-array';

export interface Axis {
  /** Two to five round values from zero up. */
  readonly ticks: readonly number[];
  /** Where a value stands: 0 to 100; what lies outside stands at the end. */
  readonly at: (value: number) => number;
}

/** From zero to `highest` (a positive number; anything else is taken as 1). */
export function axisTo(highest: number): Axis {
  const top = Number.isFinite(highest) && highest > 0 ? highest : 1;
  return { ticks: ticks(0, top, 3), at: (value) => Math.max(0, Math.min(100, (value / top) * 100)) };
}

/** From `lowest` to `highest`, zero among them: for what may fall below zero. */
export function axisOver(lowest: number, highest: number): Axis {
  const [bottom, top] = [Math.min(0, lowest), Math.max(0, highest)];
  if (!(top - bottom > 0 && Number.isFinite(top - bottom))) return axisTo(1);
  return { ticks: ticks(bottom, top, 3), at: (value) => Math.max(0, Math.min(100, ((value - bottom) / (top - bottom)) * 100)) };
}

/** Labels near the ends of an axis stay within it; `percent` as `Axis.at` gives it. */
export const anchorAt = (percent: number): 'start' | 'middle' | 'end' =>
  percent < 10 ? 'start' : percent > 90 ? 'end' : 'middle';

/** Sizes of a chart's writing in px at the usual size of text, as `charts.css` has them in rem. */
export const WORDS = 12;
export const TICKS = 11;

/** A length of a drawing that grows with the reader's size of text: px at the usual size, in an element whose own writing is `size` px then. */
export const grown = (px: number, size = 16): string => `${Number((px / size).toFixed(4))}em`;
