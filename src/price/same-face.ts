/** Face values that are the same plate: within rounding. In pounds. */
export const sameFace = (a: number, b: number): boolean => Math.abs(a - b) <= 0.005 * Math.max(a, b);
