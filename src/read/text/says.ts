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
