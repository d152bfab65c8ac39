/** Parts of an ad that were added later: "UPDATE 3/4: bench is gone", "(edit: only four)", "Nachtrag: …". Each goes to the end of its line. */
import type { Scan } from '../text/scan.ts';

export interface Update {
  /** First token, the word that says so. */
  readonly from: number;
  /** Last token. */
  readonly to: number;
}

const isUpdate = (scan: Scan, at: number): boolean => scan.tokens[at]?.term?.sense === 'update';

/** The last token of the line, bracket or update that a token stands in. */
function endOf(scan: Scan, from: number): number {
  const bracketed = scan.plain[from - 1] === '(';
  let at = from + 1;
  // A label alone on its line speaks of the next one.
  while (/[:!.•)*-]/.test(scan.plain[at] ?? '_') && !bracketed) at += 1;
  if (scan.plain[at] === 'l' && at > from + 1) at += 1;
  while (at < scan.tokens.length && scan.plain[at] !== 'l' && !isUpdate(scan, at) && !(bracketed && scan.plain[at] === ')'))
    at += 1;
  return at - 1;
}

/** In the order of the text. */
export function readUpdates(scan: Scan): Update[] {
  const updates: Update[] = [];
  for (let at = 0; at < scan.tokens.length; at += 1) if (isUpdate(scan, at)) updates.push({ from: at, to: endOf(scan, at) });
  return updates;
}

export const updateAt = (updates: readonly Update[], at: number): Update | undefined =>
  updates.find(({ from, to }) => at >= from && at <= to);
