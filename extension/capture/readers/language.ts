/** The language that a page declares for a part of it. */
import { MAX_LANGUAGE } from './limits.ts';
import { metaContent } from './open-graph.ts';
import { own } from './own.ts';
import { parentOf } from './rendered.ts';

/** BCP 47 tag by the nearest `lang` around the element, else the page's; null when none is declared. */
export function readLanguage(element: Element): string | null {
  for (let at: Element | null = element; at; at = parentOf(at)) {
    const tag = (own(at).getAttribute('lang') ?? own(at).getAttribute('xml:lang'))?.trim();
    if (tag) return tag.slice(0, MAX_LANGUAGE);
  }
  const declared = metaContent(own(element).ownerDocument, 'content-language')?.split(',')[0]?.trim();
  return declared ? declared.slice(0, MAX_LANGUAGE) : null;
}
