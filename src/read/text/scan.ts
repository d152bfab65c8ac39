/** A text cut into tokens with their letters: what recognisers read and what they use up. */
import type { Span } from '../../listing/page-listing.ts';
import type { MassUnit } from '../../units/mass.ts';
import type { Language } from '../language/language.ts';
import { classify } from './classes.ts';
import { joinConversions } from './conversions.ts';
import { fold } from './fold.ts';
import { joinHundreds } from './hundreds.ts';
import { joinIron } from './iron.ts';
import { settlePounds } from './pounds-sterling.ts';
import { joinSpoken } from './spoken.ts';
import { joinTerms, joinUnknown } from './terms.ts';
import { spanOf, type Token, tokenise } from './tokens.ts';

export interface Scan {
  readonly text: string;
  readonly language: Language;
  readonly tokens: readonly Token[];
  /** The tokens with the language's topics joined in their turn (see refiners/trade.ts). */
  readonly words: readonly Token[];
  /** Letters as read; stays as it is. */
  readonly plain: string;
  /** Letters with used-up tokens blanked; recognisers change it by `claim`. */
  readonly letters: string[];
  /** The letters as one string, as long as none has changed. */
  joined: string | null;
  /** Pieces told behind a noun, by the noun's token. */
  readonly nounCounts: Map<number, number>;
  /** Numbers of the lines of an inventory, which count nothing. */
  readonly ordinals: number[];
  /** The senses of the dictionary that occur, so that what hangs on a rare one is not looked for in every ad. */
  readonly senses: ReadonlySet<string>;
  /** Number of the clause that each token stands in. */
  readonly clause: Uint32Array;
}

/** A clause without an end is cut, so that text of one endless line stays quick to read. */
const LONGEST_CLAUSE = 300;

/** Clauses end at line ends, table rows, bullets, ";", and at "." "!" "?" before a space. */
function clausesOf(tokens: readonly Token[], letters: string, text: string): Uint32Array {
  const clause = new Uint32Array(tokens.length);
  let current = 0;
  let length = 0;
  /** In capitals throughout: "2 IN. HOLE", where the first of them tells of no new sentence. */
  const isShouted = (token: Token | undefined): boolean =>
    token !== undefined && /^\p{Lu}{2,}$/u.test(text.slice(token.start, token.end));
  for (let i = 0; i < tokens.length; i += 1) {
    clause[i] = current;
    const letter = letters[i] ?? '';
    const next = tokens[i + 1];
    const capital = next !== undefined && /\p{Lu}/u.test(text[next.start] ?? ' ') && !(letters[i + 1] === 'B' && isShouted(next));
    const abbreviated =
      letter === '.' &&
      !capital &&
      ('ufj'.includes(letters[i - 1] ?? '_') || tokens[i - 1]?.text === 'ea') &&
      'kmxp(tCnBST'.includes(letters[i + 1] ?? '_');
    const stops = letter === 'l' || letter === ';' || letter === '•' || ('.!?'.includes(letter) && !next?.glued && !abbreviated);
    length = stops ? 0 : length + 1;
    if (stops || length > LONGEST_CLAUSE) {
      current += 1;
      length = 0;
    }
  }
  return clause;
}

/** A term whose last word has no capital, where that makes a difference, takes its other class. */
function heedCapitals(token: Token, text: string): Token {
  const { term } = token;
  if (!term?.lower || /\p{Lu}\p{L}*$/u.test(text.slice(token.start, token.end))) return token;
  return { ...token, term: { ...term, code: term.lower } };
}

function sensesOf(tokens: readonly Token[]): ReadonlySet<string> {
  const senses = new Set<string>();
  for (const { term } of tokens) if (term?.sense) senses.add(term.sense);
  return senses;
}

/** `second` is another language whose words are read where the first knows none. */
export function scanText(text: string, language: Language, second: Language | null = null): Scan {
  const known = joinTerms(tokenise(fold(text), language), language.dictionary);
  const terms = second === null ? known : joinUnknown(known, second.dictionary);
  const tokens = settlePounds(joinIron(joinConversions(joinSpoken(joinHundreds(terms), language)))).map((token) =>
    heedCapitals(token, text),
  );
  const plain = classify(tokens);
  return {
    text,
    language,
    tokens,
    words: language.topics ? joinTerms(tokens, language.topics) : tokens,
    plain,
    letters: [...plain],
    joined: plain,
    nounCounts: new Map(),
    ordinals: [],
    senses: sensesOf(tokens),
    clause: clausesOf(tokens, plain, text),
  };
}

/** Marks tokens as used up; the first may keep a letter by which later recognisers know what stood there. */
export function claim(scan: Scan, from: number, to: number, first = '_'): void {
  for (let i = from; i <= to; i += 1) scan.letters[i] = i === from ? first : '_';
  scan.joined = null;
}

/** Marks one token as used up. */
export function blank(scan: Scan, at: number): void {
  scan.letters[at] = '_';
  scan.joined = null;
}

export const span = (scan: Scan, from: number, to: number): Span => spanOf(scan.tokens, from, to);

/** The letters as one string. */
export function lettersOf(scan: Scan): string {
  scan.joined ??= scan.letters.join('');
  return scan.joined;
}

/** Value of a number token or of a number word. */
export const valueAt = (scan: Scan, at: number): number | null => {
  const token = scan.tokens[at];
  return token?.value ?? token?.term?.value ?? null;
};

/** Unit named between two tokens, both included; "#" is pounds. */
export function unitBetween(scan: Scan, from: number, to: number): MassUnit | null {
  for (let i = from; i <= to; i += 1) {
    const token = scan.tokens[i];
    if (token?.term?.unit) return token.term.unit;
    if (token?.text === '#') return 'lb';
  }
  return null;
}

export interface Match {
  /** First and last token. */
  readonly from: number;
  readonly to: number;
  /** First and last token of a group of the pattern; null when the group took no part. */
  readonly group: (index: number) => readonly [number, number] | null;
}

/**
 * Runs a pattern over the letters, left to right without overlaps. Where `take` returns false the search goes on one token further;
 * where it returns true the tokens are used up (but for those that `take` claimed otherwise itself when it returns "claimed").
 */
export function findAll(scan: Scan, pattern: RegExp, take: (match: Match) => boolean | 'claimed'): void {
  const letters = lettersOf(scan);
  pattern.lastIndex = 0;
  for (let found = pattern.exec(letters); found; found = pattern.exec(letters)) {
    const from = found.index;
    const to = from + found[0].length - 1;
    if (found[0].length === 0) {
      pattern.lastIndex = from + 1;
      continue;
    }
    const indices = found.indices;
    const group = (index: number): readonly [number, number] | null => {
      const place = indices?.[index];
      return place && place[1] > place[0] ? [place[0], place[1] - 1] : null;
    };
    // A notation does not run over the end of a sentence; lists over lines say so by the letter l.
    const whole = scan.clause[from] === scan.clause[to] || found[0].includes('l') || found[0].includes('•');
    const taken = whole && take({ from, to, group });
    if (taken === true) claim(scan, from, to);
    if (taken === false) pattern.lastIndex = from + 1;
  }
}
