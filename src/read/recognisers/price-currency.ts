/** The currency of an amount, by its sign, the country letters before it and the code behind it. */
import type { Scan } from '../text/scan.ts';

const CURRENCIES: Readonly<Record<string, string>> = { $: 'USD', '£': 'GBP', '€': 'EUR' };
const DOLLARS: Readonly<Record<string, string>> = {
  c: 'CAD',
  ca: 'CAD',
  cad: 'CAD',
  cdn: 'CAD',
  a: 'AUD',
  au: 'AUD',
  aud: 'AUD',
  us: 'USD',
  nz: 'NZD',
};

/** Currency of a sign, with the country letters before it ("C$") and the code behind the number ("$50 CAD"). */
export function currencyOf(scan: Scan, sign: number, last: number): string | null {
  const token = scan.tokens[sign];
  if (!token) return null;
  const before = scan.tokens[sign - 1];
  if (token.text === '$' && before?.type === 'word' && token.glued) {
    const country = DOLLARS[before.text];
    if (country) return country;
  }
  const behind = scan.tokens[last + 1]?.term?.currency;
  if (token.text === '$' && behind && behind !== 'USD') return behind;
  return CURRENCIES[token.text] ?? token.term?.currency ?? null;
}

/** "50p" and "55 cents" are hundredths; a lone p is pence only when it is glued to its number. */
export function centsCurrency(scan: Scan, at: number): string | null {
  const token = scan.tokens[at];
  return (token?.text === 'p' || token?.text === 'c') && !token.glued ? null : (token?.term?.currency ?? 'USD');
}
