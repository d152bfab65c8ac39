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

/** An alert that holds the focus is read twice: once as such, once for what is around the focus. */
export const readTwice = (page: Page): Promise<string | null> =>
  page.evaluate(
    () => document.activeElement?.closest('[role="alert"], [aria-live="assertive"]')?.outerHTML.slice(0, 120) ?? null,
  );

/**
 * What sticks out of the page, and what hides a part of its own words, in one look. An ad's own title does, in rows and above the answer, on
 * purpose: the ad itself is a key away.
 */
export const lost = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const wide = document.documentElement.scrollWidth > innerWidth;
    const all = [...document.querySelectorAll<HTMLElement>('body *')].filter(
      (one) => one.clientWidth > 0 && !one.closest('.unseen, .find-title, .ad-title, svg'),
    );
    const sticking = wide
      ? all.filter((one) => {
          const { left, right } = one.getBoundingClientRect();
          return right > innerWidth + 1 || left < -1;
        })
      : [];
    const cut = all.filter((one) => {
      const { overflowX, overflowY } = getComputedStyle(one);
      const hides = (overflow: string): boolean => overflow === 'hidden' || overflow === 'clip';
      return (
        (hides(overflowX) && one.scrollWidth > one.clientWidth + 1) ||
        (hides(overflowY) && one.scrollHeight > one.clientHeight + 1)
      );
    });
    return [
      ...(wide ? ['the page is too wide'] : []),
      ...[...sticking.slice(-6), ...cut].map((one) => one.outerHTML.slice(0, 160)),
    ];
  });

/** What is drawn in other fill or stroke when the buyer's own choice of theme is dark than when it is light. */
export const repainted = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const { dataset } = document.documentElement;
    const before = dataset.theme;
    const all = [...document.querySelectorAll('svg, svg *')];
    const [dark = [], light = []] = ['dark', 'light'].map((theme) => {
      dataset.theme = theme;
      return all.map((one) => {
        const { fill, stroke } = getComputedStyle(one);
        return `${fill} ${stroke}`;
      });
    });
    if (before === undefined) delete dataset.theme;
    else dataset.theme = before;
    return all.flatMap((one, at) => (dark[at] === light[at] ? [] : [`${one.outerHTML.slice(0, 60)}: ${dark[at]}, ${light[at]}`]));
  });

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

/** As the protocol counts keys that are held. */
const SHIFT = 8;

export interface Tabbed {
  readonly stops: number;
  /** How often the page was looked at: five times more than it has stops. */
  readonly presses: number;
  /** Controls that Tab did not reach. */
  readonly missed: readonly string[];
  /** Where the focus does not show. */
  readonly unseen: readonly string[];
  /** Focused, with the middle or a corner under something else or out of sight (2.4.11, and 2.4.12 by its corners). */
  readonly covered: readonly string[];
}

interface Stop {
  readonly stop: string | null;
  readonly shows: boolean;
  readonly isClear: boolean;
  readonly html: string;
}

/**
 * Presses Tab through the whole page, or Shift+Tab when it goes back. The page itself looks where the focus is, when the key comes up: to ask it after
 * every press takes five times as long.
 */
export async function tabThrough(page: Page, session: CDPSession, back: boolean): Promise<Tabbed> {
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
    const seen: Stop[] = [];
    const look = (): void => {
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
      seen.push({ stop: one.dataset.stop ?? null, shows, isClear, html: one.outerHTML.slice(0, 120) });
    };
    addEventListener('keyup', look, true);
    Object.assign(globalThis, { seen, endLooking: () => removeEventListener('keyup', look, true) });
    return reachable.length;
  });
  const tab = { key: 'Tab', code: 'Tab', windowsVirtualKeyCode: 9, modifiers: back ? SHIFT : 0 };
  const presses = Array.from({ length: stops + 5 }, () => [
    session.send('Input.dispatchKeyEvent', { type: 'rawKeyDown', ...tab }),
    session.send('Input.dispatchKeyEvent', { type: 'keyUp', ...tab }),
  ]);
  await Promise.all(presses.flat());
  const { seen, missed } = await page.evaluate(() => {
    const { seen, endLooking } = globalThis as unknown as { seen: Stop[]; endLooking: () => void };
    endLooking();
    const reached = new Set(seen.map(({ stop }) => stop));
    const missed = [...document.querySelectorAll<HTMLElement>('[data-stop]')].filter(
      ({ dataset }) => !reached.has(dataset.stop ?? ''),
    );
    return { seen, missed: missed.map((one) => one.outerHTML.slice(0, 120)) };
  });
  const at = seen.filter(({ stop }) => stop !== null);
  return {
    stops,
    presses: seen.length,
    missed,
    unseen: at.filter(({ shows }) => !shows).map(({ html }) => html),
    covered: at.filter(({ isClear }) => !isClear).map(({ html }) => html),
  };
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
