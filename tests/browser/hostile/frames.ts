/** Shadow trees and frames. */
import { adPage, type HostileCase, LINES, listPage, script } from './case.ts';

const framed = (attributes: string): string => `<iframe ${attributes} width="400" height="300"></iframe>`;
const doc = LINES.replaceAll('"', '&quot;');

export const frames: readonly HostileCase[] = [
  {
    name: 'a closed shadow root around the ad',
    body: adPage().replace(
      `<div id="ad">${LINES}</div>`,
      `<div id="ad"><template shadowrootmode="closed">${LINES}</template></div>`,
    ),
  },
  {
    name: 'an open shadow root with the ad in a slot',
    body: adPage().replace('<div id="ad">', '<div id="ad"><template shadowrootmode="open"><slot></slot></template>'),
  },
  {
    name: 'shadow roots 1,500 deep',
    body: adPage({
      after: script(
        "{ let at = document.querySelector('main'); for (let n = 0; n < 1500; n += 1) { const one = document.createElement('div'); const root = one.attachShadow({ mode: n % 2 ? 'open' : 'closed' }); at.append(one); at = root; } at.append(document.getElementById('ad')); }",
      ),
    }),
  },
  {
    name: 'shadow roots 1,500 deep, something selected',
    by: 'selection',
    body: adPage({
      after: `<div></div>${script("{ let at = document.querySelector('body > div'); for (let n = 0; n < 1500; n += 1) { const one = document.createElement('div'); const root = one.attachShadow({ mode: 'open' }); at.append(one); at = root; } getSelection().removeAllRanges() }")}`,
    }),
  },
  {
    name: "slots that show each other's content",
    body: adPage({
      inside:
        '<div><template shadowrootmode="open"><div><template shadowrootmode="open"><slot></slot></template><slot></slot></div></template><p>2 x 10 lb</p></div>',
    }),
    reads: '2 x 10 lb',
  },
  { name: 'the ad in a frame of its own markup', body: adPage().replace(LINES, framed(`srcdoc="${doc}"`)) },
  {
    name: 'frames 20 deep',
    body: adPage({
      after: script(
        "{ let at = document; for (let n = 0; n < 20; n += 1) { const one = at.createElement('iframe'); at.body.append(one); at = one.contentDocument; } at.body.innerHTML = '<p>2 x 10 lb</p>'; }",
      ),
    }),
  },
  {
    name: 'a frame whose address changes all the time',
    body: adPage({
      inside: `<iframe id="f"></iframe>${script("setInterval(() => { document.getElementById('f').srcdoc = 'x' + Math.random() }, 20)")}`,
    }),
  },
  {
    name: 'a frame that is taken away while picking',
    body: adPage({ inside: `<iframe id="f" srcdoc="${doc}"></iframe>` }),
    meanwhile: (page) => page.evaluate(() => document.getElementById('f')?.remove()),
  },
  {
    name: 'frames that come and go while picking',
    body: adPage({
      after: script(
        "setInterval(() => { document.querySelectorAll('iframe').forEach((one) => one.remove()); document.body.append(document.createElement('iframe')) }, 10)",
      ),
    }),
  },
  { name: 'a sandboxed frame', body: adPage({ inside: framed(`sandbox srcdoc="${doc}"`) }) },
  { name: 'a frame of another origin', body: adPage({ inside: framed('src="http://localhost:PORT/normal"') }) },
  { name: 'frames that are scripts', body: adPage({ inside: framed('src="javascript:\'2 x 10 lb\'"') }) },
  { name: '80 frames', body: () => adPage({ inside: '<iframe></iframe>'.repeat(80) }) },
  {
    name: 'a list of ads each in a frame',
    by: 'sweep',
    reads: null,
    ends: ['list', 'empty'],
    body: listPage({ inCard: '<iframe srcdoc="x"></iframe>' }),
  },
  {
    name: 'objects and embedded documents',
    body: adPage({
      inside: '<object data="data:text/html,x" type="text/html"></object><embed src="data:text/html,x" type="text/html">',
    }),
  },
];
