/** Asks for words by the names of a language's cues. */
import type { CueName } from '../language/cues.ts';
import type { Scan } from './scan.ts';

/** Whether the token is one of the words. */
export const says = (scan: Scan, at: number, cue: CueName): boolean => {
  const text = scan.tokens[at]?.text;
  return text !== undefined && scan.language.cues[cue].is(text);
};

/** Whether one of the words stands in the tokens from one to another, the last left out. */
export const saysWithin = (scan: Scan, from: number, to: number, cue: CueName): boolean =>
  scan.language.cues[cue].within.test(
    scan.tokens
      .slice(Math.max(0, from), Math.max(0, to))
      .map(({ text }) => text)
      .join(' '),
  );

/** Tokens that one of the words can take up. */
const LONGEST = 4;

/** Whether the tokens from one on begin with one of the words. */
export const begins = (scan: Scan, at: number, cue: CueName): boolean =>
  scan.language.cues[cue].within.exec(
    scan.tokens
      .slice(at, at + LONGEST)
      .map(({ text }) => text)
      .join(' '),
  )?.index === 0;

/** Whether the tokens before one end in one of the words. */
export function endsIn(scan: Scan, at: number, cue: CueName): boolean {
  let text = '';
  for (let i = at - 1; i >= Math.max(0, at - LONGEST); i -= 1) {
    text = text === '' ? (scan.tokens[i]?.text ?? '') : `${scan.tokens[i]?.text ?? ''} ${text}`;
    if (scan.language.cues[cue].is(text)) return true;
  }
  return false;
}
