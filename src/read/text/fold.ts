/**
 * Folds a text for matching: lower case, letters without accents, one kind of dash, quote and space, ASCII digits, fractions spelt out,
 * zero-width, direction and combining marks gone. `map` leads from each folded place to its place in the original.
 */
export interface Folded {
  readonly text: string;
  /** `map[i]` is the original offset of folded character i; `map[text.length]` is the original length. */
  readonly map: Uint32Array;
}

const groups: readonly (readonly [string, string])[] = [
  ['x', '×✕✖⨯'],
  ['-', '–—−‐‑‒―'],
  ["'", '‘’‛´`′ʼ'],
  ['"', '“”„‟″«»'],
  ['\n', '\u2028\u2029\u0085\v\f'],
  ['•', '·●▪◦‣✓✔✅➢►▶■□★☆'],
  ['/', '⁄'],
];
const SPECIAL = new Map<string, string>([
  ...groups.flatMap(([to, from]) => [...from].map((character) => [character, to] as const)),
  ...['1/2½', '1/4¼', '3/4¾', '1/8⅛', '3/8⅜', '5/8⅝', '7/8⅞'].map((entry) => [entry.slice(3), ` ${entry.slice(0, 3)}`] as const),
  ['…', '...'],
  ['ß', 'ss'],
  ['№', 'no'],
  ['℔', 'lb'],
]);

/** Characters with no width or only a direction: zero-width, joiners, bidi marks, soft hyphen, variation selectors, combining marks. */
const INVISIBLE = /\u00ad|\u034f|\u061c|\u180e|[\u200b-\u200f\u202a-\u202e\u2060-\u206f\ufeff]|[\ufe00-\ufe0f]|\p{Mn}|\p{Me}/gu;
const SPACE = /^[\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]$/;

function foldCharacter(character: string): string {
  const special = SPECIAL.get(character);
  if (special !== undefined) return special;
  if (SPACE.test(character)) return ' ';
  const folded = character.normalize('NFKD').replace(INVISIBLE, '').toLowerCase();
  return SPECIAL.get(folded) ?? folded;
}

/** Control characters are spaces, but for tab and line feed; CR alone ends a line, CR LF is one line end. */
function foldAscii(character: string, code: number, next: string | undefined): string {
  if (code >= 65 && code <= 90) return character.toLowerCase();
  if (code === 13) return next === '\n' ? '' : '\n';
  if (code === 96) return "'";
  return code >= 32 || code === 9 || code === 10 ? character : code === 11 || code === 12 ? '\n' : ' ';
}

const OVERRIDDEN = /\u202e([^\u202c\n\u2028\u2029]*)/g;

/**
 * Text behind a right-to-left override as it is seen, turned about: "005$" is shown as "$500" (Unicode Standard Annex 9, "RLO", to the
 * "PDF" that ends it or the end of the paragraph). Of the same length, so that places stay within it.
 */
const asShown = (text: string): string =>
  text.includes('\u202e') ? text.replace(OVERRIDDEN, (_, run: string) => `\u202e${[...run].reverse().join('')}`) : text;

/** Folds a text in linear time. Lone surrogates become U+FFFD. */
export function fold(written: string): Folded {
  const original = asShown(written);
  const parts: string[] = [];
  const map: number[] = [];
  let place = 0;
  for (const character of original) {
    const code = character.charCodeAt(0);
    const lone = character.length === 1 && code >= 0xd800 && code <= 0xdfff;
    const folded = code < 128 ? foldAscii(character, code, original[place + 1]) : lone ? '\ufffd' : foldCharacter(character);
    for (let i = 0; i < folded.length; i += 1) map.push(place);
    if (folded !== '') parts.push(folded);
    place += character.length;
  }
  map.push(original.length);
  return { text: parts.join(''), map: Uint32Array.from(map) };
}

/** Phrases that folding only puts into lower case. */
const PLAIN_PHRASE = /^[ -_a-~]*$/;

/** A dictionary phrase folded the way ads are. */
export const foldPhrase = (phrase: string): string => (PLAIN_PHRASE.test(phrase) ? phrase.toLowerCase() : fold(phrase).text);
