/** The title of an ad: a heading in the block, else what the page calls itself when the block is what the page is about. */
import { MAX_TITLE } from './limits.ts';
import { metaContent } from './open-graph.ts';
import { own } from './own.ts';
import { isOutside } from './ranges.ts';
import { type ReadTextOptions, readText } from './read-text.ts';
import { tagOf } from './rendered.ts';

const HEADINGS = 'h1, h2, h3, h4, h5, h6, [role="heading"], [itemprop="name"]';
/** Headings that are looked at: a page may have any number of them, and each as deep as it likes. */
const MOST_HEADINGS = 300;
const MOST_SHOWN = 20;
/** A list of cards stands no further about its card. */
const MOST_LEVELS = 50;
const AMOUNT = /[$€£¥]\s?\d|\d\s?(?:€|£|kr|zł|usd|eur|cad|gbp)/i;

export const squeeze = (text: string | null | undefined): string => (text ?? '').replace(/\s+/g, ' ').trim().slice(0, MAX_TITLE);

const levelOf = (element: Element): number =>
  Number(/^H([1-6])$/i.exec(tagOf(element))?.[1] ?? own(element).getAttribute('aria-level') ?? 3);

/** The first of the highest headings that can be seen in the block; empty when it has none. */
function headingIn(block: Element, options: ReadTextOptions): string {
  const headings = [...(own(block).matches(HEADINGS) ? [block] : []), ...own(block).querySelectorAll(HEADINGS)]
    .filter((heading) => !isOutside(heading, options.ranges))
    .map((heading) => ({ heading, level: levelOf(heading) }))
    .sort((a, b) => a.level - b.level);
  let shown = 0;
  for (const { heading } of headings.slice(0, MOST_HEADINGS)) {
    if (isLeftOut(heading, block, options)) continue;
    if (++shown > MOST_SHOWN) break;
    const text = squeeze(readText(heading, { ...options, limit: MAX_TITLE }).text);
    if (text !== '') return text;
  }
  return '';
}

/** Not to be seen (where sight is given), or skipped, itself or by what is around it up to the block; all the way up without a block. */
export const isLeftOut = (element: Element, block: Element | null, { skip, sight }: Partial<ReadTextOptions>): boolean => {
  for (let at: Element | null = element; at && at !== block; at = own(at).parentElement)
    if (skip?.(at) || sight?.lookOf(at).hidden) return true;
  return false;
};

export const showsAmount = (element: Element): boolean => AMOUNT.test(own(element).textContent ?? '');

/** One of several blocks of the same make that each show a price: a card of a results page, which the page's own title says nothing about. */
export function isOneOfMany(block: Element): boolean {
  let at = block;
  for (let level = 0; level < MOST_LEVELS && tagOf(at) !== 'BODY'; level += 1) {
    const around = own(at).parentElement;
    if (!around) break;
    const { tagName, className } = own(at);
    const alike = [...own(around).children].filter(
      (sibling) => own(sibling).tagName === tagName && own(sibling).className === className,
    );
    if (alike.length >= 3 && showsAmount(at)) {
      let shown = 0;
      for (const one of alike) if (showsAmount(one) && ++shown >= 3) return true;
    }
    at = around;
  }
  return false;
}

/** "Bar and plates | Town Classifieds" without the name of the site. */
export function trimSiteName(title: string, siteName: string | null): string {
  const squeezed = squeeze(title);
  const parts = squeezed.split(/\s+[|–—·»:-]\s+|\s*\|\s*/);
  if (parts.length < 2) return squeezed;
  const last = parts.at(-1) ?? '';
  const site = squeeze(siteName).toLowerCase();
  const named = site !== '' && last.toLowerCase() === site;
  // A site's name stands last, is short and holds no figures; an ad's weights and prices do.
  if (!named && (last.length > 30 || /\d/.test(last))) return squeezed;
  return squeezed.slice(0, squeezed.length - last.length).replace(/\s*[|–—·»:-]\s*$/, '');
}

/** Empty when nothing names the ad. */
export function readTitle(block: Element, options: ReadTextOptions): string {
  const heading = headingIn(block, options);
  if (heading !== '' || options.ranges || isOneOfMany(block)) return heading;
  const document = own(block).ownerDocument;
  const mains = [...own(document).querySelectorAll('h1')].filter((h1) => squeeze(h1.textContent) !== '');
  const [main] = mains;
  if (mains.length === 1 && main && !options.sight.lookOf(main).hidden) return squeeze(main.textContent);
  const siteName = metaContent(document, 'og:site_name');
  return trimSiteName(metaContent(document, 'og:title') ?? own(document).title ?? '', siteName);
}
