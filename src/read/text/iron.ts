/** "160 lb of iron": the metal, weighed out, stands for plates. */
import type { Term } from './terms.ts';
import type { Token } from './tokens.ts';

const PLATES: Term = { code: 'k', kind: 'plate', plural: true, weak: true, material: 'iron', sense: 'mass' };
/** What makes the metal a word about the next one: "100 lb of iron plates". */
const NOUNS = ['k', 'm', 'C'];

export const joinIron = (tokens: readonly Token[]): readonly Token[] =>
  tokens.map((token, at) => {
    const [unit, of, next] = [tokens[at - 2], tokens[at - 1], tokens[at + 1]];
    const weighed = token.text === 'iron' && of?.term?.code === 'o' && unit?.term?.unit !== undefined;
    return weighed && !NOUNS.includes(next?.term?.code ?? '_') ? { ...token, term: PLATES } : token;
  });
