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

const PRICE = new Set(['price', 'prices', 'pricing', 'asking', 'amount', 'preis', 'cost']);
const OTHER_PRICE = new Set(
  'old was former before original list msrp rrp retail regular compare strike strikethrough crossed ship shipping delivery tax fee unit per save saving savings discount off range filter min max sort'.split(
    ' ',
  ),
);

/** Named as a price, and not as a former, list, shipping or unit price. */
export const isPriceHint = (hints: readonly string[]): boolean =>
  hints.some((hint) => PRICE.has(hint)) && !hints.some((hint) => OTHER_PRICE.has(hint));

const APART = new Set(
  'related similar recommended recommendation recommendations suggestions suggested sponsored advert advertisement ads promo promoted breadcrumb breadcrumbs cookie cookies consent gdpr newsletter comments share sharing social recently'.split(
    ' ',
  ),
);
const APART_ROLES = new Set(
  'navigation banner contentinfo complementary search dialog alertdialog menu menubar toolbar tablist'.split(' '),
);
const APART_HEADING =
  /^(?:related|similar|recommended|suggested|sponsored|recently viewed|(?:see|view|browse)? ?(?:more|other) (?:from|like|ads?|listings?|items?|results|in)\b|other (?:ads|listings|items)|you (?:may|might) (?:also )?(?:like|be interested)|people (?:also|who)|customers (?:also|who)|ähnliche|weitere anzeigen)/i;

/** Parts of a page that are not the ad: navigation, page header and footer, asides, lists of other ads, cookie text. */
export function isApart(element: Element): boolean {
  const tag = tagOf(element);
  if (tag === 'NAV' || tag === 'FOOTER' || tag === 'ASIDE' || tag === 'DIALOG') return true;
  if (tag === 'HEADER') return !own(element).closest('main, article, [role="main"]');
  if (APART_ROLES.has(own(element).getAttribute('role') ?? '')) return true;
  if (tag === 'MAIN' || tag === 'ARTICLE' || tag === 'BODY' || tag === 'HTML') return false;
  const named = `${own(element).getAttribute('class') ?? ''} ${own(element).id}`;
  if (named.trim() !== '' && hintsOf(element).some((hint) => APART.has(hint)) && !own(element).querySelector('h1')) return true;
  if (tag !== 'SECTION' && tag !== 'DIV' && tag !== 'UL') return false;
  const heading = own(element).querySelector(':scope > h2, :scope > h3, :scope > h4, :scope > header > h2, :scope > header > h3');
  return heading !== null && APART_HEADING.test((heading.textContent ?? '').trim());
}
