/**
 * "350 pounds for all" in an ad that weighs in kilograms and has no sign of money: those pounds are sterling. Once one of them is told to be a
 * price by the words around it the others are money too.
 */
import type { Term } from './terms.ts';
import type { Token } from './tokens.ts';

const STERLING: Term = { code: '$', currency: 'GBP' };
const MONEY = ['$', '£', '€'];

const isPounds = (token: Token | undefined): boolean => token?.term?.unit === 'lb' && token.term.sense === 'pounds';

/** A word of asking before the number, or one of offers or of the whole lot behind the unit; "350 pounds total" is a weight. */
function isPriced(tokens: readonly Token[], at: number): boolean {
  const before = tokens.slice(Math.max(0, at - 4), at - 1).map((token) => token.term?.code ?? 'z');
  const behind = tokens[at + 1]?.term;
  return before.includes('A') || behind?.code === 'O' || behind?.code === 'R' || (behind?.code === 'L' && behind.sense !== 'sum');
}

export function settlePounds(tokens: readonly Token[]): readonly Token[] {
  const kilograms = tokens.some(({ term }) => term?.unit === 'kg');
  const money = tokens.some(({ term, text }) => term?.code === '$' || MONEY.includes(text));
  const otherPounds = tokens.some((token) => (token.term?.unit === 'lb' && !isPounds(token)) || token.text === '#');
  if (!kilograms || money || otherPounds) return tokens;
  const told = tokens.some((token, at) => isPounds(token) && tokens[at - 1]?.type === 'number' && isPriced(tokens, at));
  return told ? tokens.map((token) => (isPounds(token) ? { ...token, term: STERLING } : token)) : tokens;
}
