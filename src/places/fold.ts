/** Names without what people write now one way, now another: case, accents, signs, "St." for "Saint". */

/** Words that stand for one another, by what they are folded to. */
const SAME: Readonly<Record<string, string>> = { st: 'saint', ste: 'saint', sankt: 'saint', ft: 'fort', mt: 'mount' };

/** Letters that no accent makes. */
const LETTERS: Readonly<Record<string, string>> = { ß: 'ss', æ: 'ae', ø: 'o', œ: 'oe', ł: 'l', đ: 'd' };

const UMLAUTS: Readonly<Record<string, string>> = { ä: 'ae', ö: 'oe', ü: 'ue' };

/** Lower-case words of letters and digits, one space between them. */
export function foldName(name: string): string {
  let plain = name.toLowerCase();
  // Most names are plain already, and there are tens of thousands.
  if (/[^a-z ]/.test(plain)) {
    plain = plain
      .normalize('NFKD')
      .replace(/[\p{M}'’ʻ`]/gu, '')
      .replace(/[ßæøœłđ]/g, (letter) => LETTERS[letter] ?? letter)
      .replace(/[^\p{L}\p{N}]+/gu, ' ')
      .trim();
  }
  if (!/\b(?:st|ste|sankt|ft|mt)\b/.test(plain)) return plain;
  return plain.replace(/\b(?:st|ste|sankt|ft|mt)\b/g, (word) => SAME[word] ?? word);
}

/** The other way to write umlauts, "ue" for "ü"; null when there are none. */
export function foldUmlauts(name: string): string | null {
  const lower = name.toLowerCase().normalize('NFC');
  return /[äöü]/.test(lower) ? foldName(lower.replace(/[äöü]/g, (letter) => UMLAUTS[letter] ?? letter)) : null;
}

/** What stands between a name and the river, hill or town that tells it from others of the name. */
const BESIDE = /^(.+?) (?:am|an|auf|bei|beim|im|in|ob|vor|zu|upon|on|under|by|next|sur)(?: (?:der|dem|den|the|la))? (.+)$/;

/** Shorter ways to say a folded name: "x am y" is also "x", "x y" and "x a y"; with brackets behind it, what stands before them too. */
export function shorterNames(name: string, folded: string): string[] {
  const bracket = /^([^(/]+?)\s*[(/]/.exec(name)?.[1];
  const beside = BESIDE.exec(folded);
  const [, head = '', by = ''] = beside ?? [];
  return [
    ...(bracket === undefined ? [] : [foldName(bracket)]),
    ...(beside === null ? [] : [head, `${head} ${by}`, `${head} a ${by}`, `${head} a ${by[0]}`, `${head} a d ${by}`]),
  ];
}
