/** Sight in a real browser: computed style, closed shadow roots where the browser lets us, and layout. */
import { shadowRootOf } from '../platform/shadow-root.ts';
import { computedSight, type Sight } from './readers/index.ts';
import { own } from './readers/own.ts';

/** Boxes that share most of their height stand on one line. */
function sameLine(before: Element, after: Element): boolean | null {
  const [a, b] = [own(before).getBoundingClientRect(), own(after).getBoundingClientRect()];
  if (a.height === 0 || b.height === 0) return null;
  const shared = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  return shared > Math.min(a.height, b.height) / 2;
}

export const browserSight = (): Sight => computedSight(shadowRootOf, sameLine);
