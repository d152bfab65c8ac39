/** Labels beside the ads and a frame about one of them, all in one closed shadow root of ours: the page's own nodes stay as they are. */
import type { SweepTag } from '../../platform/messages.ts';
import { markHost } from '../generation.ts';
import { type Box, boxOf } from '../pick/geometry.ts';
import { own } from '../readers/own.ts';

const STYLE = `
:host { all: initial !important; position: absolute !important; top: 0 !important; left: 0 !important; width: 0 !important;
  height: 0 !important; display: block !important; pointer-events: none !important; z-index: 2147483646 !important; }
.tag { position: absolute; box-sizing: border-box; transform: translateX(-100%); padding: 1px 6px; overflow: hidden;
  font: .75em/1.33 system-ui; color: #fff; background: #1a1a1a; border: 1px solid #fff; border-radius: 3px;
  text-align: right; unicode-bidi: plaintext; overflow-wrap: anywhere; text-wrap: balance; width: max-content; }
.faint { color: #1a1a1a; background: #f1f0ee; border: 1px dashed #444; }
.frame { position: absolute; box-sizing: border-box; border: 3px solid #0842a0; border-radius: 3px; box-shadow: 0 0 0 2px #fff; }
`;

/** Labels narrower than this say nothing that can be read. */
const NARROWEST = 60;

/** How often the labels are put back into a page that takes them away: one that draws itself anew does so once. */
const MOST_PUT_BACK = 20;

export interface Overlay {
  /** Draws the labels of these elements, and takes all others away. Positions are read first and written after. */
  draw(tagged: ReadonlyMap<Element, SweepTag>, framed: Element | null): void;
  remove(): void;
}

/** Adds one host to the page's root element; `remove` takes it away. The panel's list says the same to screen readers. */
export function showOverlay(): Overlay {
  const host = own(document).createElement('div');
  host.setAttribute('aria-hidden', 'true');
  markHost(host, 'sweep');
  const shadow = host.attachShadow({ mode: 'closed' });
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(STYLE);
  shadow.adoptedStyleSheets = [sheet];
  own(document).documentElement.append(host);
  let left = MOST_PUT_BACK;
  /** Puts the host back when the page has taken it away. False where it does so again and again: then it stays away. */
  const putBack = (): boolean => {
    if (host.isConnected) return true;
    left -= 1;
    if (left >= 0) own(document).documentElement?.append(host);
    return host.isConnected;
  };
  const labels = new Map<Element, HTMLElement>();
  const frame = own(document).createElement('div');
  frame.className = 'frame';

  const labelOf = (element: Element): HTMLElement => {
    const known = labels.get(element);
    if (known) return known;
    const label = shadow.appendChild(own(document).createElement('div'));
    labels.set(element, label);
    return label;
  };

  return {
    draw: (tagged, framed) => {
      if (!putBack()) return;
      const origin = host.getBoundingClientRect();
      const inHost = (element: Element): Box => {
        const { left, top, width, height } = boxOf(element);
        return { left: left - origin.left, top: top - origin.top, width, height };
      };
      const boxes = [...tagged].map(([element, tag]) => ({ element, tag, box: inHost(element) }));
      const around = framed ? inHost(framed) : null;
      for (const [element, label] of labels) {
        if (tagged.has(element)) continue;
        label.remove();
        labels.delete(element);
      }
      for (const { element, tag, box } of boxes) {
        const label = labelOf(element);
        if (label.textContent !== tag.words) label.textContent = tag.words;
        label.className = tag.tone === 'faint' ? 'tag faint' : 'tag';
        const { style } = label;
        // Inside its ad's own box, so that the page can't be scrolled further than before.
        style.display = box.width < NARROWEST ? 'none' : 'block';
        style.left = `${box.left + box.width}px`;
        style.top = `${box.top}px`;
        style.maxWidth = `${box.width}px`;
      }
      if (!around) frame.remove();
      else {
        shadow.append(frame);
        for (const [side, length] of Object.entries(around)) frame.style.setProperty(side, `${length}px`);
      }
    },
    remove: () => host.remove(),
  };
}
