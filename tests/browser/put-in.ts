/**
 * What the extension puts into others' pages, looked at as a reader with other eyes or ears meets it. The script that ships draws it in a
 * closed shadow root: it is opened by giving the extension's own world in that page another `attachShadow` before the script comes.
 */
import { readFile } from 'node:fs/promises';
import type { Browser, CDPSession, Page } from 'puppeteer-core';
import { ALSO, AXE } from './axe.ts';
import { inBackground } from './captured.ts';
import { contrast } from './contrast.ts';

/** Of the page in front, which the buyer has let the extension into before. */
export const openShadows = (browser: Browser): Promise<unknown> =>
  inBackground(
    browser,
    `chrome.tabs.query({ active: true, lastFocusedWindow: true }).then(([tab]) => chrome.scripting.executeScript({
      target: { tabId: tab.id },
      func: () => {
        const attach = Element.prototype.attachShadow;
        Element.prototype.attachShadow = function (init) { return attach.call(this, { ...init, mode: 'open' }); };
      },
    }))`,
  );

/** Rules about whole pages: the pane that takes the keys is a frame, but no page. */
const OF_PAGES = ['landmark-one-main', 'page-has-heading-one'];

/** What axe finds in our host and in the frame within it. Colours it makes out only in part here: `drawn` reckons them. */
export async function faults(page: Page): Promise<readonly string[]> {
  const axe = await readFile(AXE, 'utf8');
  for (const frame of page.frames()) await frame.evaluate(axe);
  return page.evaluate(
    async (enabled, disabled) => {
      const { axe: checker } = globalThis as unknown as { axe: typeof import('axe-core') };
      const rules = Object.fromEntries([
        ...enabled.map((id) => [id, { enabled: true }]),
        ...disabled.map((id) => [id, { enabled: false }]),
      ]);
      const { violations } = await checker.run({ include: ['[data-ironsift]'] }, { rules });
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`);
    },
    ALSO,
    OF_PAGES,
  );
}

/** Role and name of what a screen reader is told of ours: beside the body, and in the frame there that takes the keys. */
export async function spoken(session: CDPSession): Promise<readonly string[]> {
  const { frameTree } = await session.send('Page.getFrameTree');
  const frames = [frameTree, ...(frameTree.childFrames ?? [])].map(({ frame }) => frame.id);
  const trees = await Promise.all(frames.map((frameId) => session.send('Accessibility.getFullAXTree', { frameId })));
  const { root } = await session.send('DOM.getDocument', { depth: -1, pierce: true });
  type Part = typeof root;
  const partsOf = (part: Part): Part[] =>
    [...(part.children ?? []), ...(part.shadowRoots ?? []), ...(part.contentDocument ? [part.contentDocument] : [])].flatMap(
      (one) => [one, ...partsOf(one)],
    );
  const host = partsOf(root).find(({ attributes }) => attributes?.includes('data-ironsift'));
  const ours = new Set((host ? partsOf(host) : []).map(({ backendNodeId }) => backendNodeId));
  const nodes = trees.flatMap((tree) => tree.nodes).filter((node) => !node.ignored && ours.has(node.backendDOMNodeId ?? -1));
  const buttons = new Set(nodes.filter(({ role }) => role?.value === 'button').map(({ nodeId }) => nodeId));
  return nodes
    .filter(
      ({ role, parentId }) =>
        /^(StaticText|application|button|Iframe|link|image)$/.test(role?.value) && !buttons.has(parentId ?? ''),
    )
    .map(({ role, name }) => `${role?.value} "${name?.value}"`);
}

export interface Drawn {
  readonly kind: string;
  /** Contrast of its words with their ground; null where it has none. */
  readonly words: number | null;
  /** The greatest contrast with the page that any part of its edge has, or its own ground where that is opaque. */
  readonly edge: number;
  /** How much of the page its ground hides, from 0 to 1. */
  readonly covers: number;
  /** What moves by itself. */
  readonly moves: readonly string[];
}

/** Everything drawn in our host, over a page that is given this colour, or the reader's own where colours are forced. */
export async function drawn(page: Page, color: string): Promise<readonly Drawn[]> {
  const { ground, found } = await page.evaluate((given) => {
    document.documentElement.style.background = given;
    const root = document.querySelector('[data-ironsift]')?.shadowRoot;
    const running = document.getAnimations().map(({ effect }) => (effect as KeyframeEffect).target);
    const all = [...(root?.querySelectorAll<HTMLElement>(':not(iframe, .spoken)') ?? [])].map((one) => {
      const style = getComputedStyle(one);
      const edged = style.borderTopWidth === '0px' ? style.outlineColor : style.borderTopColor;
      return {
        kind: one.className,
        text: one.textContent ? style.color : null,
        edges: [edged, ...(/rgb\([^)]*\)/.exec(style.boxShadow) ?? [])],
        fill: style.backgroundColor,
        moves: [
          ...(running.includes(one) ? ['an animation'] : []),
          ...(style.animationName === 'none' ? [] : [style.animationName]),
          ...(style.transitionDuration === '0s' ? [] : ['a transition']),
          ...(style.scrollBehavior === 'auto' ? [] : ['scrolling']),
        ],
      };
    });
    return { ground: getComputedStyle(document.documentElement).backgroundColor, found: all };
  }, color);
  return found.map(({ kind, text, edges, fill, moves }) => {
    const covers = Number(/^rgba\(.*?([\d.]+)\)$/.exec(fill)?.[1] ?? 1);
    return {
      kind,
      words: text === null ? null : contrast(text, fill),
      edge: Math.max(...[...edges, ...(covers === 1 ? [fill] : [])].map((one) => contrast(one, ground))),
      covers,
      moves,
    };
  });
}

/** What is written in our host: its size of text in px, its height, and whether all of it is in sight and pressed where it is seen. */
export type Written = readonly [kind: string, text: number, height: number, whole: boolean];

/** With a size of text that the reader has set in the browser, and one that the page gives its root. */
export async function written(page: Page, session: CDPSession, reader: number, pageRoot: string): Promise<readonly Written[]> {
  await session.send('Page.setFontSizes', { fontSizes: { standard: reader } });
  return page.evaluate((size) => {
    document.documentElement.style.setProperty('font-size', size, 'important');
    const root = document.querySelector('[data-ironsift]')?.shadowRoot;
    const twins = [...(root?.querySelector('iframe')?.contentDocument?.querySelectorAll('button') ?? [])];
    const place = (one?: Element): string => JSON.stringify(one?.getBoundingClientRect());
    const buttons = [...(root?.querySelectorAll('.touch') ?? [])];
    return [...(root?.querySelectorAll('.label, .touch, .tag') ?? [])].map((one) => {
      const { offsetHeight, scrollWidth, clientWidth, scrollHeight, clientHeight, className } = one as HTMLElement;
      const at = buttons.indexOf(one);
      const whole = scrollWidth <= clientWidth && scrollHeight <= clientHeight && (at < 0 || place(one) === place(twins[at]));
      return [className, Number.parseFloat(getComputedStyle(one).fontSize), offsetHeight, whole] as const;
    });
  }, pageRoot);
}
