/** How sure an order of two ranges is. */
import { type Range, Z90 } from '../units/range.ts';

/**
 * Standard normal distribution function, by Abramowitz & Stegun, Handbook of Mathematical Functions, 26.2.17: off by at most 7.5·10⁻⁸.
 */
export function normalBelow(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const tail =
    Math.exp((-z * z) / 2) *
    0.3989422804014327 *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z >= 0 ? 1 - tail : tail;
}

/**
 * Chance that `a` turns out below `b`, the two being independent. Each is taken as normal with the spread of the side that faces the
 * other: only there can the order turn. 0 to 1; a half for equals, 1 or 0 for different ranges without any width.
 */
export function chanceBelow(a: Range, b: Range): number {
  const difference = b.likely - a.likely;
  if (difference === 0) return 0.5;
  const facing = difference > 0 ? [a.high - a.likely, b.likely - b.low] : [a.likely - a.low, b.high - b.likely];
  const spread = Math.hypot(...facing) / Z90;
  if (spread === 0) return difference > 0 ? 1 : 0;
  return normalBelow(difference / spread);
}
