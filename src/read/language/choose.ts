import { GERMAN } from './de/index.ts';
import { ENGLISH } from './en/index.ts';
import type { Language } from './language.ts';

/** Characters from the beginning that are looked at: enough to tell, and bounded. */
const LOOKED_AT = 3000;

/** Common words and words of the trade, folded by hand to lower case; those that both languages know ("in", "also", "bar") are left out. */
const COMMON: ReadonlyMap<string, number> = new Map([
  ...marks(
    1,
    'the a of to is are and for with you your i my it this that these those have has from or at be will can not no all on by each both but as only they them was were set new used good condition asking obo firm price sale selling sell sold pick pickup cash great works pair weight weights plate plates lb lbs pounds inch inches bench barbell iron cast rust holes bars needs each take trade shipping local interested call text message please need want looking wanted per piece pieces standard size sized black located',
  ),
  ...marks(
    -1,
    'der die das den dem des ein eine einen einem einer und oder mit für fuer von vom zu zum zur auf aus bei ist sind im am an ab nur noch nicht kein keine auch sehr wie aber alle alles war wegen ohne wird werden wir ich es er sie uns mein meine über ueber unter nach bis je pro jeweils stück stk paar verkaufe verkaufen verkauft suche gesucht biete abholung abzuholen selbstabholung versand vb vhb festpreis neupreis preis euro gewicht gewichte scheiben scheibe stange stangen hantel hanteln langhantel kurzhantel guss gusseisen eisen gummi gebraucht zustand neu gut guter guten leichter rost bohrung loch zusammen komplett insgesamt gesamt privat privatverkauf garantie rücknahme nichtraucherhaushalt bitte melden gegen hier dazu beide jetzt etwas abgabe abzugeben verschenke statt franken mal',
  ),
]);

function marks(weight: number, words: string): [string, number][] {
  return words.split(' ').map((word) => [word, weight]);
}

/** Endings of German compounds of the trade ("Gusseisenscheiben"), and letters that English does not have. */
const COMPOUND =
  /(?:scheiben?|stangen?|hanteln?|gewichte|hantelbank|verschl[uü]sse?|st[aä]nder|verpackung|abholung|ung|lich|[äöüß]\p{L}*)$/u;
const WORD = /\p{L}+/gu;
/** Marks without width that stand inside words: soft hyphen, zero-width ones, directions. */
const INVISIBLE = /\u00ad|[\u200b-\u200f\u202a-\u202e\u2060-\u2064\ufeff]/g;
/** Numbers as only German writes them: "2,5 kg", "1.200 €", "120,-". */
const NUMBERS = /\d,\d{1,2} ?(?:kg|€|eur)|\d\.\d{3} ?(?:€|eur)|\d,-|\d'\d{3}/gi;

/** The language by its code. */
export const languageOf = (code: Language['code']): Language => (code === 'de' ? GERMAN : ENGLISH);

/**
 * Language of an ad: by common words of its first few thousand characters, the page's own tag ("de-AT") deciding when they do not;
 * English when nothing tells. Linear in the characters looked at.
 */
export function chooseLanguage(tag: string | null, text: string): Language {
  const head = text.slice(0, LOOKED_AT).replace(INVISIBLE, '').normalize('NFC').toLowerCase();
  let balance = 0;
  for (const [word] of head.matchAll(WORD)) balance += COMMON.get(word) ?? (word.length > 5 && COMPOUND.test(word) ? -2 : 0);
  balance -= head.match(NUMBERS)?.length ?? 0;
  const tagged = tag === null ? 0 : /^de\b/i.test(tag) ? -1 : /^en\b/i.test(tag) ? 1 : 0;
  // The tag speaks for the page, not for the ad: two words outweigh it.
  return balance + tagged * 1.5 < 0 ? GERMAN : ENGLISH;
}
