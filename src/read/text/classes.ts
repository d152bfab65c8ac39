/**
 * One letter per token, so that a notation is a short regular expression over the letters (see recognisers/).
 *
 * Numbers: n digits · d count word (two) · i large number word (forty five) · v weights as a word (tens)
 * Units: u lb, kg · h # · q pounder · s plural s · f length unit · J time and other units · ¢ cents · $ currency · ¤ no cents (",-")
 * Trade: k noun · m modifier (olympic, iron) · C condition · B bore · S shaft · T sleeve · G dimension · K capacity · I tensile
 * Grouping: x times · p pair · t set · e each · E of each · o of · a article · c and, with · j quantity · g per side · b worth of · r per · w for · @ at (2 at 20 lb)
 * Prices: A asking · F former · V saving · D delivery · H deposit · L for all, total · O or best offer · R firm · Z free
 * What stands around them: % I have, there are · & of them, in stock · £ cash, takes it
 * Others: N not · Q not included · Y sold · W wanted · X fits · U about · y hearsay · P lifts and bodies · z any other word
 * Marks stand for themselves, brackets as ( and ), | between table cells, l at a line's end, M a recognised price, _ a token that is used up.
 */
import type { Token } from './tokens.ts';

const MARKS: Readonly<Record<string, string>> = {
  '[': '(',
  '{': '(',
  ']': ')',
  '}': ')',
  '\t': '|',
  '|': '|',
  $: '$',
  '£': '$',
  '€': '$',
  '#': 'h',
  '¢': '¢',
  '&': 'c',
  '+': 'c',
  '@': '@',
};
const PLAIN_MARKS = '()-:=,/.;!?•"\'';

/** The class of one token. `*` and `~` count as marks only where the recognisers ask for them. */
function classOf(token: Token, previous: Token | undefined, next: Token | undefined): string {
  if (token.type === 'line') return 'l';
  if (token.type === 'number') return 'n';
  if (token.type === 'word') {
    if (token.term === null) return 'z';
    const { code } = token.term;
    // A plural s belongs to a number or a unit right before it; a lone s is nothing.
    if (code === 's') return token.glued ? 's' : 'z';
    if (code === 'x') return token.text === 'x' || (previous?.type === 'number' && next?.type === 'number') ? 'x' : 'z';
    // "4 no. 25 lb discs": no. is number there.
    if (token.text === 'no' && previous?.type === 'number' && (next?.text === '.' || (token.glued && next?.type === 'number')))
      return 'j';
    // "4 off 20 kg", of builders' lists.
    if (token.text === 'off' && (previous?.type === 'number' || previous?.term?.code === 'd') && next?.type === 'number')
      return 'j';
    // "bench and stands", "$60 for stands", but "it stands 7 ft tall".
    if (
      token.term.sense === 'verb-too' &&
      ((previous?.type === 'word' && !'acdmCew'.includes(previous.term?.code ?? 'z')) ||
        next?.type === 'number' ||
        next?.term?.code === 'U')
    )
      return 'z';
    // "2 at 20 lb" is "2 @ 20 lb".
    if (code === '@') return (previous?.type === 'number' || previous?.term?.code === 'd') && next?.type === 'number' ? '@' : 'z';
    // "in" and "m" are units only behind a number, and not in "2 in the garage".
    if (code === 'f' && (token.text === 'in' || token.text === 'm'))
      return previous?.type === 'number' && next?.term?.code !== 'a' ? 'f' : 'z';
    return code;
  }
  // "4*45", "45 lb*4".
  if (token.text === '*')
    return (previous?.type === 'number' || (token.glued && previous?.term?.unit)) && next?.type === 'number' ? 'x' : '•';
  if (token.text === '~') return 'U';
  if (/^[.,] ?-/.test(token.text)) return '¤';
  // "45 lb ...... $40" is a line of dots, "sold... or not" the end of a clause.
  if (token.text.length > 1 && '._'.includes(token.text[0] ?? ' ')) return token.text.length > 3 ? '-' : ';';
  if (token.text.length > 1 && '-=*•'.includes(token.text[0] ?? ' ')) return token.text[0] === '*' ? '•' : (token.text[0] ?? '-');
  return MARKS[token.text] ?? (PLAIN_MARKS.includes(token.text) ? token.text : 'z');
}

/** A word that no dictionary knows, right between a weight and its goods, is what they are called: "45 lb Oakforge plates". */
const NAMED = /(?<=[uhsqv])z{1,2}(?=k)|(?<=(?:^|[lc,.;:•(-])[nd])z(?=n[us])/g;

/** Unknown, or a word of size too ("two little 1 1/4s"). */
const isUnknown = (token: Token | undefined): boolean =>
  token?.type === 'word' && token.text.length > 3 && (token.term === null || token.term.sense === 'faintly');

/** The letters of all tokens: `letters[i]` is the class of `tokens[i]`. */
export function classify(tokens: readonly Token[]): string {
  let letters = '';
  for (let i = 0; i < tokens.length; i += 1) {
    const token = tokens[i];
    if (token) letters += classOf(token, tokens[i - 1], tokens[i + 1]);
  }
  if (!letters.includes('zk') && !letters.includes('znu') && !letters.includes('zns')) return letters;
  return letters.replace(NAMED, (words, at: number) =>
    [...words].every((_, index) => isUnknown(tokens[at + index])) ? 'm'.repeat(words.length) : words,
  );
}
