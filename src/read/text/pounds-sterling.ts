/**
 * "350 pounds for all" in an ad that weighs in kilograms and has no sign of money: those pounds are sterling. Once one of them is told to be a
 * price by the words around it the others are money too.
 */
import type { Term } from './terms.ts';
import type { Token } from './tokens.ts';

const STERLING: Term = { code: '$', currency: 'GBP' };
const MONEY = ['$', '£', '€'];

const isPounds = (token: Token | undefined): boolean => token?.term?.unit === 'lb' && token.term.sense === 'pounds';

/**
 * A word of asking before the number, or one of offers, of cash or of the whole lot behind the unit; "350 pounds total" is a weight, and so is
 * "get 45 pounds of plates".
 */
function isPriced(tokens: readonly Token[], at: number): boolean {
  const before = tokens.slice(Math.max(0, at - 4), at - 1).map((token) => token.term?.code ?? 'z');
  if (tokens.slice(Math.max(0, at - 4), at - 1).some(({ term }) => term?.sense === 'sum')) return false;
  // "Eighty pounds, no offers": alone in its part of the sentence.
  const parted =
    /^[,.]$/.test(tokens[at + 1]?.text ?? '') && opens(tokens[at - 2]) && 'OR'.includes(tokens[at + 2]?.term?.code ?? 'z');
  const behind = tokens[at + 1 + Number(parted)]?.term;
  if (behind?.code === 'k' || behind?.code === 'm' || behind?.code === 'o') return false;
  return before.includes('A') || 'OR£'.includes(behind?.code ?? 'z') || (behind?.code === 'L' && behind.sense !== 'sum');
}

/** Whether a number begins its part of the sentence behind this token. */
const opens = (before: Token | undefined): boolean =>
  before === undefined || before.type === 'line' || '.,;'.includes(before.text);

/** "For forty pounds", "60 pounds the pair", "thirty pounds" alone at the end: money where the ad names none and writes its weights otherwise. */
function isAlone(tokens: readonly Token[], at: number): boolean {
  const [two, before] = [tokens[at - 3], tokens[at - 2]];
  const behind = tokens[at + 1];
  const ends = behind === undefined || behind.type === 'line' || '.,;!)'.includes(behind.text);
  const pair = /^(?:the|a)$/.test(behind?.text ?? '') && tokens[at + 2]?.term?.code === 'p';
  const told = /^(?:for|um)$/.test(before?.text ?? '') && two?.term?.code !== 'K' && ends;
  return told || (pair && opens(before));
}

const amountOf = (token: Token | undefined): number => token?.value ?? token?.term?.value ?? 0;

/** "24 kg (53 pounds)" says the same weight twice. */
const isConversion = (tokens: readonly Token[], at: number): boolean =>
  tokens.some(({ term }, other) => {
    const kilograms = term?.unit === 'kg' ? amountOf(tokens[other - 1]) : 0;
    return kilograms > 0 && Math.abs(amountOf(tokens[at - 1]) / (kilograms * 2.20462) - 1) < 0.06;
  });

const isNumber = (token: Token | undefined): boolean => token?.type === 'number' || 'id'.includes(token?.term?.code ?? 'z');

export function settlePounds(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some(isPounds)) return tokens;
  const kilograms = tokens.some(({ term }) => term?.unit === 'kg');
  const money = tokens.some(({ term, text }) => term?.code === '$' || MONEY.includes(text));
  const otherPounds = tokens.some((token) => (token.term?.unit === 'lb' && !isPounds(token)) || token.text === '#');
  if (money) return tokens;
  const told = tokens.map((token, at) => isPounds(token) && isNumber(tokens[at - 1]) && isPriced(tokens, at));
  if (kilograms && !otherPounds) {
    const last = tokens.findLastIndex(isPounds);
    const each = tokens[last + 1]?.term?.code === 'e' && opens(tokens[last - 2]);
    const alone = isNumber(tokens[last - 1]) && (each || isLast(tokens, last)) && !isConversion(tokens, last);
    return told.includes(true) || alone
      ? tokens.map((token) => (isPounds(token) ? { ...token, term: STERLING } : token))
      : tokens;
  }
  // "90 lbs … 35 pounds cash": weights are written in short, the money in full.
  if (!otherPounds) return tokens;
  return tokens.map((token, at) =>
    told[at] || (isPounds(token) && isNumber(tokens[at - 1]) && isAlone(tokens, at)) ? { ...token, term: STERLING } : token,
  );
}

/** Alone between marks at the end of the ad's sentence: "Kettlebell 24 kg, thirty pounds". */
function isLast(tokens: readonly Token[], at: number): boolean {
  const behind = tokens[at + 1];
  return opens(tokens[at - 2]) && (behind === undefined || behind.type === 'line' || '.!'.includes(behind.text));
}
