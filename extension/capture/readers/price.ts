/** What a page itself marks up as the price, as it is shown. */
import { hintsOf, isPriceHint } from './hints.ts';
import { MAX_PRICE_TEXT } from './limits.ts';
import { microdataValue } from './microdata.ts';
import { own } from './own.ts';
import { isOutside } from './ranges.ts';
import { type ReadTextOptions, readText } from './read-text.ts';
import { isLeftOut } from './title.ts';

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
export function readPrice(block: Element, options: ReadTextOptions): string | null {
  let looked = 0;
  let named: string | null = null;
  for (const element of [block, ...own(block).querySelectorAll(HINTED)]) {
    if (element === block && !own(block).matches(HINTED)) continue;
    if (isOutside(element, options.ranges)) continue;
    if (isLeftOut(element, block, { skip: options.skip })) continue;
    const marked = own(element).getAttribute('itemprop') === 'price';
    if (!marked && (named || !isPriceHint(hintsOf(element)))) continue;
    if (++looked > MOST_READ) break;
    const shown = shownPrice(element, options);
    if (marked) {
      const content = own(element).getAttribute('content')?.trim() ?? '';
      const text = shown || (content && `${currencyBeside(element)}${content}`);
      if (text !== '') return text.slice(0, MAX_PRICE_TEXT);
    } else if (shown !== '' && !isLeftOut(element, null, { sight: options.sight })) named = shown;
  }
  return named;
}

/** What an element shows as a price, without what is struck through; empty when that is no number or too long. */
export function shownPrice(element: Element, options: ReadTextOptions): string {
  const shown = withoutStruck(readText(element, { ...options, limit: 400 }))
    .replace(/\s+/g, ' ')
    .trim();
  return shown.length <= LONGEST && /\d/.test(shown) ? shown : '';
}

const withoutStruck = ({ text, struck }: { text: string; struck: readonly { start: number; end: number }[] }): string =>
  struck.reduceRight((rest, { start, end }) => rest.slice(0, start) + rest.slice(end), text);
