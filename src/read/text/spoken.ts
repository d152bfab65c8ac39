/** Money as it is spoken is one number: "two fifty" where no goods follow, "1.2k", "two grand". */
import type { Language } from '../language/language.ts';
import type { Token } from './tokens.ts';

/** Hundreds and the rest of them behind a word of money, or before one or the end of a part; what counts or weighs goods is none. */
const HUNDREDS = /(?<=[AwUORV$])d-?i(?![kmuhqfsvxCBSTGnd"'])|(?<![ndx])d-?i(?=$|[l.,;:!?)(/AORLwepr£cDV]|a[upeh])/g;
const THOUSANDS = /n(?=1)|[nd]2/g;
/** Sizes in words beside it make a row of goods of it ("two fifty, two forty"), so far off in tokens. */
const SIZES = /d-?i|v/;
const ROW = 7;

/** A letter for each token, as in classes.ts: "1" and "2" for thousands. */
function lettersOf(tokens: readonly Token[], language: Language): string {
  let letters = '';
  for (const { type, text, term, glued } of tokens) {
    if (type !== 'word') letters += type === 'number' ? 'n' : type === 'line' ? 'l' : (text[0] ?? 'z');
    else if (text === 'grand' || (text === 'k' && glued)) letters += text === 'k' ? '1' : '2';
    else if (term?.sense === 'or' || (term?.code !== 'd' && language.cues['behind-price'].is(text))) letters += '£';
    else letters += term?.code ?? 'z';
  }
  return letters;
}

export function joinSpoken(tokens: readonly Token[], language: Language): readonly Token[] {
  if (language.code !== 'en') return tokens;
  const letters = lettersOf(tokens, language);
  const joins = new Map<number, readonly [last: number, value: number]>();
  const size = (at: number): number => tokens[at]?.value ?? tokens[at]?.term?.value ?? 0;
  for (const { index, 0: words } of letters.matchAll(HUNDREDS)) {
    const last = index + words.length - 1;
    const around = `${letters.slice(Math.max(0, index - ROW), index)} ${letters.slice(last + 1, last + ROW)}`;
    const told = 'AwUORV$'.includes(letters[index - 1] ?? '_');
    const [hundreds, rest] = [size(index), size(last)];
    if (hundreds < 10 && rest >= 10 && rest < 100 && (told || !SIZES.test(around)))
      joins.set(index, [last, 100 * hundreds + rest]);
  }
  // "1.2k", "2k obo", but not "20k bumpers".
  for (const { index } of letters.matchAll(THOUSANDS))
    if (
      size(index) < 20 &&
      (tokens[index]?.text.includes('.') || letters[index + 1] === '2' || /[AORL£]/.test(letters[index + 2] ?? '_'))
    )
      joins.set(index, [index + 1, 1000 * size(index)]);
  if (joins.size === 0) return tokens;
  return tokens.flatMap((token, at): Token[] => {
    const join = joins.get(at);
    if (!join) return [...joins].some(([from, [last]]) => at > from && at <= last) ? [] : [token];
    const [last, value] = join;
    const end = tokens[last]?.end ?? token.end;
    return [
      token.type === 'number' && letters[at + 1] === '1'
        ? { ...token, value, end }
        : { ...token, type: 'word', value, end, term: { code: 'i', value, sense: 'spoken' } },
    ];
  });
}
