/** Which rows of a long list are drawn: those in sight and some around, so that ten thousand cost no more than fifty. Pure. */

/** Height of a row in px where nothing is laid out. */
export const UNMEASURED = 66;
/** Rows drawn above and below what is in sight. */
const AROUND = 15;
/** Stretches begin at multiples of this, so that scrolling a little asks for nothing new. */
const STEP = 10;

export interface Stretch {
  readonly from: number;
  readonly count: number;
}

/** The stretch of rows to draw for a scroll position, the height of the box and that of a row, all in px. */
export function stretchAt(scrollTop: number, height: number, row: number): Stretch {
  const first = Math.max(0, Math.floor(scrollTop / row) - AROUND);
  const from = first - (first % STEP);
  const last = Math.ceil((Math.max(0, scrollTop) + height) / row) + AROUND;
  return { from, count: Math.ceil((last - from) / STEP) * STEP };
}

/** Where to scroll so that row number `nth` is in sight; the same place when it is already. Heights in px, as above. */
export function scrolledTo(nth: number, scrollTop: number, height: number, row: number): number {
  const top = nth * row;
  if (top < scrollTop) return top;
  return top + row > scrollTop + height ? Math.max(0, top + row - height) : scrollTop;
}

/** Where a key leads from row `at` in a list of `total`, of which `seen` fit in sight; null for keys that do not move. */
export function movedBy(key: string, at: number, total: number, seen: number): number | null {
  const to = new Map([
    ['ArrowDown', at + 1],
    ['ArrowUp', at - 1],
    ['PageDown', at + seen],
    ['PageUp', at - seen],
    ['Home', 0],
    ['End', total - 1],
  ]).get(key);
  return to === undefined ? null : Math.max(0, Math.min(total - 1, to));
}
