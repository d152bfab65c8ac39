/**
 * Terms: what a dictionary says of a word or phrase. `code` is the one-letter class by which recognisers match token sequences
 * (see classes.ts); the other fields are what the word means.
 */
import type { Condition, Grade, Kind, Material } from '../../listing/reading.ts';
import { foldPhrase } from './fold.ts';
import type { Token } from './tokens.ts';

export interface Term {
  readonly code: string;
  readonly kind?: Kind;
  /** The noun names more than one piece. */
  readonly plural?: boolean;
  /** A noun of everyday life too: alone it doesn't make an ad one of this trade. */
  readonly weak?: boolean;
  readonly unit?: 'lb' | 'kg';
  readonly length?: 'mm' | 'cm' | 'm' | 'in' | 'ft';
  readonly currency?: string;
  /** Class instead of `code` where the last word is written without a capital ("ein Paar" is two, "ein paar" some). */
  readonly lower?: string;
  /** A number word's value; a count word's pieces. */
  readonly value?: number;
  readonly fits?: '50mm' | '25mm';
  readonly material?: Material;
  readonly grade?: Grade;
  readonly condition?: Condition;
  /** Kind of goods that the word names a part of ("knurl", "upholstery"). */
  readonly part?: Kind;
  /** What the condition becomes when it is denied ("not bent"). */
  readonly denied?: Condition;
  /** Further meaning that a recogniser asks for by name: "per", "former", "total", "sold", "wanted" … */
  readonly sense?: string;
}

interface Node {
  readonly next: Map<string, Node>;
  term: Term | null;
}

export type Dictionary = ReadonlyMap<string, Node>;

/** One dictionary section: phrases parted by "|" and what they mean. */
export type Entry = readonly [phrases: string, term: Term];

/** Builds the phrase tree. Where a phrase stands twice the first entry holds; `conflicts` lists those, and a test keeps the list empty. */
export function dictionary(sections: readonly (readonly Entry[])[]): Dictionary {
  return build(sections).root;
}

/** Phrases that stand twice with different meanings, so that no word means two things by accident. */
export const conflicts = (sections: readonly (readonly Entry[])[]): string[] => build(sections).twice;

function build(sections: readonly (readonly Entry[])[]): { root: Map<string, Node>; twice: string[] } {
  const root = new Map<string, Node>();
  const twice: string[] = [];
  /** "Don't haggle" as sellers write it, "dont haggle": what is not told otherwise means the same. */
  const bare: Entry[] = [];
  const put = ([phrases, term]: Entry): void => {
    for (const phrase of phrases.split('|')) {
      const words = foldPhrase(phrase.trim())
        .replaceAll('/', ' / ')
        .split(/[\s-]+/);
      let level = root;
      let node: Node = { next: root, term: null };
      for (const word of words) {
        node = level.get(word) ?? { next: new Map(), term: null };
        level.set(word, node);
        level = node.next;
      }
      if (node.term && JSON.stringify(node.term) !== JSON.stringify(term)) twice.push(phrase.trim());
      node.term ??= term;
      if (words.length > 1 && phrase.includes("'")) bare.push([phrase.replaceAll("'", ''), term]);
    }
  };
  sections.flat().forEach(put);
  const told = twice.length;
  for (const entry of bare) put(entry);
  twice.length = told;
  return { root, twice };
}

const LONGEST_PHRASE = 9;

/** The node that a token leads to: of one word, or of several that another dictionary joined. */
function stepInto(level: Dictionary, text: string): Node | undefined {
  const node = level.get(text);
  if (node || !text.includes(' ')) return node;
  return text.split(' ').reduce<Node | undefined>((at, word, index) => (index === 0 ? level : at?.next)?.get(word), undefined);
}

/** "Bar's another hundred", "rack's $300": the goods, with the verb run into them, before what they cost. */
function withoutVerb(token: Token, next: Token | undefined, phrases: Dictionary): Token {
  const said = next?.type === 'word' && 'mC'.includes(phrases.get(next.text)?.term?.code ?? '_');
  if (!said && next?.type !== 'number' && !/^(?:[$£€]|another|an|extra|only|just|about)$/.test(next?.text ?? '')) return token;
  const term = stepInto(phrases, token.text.slice(0, -2))?.term ?? null;
  return term?.kind ? { ...token, term } : token;
}

/** "For all four", but "for all four 45s", "the 2 45 lb plates", "the 3-point hitch": a count that goods or their weight follow is theirs. */
function countsOn(tokens: readonly Token[], at: number, phrases: Dictionary): boolean {
  const [last, next] = [tokens[at], tokens[at + 1]];
  if (!last || !next || (last.type !== 'number' && phrases.get(last.text)?.term?.code !== 'd')) return false;
  if (next.type === 'mark') return next.text === '#' || next.text === '*' || (next.text === '-' && next.glued);
  return next.type === 'number' || 'kmuvdqsfx'.includes(phrases.get(next.text)?.term?.code ?? '_');
}

/** Joins the longest dictionary phrase at each word to one token. A hyphen between its words, or a line's single space, makes no difference. */
export function joinTerms(tokens: readonly Token[], phrases: Dictionary): Token[] {
  const joined: Token[] = [];
  let at = 0;
  while (at < tokens.length) {
    const first = tokens[at];
    if (!first) break;
    let level: ReadonlyMap<string, Node> = phrases;
    let best = -1;
    let term: Term | null = null;
    for (let to = at; to < tokens.length && to - at < LONGEST_PHRASE; to += 1) {
      const token = tokens[to];
      if (!token || token.type === 'line') break;
      // "heavy-duty", "o.b.o.": marks inside of words.
      const joins = token.text === '-' || (token.text === '.' && tokens[to - 1]?.text.length === 1);
      if (to > at && joins && token.glued && tokens[to + 1]?.glued) continue;
      const node = stepInto(level, token.text);
      if (!node) break;
      if (node.term && !(to > at && node.term.code === 'L' && countsOn(tokens, to, phrases))) {
        best = to;
        term = node.term;
      }
      level = node.next;
    }
    const last = tokens[best];
    if (term && last) {
      joined.push(
        best === at
          ? { ...first, term }
          : {
              ...first,
              type: 'word',
              text: tokens
                .slice(at, best + 1)
                .map((t) => t.text)
                .join(' '),
              end: last.end,
              value: term.value ?? first.value,
              term,
            },
      );
      at = best + 1;
    } else {
      joined.push(first.text.endsWith("'s") ? withoutVerb(first, tokens[at + 1], phrases) : first);
      at += 1;
    }
  }
  return joined;
}

/** Joins phrases of another language among the words that have no term yet. */
export function joinUnknown(tokens: readonly Token[], phrases: Dictionary): Token[] {
  const joined: Token[] = [];
  let run: Token[] = [];
  const end = (): void => {
    if (run.length > 0) joined.push(...joinTerms(run, phrases));
    run = [];
  };
  for (const token of tokens) {
    if (token.type === 'word' && token.term === null) run.push(token);
    else {
      end();
      joined.push(token);
    }
  }
  end();
  return joined;
}
