/**
 * The ads of a page, without knowing the page: wherever neighbours repeat one shape with words, a price and a link, each is an ad. Where
 * repeats hold repeats (rows of cards, columns), the level counts at which each holds one.
 */
import { holdsOthers } from '../readers/hints.ts';
import type { Sight } from '../readers/sight.ts';
import { areFilters, isAdLike, isNotice, listOf, runsIn } from './group.ts';
import { type Part, partsOf } from './parts.ts';

interface List {
  readonly blocks: readonly Part[];
  /** How far below the part that is looked at. */
  readonly depth: number;
  /** Stands in an aside, or under a heading such as "recently viewed": counts only where there is no other list. */
  readonly aside: boolean;
}

interface Found {
  readonly lists: readonly List[];
  /** Not an ad and no list of ads either: navigation, a choice of filters. */
  readonly refused: boolean;
}

const NONE: Found = { lists: [], refused: false };

/** A card that offers choices of its own (sizes, ways to pay) is one ad: it says more than its choices do, or has a linked title beside them. */
function isOneAd(part: Part, lists: readonly List[]): boolean {
  const inside = new Set(lists.flatMap(({ blocks }) => blocks));
  let characters = 0;
  for (const block of inside) characters += block.characters;
  if (characters * 2 < part.characters) return isAdLike(part);
  const pending: Part[] = [part];
  for (let at = pending.pop(); at; at = pending.pop()) {
    if (inside.has(at)) continue;
    if (/^H[1-6]$/.test(at.tag) && at.links > 0) return true;
    pending.push(...at.children);
  }
  return false;
}

/** Parts as deep in a lone neighbour as the ads lie in the others: the last row of a grid, with one card. */
function strays(part: Part, { depth, blocks }: List): Part[] {
  let level: Part[] = [part];
  for (let step = 1; step < depth; step += 1) level = level.flatMap(({ children }) => [...children]);
  const tags = new Set(blocks.map(({ tag }) => tag));
  return level.filter((one) => tags.has(one.tag) && isAdLike(one));
}

function look(part: Part): Found {
  if (part.apart) return { lists: [], refused: true };
  if (part.prices < 2 || part.links < 1) return NONE;
  const { children } = part;
  // A term is the title, though its definition may have price and link.
  const terms = part.tag === 'DL' ? runsIn(children) : [];
  if (terms.length > 0) return listed(terms, part);
  const plain: Part[] = [];
  const lists: List[] = [];
  const lone: Part[] = [];
  let expanded = 0;
  const found = children.map((child) => ({ child, ...look(child) }));
  const repeats = found.filter(({ lists: own }) => own.length > 0).length > 1;
  for (const { child, lists: own, refused } of found) {
    if (refused) continue;
    if (own.length > 0 && !(repeats && isOneAd(child, own))) {
      expanded += 1;
      const aside = child.tag === 'ASIDE' || child.elements.some(holdsOthers);
      lists.push(...own.map((list) => ({ ...list, depth: list.depth + 1, aside: list.aside || aside })));
    } else if (isAdLike(child)) plain.push(child);
  }
  if (plain.length >= 2 && plain.length >= expanded) {
    const blocks = listOf(plain, children);
    if (blocks.length > 0 && areFilters(blocks, part)) return { lists, refused: lists.length === 0 };
    if (blocks.length > 0) return { lists: [...lists, { blocks, depth: 1, aside: false }], refused: false };
  } else if (expanded > 0) lone.push(...plain);
  for (const one of lone) {
    const [list] = lists;
    const blocks =
      list && found.some(({ child, lists: own }) => own.length > 0 && child.tag === one.tag) ? strays(one, list) : [];
    if (list && blocks.length > 0) lists.push({ ...list, blocks });
  }
  if (lists.length > 0) return { lists, refused: false };
  const blocks = runsIn(children);
  return blocks.length === 0 ? NONE : listed(blocks, part);
}

const listed = (blocks: readonly Part[], around: Part): Found =>
  areFilters(blocks, around) ? { lists: [], refused: true } : { lists: [{ blocks, depth: 1, aside: false }], refused: false };

/** The ads under `root` in the page's order. Stops now and then, so that its caller can let the page go on. */
export function* findBlocks(root: Element, sight: Sight, met?: (root: Node) => void): Generator<void, Part[]> {
  const tree = yield* partsOf(root, sight, met);
  yield;
  const { lists } = look(tree);
  const main = lists.some(({ aside }) => !aside) ? lists.filter(({ aside }) => !aside) : lists;
  return main.flatMap(({ blocks }) => blocks.filter((block) => !isNotice(block))).sort((a, b) => a.order - b.order);
}
