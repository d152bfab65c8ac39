/** The title of an ad: a heading in the block, else what the page calls itself when the block is what the page is about. */
import { MAX_TITLE } from './limits.ts';
import { metaContent } from './open-graph.ts';
import { isOutside } from './ranges.ts';
import { type ReadTextOptions, readText } from './read-text.ts';

const HEADINGS = 'h1, h2, h3, h4, h5, h6, [role="heading"], [itemprop="name"]';
const AMOUNT = /[$€£¥]\s?\d|\d\s?(?:€|£|kr|zł|usd|eur|cad|gbp)/i;

const squeeze = (text: string | null | undefined): string => (text ?? '').replace(/\s+/g, ' ').trim().slice(0, MAX_TITLE);

const levelOf = (element: Element): number =>
  Number(/^H([1-6])$/i.exec(element.tagName)?.[1] ?? element.getAttribute('aria-level') ?? 3);

/** The first of the highest headings that can be seen in the block; empty when it has none. */
export function headingIn(block: Element, options: ReadTextOptions): string {
  const headings = [...(block.matches(HEADINGS) ? [block] : []), ...block.querySelectorAll(HEADINGS)]
    .filter((heading) => !isOutside(heading, options.ranges) && !isSkippedIn(heading, block, options))
    .map((heading) => ({ heading, level: levelOf(heading) }))
    .sort((a, b) => a.level - b.level);
  for (const { heading } of headings.slice(0, 20)) {
    const text = squeeze(readText(heading, { ...options, limit: MAX_TITLE }).text);
    if (text !== '') return text;
  }
  return '';
}

const isSkippedIn = (element: Element, block: Element, { skip, sight }: ReadTextOptions): boolean => {
  for (let at: Element | null = element; at && at !== block; at = at.parentElement)
    if (skip?.(at) || sight.lookOf(at).hidden) return true;
  return false;
};

/** One of several blocks of the same make that each show a price: a card of a results page, which the page's own title says nothing about. */
export function isOneOfMany(block: Element): boolean {
  for (let at: Element | null = block; at?.parentElement && at.tagName !== 'BODY'; at = at.parentElement) {
    const { tagName, className } = at;
    const alike: readonly Element[] = [...at.parentElement.children].filter(
      (sibling) => sibling.tagName === tagName && sibling.className === className && AMOUNT.test(sibling.textContent ?? ''),
    );
    if (alike.length >= 3 && alike.includes(at)) return true;
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
  const document = block.ownerDocument;
  const mains = [...document.querySelectorAll('h1')].filter((h1) => squeeze(h1.textContent) !== '');
  const [main] = mains;
  if (mains.length === 1 && main && !options.sight.lookOf(main).hidden) return squeeze(main.textContent);
  const siteName = metaContent(document, 'og:site_name');
  return trimSiteName(metaContent(document, 'og:title') ?? document.title ?? '', siteName);
}
