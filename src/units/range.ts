/**
 * A quantity known as low / likely / high. Low and high are read as a central interval of about 90 % of the chance;
 * likely is the centre of mass. Half-widths below and above are kept apart, so that a skewed range stays skewed.
 * Independent errors partly cancel: half-widths add in quadrature. Shared errors (one rate applied to all) add in full.
 */
export interface Range {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** Standard deviations of a normal distribution that hold a central 90 % of it to either side: what the ends of a range stand for. */
export const Z90 = 1.6448536269514722;

/** A range; throws unless low <= likely <= high and all are finite. */
export function range(low: number, likely: number, high: number): Range {
  if (!(Number.isFinite(low) && Number.isFinite(high) && low <= likely && likely <= high)) {
    throw new RangeError(`range: ${low} <= ${likely} <= ${high} does not hold`);
  }
  return { low, likely, high };
}

export const exactly = (value: number): Range => ({ low: value, likely: value, high: value });

export const scale = (r: Range, factor: number): Range =>
  factor >= 0
    ? { low: r.low * factor, likely: r.likely * factor, high: r.high * factor }
    : { low: r.high * factor, likely: r.likely * factor, high: r.low * factor };

export const shift = (r: Range, by: number): Range => ({ low: r.low + by, likely: r.likely + by, high: r.high + by });

/** Sum of independent ranges: half-widths add in quadrature, each side apart. */
export function sumIndependent(ranges: readonly Range[]): Range {
  let likely = 0;
  let below = 0;
  let above = 0;
  for (const r of ranges) {
    likely += r.likely;
    below += (r.likely - r.low) ** 2;
    above += (r.high - r.likely) ** 2;
  }
  return { low: likely - Math.sqrt(below), likely, high: likely + Math.sqrt(above) };
}

/** Sum of ranges whose errors go together. */
export const sumShared = (ranges: readonly Range[]): Range => ({
  low: ranges.reduce((a, r) => a + r.low, 0),
  likely: ranges.reduce((a, r) => a + r.likely, 0),
  high: ranges.reduce((a, r) => a + r.high, 0),
});

/** Product of two independent non-negative ranges, by relative half-widths in quadrature. */
export function times(a: Range, b: Range): Range {
  const likely = a.likely * b.likely;
  if (likely === 0) return { low: 0, likely: 0, high: a.high * b.high };
  const below = Math.hypot((a.likely - a.low) / a.likely, (b.likely - b.low) / b.likely);
  const above = Math.hypot((a.high - a.likely) / a.likely, (b.high - b.likely) / b.likely);
  return { low: Math.max(0, likely * (1 - below)), likely, high: likely * (1 + above) };
}

/** Quotient of two independent ranges; the divisor's low must be above zero. A high divisor makes a low quotient. */
export function over(a: Range, b: Range): Range {
  if (!(b.low > 0)) throw new RangeError('over: the divisor may be zero');
  return times(a, { low: 1 / b.high, likely: 1 / b.likely, high: 1 / b.low });
}
