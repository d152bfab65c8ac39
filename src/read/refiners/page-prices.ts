/** Prices that the page marks up itself (its price element, schema.org offers, OpenGraph) beside those of the text. */
import type { PageListing } from '../../listing/page-listing.ts';
import type { Language } from '../language/language.ts';
import type { Price, PriceRole } from '../mention.ts';
import { readPrices } from '../recognisers/prices.ts';
import { type Scan, scanText } from '../text/scan.ts';

const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/C\$|CA\$|CAD/, 'CAD'],
  [/A\$|AU\$|AUD/, 'AUD'],
  [/NZ\$|NZD/, 'NZD'],
  [/£|GBP/, 'GBP'],
  [/€|EUR/, 'EUR'],
  [/CHF|Fr\./, 'CHF'],
  [/\$|USD/, 'USD'],
];

const DOLLARS = ['CAD', 'AUD', 'NZD', 'USD'];

const UNITS: readonly PriceRole[] = ['per-pound', 'per-kilogram', 'each', 'pair'];

const currencyIn = (text: string): string | null => SIGNS.find(([sign]) => sign.test(text))?.[1] ?? null;

/** Amount in a marked-up price ("$1,200", "89.50", "1.200,00 €"), or null. */
export function amountIn(text: string): number | null {
  const digits = /\d[\d.,' ]{0,14}/.exec(text)?.[0]?.replace(/[' ]/g, '').replace(/[.,]$/, '');
  if (!digits) return null;
  const decimal = /[.,](\d{1,2})$/.exec(digits);
  const whole = (decimal ? digits.slice(0, -decimal[0].length) : digits).replace(/[.,]/g, '');
  const amount = Number(whole) + (decimal ? Number(`0.${decimal[1]}`) : 0);
  return Number.isFinite(amount) ? amount : null;
}

/** What the page shows as the price, read as an ad's words are: "2,50 € pro kg", "$70 - 80", "$650 or best offer". Null when the text says it too. */
export const scanPagePrice = ({ priceText, text }: PageListing, language: Language): Scan | null =>
  priceText === null || text.includes(priceText) ? null : scanText(priceText, language);

/** The text's prices, with the page's own price added when the text does not say it. It stands at no token. */
export function pagePrices(listing: PageListing, written: readonly Price[], shown: Scan | null): Price[] {
  const offer = listing.offers.length === 1 ? listing.offers[0] : undefined;
  const marked = listing.priceText ?? offer?.price ?? null;
  // "$300 $225": of two side by side the first is a former one, as in a text.
  const told = shown ? readPrices(shown).find(({ role }) => role === 'asking' || UNITS.includes(role)) : undefined;
  const amount = told?.amount ?? (marked === null ? null : amountIn(marked));
  if (marked === null || amount === null || written.some((price) => price.amount === amount)) return [...written];
  const currency = currencyIn(marked) ?? offer?.currency ?? null;
  const high = told?.high === undefined ? {} : { high: told.high };
  return [
    { rule: 'page-price', from: -1, to: -1, amount, currency, role: told?.role ?? 'asking', sure: true, ...high },
    ...written,
  ];
}

/** Currency of the ad: as written, by the page, by its words; null when there is only a bare number. */
export function settleCurrency(scan: Scan, listing: PageListing, prices: readonly Price[]): string | null {
  // "AUD obviously" anywhere tells which dollars the signs mean.
  const sign = /(?:^|[\s(])(a|au|c|ca|nz)\$(?!\d)/i.exec(scan.text)?.[1]?.toLowerCase();
  const signed = sign === undefined ? undefined : { a: 'AUD', au: 'AUD', c: 'CAD', ca: 'CAD', nz: 'NZD' }[sign];
  const told =
    signed ??
    scan.tokens.find(({ term, text }) => term?.code === '$' && DOLLARS.includes(term.currency ?? '') && !/dollar|buck/.test(text))
      ?.term?.currency;
  const special = prices.find((price) => price.currency !== null && price.currency !== 'USD');
  const written = special ?? prices.find((price) => price.currency !== null);
  const offered = listing.offers.find((offer) => offer.currency && /^[A-Z]{3}$/.test(offer.currency))?.currency ?? null;
  if (written?.currency === 'USD' || written === undefined) {
    if (told) return told;
    if (offered && DOLLARS.includes(offered)) return offered;
  }
  return written?.currency ?? offered ?? (listing.priceText === null ? null : currencyIn(listing.priceText));
}
