/** What an element says of itself in class names, ids and labels, as lower-case words: "listPrice--old" gives list, price, old. */

import { own } from './own.ts';
import { tagOf } from './rendered.ts';

const ATTRIBUTES = ['class', 'id', 'data-testid', 'data-test', 'data-qa', 'aria-label', 'itemprop'];

export function hintsOf(element: Element): readonly string[] {
  const reading = own(element);
  const named = ATTRIBUTES.map((name) => reading.getAttribute(name) ?? '').join(' ');
  return named
    .slice(0, 500)
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter(Boolean);
}

const PRICE = /^(?:pric(?:es?|ing)|asking|amount|preis|cost)$/;
const OTHER_PRICE =
  /^(?:old$|was$|former$|before$|original|list$|msrp|rrp|retail|regular|compare|strike|crossed|ship|delivery|tax$|fee$|unit|per$|sav(?:e|ing)|discount|off$|range|filter|min$|max$|sort)/;

/** Named as a price, and not as a former, list, shipping or unit price. */
export const isPriceHint = (hints: readonly string[]): boolean =>
  hints.some((hint) => PRICE.test(hint)) && !hints.some((hint) => OTHER_PRICE.test(hint));

const APART =
  /^(?:related|similar|recommend|suggest|sponsor|advert|ads$|promo|breadcrumb|cookie|consent|gdpr|newsletter|comments$|safety|shar(?:e|ing)$|social$|recently)/;
const APART_ROLES = /^(?:navigation|banner|contentinfo|complementary|search|(?:alert)?dialog|menu(?:bar)?|toolbar|tablist)$/;
const APART_HEADING =
  /^(?:related|similar|recommended|suggested|sponsored|recently viewed|(?:see|view|browse)? ?(?:more|other) (?:from|like|ads?|listings?|items?|results|in)\b|you (?:may|might) (?:also )?(?:like|be interested)|(?:people|customers) (?:also|who)|ähnliche|weitere anzeigen|safety|stay safe|sicher)/i;

/** Begins with a heading that calls what follows other ads. In its midst, such a heading is one of a page that holds the ad as well. */
export function holdsOthers(element: Element): boolean {
  if (!/^(?:SECTION|DIV|UL)$/.test(tagOf(element))) return false;
  const heading = own(element).querySelector(':scope > h2, :scope > h3, :scope > h4, :scope > header > h2, :scope > header > h3');
  const words = (heading?.textContent ?? '').trim();
  return APART_HEADING.test(words) && (own(element).textContent ?? '').trim().startsWith(words);
}

/** Parts of a page that are not the ad: navigation, page header and footer, asides, lists of other ads, cookie text. */
export function isApart(element: Element): boolean {
  const tag = tagOf(element);
  if (/^(?:NAV|FOOTER|ASIDE|DIALOG)$/.test(tag)) return true;
  if (tag === 'HEADER') return !own(element).closest('main, article, [role="main"]');
  if (APART_ROLES.test(own(element).getAttribute('role') ?? '') || own(element).hasAttribute('inert')) return true;
  if (/^(?:MAIN|ARTICLE|BODY|HTML)$/.test(tag)) return false;
  if (own(element).hasAttributes() && hintsOf(element).some((hint) => APART.test(hint)) && !own(element).querySelector('h1'))
    return true;
  return holdsOthers(element);
}
