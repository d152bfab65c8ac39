/** An ad's words with what a seller changes between two postings taken away: prices, dates, calls for attention, capitals, signs. */
import type { PageListing } from '../listing/page-listing.ts';

/** Longer ads are told apart by their beginning. */
const LOOKED_AT = 20_000;

const AMOUNT = String.raw`\d[\d.,']{0,12}`;
const CURRENCY = String.raw`(?:[$€£]|(?:usd|eur|gbp|cad|aud|chf|dollars?|bucks?|euros?|pounds? sterling|vb|vhb|fp|obo|ono|firm)\b)`;
/** A number behind these is a price, unless it is a size; behind the others only where nothing is counted by it. */
const ASKING = `(?:asking|price[d]?|preis|reduced to)(?: is| at)? ?:? ?`;
const PERHAPS = `(?:now|was|only|just|nur|jetzt|for)(?: at)? ?:? ?`;
const NO_SIZE = `(?! ?(?:lbs?|kgs?|kilos?|pounds?|mm|cm|in|inch|ft|x|#|'|")(?![a-z]))`;
const AT_END = String.raw`(?= ?(?:$|\n|[.,;!]|or\b|oder\b|obo\b|firm\b|for (?:all|both|the|everything)\b|takes\b|cash\b))`;
const PRICES = new RegExp(
  [
    String.raw`(?:[$€£]|\b(?:usd|eur|gbp|cad|aud|chf|vb|vhb)) ?${AMOUNT}k?(?:\/(?:lb|kg|ea))?`,
    `${AMOUNT} ?${CURRENCY}`,
    String.raw`\b${ASKING}${AMOUNT}(?!\d)${NO_SIZE}`,
    String.raw`\b${PERHAPS}${AMOUNT}(?!\d)${AT_END}`,
  ].join('|'),
  'g',
);
/** Numbers that say nothing of the goods: telephones, times, dates, distances, ages, shares, long codes. */
const PASSING = [
  /\b\d{3}[-. ]\d{3,4}(?:[-. ]\d{3,4})?\b/g,
  /\b\d{1,2}:\d{2}(?: ?[ap]m)?\b/g,
  /\b\d{1,2} ?(?:[ap]m|uhr)\b/g,
  /\b\d{1,4}[/.]\d{1,2}[/.]\d{2,4}\b/g,
  /\b\d+(?:[.,]\d+)? ?(?:%|percent|miles?\b|mi\b|km\b|mins?\b|minutes?\b|hours?\b|hrs?\b|days?\b|weeks?\b|months?\b|years?\b|yrs?\b|tagen?\b|wochen?\b|monaten?\b|jahren?\b|stunden?\b)/g,
  /\b(?:19|20)\d\d\b/g,
  /\d{5,}/g,
];
/** Words that come and go between postings. */
const CALLS =
  /\b(?:reduced|price drop|drop|bump(?:ed)?|still available|available|final|last chance|must go|asap|obo|o\.b\.o|ono|firm|relisted|reposted|noch da|noch zu haben|reserviert|vb|vhb|asking|price|cash)\b/g;

const NUMBER_WORDS: Readonly<Record<string, string>> = Object.fromEntries(
  'two zwei pair paar|three drei|four vier|five funf|six sechs|seven sieben|eight acht|nine neun|ten zehn|eleven elf|twelve zwolf dozen dutzend'
    .split('|')
    .flatMap((words, index) => words.split(' ').map((word) => [word, String(index + 2)])),
);

/** Ends of clauses. A dot or comma between digits is none, and neither is the dash inside a word. */
const CLAUSE_END = /[\n\t;!?•|()[\]]+|[.,:](?!\d)| - /;

const WORD = /\d+(?:[.,]\d+)*|\p{L}+/gu;

/** The clauses of an ad, each as its words; numbers in words are numbers. Linear in the text. */
export function clausesOf({ title, text }: Pick<PageListing, 'title' | 'text'>): readonly (readonly string[])[] {
  let folded = `${title}\n${text}`
    .slice(0, LOOKED_AT)
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[⁄]/g, '/')
    .replace(/[–—]/g, '-');
  folded = folded.replace(PRICES, ' ');
  for (const pattern of PASSING) folded = folded.replace(pattern, ' ');
  folded = folded.replace(CALLS, ' ');
  return folded
    .split(CLAUSE_END)
    .map((clause) => (clause.match(WORD) ?? []).map((word) => NUMBER_WORDS[word] ?? word))
    .filter((words) => words.length > 0);
}

const JOINING = new Set(['and', 'und', 'plus', 'with', 'mit', 'also']);

/**
 * The numbers of the goods, each with the number behind it in the same clause: "4x45, 2x25" is 4-45 45- 2-25 25-, so that swapped counts differ while a
 * clause that is put elsewhere changes nothing. Sorted; a number said twice stands there once, for titles repeat the text.
 */
export function numbersOf(clauses: readonly (readonly string[])[]): readonly string[] {
  const found = new Set<string>();
  for (const clause of clauses) {
    let before: string | null = null;
    for (const word of clause) {
      if (JOINING.has(word)) {
        if (before !== null) found.add(`${before}-`);
        before = null;
      } else if (/^\d/.test(word)) {
        if (before !== null) found.add(`${before}-${word}`);
        before = word;
      }
    }
    if (before !== null) found.add(`${before}-`);
  }
  return [...found].sort();
}
