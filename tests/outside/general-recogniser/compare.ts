/** Holds the findings of the library against ours, ad by ad, and counts where they agree and why they do not. */
import { DIFFERENCES, near, seenAt } from './differences.ts';
import { type Ad, type Found, overlaps, SORTS, type Sort } from './found.ts';
import { findWithLibrary } from './library.ts';
import { findWithReader } from './reader.ts';

export interface Disagreement {
  readonly ad: string;
  readonly found: Found;
  readonly shown: string;
}

export interface Count {
  agreed: number;
  /** What the library finds and we do not, by class; "unexplained" for what no class holds. */
  readonly theirs: Map<string, Disagreement[]>;
  /** What we find and the library does not, by rule or notation. */
  readonly ours: Map<string, Disagreement[]>;
}

export type Comparison = Readonly<Record<Sort, Count>>;
export const UNEXPLAINED = 'unexplained';

const DOLLARS: readonly (string | null)[] = ['USD', 'CAD', 'AUD', 'NZD', null];
const sameUnit = (theirs: string | null, ours: string | null): boolean =>
  theirs === ours || (theirs === 'dollar' && DOLLARS.includes(ours));

const agree = (theirs: Found, ours: Found): boolean =>
  theirs.sort === ours.sort && overlaps(theirs, ours) && near(theirs.value, ours.value) && sameUnit(theirs.unit, ours.unit);

/** The words of a finding with what stands around them, in one line. */
export function shownIn({ text }: Ad, { start, end }: Found): string {
  const [before, behind] = [text.slice(Math.max(0, start - 25), start), text.slice(end, end + 25)];
  return `${before}[${text.slice(start, end)}]${behind}`.replaceAll(/\s*\n\s*/g, ' ⏎ ');
}

function put(into: Map<string, Disagreement[]>, key: string, ad: Ad, found: Found): void {
  into.set(key, [...(into.get(key) ?? []), { ad: ad.name, found, shown: shownIn(ad, found) }]);
}

const emptyCount = (): Count => ({ agreed: 0, theirs: new Map(), ours: new Map() });

export function compare(ads: readonly Ad[]): Comparison {
  const counts: Comparison = { number: emptyCount(), money: emptyCount(), weight: emptyCount() };
  for (const ad of ads) {
    const ours = findWithReader(ad.text);
    for (const sort of SORTS) {
      const count = counts[sort];
      const theirs = findWithLibrary(ad.text, sort);
      for (const one of theirs) {
        if (ours.some((other) => agree(one, other))) {
          count.agreed += 1;
          continue;
        }
        const seen = seenAt(ad, one, ours);
        put(
          count.theirs,
          DIFFERENCES.find(({ sorts, is }) => sorts.includes(sort) && is(one, seen))?.name ?? UNEXPLAINED,
          ad,
          one,
        );
      }
      for (const one of ours)
        if (one.sort === sort && !theirs.some((other) => overlaps(one, other))) put(count.ours, one.how, ad, one);
    }
  }
  return counts;
}

const lengthOf = (map: ReadonlyMap<string, readonly unknown[]>, names: (name: string) => boolean): number =>
  [...map].reduce((sum, [name, list]) => sum + (names(name) ? list.length : 0), 0);

export interface Rates {
  readonly found: number;
  readonly agreed: number;
  /** Share of all that the library finds that we find with the same value and unit. */
  readonly plain: number;
  /** The same, leaving out the classes in which it is not the library that is right. */
  readonly fair: number;
}

export function ratesOf({ agreed, theirs }: Count): Rates {
  const right = (name: string): boolean =>
    DIFFERENCES.find((one) => one.name === name)?.right !== 'library' && name !== UNEXPLAINED;
  const found = agreed + lengthOf(theirs, () => true);
  const wrong = lengthOf(theirs, (name) => !right(name));
  return { found, agreed, plain: agreed / found, fair: agreed / (agreed + wrong) };
}

/** The counts as lines of text: agreement, then each class of difference with who is right. */
export function tableOf(comparison: Comparison): string[] {
  return SORTS.flatMap((sort) => {
    const count = comparison[sort];
    const { found, agreed, plain, fair } = ratesOf(count);
    const share = (value: number): string => `${(100 * value).toFixed(1)} %`;
    const classes = [...count.theirs]
      .sort((a, b) => b[1].length - a[1].length)
      .map(([name, list]) => {
        const right = DIFFERENCES.find((one) => one.name === name)?.right;
        return `  ${String(list.length).padStart(5)}  ${name}${right ? ` (right: ${right})` : ''}`;
      });
    const alone = lengthOf(count.ours, () => true);
    return [
      `${sort}: the library finds ${found}, we agree on ${agreed} (${share(plain)}; ${share(fair)} where it is not mistaken); ${alone} are found by us alone`,
      ...classes,
    ];
  });
}
