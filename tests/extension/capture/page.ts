/** Small pages for the readers' tests. */
import { type Captured, readElement } from '../../../extension/capture/readers/index.ts';
import { readJsonLd } from '../../../extension/capture/readers/json-ld.ts';
import { readText, type SeenText } from '../../../extension/capture/readers/read-text.ts';
import { computedSight } from '../../../extension/capture/readers/sight.ts';

/** A document with this body, rendered by the test environment. */
export function show(body: string, head = ''): Document {
  document.documentElement.removeAttribute('lang');
  document.head.innerHTML = head;
  document.body.innerHTML = body;
  return document;
}

export const seen = (body: string, head = ''): SeenText => readText(show(body, head).body, { sight: computedSight() });
export const textOf = (body: string, head = ''): string => seen(body, head).text;
export const pick = (selector: string): Captured => {
  const block = document.querySelector(selector);
  if (!block) throw new Error(`no ${selector}`);
  return readElement(block, { origin: 'pick' });
};
export const linked = (...sources: readonly string[]) =>
  readJsonLd(show('', sources.map((source) => `<script type="application/ld+json">${source}</script>`).join('')));
