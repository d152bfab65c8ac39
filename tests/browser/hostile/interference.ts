/** Pages that act: against what we put into them, against keys and mouse, with false messages, or by going away. */
import { setTimeout as wait } from 'node:timers/promises';
import type { Page } from 'puppeteer-core';
import { adPage, type HostileCase, listPage, script } from './case.ts';

const acts = (name: string, code: string, rest: Partial<HostileCase> = {}): HostileCase => ({
  name,
  body: adPage({ after: script(code) }),
  ...rest,
});
const actsOnList = (name: string, code: string, rest: Partial<HostileCase> = {}): HostileCase => ({
  name,
  by: 'sweep',
  reads: null,
  body: listPage({ after: script(code) }),
  ...rest,
});
/** Something the page does once it is asked: in its own world. */
const then = (code: string) => ({
  meanwhile: async (page: Page) => {
    await page.evaluate(code).catch(() => null);
    await wait(100);
  },
});

const goElsewhere = (page: Page) =>
  Promise.all([
    page.waitForNavigation({ timeout: 3000 }).catch(() => null),
    page.evaluate("location.href = '/normal?elsewhere'").catch(() => null),
  ]);

/** Everything in the root element that the page did not put there. */
const OURS = '[...document.documentElement.children].filter((one) => one !== document.head && one !== document.body)';
const ON_CHANGE = (code: string) =>
  `new MutationObserver(() => { for (const one of ${OURS}) { ${code} } }).observe(document.documentElement, { childList: true })`;
const SWALLOW = `for (const type of ['keydown', 'keypress', 'keyup', 'pointerdown', 'mousedown', 'pointerup', 'mouseup', 'click'])
  window.addEventListener(type, (event) => { event.stopImmediatePropagation(); event.preventDefault(); }, { capture: true, passive: false })`;
/** Any of these may stand for an ad that the page keeps from being picked. */
const toldWhy = { reads: null, ends: ['answer', 'failed', 'empty', 'nothing'] } as const;

export const interference: readonly HostileCase[] = [
  acts('takes away what is put into it', ON_CHANGE('one.remove()'), toldWhy),
  acts('takes away what is put into it, once', '', { ...then(`${OURS}.forEach((one) => one.remove())`) }),
  acts(
    'hides what is put into it',
    ON_CHANGE("one.style.cssText = 'display: none !important'; one.hidden = true; one.inert = true"),
  ),
  acts(
    'moves what is put into it into a hidden box',
    `const box = document.createElement('div'); box.hidden = true; document.body.append(box); ${ON_CHANGE('box.append(one)')}`,
    toldWhy,
  ),
  acts(
    'copies what is put into it a hundred times',
    `let left = 100; ${ON_CHANGE('if (left-- > 0) document.body.append(one.cloneNode(true))')}`,
  ),
  acts(
    'closes what is put on top of it',
    "setInterval(() => { for (const one of document.querySelectorAll('[popover]')) one.hidePopover?.() }, 5)",
  ),
  acts(
    'puts a dialog on top of everything',
    "const dialog = document.createElement('dialog'); dialog.textContent = 'Buy now'; document.body.append(dialog)",
    then("document.querySelector('dialog').showModal()"),
  ),
  acts('swallows keys and mouse', SWALLOW),
  acts(
    'swallows keys and takes the focus back all the time',
    `${SWALLOW}; const field = document.createElement('input'); document.body.append(field); setInterval(() => { window.focus(); field.focus() }, 10)`,
  ),
  acts(
    'ends picking by the name of our event',
    "setInterval(() => window.dispatchEvent(new CustomEvent('ironsift:newer-capture')), 5)",
  ),
  acts(
    'sends our messages by window',
    "for (const type of ['captured', 'take', 'picking', 'swept', 'capture-failed']) window.postMessage({ type, mode: 'pick', listing: { text: 'false' }, run: 'x', ads: [] }, '*')",
  ),
  acts(
    'sends our messages as events',
    "for (const type of ['captured', 'take', 'picking', 'swept']) { document.dispatchEvent(new CustomEvent(type, { detail: { listing: { text: 'false' } } })); window.dispatchEvent(new MessageEvent('message', { data: { type } })) }",
  ),
  acts(
    'makes false key presses and clicks',
    "setInterval(() => { for (const target of [window, document, document.activeElement]) { target?.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true })); target?.dispatchEvent(new MouseEvent('click', { bubbles: true })) } }, 10)",
  ),
  acts('opens its document anew while picking', '', {
    ...toldWhy,
    ...then('document.open(); document.write("<p>gone</p>"); document.close()'),
  }),
  acts('writes to its document while picking', '', { ...toldWhy, ...then("document.write('<p>more</p>')") }),
  acts('takes its body away while picking', '', { ...toldWhy, ...then('document.body.remove()') }),
  acts('takes its root element away while picking', '', { ...toldWhy, ...then('document.documentElement.remove()') }),
  acts('puts another body in its place while picking', '', {
    ...then(
      "const body = document.createElement('body'); body.innerHTML = '<main><h1>Olympic plates</h1><p class=price>$100</p><ul><li>4 x 45 lb</ul></main>'; document.body.replaceWith(body)",
    ),
  }),
  acts('puts the ad itself elsewhere while picking', '', {
    reads: 'Olympic plates',
    ...then("document.body.prepend(document.getElementById('ad'))"),
  }),
  acts('navigates while picking', '', {
    moves: true,
    ...toldWhy,
    meanwhile: async (page) => {
      await goElsewhere(page);
    },
  }),
  acts(
    'changes its address all the time',
    "let n = 0; setInterval(() => { try { history.pushState({}, '', '?' + n++); history.replaceState({}, '', '#' + n) } catch {} }, 40)",
    { moves: true },
  ),
  acts('asks before it is left', "window.onbeforeunload = (event) => { event.preventDefault(); return 'stay' }"),
  acts('scrolls all the time', "document.body.style.height = '9000px'; setInterval(() => scrollTo(0, Math.random() * 9000), 5)"),
  acts(
    'changes all its text all the time',
    "setInterval(() => { document.querySelector('h1').textContent = 'Olympic plates, 230 lb ' + Math.random() }, 1)",
  ),
  acts(
    'grows while picking',
    "setInterval(() => document.body.append(Object.assign(document.createElement('p'), { textContent: 'more' })), 1)",
  ),
  acts('goes full of timers', 'for (let n = 0; n < 5000; n += 1) setInterval(() => 0, 1)'),
  actsOnList('a list that takes the labels away', ON_CHANGE('one.remove()')),
  actsOnList(
    'a list that moves the labels into a hidden box',
    `const box = document.createElement('div'); box.hidden = true; document.body.append(box); ${ON_CHANGE('box.append(one)')}`,
  ),
  actsOnList(
    'a list that copies the labels',
    `let left = 100; ${ON_CHANGE('if (left-- > 0) document.body.append(one.cloneNode(true))')}`,
  ),
  actsOnList(
    'a list that ends the sweep by the name of our event',
    "setInterval(() => window.dispatchEvent(new CustomEvent('ironsift:newer-sweep')), 5)",
  ),
  actsOnList(
    'a list that grows without end',
    "let n = 100; setInterval(() => { for (let k = 0; k < 20; k += 1) { const one = document.querySelector('article').cloneNode(true); one.querySelector('a').href = '/ad/' + n; one.querySelector('a').textContent = 'Iron plates ' + n++ + ' x 45 lb'; document.getElementById('list').append(one) } }, 10)",
  ),
  actsOnList(
    'a list that grows by nothing new, without end',
    "setInterval(() => document.getElementById('list').append(document.querySelector('article').cloneNode(true)), 5)",
  ),
  actsOnList(
    'a list that turns its ads about all the time',
    "setInterval(() => document.getElementById('list').prepend(document.getElementById('list').lastElementChild), 1)",
  ),
  actsOnList('a list that loses its ads while it is read', '', {
    ends: ['list', 'empty'],
    ...then("document.getElementById('list').replaceChildren()"),
  }),
  actsOnList('a list that navigates while it is read', '', {
    moves: true,
    ends: ['list', 'empty'],
    meanwhile: async (page) => {
      await goElsewhere(page);
    },
  }),
  actsOnList('a list that opens its document anew while it is read', '', {
    ends: ['list', 'empty'],
    ...then('document.open(); document.write("<p>gone</p>"); document.close()'),
  }),
  actsOnList(
    'a list that rewrites all its cards all the time',
    "setInterval(() => { for (const one of document.querySelectorAll('article')) one.innerHTML = one.innerHTML }, 30)",
  ),
];
