/** Corpus ads, damaged: cut, swapped, repeated, and with marks, halves of characters and huge numbers put in. */
import fc from 'fast-check';

const INSERTIONS = [
  '\u202e\u202d\u2066\u2069\u200f',
  '\u0301\u0327\u20dd\u0308',
  '\u200b\u200d\u00ad\ufeff\u2060',
  '\ud83d',
  '\udca9',
  '9'.repeat(400),
  '1.'.repeat(60),
  '1,000,000,000,000',
  '('.repeat(80),
  '([{'.repeat(40),
  ')]}'.repeat(40),
  '$'.repeat(40),
  'x'.repeat(30),
  ' 4 x 45 lb. '.repeat(20),
  '\0\u0001\u001f',
  '\n'.repeat(30),
  '\t'.repeat(30),
  '½¼⅛',
  '１２３',
  'ﬃ㎏㏔㎜℔№',
  '-1 -1 -1',
  '1/0 0/0 3/4/5',
  ' sold ',
  ' each ',
  ' $1 ',
] as const;

interface Step {
  readonly act: 'cut' | 'swap' | 'repeat' | 'insert' | 'turn';
  /** Places as shares of the length. */
  readonly from: number;
  readonly to: number;
  readonly what: string;
}

const step: fc.Arbitrary<Step> = fc.record({
  act: fc.constantFrom('cut', 'swap', 'repeat', 'insert', 'insert', 'turn'),
  from: fc.double({ min: 0, max: 1, noNaN: true }),
  to: fc.double({ min: 0, max: 1, noNaN: true }),
  what: fc.oneof(fc.constantFrom(...INSERTIONS), fc.string({ maxLength: 6 })),
});

/** Keeps repeated repeats from growing without end. */
const LONGEST = 20_000;

function apply(text: string, { act, from, to, what }: Step): string {
  const at = Math.floor(Math.min(from, to) * text.length);
  const end = Math.min(text.length, at + Math.floor(Math.abs(to - from) * 60));
  const piece = text.slice(at, end);
  const [before, behind] = [text.slice(0, at), text.slice(end)];
  const other = Math.floor(Math.max(from, to) * text.length);
  const changed = {
    cut: before + behind,
    swap: other >= end ? before + text.slice(end, other) + piece + text.slice(other) : text,
    repeat: before + piece.repeat(5) + behind,
    insert: before + what + text.slice(at),
    turn: before + [...piece].reverse().join('') + behind,
  };
  return changed[act].slice(0, LONGEST);
}

/** One of the texts after one to eight such steps. */
export const mutated = (texts: readonly string[]): fc.Arbitrary<string> =>
  fc
    .tuple(fc.constantFrom(...texts), fc.array(step, { minLength: 1, maxLength: 8 }))
    .map(([text, steps]) => steps.reduce(apply, text));
