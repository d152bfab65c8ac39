/** A number and a word for hundred or thousand are one number: "6 hundred lbs", "2 thousand pounds", "eleven hundred". */
import type { Token } from './tokens.ts';

const isTeen = (token: Token | undefined): token is Token =>
  token?.type === 'word' &&
  token.term?.value !== undefined &&
  token.term.value > 10 &&
  token.term.value < 20 &&
  'di'.includes(token.term.code);

export function joinHundreds(tokens: readonly Token[]): Token[] {
  const joined: Token[] = [];
  for (const token of tokens) {
    const last = joined.at(-1);
    const times = token.term?.code === 'i' && (token.term.value === 100 || token.term.value === 1000) ? token.term.value : null;
    if (times !== null && last?.type === 'number' && last.value !== null && last.value < 20 && last.line === token.line)
      joined[joined.length - 1] = { ...last, value: last.value * times, end: token.end };
    else if (times === 100 && token.term && isTeen(last) && last.line === token.line)
      joined[joined.length - 1] = { ...last, term: { ...token.term, value: (last.term?.value ?? 0) * 100 }, end: token.end };
    else joined.push(token);
  }
  return joined;
}
