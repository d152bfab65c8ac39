/** Goods that an ad leaves out of what it says of all: "everything rusty except the bar". */
import { says } from '../text/says.ts';
import { type Scan, valueAt } from '../text/scan.ts';
import type { Draft } from './draft.ts';
import { namedBy } from './subject.ts';

const exceptions = new WeakMap<Scan, readonly number[]>();

/** Tokens that leave goods out of what is said, looked for once in each ad. */
function exceptionsOf(scan: Scan): readonly number[] {
  const known = exceptions.get(scan) ?? scan.tokens.flatMap((_, at) => (says(scan, at, 'except') ? [at] : []));
  exceptions.set(scan, known);
  return known;
}

/** "Everything rusty except the bar", "all but the bar are rusty": the goods that are left out of what is said of all. */
export function excepted(scan: Scan, drafts: readonly Draft[], from: number, to: number): { left: readonly Draft[]; at: number } {
  for (const i of exceptionsOf(scan)) {
    if (i < from || i > to) continue;
    const left: Draft[] = [];
    for (let at = i + 1; at <= to && at - i < 8; at += 1) {
      const part = scan.tokens[at]?.term?.part;
      // "The curl bar", "the curl".
      if (part) {
        left.push(...drafts.filter(({ kind }) => kind === part));
        if (scan.plain[at + 1] === 'k') at += 1;
        continue;
      }
      if (!'amkcnsuv,'.includes(scan.plain[at] ?? '_')) break;
      if (scan.plain[at] === 'k') left.push(...namedBy(scan, drafts, at));
      else left.push(...sizedAt(scan, drafts, at));
    }
    return { left, at: i };
  }
  return { left: [], at: -1 };
}

/** "All plates … except the 25s": the plain noun is over those that are left out too. */
export const isOver = (item: Draft, left: readonly Draft[]): boolean =>
  item.weight === null && item.total === null && left.some((other) => other.weight !== null && other.kind === item.kind);

/** Goods of the size that is told up to a token, wherever they are told. */
function sizedAt(scan: Scan, drafts: readonly Draft[], at: number): Draft[] {
  const told = drafts.filter((item) => item.weight !== null && item.places.some((place) => place.to === at));
  // What is left out of something is no goods where it stands: "except the 2.5s".
  const size = scan.plain[at] === 'n' && 'suhk'.includes(scan.plain[at + 1] ?? 'l') ? valueAt(scan, at) : null;
  return drafts.filter(
    (item) =>
      item.weight !== null &&
      (item.weight.value === size || told.some((one) => one.kind === item.kind && one.weight?.value === item.weight?.value)),
  );
}

/** Whether all goods are spoken of between two tokens. */
export function saysWholeBefore(scan: Scan, from: number, to: number): boolean {
  for (let i = from; i < to; i += 1) if (isWhole(scan, i)) return true;
  return false;
}

/** "All of it", "everything", "none of them". */
export const isWhole = (scan: Scan, at: number): boolean => {
  const sense = scan.tokens[at]?.term?.sense;
  const letter = scan.plain[at];
  return (
    sense === 'whole' ||
    (sense === 'definite' && letter === 'z') ||
    letter === 'L' ||
    (letter === 'N' && scan.plain[at + 1] === 'o')
  );
};
