/** The text of a part of a page as it is seen: its lines, list items and table cells; hidden text left out; what is struck through. */
import type { Span } from '../../../src/listing/page-listing.ts';
import { besideEachOther } from './beside.ts';
import { separateFigures } from './figures.ts';
import { MAX_TEXT } from './limits.ts';
import { clipText, isOutside, type TakenRange } from './ranges.ts';
import { frameDocument, isElement, isText, parentOf, renderedChildren, tagOf } from './rendered.ts';
import type { Keeps, Look, Sight } from './sight.ts';
import { type Stretch, TextBuilder } from './text-builder.ts';

export interface SeenText {
  readonly text: string;
  readonly struck: readonly Span[];
  readonly stretches: readonly Stretch[];
  readonly cut: boolean;
}

export interface ReadTextOptions {
  readonly sight: Sight;
  /** Elements to leave out with all that is in them. */
  readonly skip?: ((element: Element) => boolean) | undefined;
  /** Only what lies in one of these ranges. */
  readonly ranges?: readonly TakenRange[] | undefined;
  /** Most characters to take. */
  readonly limit?: number | undefined;
}

/** What an element hands down to what is in it. */
interface Context {
  readonly keeps: Keeps;
  readonly struck: boolean;
  readonly invisible: boolean;
  readonly lays: Look['lays'];
  /** Length of the text where the element began. */
  readonly start: number;
  /** Length of the text where the nearest cell or list item began: line breaks before its first word are dropped. */
  readonly quietAt: number;
}

/** What holds inside `root` because of the elements around it. */
function surroundings(root: Element, sight: Sight): Context {
  let struck = false;
  let keeps: Keeps | null = null;
  for (let at: Element | null = root; at; at = parentOf(at)) {
    const look = sight.lookOf(at);
    struck ||= look.struck;
    keeps ??= look.keeps;
  }
  const { invisible, lays } = sight.lookOf(root);
  return { struck, keeps: keeps ?? 'nothing', invisible, lays, start: 0, quietAt: -1 };
}

/** Linear in the size of the part; deep nesting does no harm, for the walk keeps its own stack. */
export function readText(root: Element, { sight, skip, ranges, limit = MAX_TEXT }: ReadTextOptions): SeenText {
  const out = new TextBuilder(limit);
  const struck: { start: number; end: number }[] = [];
  const tasks: (() => void)[] = [];

  const line = (context: Context): void => {
    if (out.length !== context.quietAt) out.line();
  };

  const takeText = (node: Text, context: Context): void => {
    const taken = context.invisible ? null : clipText(node, ranges);
    if (!taken) return;
    const known = out.stretches.length;
    out.words(node, taken[0], taken[1], context.keeps);
    const first = out.stretches[known];
    if (!context.struck || !first) return;
    const last = struck.at(-1);
    if (last && first.start - last.end <= 1) last.end = out.length;
    else struck.push({ start: first.start, end: out.length });
  };

  const takeChildren = (children: readonly Node[], context: Context): void => {
    let before: Element | null = null;
    const steps: (() => void)[] = [];
    for (const child of children) {
      const previous = before;
      if (isText(child)) steps.push(() => takeText(child, context));
      else if (isElement(child)) {
        steps.push(() => takeElement(child, previous, context));
        before = child;
      }
    }
    for (const step of steps.reverse()) tasks.push(step);
  };

  const takeElement = (element: Element, before: Element | null, context: Context): void => {
    if (out.cut || skip?.(element) || isOutside(element, ranges)) return;
    const look = sight.lookOf(element);
    if (look.hidden) return;
    if (tagOf(element) === 'BR') {
      if (out.length !== context.quietAt) out.lineBreak();
      return;
    }
    const start = out.length;
    const inside: Context = {
      keeps: look.keeps ?? context.keeps,
      struck: context.struck || look.struck,
      invisible: look.invisible,
      lays: look.lays,
      start,
      quietAt: context.quietAt,
    };
    const isCell = look.flow === 'cell';
    const isBeside = start > context.start && before !== null && besideEachOther(before, element, look, context.lays, sight);
    if (isCell || isBeside) {
      if (isBeside) out.endCell();
      if (before) out.tab();
      tasks.push(() => {
        if (out.length > start && isCell) out.endCell();
        else if (out.length > start) line(context);
      });
      takeChildren(renderedChildren(element, sight), { ...inside, quietAt: start });
      return;
    }
    if (look.flow === 'inline' && !frameDocument(element)) {
      separateFigures(element, out);
      takeChildren(renderedChildren(element, sight), inside);
      return;
    }
    line(context);
    tasks.push(() => line(context));
    const isItem = look.flow === 'item';
    if (isItem) {
      out.bullet(true);
      tasks.push(() => out.bullet(false));
    }
    takeChildren(renderedChildren(element, sight), isItem ? { ...inside, quietAt: start } : inside);
  };

  takeChildren(renderedChildren(root, sight), surroundings(root, sight));
  for (let task = tasks.pop(); task && !out.cut; task = tasks.pop()) task();
  return { text: out.text, struck, stretches: out.stretches, cut: out.cut };
}
