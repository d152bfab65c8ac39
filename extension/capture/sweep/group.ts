/** Whether neighbours make a list of ads: alike in shape, each with a title of its own, and not a choice of filters. */

import { own } from '../readers/own.ts';
import { isPriceFilter } from './amounts.ts';
import { joined, type Part } from './parts.ts';
import { likeness, shapeOf, typicalShape } from './shape.ts';

/** Shortest title in letters, shortest ad in characters; beyond the longest it is a whole page and no card. */
const TITLE = 6;
/** A term is a title by what it is, however short: "Bar". */
const TERM = 2;
const SHORTEST = 10;
const LONGEST = 12_000;
/** Shorter than this, in characters, nothing counts as a sentence. */
const SENTENCE = 30;
/** Least likeness to the list's typical shape: of what shows price and link, and of what lacks one of them. */
const LIKE = 0.3;
const MUCH_ALIKE = 0.7;
/** Two alone are a list only when they are nearly the same. */
const PAIR_ALIKE = 0.6;
const OTHER_LIST = /\b(?:search(?:es)?|filters?|categor(?:y|ies)|refine|sort by|suchen|kategorien|filtern)\b/i;

export const isAdLike = ({ prices, links, characters, letters, apart }: Part): boolean =>
  prices > 0 && links > 0 && letters >= TITLE && characters >= SHORTEST && characters <= LONGEST && !apart;

const textOf = ({ elements }: Part): string =>
  elements
    .map((element) => own(element).textContent ?? '')
    .join(' ')
    .replace(/\s+/g, ' ')
    .trim();

/** A forum's own word among its threads, or a thread that stands elsewhere. */
export const isNotice = (part: Part): boolean => /^(?:sticky|pinned|moved|announcement|angepinnt|wichtig):/i.test(textOf(part));

/** Most of them offer a limit of price, or their heading says that they search and sort. */
export function areFilters(blocks: readonly Part[], around: Part): boolean {
  if (blocks.some(({ pieces }) => pieces > 3)) return false;
  if (blocks.filter((block) => isPriceFilter(textOf(block))).length * 2 >= blocks.length) return true;
  const [first] = around.elements;
  const element = first && own(first);
  const named = [element?.getAttribute('aria-label'), element?.previousElementSibling?.textContent].join(' ').trim();
  return named.length <= 60 && OTHER_LIST.test(named);
}

/** Sentences that name a price and hold a link somewhere in their midst: the link does not name them. */
const isProse = (part: Part): boolean =>
  !shows(part) && !part.bare && part.characters > SENTENCE && part.pieces <= 6 && part.lead > part.linkLetters;

const overlap = (a: ReadonlySet<string>, b: ReadonlySet<string>): number => {
  const shared = likeness(a, b) * b.size;
  return shared / (a.size + b.size - shared);
};

const shows = ({ headings, pictures }: Part): boolean => headings > 0 || pictures > 0;

/**
 * The ads among children of one part. `plain` are those with price and link that hold no list themselves. Others that look much like
 * them (no price said, no link) are ads too. Empty when they make no list.
 */
export function listOf(plain: readonly Part[], children: readonly Part[]): Part[] {
  const shapes = new Map(plain.map((part) => [part, shapeOf(part)]));
  const typical = typicalShape([...shapes.values()]);
  const alike = plain.filter((part) => likeness(shapes.get(part) ?? new Set(), typical) >= LIKE);
  const [first, second] = alike;
  if (!first || !second || alike.filter(isProse).length * 2 >= alike.length) return [];
  if (alike.length === 2) {
    const close = overlap(shapes.get(first) ?? new Set(), shapes.get(second) ?? new Set()) >= PAIR_ALIKE;
    if (!close || !shows(first) || !shows(second)) return [];
  }
  const tags = new Set(alike.map(({ tag }) => tag));
  const known = new Set(alike);
  const others = children.filter(
    (part) =>
      !known.has(part) &&
      !part.apart &&
      tags.has(part.tag) &&
      part.prices + part.links > 0 &&
      part.letters >= TITLE &&
      part.characters <= LONGEST &&
      likeness(shapeOf(part), typical) >= MUCH_ALIKE,
  );
  return withFollowers(
    [...alike, ...others].sort((a, b) => a.order - b.order),
    children,
  );
}

/** What stands behind nearly every ad of a list belongs to it: the definition of a term, the second row of a table. */
function withFollowers(blocks: readonly Part[], children: readonly Part[]): Part[] {
  const heads = new Set(blocks);
  const behind = new Map<Part, Part[]>(blocks.map((block) => [block, []]));
  let head: Part | null = null;
  for (const child of children) {
    if (heads.has(child)) head = child;
    else if (head) behind.get(head)?.push(child);
  }
  const usual = usualLength([...behind.values()].map(({ length }) => length));
  const regular = blocks.filter((block) => behind.get(block)?.length === usual);
  const speak = regular.filter((block) => behind.get(block)?.some(({ letters }) => letters > 0));
  if (usual === 0 || usual > 4 || speak.length < blocks.length * 0.6) return [...blocks];
  return blocks.map((block) => joined([block, ...(behind.get(block) ?? []).slice(0, usual)]));
}

const usualLength = (lengths: readonly number[]): number => {
  const counts = new Map<number, number>();
  for (const length of lengths) counts.set(length, (counts.get(length) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? 0;
};

const LEADERS = /^(?:DT|TR|P|A|DIV|STRONG|B|H[1-6])$/;

/** Ads that have no element of their own: a linked title, and what follows up to the next one. */
export function runsIn(children: readonly Part[]): Part[] {
  const leads = new Map<string, Part[]>();
  for (const child of children)
    if (LEADERS.test(child.tag) && child.links > 0 && child.letters >= (child.tag === 'DT' ? TERM : TITLE) && !child.apart)
      leads.set(child.tag, [...(leads.get(child.tag) ?? []), child]);
  for (const heads of leads.values()) {
    if (heads.length < 3) continue;
    const starts = new Set(heads);
    const runs: Part[][] = [];
    for (const child of children) {
      if (starts.has(child)) runs.push([child]);
      else runs.at(-1)?.push(child);
    }
    const usual = usualLength(runs.slice(0, -1).map(({ length }) => length));
    // The last one ends where the others do: what follows the list is not the ad's.
    const blocks = runs.map((run, index) => joined(index === runs.length - 1 ? run.slice(0, usual) : run));
    if (usual > 1 && blocks.filter(isAdLike).length >= Math.max(3, blocks.length * 0.6)) return blocks;
  }
  return [];
}
