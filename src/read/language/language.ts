/** What a language's folder gives: how it writes numbers, and its dictionary. */
import type { Condition } from '../../listing/reading.ts';
import type { Dictionary } from '../text/terms.ts';
import type { Cues } from './cues.ts';

export interface Language {
  readonly code: 'en' | 'de';
  /** Sticky pattern of a number in digits, with bounded quantifiers. */
  readonly number: RegExp;
  /** Value of what `number` matched; `around` is the sign before and the few characters behind, by which "1.200" is told from a decimal. */
  readonly valueOf: (digits: string, around: { readonly before: string; readonly behind: string }) => number;
  readonly dictionary: Dictionary;
  /** Words that are asked for by name. */
  readonly cues: Cues;
  /** Conditions that several words tell together, none of which tells one by itself. */
  readonly ways: readonly { readonly condition: Condition; readonly says: RegExp }[];
  /** Currency of amounts that name none. */
  readonly currency: 'USD' | 'EUR';
  /** Sticky pattern of what stands for no cents behind an amount ("120,-"), where the language writes it; one mark, class ¤. */
  readonly noCents?: RegExp;
  /** Folded words behind which a point ends no sentence ("ca."). */
  readonly abbreviations?: ReadonlySet<string>;
  /** Hyphens join words to compounds ("20-kg-Scheibe") and are no marks. */
  readonly hyphenates?: boolean;
  /** Words that tell what an ad is about and nothing else; kept apart, so that they may also stand in the dictionary. */
  readonly topics?: Dictionary;
}
