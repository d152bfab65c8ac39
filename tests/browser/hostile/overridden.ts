/** Pages that freeze, replace or poison what is built in, in their own world. */
import { adPage, type HostileCase, listPage, script } from './case.ts';

const with_ = (name: string, code: string, by: HostileCase['by'] = 'pick'): HostileCase =>
  by === 'sweep'
    ? { name: `${name}, on a list`, by, reads: null, body: listPage({ head: script(code) }) }
    : { name, by, body: adPage({ head: script(code) }) };

const BOOM = "function () { throw new Error('boom'); }";
const each = (owner: string): string =>
  `for (const key of Reflect.ownKeys(${owner})) { try { Object.defineProperty(${owner}, key, { get: ${BOOM}, configurable: false }); } catch {} }`;

export const overridden: readonly HostileCase[] = [
  with_(
    'Element.prototype frozen',
    'Object.freeze(Element.prototype); Object.freeze(Node.prototype); Object.freeze(HTMLElement.prototype)',
  ),
  with_('every property of Element.prototype throws', each('Element.prototype')),
  with_('every property of Element.prototype throws', each('Element.prototype'), 'sweep'),
  with_('every property of Node.prototype throws', each('Node.prototype')),
  with_(
    'Array.prototype throws',
    `Array.prototype[Symbol.iterator] = Array.prototype.push = Array.prototype.map = Array.prototype.filter = ${BOOM}`,
  ),
  with_('JSON throws', `JSON.parse = JSON.stringify = ${BOOM}; Object.prototype.toJSON = ${BOOM}`),
  with_(
    'promises never settle',
    'window.Promise = class { then() {} catch() {} }; Promise.prototype && (Promise.prototype.then = () => {})',
  ),
  with_(
    'MutationObserver and IntersectionObserver are gone',
    'window.MutationObserver = window.IntersectionObserver = window.ResizeObserver = undefined',
    'sweep',
  ),
  with_('ranges and selections throw', `${each('Range.prototype')} Selection.prototype.getRangeAt = ${BOOM}`, 'pick'),
  with_('highlights throw', `CSS.highlights.set = CSS.highlights.delete = ${BOOM}; window.Highlight = ${BOOM}`),
  with_(
    'shadow roots are forced open',
    "const own = Element.prototype.attachShadow; Element.prototype.attachShadow = function () { return (window.got = own.call(this, { mode: 'open' })); }",
  ),
  with_(
    'createElement gives something else',
    "document.createElement = () => document.createTextNode('x'); Document.prototype.createElement = document.createElement",
  ),
  with_(
    'listeners can not be added',
    `EventTarget.prototype.addEventListener = ${BOOM}; Event.prototype.stopImmediatePropagation = ${BOOM}`,
  ),
  with_(
    'computed styles lie',
    "window.getComputedStyle = () => ({ display: 'none' }); Object.defineProperty(Element.prototype, 'checkVisibility', { value: () => false })",
  ),
  with_(
    'computed styles lie',
    "window.getComputedStyle = () => ({ display: 'none' }); Object.defineProperty(Element.prototype, 'checkVisibility', { value: () => false })",
    'sweep',
  ),
  with_(
    'Object.prototype is poisoned',
    "Object.prototype.type = 'take'; Object.prototype.ok = true; Object.prototype.mode = 'x'; Object.prototype.capture = () => 1; Object.defineProperty(Object.prototype, 'listing', { set() { new Image().src = '/hit/setter'; } })",
  ),
  with_(
    'Symbol.iterator is broken',
    `Array.prototype[Symbol.iterator] = Map.prototype[Symbol.iterator] = NodeList.prototype[Symbol.iterator] = ${BOOM}`,
  ),
  with_(
    'time stands still',
    'Date.now = performance.now = () => 0; window.setTimeout = window.requestAnimationFrame = () => 0',
    'sweep',
  ),
  with_('Function.prototype throws', `Function.prototype.call = Function.prototype.apply = Function.prototype.bind = ${BOOM}`),
  with_(
    "the browser's names are taken",
    "Object.defineProperty(window, 'chrome', { value: { runtime: { id: 'x', sendMessage: () => { new Image().src = '/hit/chrome'; } } } }); window.browser = window.chrome",
  ),
  with_(
    'getters for every named global of ours',
    "for (const name of ['ironsiftDispose', 'browser']) Object.defineProperty(window, name, { get() { new Image().src = '/hit/getter'; } })",
  ),
  {
    name: 'custom elements that throw when they are made',
    body: adPage({
      head: script(
        "customElements.define('x-ad', class extends HTMLElement { constructor() { super(); throw new Error('boom'); } })",
      ),
      inside: '<x-ad>text</x-ad>',
    }),
  },
  {
    name: 'custom elements that run code when they are read',
    body: adPage({
      head: script(
        "customElements.define('x-ad', class extends HTMLElement { get childNodes() { new Image().src = '/hit/own'; return []; } get textContent() { new Image().src = '/hit/own'; return ''; } attributeChangedCallback() {} })",
      ),
      inside: '<x-ad><p>2 x 10 lb</p></x-ad>',
    }),
    reads: '2 x 10 lb',
  },
];
