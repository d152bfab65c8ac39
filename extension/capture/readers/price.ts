/** What a page itself marks up as the price, as it is shown. */
import { hintsOf, isPriceHint } from './hints.ts';
import { MAX_PRICE_TEXT } from './limits.ts';
import { microdataValue } from './microdata.ts';
import { own } from './own.ts';
import { isOutside } from './ranges.ts';
import { type ReadTextOptions, readText } from './read-text.ts';

const LONGEST = 40;
/** Elements named as a price that are looked at. */
const MOST_READ = 300;
const HINTED =
  '[itemprop="price"],[class*="price" i],[id*="price" i],[data-testid*="price" i],[data-test*="price" i],[data-qa*="price" i],[aria-label*="price" i],[class*="asking" i],[class*="amount" i],[class*="preis" i]';

const currencyBeside = (element: Element): string => {
  const scope = own(element).closest('[itemscope]') ?? own(element).parentElement;
  const currency = (scope && own(scope))?.querySelector('[itemprop="priceCurrency"]');
  return currency ? `${microdataValue(currency).trim()} ` : '';
};

/** The price element: the one that shows most plainly a number, by microdata first, then by what it is named. Null when there is none. */
export function readPrice(block: Element, options: ReadTextOptions): { text: string; element: Element } | null {
  let looked = 0;
  let named: { text: string; element: Element } | null = null;
  for (const element of [block, ...own(block).querySelectorAll(HINTED)]) {
    if (element === block && !own(block).matches(HINTED)) continue;
    if (isOutside(element, options.ranges)) continue;
    if (options.skip && isSkipped(element, block, options.skip)) continue;
    const marked = own(element).getAttribute('itemprop') === 'price';
    if (!marked && (named || !isPriceHint(hintsOf(element)))) continue;
    if (++looked > MOST_READ) break;
    const seen = readText(element, { ...options, limit: 400 });
    const struckAll = seen.struck.some(({ start, end }) => start === 0 && end === seen.text.length);
    const shown = withoutStruck(seen).replace(/\s+/g, ' ').trim();
    const isShort = shown.length <= LONGEST && /\d/.test(shown) && !struckAll;
    if (marked) {
      const content = own(element).getAttribute('content')?.trim() ?? '';
      const text = isShort ? shown : content === '' ? '' : `${currencyBeside(element)}${content}`;
      if (text !== '') return { text: text.slice(0, MAX_PRICE_TEXT), element };
    } else if (isShort && isVisible(element, options)) named = { text: shown.slice(0, MAX_PRICE_TEXT), element };
  }
  return named;
}

const withoutStruck = ({ text, struck }: { text: string; struck: readonly { start: number; end: number }[] }): string =>
  struck.reduceRight((rest, { start, end }) => rest.slice(0, start) + rest.slice(end), text);

const isVisible = (element: Element, { sight }: ReadTextOptions): boolean => {
  for (let at: Element | null = element; at; at = own(at).parentElement) if (sight.lookOf(at).hidden) return false;
  return true;
};

const isSkipped = (element: Element, block: Element, skip: (element: Element) => boolean): boolean => {
  for (let at: Element | null = element; at && at !== block; at = own(at).parentElement) if (skip(at)) return true;
  return false;
};
