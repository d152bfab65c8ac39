/** What a language's folder gives: how it writes numbers, and its dictionary. */
import type { Dictionary } from '../text/terms.ts';

export interface Language {
  readonly code: 'en' | 'de';
  /** Sticky pattern of a number in digits, with bounded quantifiers. */
  readonly number: RegExp;
  /** Value of what `number` matched. */
  readonly valueOf: (digits: string) => number;
  readonly dictionary: Dictionary;
}
