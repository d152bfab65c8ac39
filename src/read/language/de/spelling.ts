/** How German words are spelt in ads: with umlauts or without, with endings, and joined to compounds. */
import type { Entry } from '../../text/terms.ts';

const UMLAUTS: Readonly<Record<string, string>> = { ä: 'ae', ö: 'oe', ü: 'ue' };

/** Entries with the spelling "ue" beside "ü" (folding makes "u" of it), each phrase once. A phrase that is listed twice is an error. */
export function spelt(entries: readonly Entry[]): Entry[] {
  return entries.map(([phrases, term]): Entry => {
    const all = phrases.split('|').flatMap((phrase) => {
      const plain = phrase.trim();
      const long = plain.replace(/[äöü]/g, (letter) => UMLAUTS[letter] ?? letter);
      return long === plain ? [plain] : [plain, long];
    });
    return [all.join('|'), term];
  });
}

const ENDINGS = ['', 'e', 'en', 'er', 'es', 'em'];

/** Adjectives with their endings: "schwarz", "schwarze", "schwarzen" … A stem may stand apart from its first form: "dunkel/dunkl". */
export const adjectives = (list: string): string =>
  list
    .split('|')
    .flatMap((entry) => {
      const [whole = '', stem = whole] = entry.split('/');
      return ENDINGS.map((ending) =>
        ending === '' ? whole : `${stem}${ending.replace(/^e(?=.)/, stem.endsWith('e') ? '' : 'e')}`,
      );
    })
    .filter((word, index, words) => words.indexOf(word) === index)
    .join('|');

/** Every beginning with every noun: ("guss|eisen", "scheibe/scheiben") makes "gussscheibe/gussscheiben|eisenscheibe/eisenscheiben". */
export const compounds = (beginnings: string, nouns: string): string =>
  beginnings
    .split('|')
    .flatMap((beginning) =>
      nouns.split('|').map((noun) =>
        noun
          .split('/')
          .map((form) => (form === '' || form === '-' ? form : `${beginning}${form}`))
          .join('/'),
      ),
    )
    .join('|');
