/** Nouns of the trade: whether their goods are on offer or only spoken of, denied or left out, and the pieces told before them. */
import type { Kind } from '../../listing/reading.ts';
import { says, saysWithin } from '../text/says.ts';
import { type Scan, valueAt } from '../text/scan.ts';
import type { Token } from '../text/tokens.ts';
import { isAskedFor } from './declined.ts';
import { isInLeftOutList } from './left-out-lists.ts';
import { isCount } from './notation.ts';
import { isTradedFor } from './traded-for.ts';

/** Prepositions behind which a bar, rack or bench is a place and not goods ("they lean on the bar"). */
const ABOUT = [
  'on',
  'onto',
  'from',
  'off',
  'under',
  'against',
  'into',
  'around',
  'like',
  'than',
  'unlike',
  'beside',
  'behind',
  'off of',
  'to hold',
  'where',
  'when',
  'if',
  'in',
  'inside',
  'through',
  'i',
  'drop',
  'drops',
  'dropping',
  'dropped',
  'lift',
  'rack',
  'racking',
  'unrack',
  'rerack',
];
const RESTS = /^(?:sits|rests|rides|path|height|is fixed|moves|is guided|catch|catches|rolls up|across|between)/;
/** How far before a noun what makes it none of the goods may stand. */
const REACH = 8;
const HANDLED: readonly Kind[] = ['plate', 'bumper', 'dumbbell', 'kettlebell', 'micro'];
const ASIDE_KINDS: readonly Kind[] = ['bar', 'rack', 'bench', 'collars', 'curl-bar'];

/** The word before a noun with its article, adjectives and the thickness of a bar ("on a 2 inch bar"). */
function tokenBefore(scan: Scan, at: number): Token | undefined {
  let i = at - 1;
  while (
    i >= 0 &&
    scan.letters[i] !== 'M' &&
    ('amCnd&'.includes(scan.plain[i] ?? '_') || isThickness(scan, i) || isKindOf(scan, i))
  )
    i -= 1;
  return scan.tokens[i];
}

/** "See our other listings for racks and flooring", "racks, benches and dumbbells in my other ads": of no price in this one. */
function isElsewhere(scan: Scan, at: number): boolean {
  if (!scan.senses.has('elsewhere')) return false;
  for (let i = at - 12; i < at + 12; i += 1)
    if (scan.tokens[i]?.term?.sense === 'elsewhere' && scan.clause[i] === scan.clause[at])
      return !/[$M_]/.test(scan.letters.slice(Math.min(i, at), Math.max(i, at)).join(''));
  return false;
}

/** Whether a price, or a number that could be one, stands behind in the clause. */
function asksIn(scan: Scan, at: number): boolean {
  for (let i = at + 1; i < at + 30 && scan.clause[i] === scan.clause[at]; i += 1)
    if (scan.letters[i] === 'M' || '$nidAOc'.includes(scan.plain[i] ?? '_')) return true;
  return false;
}

/** "On the thick kind of bar". */
const isKindOf = (scan: Scan, at: number): boolean =>
  scan.senses.has('kind-of') &&
  [at, at + 1].some((i) => scan.tokens[i]?.term?.sense === 'kind-of') &&
  'zS'.includes(scan.plain[at] ?? '_');

/** "Fits any regular bar". */
const isOrdinary = (scan: Scan, at: number): boolean => scan.plain[at] === 'z' && says(scan, at, 'ordinary');

const isThickness = (scan: Scan, at: number): boolean =>
  'f"'.includes(scan.plain[at] ?? '_') && scan.plain[at - 1] === 'n' && (valueAt(scan, at - 1) ?? 9) <= 3;

/** Whether the word before the noun makes it a place. */
function isAbout(scan: Scan, at: number, fitted: boolean): boolean {
  const { text, term } = tokenBefore(scan, at) ?? {};
  // "I'll throw in the bar."
  if (text === 'in' && saysWithin(scan, at - 4, at, 'throws')) return false;
  return (fitted || text !== 'on') && (ABOUT.includes(text ?? '') || term?.sense === 'place') && !isRepriced(scan, at);
}

/** `fitted`: whether "slides on a 2 inch bar" makes the bar one; it tells of the trade all the same. */
export function isAside(scan: Scan, at: number, fitted = true): boolean {
  const before = scan.plain.slice(Math.max(0, at - REACH), at);
  const clauseStart = Math.max(0, at - REACH);
  let start = at;
  while (start > clauseStart && scan.clause[start - 1] === scan.clause[at]) start -= 1;
  // "The thick kind of bar" is a bar.
  const said = before.slice(before.length - (at - start));
  const near = /[zS]/.test(said)
    ? [...said].map((letter, i) => (isKindOf(scan, start + i) || isOrdinary(scan, start + i) ? 'm' : letter)).join('')
    : said;
  if (isTradedFor(scan, at) || isTurnedTo(scan, at) || isElsewhere(scan, at)) return true;
  // What is kept is none of the goods, but tells of the trade all the same.
  if (fitted && (isInLeftOutList(scan, at) || isNotGot(scan, at))) return true;
  // "Missing the collars", "es fehlen die Verschlüsse".
  if (says(scan, 'ad'.includes(scan.plain[at - 1] ?? '_') ? at - 2 : at - 1, 'missing')) return true;
  // "One star nut is missing."
  if (scan.tokens[at + 1]?.term?.condition === 'missing-parts' && /[.;l)]/.test(scan.plain[at + 2] ?? 'l')) return true;
  // "Combo rack (bench + squat in one frame)", "squat/bench rack" name one frame.
  if (scan.tokens[at]?.text === 'bench' && isOfCombo(scan, at)) return true;
  // "The hooks of his rack".
  if (/o$/.test(near.slice(0, -1)) && /^(?:his|her|their|your)$/.test(scan.tokens[at - 1]?.text ?? '')) return true;
  const behind = scan.plain.slice(at + 1, at + 7);
  const end = behind.search(/[l.;!?]/);
  const after = end === -1 ? behind : behind.slice(0, end);
  // Asked for by their letters first: most nouns have none of them near, and every noun of the ad comes by here.
  if (near.includes('N') && /N[amoCz]{0,2}(?:k[zc,][amC]{0,2}){0,2}$/.test(near)) return true;
  // "Keeping the bar, bench $50": what has a price is sold.
  const sold = /^[-:=]?[$]/.test(scan.plain.slice(at + 1, at + 3)) && near.includes(',');
  if (near.includes('Q') && !sold && /Q[amozCkc,]{0,4}$|Qa?n[su]?ca?m?$/.test(near)) return true;
  if (
    /[XW]/.test(near) &&
    /X(?:[amCXBndfGS/"'po-]|(?<=X)z(?=n)){0,6}$|X[amU]{0,2}[nd][pom]{0,3}kc[amnd]{0,3}$|W[amCz]{0,3}$/.test(near)
  )
    return true;
  // "takes Olympic plates", "takes 5 bars", "takes 2 inch plates", but "$50 takes the rack".
  const takes = near.includes('A') ? /(?<![$nM_])A(?:[mCndf"]|\/|(?<=m)z(?=m|$)){0,5}$/.exec(near) : null;
  if (takes && says(scan, start + takes.index, 'take')) return true;
  if (ASIDE_KINDS.includes(scan.tokens[at]?.term?.kind ?? 'other') && isAbout(scan, at, fitted)) return true;
  if (after.includes('Q') && (/^(?:[mCz]{0,2}|zaz)Q/.test(after) || isJoinedToLeftOut(scan, at, after))) return true;
  if (isLeftOutLater(scan, at)) return true;
  // "the bar sits in notches" of a rack.
  if (isHandled(scan, at) || isOfOthers(scan, at) || isAskedFor(scan, at)) return true;
  if (
    scan.tokens[at]?.text === 'bar' &&
    (scan.plain[at - 1] === 'a' || scan.tokens[at + 1]?.text === 'height') &&
    RESTS.test(
      scan.tokens
        .slice(at + 1, at + 3)
        .map(({ text }) => text)
        .join(' '),
    )
  )
    return true;
  if (!near.includes('w')) return false;
  // "Für 30er Stangen." begins a sentence that names no price.
  if (start > clauseStart && /^w[am]{0,3}$/.test(near) && !asksIn(scan, at)) return true;
  // "A rack for 6 bars", but "$40 for 2 bars".
  if (
    /kw[nd]m?$/.test(near) &&
    ['storage', 'rack'].includes(scan.tokens[at - near.length + near.lastIndexOf('k')]?.term?.kind ?? '')
  )
    return true;
  // "Plates for olympic bars", "1 lb pairs for olympic bar", but "$40 a pair for the bars".
  if (
    /w[am]{0,3}(?:(?:n\/)?n[-]?[f"'s]m?)?$/.test(near) &&
    !/M_{0,4}w[am]{0,3}$/.test(scan.letters.slice(Math.max(0, at - 6), at).join('')) &&
    (fitted ? /(?:[kuzTBS]|up)w[am]{0,3}(?:(?:n\/)?n[-]?[f"'s]m?)?$/ : /[kuz]w[am]{0,3}(?:(?:n\/)?n[-]?[f"'s]m?)?$/).test(near)
  )
    return true;
  return false;
}

/** "Handy when you change the weights", "makes loading plates easy": what is done with such goods, of no number and at no price. */
function isHandled(scan: Scan, at: number): boolean {
  const term = scan.tokens[at]?.term;
  if (!HANDLED.includes(term?.kind ?? 'other') || scan.nounCounts.has(at)) return false;
  let verb = at - 1;
  while (at - verb < 4 && 'amC'.includes(scan.plain[verb] ?? '_')) verb -= 1;
  return says(scan, verb, 'handles') && scan.clause[verb] === scan.clause[at] && !asksIn(scan, at);
}

/** "If someone already owns a bar": of those who read the ad, or the seller's own. */
const isOfOthers = (scan: Scan, at: number): boolean =>
  scan.plain[at - 1] === 'a' && says(scan, at - 2, 'owns') && scan.clause[at - 2] === scan.clause[at];

/** "Downsizing to just dumbbells", "switched to kettlebells and dumbbells": what the seller goes on with. */
function isTurnedTo(scan: Scan, at: number): boolean {
  if (!scan.senses.has('turn-to')) return false;
  for (let i = at - 1; i >= 0 && at - i < 7 && scan.clause[i] === scan.clause[at]; i -= 1) {
    if (scan.tokens[i]?.term?.sense === 'turn-to') return true;
    if (!'amCkc'.includes(scan.plain[i] ?? '_')) return false;
  }
  return false;
}

/** "You don't get the rack it sits in". */
function isNotGot(scan: Scan, at: number): boolean {
  let verb = at - 1;
  while (at - verb < 4 && 'amC'.includes(scan.plain[verb] ?? '_')) verb -= 1;
  return says(scan, verb, 'gets') && scan.plain[verb - 1] === 'N' && scan.clause[verb - 1] === scan.clause[at];
}

/** Whether the rack of the same clause is for the bench press and the squat. */
function isOfCombo(scan: Scan, at: number): boolean {
  const squat = [at - 2, at + 2].some(
    (i) => scan.plain[i] === 'P' && 'c/'.includes(scan.plain[(i + at) / 2] ?? '_') && scan.clause[i] === scan.clause[at],
  );
  if (!squat) return false;
  for (let i = at - 8; i < at + 8; i += 1)
    if (scan.clause[i] === scan.clause[at] && scan.tokens[i]?.term?.kind === 'rack') return true;
  return false;
}

/** "Dropping the rack to $250", "price drop on the bench: $60". */
const isRepriced = (scan: Scan, at: number): boolean =>
  /^[zA:]\$n/.test(scan.plain.slice(at + 1, at + 4)) && (scan.plain[at + 1] !== 'z' || scan.tokens[at + 1]?.term?.sense === 'to');

/** "Bar is bent so I'm chucking it, not included": left out later in the clause, with no other goods or numbers between. */
function isLeftOutLater(scan: Scan, at: number): boolean {
  for (let i = at + 1; i < at + 12 && scan.clause[i] === scan.clause[at]; i += 1) {
    // "I do have bars now and then, but I don't have any today."
    if (scan.plain[i] === 'Q' && says(scan, i + 1, 'any')) return scan.plain[i + 2] !== 'k';
    if (scan.plain[i] === 'Q') return scan.tokens[i]?.term?.sense === 'left-out';
    if (!'mCzaPyAU,cF'.includes(scan.plain[i] ?? '_')) return false;
  }
  return false;
}

/** "Bar and weights not included": both are left out. */
function isJoinedToLeftOut(scan: Scan, at: number, after: string): boolean {
  return (
    /^c[amC]{0,2}k[mCza]{0,5}Q/.test(after) &&
    ['and', '&', '+', 'or', 'und', 'u', 'sowie'].includes(scan.tokens[at + 1]?.text ?? '')
  );
}

/** "2 ea. bench", "3 pcs. bars": the word of pieces and its point between the count and the noun. */
const isPieceMark = (scan: Scan, at: number): boolean =>
  scan.plain[at] === '.' ? 'ej'.includes(scan.plain[at - 1] ?? '_') : /^[nd][ej]$/.test(scan.plain.slice(at - 1, at + 1));

/** "One of the collars is cracked". */
const isFaulted = (scan: Scan, at: number): boolean =>
  scan.tokens[at]?.term?.plural === true && /^[z%am]{1,3}C/.test(scan.plain.slice(at + 1, at + 6));

/** Pieces told before a noun ("2 benches", "a pair of collars"), and the token where the count begins. */
export function countBefore(scan: Scan, at: number): { count: number | null; from: number } {
  const behind = scan.nounCounts.get(at);
  if (behind !== undefined) return { count: behind, from: at };
  let from = at;
  let count: number | null = null;
  // "2 sets of clips": collars come in pairs.
  const couples = scan.tokens[at]?.term?.kind === 'collars' && scan.tokens[at]?.term?.plural === true;
  let each = 1;
  for (let i = at - 1; i >= Math.max(0, at - 6); i -= 1) {
    const letter = scan.letters[i] ?? '_';
    if (couples && says(scan, i, 'sets')) {
      each = 2;
      continue;
    }
    if ('mCxoa_()t'.includes(letter) || isPieceMark(scan, i)) continue;
    if (letter === 'p') {
      count = 2 * (count ?? 1);
      from = i;
      continue;
    }
    // "Qty 8 - barbell".
    if ('-:'.includes(letter) && /^j:?[nd]$/.test(scan.plain.slice(Math.max(0, i - 2), i).replace(/^[^j]/, ''))) continue;
    // "Two single stands" are two.
    if (scan.tokens[i]?.term?.sense === 'single' && 'nd'.includes(scan.letters[i - 1] ?? '_')) continue;
    if ('nd'.includes(letter) && scan.plain[i - 1] !== '$') {
      const value = valueAt(scan, i);
      // "One of the collars is cracked": of goods whose number it does not tell.
      if (value === 1 && scan.tokens[i + 1]?.text === 'of the' && isFaulted(scan, at)) return { count: null, from: i };
      if (isCount(value) && value <= 24) {
        count = (count ?? 1) * value * each;
        from = i;
      }
      // "One of my three bars" is one.
      const part = scan.plain[i - 1] === 'o' && 'nd'.includes(scan.plain[i - 2] ?? '_') ? valueAt(scan, i - 2) : null;
      if (isCount(part)) {
        count = part;
        from = i - 2;
      }
    }
    break;
  }
  return { count, from };
}
