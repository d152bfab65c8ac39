import { GERMAN } from './de/index.ts';
import { ENGLISH } from './en/index.ts';
import type { Language } from './language.ts';

/** Characters from the beginning that are looked at: enough to tell, and bounded. */
const LOOKED_AT = 3000;

/** Words that every English sentence has, and that stand in a German ad only where it turns to English. */
const ENGLISH_SENTENCES =
  'the a of to is and are for with you your i my it this that these those have has from or at be will can not no all on by each both but as only they them was were set everything together there alone without would could should because if when then any more than but me just got like make';
/** Words that both kinds of sentences use of goods and prices: they tell the language of an ad, and not that two are mixed. */
const ENGLISH_TRADE =
  'new used good condition asking obo firm price sale selling sell sold pick pickup cash great works pair weight weights plate plates pounds inch inches bench barbell iron cast rust holes bars needs each take trade shipping local interested call text message please need want looking wanted per piece pieces standard size sized black located';
const GERMAN_SENTENCES =
  'der die das den dem des ein eine einen einem einer und oder mit für fuer von vom zu zum zur auf aus bei ist sind im am an ab nur noch nicht kein keine auch sehr wie aber alle alles war wegen ohne wird werden wir ich es er sie uns mein meine über ueber unter nach bis je pro jeweils stück stk paar verkaufe verkaufen verkauft suche gesucht biete abholung abzuholen selbstabholung versand vb vhb festpreis neupreis preis euro gewicht gewichte scheiben scheibe stange stangen hantel hanteln langhantel kurzhantel guss gusseisen eisen gummi gebraucht zustand neu gut guter guten leichter rost bohrung loch zusammen komplett insgesamt gesamt privat privatverkauf garantie rücknahme nichtraucherhaushalt bitte melden gegen hier dazu beide jetzt etwas abgabe abzugeben verschenke statt franken mal';
/** German words that are English ones too, or stand in English names. */
const SHARED = 'die an am war den des er es im ab je pro mal bis von hier alle per neu gut gesamt privat garantie mein';

/**
 * Common words and words of the trade, folded by hand to lower case; those that both languages know ("in", "also", "bar") are left out. English
 * above 0, German below; by 2 those that show a sentence of the other language.
 */
const COMMON: ReadonlyMap<string, number> = new Map([
  ...marks(2, ENGLISH_SENTENCES),
  ...marks(1, ENGLISH_TRADE),
  ...marks(-2, GERMAN_SENTENCES),
  ...marks(-1, SHARED),
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
const languageOf = (code: Language['code']): Language => (code === 'de' ? GERMAN : ENGLISH);

/** Ends of sentences and lines. */
const SENTENCE = /[.!?;]+(?=\s|$)|\n+/u;
/** How many words more of one language the sentences of the other may outweigh, each. */
const MINDS = 4;
/** So many English words show that a German ad turns to English. */
const MIXED = 4;

/** How many words show a sentence of either language. */
interface Shown {
  english: number;
  german: number;
}

/** Balance of a sentence, English above 0 and German below. */
function weigh(sentence: string, shown: Shown): number {
  let balance = 0;
  for (const [word] of sentence.matchAll(WORD)) {
    const known = COMMON.get(word);
    if (known === undefined) {
      if (word.length <= 5 || !COMPOUND.test(word)) continue;
      balance -= 2;
      if (!/(?:ung|lich)$/u.test(word)) shown.german += 2;
    } else if (known > 0) {
      balance += 1;
      if (known === 2) shown.english += 1;
    } else {
      balance -= 1;
      if (known === -2) shown.german += 1;
    }
  }
  return balance - (sentence.match(NUMBERS)?.length ?? 0);
}

export interface Languages {
  readonly first: Language;
  /** The other one, where the ad turns to it ("selling my Langhantel", "everything together 550 €, Abholung"): its words are read too. */
  readonly second: Language | null;
}

/**
 * Language of an ad: that of most of its sentences, by common words of its first few thousand characters. Where all words together speak
 * clearly for the other they decide, then the page's own tag ("de-AT"); English when nothing tells. `readAs` names it instead. Linear in the
 * characters looked at.
 */
export function chooseLanguages(tag: string | null, text: string, readAs: Language['code'] | null = null): Languages {
  const head = text.slice(0, LOOKED_AT).replace(INVISIBLE, '').normalize('NFC').toLowerCase();
  const shown: Shown = { english: 0, german: 0 };
  // The tag speaks for the page, not for the ad: two words outweigh it.
  let balance = tag === null ? 0 : /^de\b/i.test(tag) ? -1.5 : /^en\b/i.test(tag) ? 1.5 : 0;
  let votes = 0;
  for (const sentence of head.split(SENTENCE)) {
    const one = weigh(sentence, shown);
    balance += one;
    votes += Math.sign(one);
  }
  const clear = Math.abs(balance) > MINDS * Math.abs(votes);
  const first = readAs === null ? ((clear ? balance : votes) < 0 ? GERMAN : ENGLISH) : languageOf(readAs);
  const second = first.code === 'de' ? (shown.english >= MIXED ? ENGLISH : null) : shown.german >= 2 ? GERMAN : null;
  return { first, second };
}

/** The language by itself, for callers that read nothing. */
export const chooseLanguage = (tag: string | null, text: string): Language => chooseLanguages(tag, text).first;
