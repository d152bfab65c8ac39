/** Ways to look at a screen in a browser: what it cuts off, how it is painted, where the keyboard leads, what a screen reader is told. */
import type { CDPSession, Page, Protocol } from 'puppeteer-core';
import { unsaid } from './hints.ts';

/**
 * What WCAG 2.2 lets a reader set (1.4.12): lines one and a half high, paragraphs two apart, letters 0.12 and words 0.16 of the size of text.
 * Drawings are left out, for their words have a place of their own.
 */
const SPACED =
  '*:not(svg *) { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-bottom: 2em !important }';

export async function spaced(page: Page, look: () => Promise<void>): Promise<void> {
  const set = (css: string) =>
    page.evaluate((text) => {
      const sheet = new CSSStyleSheet();
      sheet.replaceSync(text);
      document.adoptedStyleSheets = [sheet];
    }, css);
  await set(SPACED);
  await look();
  await set('');
}

/** Size of text that the reader has set in the browser, in px; the browser's own is 16. */
export const textSize = (session: CDPSession, size: number): Promise<unknown> =>
  session.send('Page.setFontSizes', { fontSizes: { standard: size } });

/** All words two fifths longer, as another language may need them; in pieces of five, for hardly any has one of 40 letters. */
export async function longer(page: Page, look: () => Promise<void>): Promise<void> {
  await page.evaluate(() => {
    const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const were: [Text, string][] = [];
    for (let text = words.nextNode() as Text | null; text; text = words.nextNode() as Text | null) {
      if (!/\p{L}/u.test(text.data) || text.parentElement?.closest('script, style, svg')) continue;
      were.push([text, text.data]);
      text.data += '·'.repeat(Math.ceil(text.data.trim().length * 0.4)).replace(/(.{5})(?=.)/g, '$1 ');
    }
    Object.assign(globalThis, { were });
  });
  await look();
  await page.evaluate(() => {
    for (const [text, was] of (globalThis as unknown as { were: [Text, string][] }).were) text.data = was;
  });
}

/** An alert that holds the focus is read twice: once as such, once for what is around the focus. */
export const readTwice = (page: Page): Promise<string | null> =>
  page.evaluate(
    () => document.activeElement?.closest('[role="alert"], [aria-live="assertive"]')?.outerHTML.slice(0, 120) ?? null,
  );

/** Elements whose words are cut off. An ad's own title is, in rows and above the answer, on purpose: the ad itself is a key away. */
export const cut = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('main *, header *')]
      .filter((one) => {
        const { overflowX, overflowY, clip } = getComputedStyle(one);
        const hides = (overflow: string): boolean => overflow === 'hidden' || overflow === 'clip';
        if (one.closest('.unseen, .find-title, .ad-title, svg') || clip !== 'auto' || one.clientWidth === 0) return false;
        return (
          (hides(overflowX) && one.scrollWidth > one.clientWidth + 1) ||
          (hides(overflowY) && one.scrollHeight > one.clientHeight + 1)
        );
      })
      .map((one) => one.outerHTML.slice(0, 120)),
  );

/** By how many px the page is wider than its window. */
export const wider = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

/** Fill and stroke of everything that is drawn, while the buyer's own choice of theme is the one given. */
export const paints = (page: Page, theme: string): Promise<string[]> =>
  page.evaluate((chosen) => {
    const { dataset } = document.documentElement;
    const before = dataset.theme;
    dataset.theme = chosen;
    const found = [...document.querySelectorAll('svg, svg *')].map((one) => {
      const { fill, stroke } = getComputedStyle(one);
      return `${one.outerHTML.slice(0, 60)}: ${fill} ${stroke}`;
    });
    if (before === undefined) delete dataset.theme;
    else dataset.theme = before;
    return found;
  }, theme);

/** Elements with words of their own that stay small when the reader's size of text is doubled. */
export const staysSmall = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const all = [...document.querySelectorAll<HTMLElement | SVGGraphicsElement>('body *')].filter((one) =>
      [...one.childNodes].some(({ nodeType, textContent }) => nodeType === Node.TEXT_NODE && textContent?.trim()),
    );
    const size = (one: Element): number =>
      Number.parseFloat(getComputedStyle(one).fontSize) * (one instanceof SVGTextElement ? (one.getScreenCTM()?.d ?? 1) : 1);
    const before = all.map(size);
    document.documentElement.style.fontSize = '200%';
    const small = all.filter((one, at) => size(one) < 1.99 * (before[at] ?? 0));
    document.documentElement.style.fontSize = '';
    return small.map((one) => one.outerHTML.slice(0, 120));
  });

export interface Tabbed {
  readonly stops: number;
  /** Controls that Tab did not reach. */
  readonly missed: readonly string[];
  /** Where the focus does not show. */
  readonly unseen: readonly string[];
  /** Focused, with the middle or a corner under something else or out of sight (2.4.11, and 2.4.12 by its corners). */
  readonly covered: readonly string[];
}

/** Presses Tab through the whole page, or Shift+Tab when it goes back. */
export async function tabThrough(page: Page, back: boolean): Promise<Tabbed> {
  // Of a group of radio buttons Tab stops at one, of a long list at one row.
  const stops = await page.evaluate(() => {
    const all = [
      ...document.querySelectorAll<HTMLElement>(
        'a[href], button:enabled, input:enabled, select, textarea, summary, [tabindex="0"]',
      ),
    ];
    const reachable = all.filter((one) => {
      if (!one.checkVisibility() || one.tabIndex < 0) return false;
      if (!(one instanceof HTMLInputElement) || one.type !== 'radio') return true;
      const group = document.querySelectorAll<HTMLInputElement>(`input[name="${CSS.escape(one.name)}"]`);
      return one.checked || ([...group].every(({ checked }) => !checked) && group[0] === one);
    });
    for (const [at, one] of reachable.entries()) one.dataset.stop = String(at);
    return reachable.length;
  });
  const reached = new Set<string>();
  const unseen: string[] = [];
  const covered: string[] = [];
  if (back) await page.keyboard.down('Shift');
  for (let press = 0; press < stops + 5; press += 1) {
    await page.keyboard.press('Tab');
    const at = await page.evaluate(() => {
      const one = document.activeElement as HTMLElement;
      const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(one);
      const shows = (outlineStyle !== 'none' && Number.parseFloat(outlineWidth) > 0) || boxShadow !== 'none';
      // Words that run over several lines have a box for each.
      const { left, right: end, top, bottom } = one.getClientRects()[0] ?? one.getBoundingClientRect();
      // A long title is cut short on purpose.
      const right = Math.min(end, one.closest('.find-title')?.getBoundingClientRect().right ?? end);
      const points = [
        [(left + right) / 2, (top + bottom) / 2],
        ...[left + 3, right - 3].flatMap((x) => [top + 3, bottom - 3].map((y) => [x, y])),
      ];
      const isClear = points.every(([x = 0, y = 0]) => {
        const there = document.elementFromPoint(x, y);
        return there !== null && (one.contains(there) || there.contains(one));
      });
      return { stop: one.dataset.stop ?? null, shows, isClear, html: one.outerHTML.slice(0, 120) };
    });
    if (at.stop === null) continue;
    reached.add(at.stop);
    if (!at.shows) unseen.push(at.html);
    if (!at.isClear) covered.push(at.html);
  }
  if (back) await page.keyboard.up('Shift');
  const missed = await page.$$eval(
    '[data-stop]',
    (all, known) =>
      all.filter((one) => !known.includes((one as HTMLElement).dataset.stop ?? '')).map((one) => one.outerHTML.slice(0, 120)),
    [...reached],
  );
  return { stops, missed, unseen, covered };
}

export interface Told {
  /** Roles of what takes the focus and has no name. */
  readonly nameless: readonly string[];
  /** Role and name of controls that are there more than once, so that a list of them tells nothing; in groups of one name, or links to several places. */
  readonly twice: readonly string[];
  /** What explains a field to the eye alone. */
  readonly unsaid: readonly string[];
}

type Node = Protocol.Accessibility.AXNode;
const GROUPS = ['group', 'radiogroup', 'region', 'listitem', 'cell', 'row'];

/** What the browser tells a screen reader. */
export async function told(page: Page, session: CDPSession): Promise<Told> {
  const { nodes } = await session.send('Accessibility.getFullAXTree');
  const byId = new Map(nodes.map((node) => [node.nodeId, node]));
  const nameOf = ({ name }: Node): string => String(name?.value ?? '').trim();
  const roleOf = ({ role }: Node): string => String(role?.value ?? '');
  const has = (node: Node, name: string): unknown => node.properties?.find((one) => one.name === name)?.value.value;
  /** Names of the groups around it, which are read when one is entered. */
  const around = (node: Node): string[] => {
    const above = byId.get(node.parentId ?? '');
    if (!above) return [];
    const own = !above.ignored && GROUPS.includes(roleOf(above)) && nameOf(above) !== '' ? [nameOf(above)] : [];
    return [...around(above), ...own];
  };
  const controls = nodes.filter((node) => !node.ignored && has(node, 'focusable') === true && roleOf(node) !== 'RootWebArea');
  const seen = new Map<string, string>();
  const twice = new Set<string>();
  for (const [at, node] of controls.entries()) {
    if (roleOf(node) === 'option') continue;
    const key = [...around(node), `${roleOf(node)} "${nameOf(node)}"`].join(' > ');
    const leads = String(has(node, 'url') ?? at);
    if (seen.has(key) && seen.get(key) !== leads) twice.add(key);
    seen.set(key, leads);
  }
  return {
    nameless: controls.filter((node) => nameOf(node) === '').map(roleOf),
    twice: [...twice],
    unsaid: await unsaid(page, session, nodes),
  };
}

/** References to what is not there or says nothing (aria-describedby and the like). */
export const pointsNowhere = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    ['aria-describedby', 'aria-labelledby', 'aria-controls', 'aria-activedescendant'].flatMap((name) =>
      [...document.querySelectorAll(`[${name}]`)].flatMap((one) =>
        (one.getAttribute(name) ?? '')
          .split(/\s+/)
          .filter((id) => !document.getElementById(id)?.textContent?.trim())
          .map((id) => `${name}="${id}": ${one.outerHTML.slice(0, 120)}`),
      ),
    ),
  );
