/** Money as it is spoken is one number: "two fifty" where no goods follow, "1.2k", "two grand", "half a grand". */
import type { Language } from '../language/language.ts';
import type { Token } from './tokens.ts';

/** Before these a number counts or weighs goods: "two fifty pounders", "one forty five is chipped". */
const GOODS = 'kmuhqfsvxCBSTGnd';
/** Behind and before these it is money. */
const MONEY_BEHIND = 'AORLwepr£cDV';
const MONEY_BEFORE = 'AwUORV';
/** How far off another such pair makes a row of goods of it: "two fifty, two forty", in tokens. */
const ROW = 7;

const codeOf = (token: Token | undefined): string => (token?.type === 'number' ? 'n' : (token?.term?.code ?? '_'));
const sizeOf = (token: Token | undefined): number => token?.term?.value ?? 0;

/** How many tokens from one on are hundreds and the rest of them: "two fifty", "two-fifty"; 0 where they are none. */
function spokenAt(tokens: readonly Token[], at: number): number {
  const [first, next, last] = [tokens[at], tokens[at + 1], tokens[at + 2]];
  if (codeOf(first) !== 'd' || first?.term?.sense || sizeOf(first) > 9) return 0;
  const rest = next?.text === '-' && next.glued && last?.glued ? last : next;
  const tens = codeOf(rest) === 'i' && sizeOf(rest) >= 10 && sizeOf(rest) < 100;
  return tens && rest?.line === first?.line ? (rest === next ? 2 : 3) : 0;
}

/** Whether the words around tell of money, and neither of goods nor of a row of their sizes. */
function isMoney(tokens: readonly Token[], at: number, end: number, language: Language): boolean {
  const [before, behind] = [tokens[at - 1], tokens[end]];
  if (GOODS.includes(codeOf(behind)) || 'ndx'.includes(codeOf(before))) return false;
  if (MONEY_BEFORE.includes(codeOf(before)) || before?.text === '$') return true;
  for (let i = at - ROW; i < end + ROW; i += 1)
    if (
      (i < at - 1 || i >= end) &&
      ((codeOf(tokens[i]) === 'd' && 'iv'.includes(codeOf(tokens[i + 1]))) || codeOf(tokens[i]) === 'v')
    )
      return false;
  const ends = behind === undefined || behind.type === 'line' || (behind.type === 'mark' && !'-"\''.includes(behind.text));
  const unit = codeOf(behind) === 'a' && 'upeh'.includes(codeOf(tokens[end + 1]));
  return (
    ends ||
    unit ||
    MONEY_BEHIND.includes(codeOf(behind)) ||
    behind.term?.sense === 'or' ||
    language.cues['behind-price'].is(behind.text)
  );
}

/** "1.2k", "2k obo", but not "20k bumpers". */
const isThousand = (last: Token | undefined, token: Token, next: Token | undefined): boolean =>
  last?.type === 'number' &&
  last.value !== null &&
  last.value < 20 &&
  token.text === 'k' &&
  token.glued &&
  (last.text.includes('.') || 'AORL£'.includes(codeOf(next)));

export function joinSpoken(tokens: readonly Token[], language: Language): Token[] {
  if (language.code !== 'en') return [...tokens];
  const joined: Token[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    const [token, last] = [tokens[at], joined.at(-1)];
    if (!token) break;
    const many = spokenAt(tokens, at);
    const rest = tokens[at + many - 1];
    if (many > 0 && rest && isMoney(tokens, at, at + many, language)) {
      const value = 100 * sizeOf(token) + sizeOf(rest);
      joined.push({ ...token, end: rest.end, value, term: { code: 'i', value, sense: 'spoken' } });
      at += many - 1;
    } else if (last && (token.text === 'grand' || isThousand(last, token, tokens[at + 1])) && (last.value ?? last.term?.value)) {
      const value = 1000 * (last.value ?? sizeOf(last));
      joined[joined.length - 1] =
        last.type === 'number'
          ? { ...last, value, end: token.end }
          : { ...last, end: token.end, value, term: { code: 'i', value, sense: 'spoken' } };
    } else joined.push(token);
  }
  return joined;
}
