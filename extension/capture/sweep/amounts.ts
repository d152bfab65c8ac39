/** What looks like a price on a results page. Only looks: what it comes to is the reader's work. */

const SIGNED = /[$€£¥₹₽₺₴]|(?:^|[^a-z])(?:usd|eur|cad|aud|nzd|gbp|chf|sek|nok|dkk|pln|kr|zł|kč|r\$)(?:$|[^a-z])/i;
const FIGURE = /\d/;
/** Said in place of a price; the whole of a short text. */
const INSTEAD =
  /^(?:price:? )?(?:free|gratis|kostenlos|zu verschenken|make (?:me )?(?:an )?offer|best offer|offers?|on request|ask|ask for price|price on request|negotiable|vb|vhb|swap|trade|tausch)[.!]?$/i;
const LONGEST_INSTEAD = 30;
/** Further into a long text, a sum is as likely something else. */
const LOOKED_AT = 2000;

/** How plainly a text shows a price: a figure with a sign of money, a sign alone (its figure stands beside it), or a word in its place. */
export function amountIn(text: string): boolean {
  const piece = text.slice(0, LOOKED_AT).trim();
  if (SIGNED.test(piece)) return FIGURE.test(piece) || piece.length <= 3;
  return piece.length <= LONGEST_INSTEAD && INSTEAD.test(piece);
}

const LIMITS = /(?:^|\s)(?:under|over|below|above|less than|more than|up to|at least|from|bis|ab|unter|über)\s*[$€£¥]?\s?\d/i;
const SPAN = /^[^\p{L}]*\d[\d.,]*\s*[^\p{L}\d]{0,3}\s*(?:[-–—]|to|bis)\s*[^\p{L}\d]{0,3}\s*\d[\d.,]*[^\p{L}]*$/iu;

/** A choice of prices, as filters offer it: "Under $50", "$50 – $100 (12)". */
export const isPriceFilter = (text: string): boolean => text.length <= 60 && (LIMITS.test(text) || SPAN.test(text));

/** Letters of the alphabet in a text. */
export const lettersIn = (text: string): number => text.replace(/[^\p{L}]/gu, '').length;
