import { GERMAN } from './de/index.ts';
import { ENGLISH } from './en/index.ts';
import type { Language } from './language.ts';

/** Characters from the beginning that are looked at: enough to tell, and bounded. */
const LOOKED_AT = 3000;

/** Words that every English sentence has, and that stand in a German ad only where it turns to English. */
const ENGLISH_SENTENCES =
  'the a of to is and are for with you your i my it this that these those have has from or at be will can not no all on by each both but as only they them was were set everything together there alone without would could should because if when then any more than';
/** Words that both kinds of sentences use of goods and prices: they tell the language of an ad, and not that two are mixed. */
const ENGLISH_TRADE =
  'new used good condition asking obo firm price sale selling sell sold pick pickup cash great works pair weight weights plate plates lb lbs pounds inch inches bench barbell iron cast rust holes bars needs each take trade shipping local interested call text message please need want looking wanted per piece pieces standard size sized black located';
const GERMAN_SENTENCES =
  'der die das den dem des ein eine einen einem einer und oder mit für fuer von vom zu zum zur auf aus bei ist sind im am an ab nur noch nicht kein keine auch sehr wie aber alle alles war wegen ohne wird werden wir ich es er sie uns mein meine über ueber unter nach bis je pro jeweils stück stk paar verkaufe verkaufen verkauft suche gesucht biete abholung abzuholen selbstabholung versand vb vhb festpreis neupreis preis euro gewicht gewichte scheiben scheibe stange stangen hantel hanteln langhantel kurzhantel guss gusseisen eisen gummi gebraucht zustand neu gut guter guten leichter rost bohrung loch zusammen komplett insgesamt gesamt privat privatverkauf garantie rücknahme nichtraucherhaushalt bitte melden gegen hier dazu beide jetzt etwas abgabe abzugeben verschenke statt franken mal';
/** German words that are English ones too, or stand in English names. */
const SHARED = new Set(
  'die an am war den des er es im ab je pro mal bis von hier alle per neu an gut gesamt privat garantie mein'.split(' '),
);

/** Common words and words of the trade, folded by hand to lower case; those that both languages know ("in", "also", "bar") are left out. */
const COMMON: ReadonlyMap<string, number> = new Map([
  ...marks(1, `${ENGLISH_SENTENCES} ${ENGLISH_TRADE}`),
  ...marks(-1, GERMAN_SENTENCES),
]);
const SPEAKS_ENGLISH: ReadonlySet<string> = new Set(ENGLISH_SENTENCES.split(' '));

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

/** Ends of sentences and lines. */
const SENTENCE = /[.!?;]+(?=\s|$)|\n+/u;

const balanceOf = (text: string): number => {
  let balance = 0;
  for (const [word] of text.matchAll(WORD)) balance += COMMON.get(word) ?? (word.length > 5 && COMPOUND.test(word) ? -2 : 0);
  return balance - (text.match(NUMBERS)?.length ?? 0);
};

const headOf = (text: string): string => text.slice(0, LOOKED_AT).replace(INVISIBLE, '').normalize('NFC').toLowerCase();

/**
 * Language of an ad: that of most of its sentences, by common words of its first few thousand characters. Where as many speak for either, all
 * words together decide, then the page's own tag ("de-AT"); English when nothing tells. Linear in the characters looked at.
 */
export function chooseLanguage(tag: string | null, text: string): Language {
  const head = headOf(text);
  // The tag speaks for the page, not for the ad: two words outweigh it.
  const tagged = tag === null ? 0 : /^de\b/i.test(tag) ? -1.5 : /^en\b/i.test(tag) ? 1.5 : 0;
  const balance = balanceOf(head) + tagged;
  const votes = head.split(SENTENCE).reduce((sum, sentence) => sum + Math.sign(balanceOf(sentence)), 0);
  // Sentences decide where the words of the whole are of two minds.
  const close = Math.abs(balance) <= MINDS * Math.abs(votes);
  return (close ? votes : balance) < 0 ? GERMAN : ENGLISH;
}

/** How many words the sentence of one language may outweigh those of the other by. */
const MINDS = 4;

/** The other language, where an ad in one turns to it ("selling my Langhantel", "everything together 550 €, Abholung"): its words are read too. */
export function secondLanguage(language: Language, text: string): Language | null {
  let marks = 0;
  const seen = new Set<string>();
  for (const [word] of headOf(text).matchAll(WORD)) {
    if (seen.has(word)) continue;
    seen.add(word);
    if (language.code === 'de') marks += SPEAKS_ENGLISH.has(word) ? 1 : 0;
    else if (word.length > 5 && COMPOUND.test(word) && !/(?:ung|lich)$/u.test(word)) marks += 2;
    else if ((COMMON.get(word) ?? 0) < 0 && !SHARED.has(word)) marks += 1;
  }
  return marks < (language.code === 'de' ? 3 : 2) ? null : language.code === 'de' ? ENGLISH : GERMAN;
}
