/** Cuts a folded text into numbers, words and marks in linear time. */
import type { Span } from '../../listing/page-listing.ts';
import type { Language } from '../language/language.ts';
import type { Folded } from './fold.ts';
import type { Term } from './terms.ts';

export interface Token {
  readonly type: 'number' | 'word' | 'mark' | 'line';
  /** Folded text. */
  readonly text: string;
  /** Offsets in the original text. */
  readonly start: number;
  readonly end: number;
  /** No space before it on its line. */
  readonly glued: boolean;
  readonly line: number;
  /** A number's value; a number word's value is in its term. */
  readonly value: number | null;
  /** What the language's dictionary says of the word or phrase. */
  readonly term: Term | null;
}

const WORD = /\p{L}+(?:'\p{L}+)*/uy;
const LETTER = /\p{L}/u;
const FRACTION = /(\d{1,2})\/(2|4|8|16|32)(?![\d/]|[.,]\d)/y;
const MIXED = /[ -]{1,2}(\d{1,2})\/(2|4|8|16|32)(?![\d/])/y;
/** "12 and a half". */
const AND_A_HALF = / and (?:a|one) half\b/y;
const LONGEST_NUMBER = 15;

const sticky = (pattern: RegExp, text: string, at: number): RegExpExecArray | null => {
  pattern.lastIndex = at;
  return pattern.exec(text);
};

const isDigit = (code: number): boolean => code >= 48 && code <= 57;

/** Value and length of the number at a place, with the fraction behind it ("2 1/2"), or null. */
function numberAt(text: string, at: number, language: Language): { value: number; length: number } | null {
  const fraction = sticky(FRACTION, text, at);
  if (fraction && Number(fraction[1]) < Number(fraction[2])) {
    return { value: Number(fraction[1]) / Number(fraction[2]), length: fraction[0].length };
  }
  const plain = sticky(language.number, text, at);
  if (!plain) return null;
  const end = at + plain[0].length;
  const value = language.valueOf(plain[0], {
    before: text.slice(Math.max(0, at - 2), at).trim(),
    behind: text.slice(end, end + 4),
  });
  if (Number.isInteger(value)) {
    const mixed = sticky(MIXED, text, at + plain[0].length);
    if (mixed && Number(mixed[1]) < Number(mixed[2])) {
      return { value: value + Number(mixed[1]) / Number(mixed[2]), length: plain[0].length + mixed[0].length };
    }
    const half = sticky(AND_A_HALF, text, end);
    if (half) return { value: value + 0.5, length: plain[0].length + half[0].length };
  }
  return { value, length: plain[0].length };
}

/** Length of a run of one mark that sellers draw lines with ("......", "----", "***"). */
function runOf(text: string, at: number): number {
  const mark = text[at] ?? ' ';
  if (!'.-_=*•'.includes(mark)) return 1;
  let end = at;
  while (text[end] === mark) end += 1;
  return end - at;
}

/** "300 lb. olympic set": its size, so that the point ends nothing. */
const SET_BEHIND = /\. (?:(?:olympic|oly|standard|iron|steel) )?(?:weight |weights )?sets?\b/y;

/** Whether a mark only joins words or ends an abbreviation, where the language says so: "20-kg-Scheibe", "ca. 20", "300 lb. set". */
function joins(text: string, at: number, previous: Token | undefined, glued: boolean, language: Language): boolean {
  if (!glued || (previous?.type !== 'word' && previous?.type !== 'number')) return false;
  if (text[at] === '-') return language.hyphenates === true && LETTER.test(text[at + 1] ?? ' ');
  if (text[at] !== '.' || previous.type !== 'word') return false;
  if (/^lbs?$/.test(previous.text) && sticky(SET_BEHIND, text, at)) return true;
  return language.abbreviations?.has(previous.text) === true;
}

/** Tokens of a folded text, without dictionary terms. Offsets are those of the original. */
export function tokenise(folded: Folded, language: Language): Token[] {
  const { text, map } = folded;
  const tokens: Token[] = [];
  let line = 0;
  let at = 0;
  let glued = false;
  let begun = false;
  const push = (type: Token['type'], length: number, value: number | null = null): void => {
    const start = map[at] ?? 0;
    const end = Math.max(map[at + length] ?? 0, start + 1);
    tokens.push({ type, text: text.slice(at, at + length), start, end, glued, line, value, term: null });
    if (type !== 'line') begun = true;
    at += length;
    glued = true;
  };
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (code === 10) {
      push('line', 1);
      // Empty lines at the beginning are no lines of the ad: its first line is the title.
      if (begun) line += 1;
      glued = false;
    } else if (code === 32) {
      at += 1;
      glued = false;
    } else if (isDigit(code) || (code === 46 && isDigit(text.charCodeAt(at + 1)) && !isDigit(text.charCodeAt(at - 1)))) {
      let digits = at;
      while (digits < text.length && digits - at <= LONGEST_NUMBER && isDigit(text.charCodeAt(digits))) digits += 1;
      if (digits - at > LONGEST_NUMBER) {
        while (digits < text.length && isDigit(text.charCodeAt(digits))) digits += 1;
        push('word', digits - at);
        continue;
      }
      const found = numberAt(text, at, language);
      push('number', found?.length ?? 1, found?.value ?? Number(text[at]));
    } else if (joins(text, at, tokens[tokens.length - 1], glued, language)) {
      at += 1;
    } else {
      const cents =
        glued && language.noCents && tokens[tokens.length - 1]?.type === 'number' ? sticky(language.noCents, text, at) : null;
      if (cents) {
        push('mark', cents[0].length);
        continue;
      }
      const run = runOf(text, at);
      if (run > 1) {
        push('mark', run);
        continue;
      }
      const character = text.codePointAt(at) ?? 32;
      const word = LETTER.test(String.fromCodePoint(character)) ? sticky(WORD, text, at) : null;
      // "45lbsx4": the x belongs to the number behind it.
      const times = word && word[0].length > 1 && word[0].endsWith('x') && isDigit(text.charCodeAt(at + word[0].length));
      if (word) push('word', times ? word[0].length - 1 : word[0].length);
      else if (code === 39 && text[at + 1] === 's' && glued && !LETTER.test(text[at + 2] ?? ' ')) push('word', 2);
      else push('mark', character > 0xffff ? 2 : 1);
    }
  }
  return tokens;
}

/** Span of the original text from one token to another, both included. */
export function spanOf(tokens: readonly Token[], from: number, to: number): Span {
  return { start: tokens[from]?.start ?? 0, end: tokens[to]?.end ?? 0 };
}
