/** Currencies by ISO 4217, with the names that the browser has for them. */
import type { Option } from '../../components/choice-field.tsx';

/** "EUR, Euro", sorted by code; `also` is among them whatever the browser knows. */
export function currencyOptions(locale: string, also: string): readonly Option[] {
  const names = new Intl.DisplayNames(locale, { type: 'currency', fallback: 'none' });
  const codes = [...new Set([...Intl.supportedValuesOf('currency'), also])].sort();
  return codes.map((value) => ({ value, words: [value, names.of(value)].filter(Boolean).join(', ') }));
}
