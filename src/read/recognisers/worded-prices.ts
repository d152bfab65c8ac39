/** Bare numbers that the words around them make prices, though none asks for them: "500 now", "a hundred and fifty for all", "the rest is 240". */
import type { Price } from '../mention.ts';
import { begins, says } from '../text/says.ts';
import { findAll, type Scan, valueAt } from '../text/scan.ts';
import { putAmount, putNumber, putPrice } from './found-price.ts';

/** "500 now". */
const NOW = /([ni])(?=A(?:[.,;!l)]|$))/dg;
/** "Asking three fifty", "a fiver", "one fifty a pound". */
const SPOKEN = /i/dg;
const FOR_ALL = /([ni])(?=L|wap)/dg;
/** "für hundertfünfzig", "for one seventy five": a number in words at the end of the clause. */
const IN_WORDS = /w(a?)(i)(?=[.,;!l)]|$)/dg;
/** "Rack, bar, 4x45 for 500." */
const FOR_GOODS_TOLD = /(?<=[km)snv])w(n)(?=[.!l]|$)/dg;
/** "Bar's another hundred". */
const ANOTHER = /[zm](i)(?=[.,;!l)c]|$)/dg;
/** "Rest 90", "rest is 240". */
const FOR_REST = /z[a:=-]{0,2}([ni])(?=[.,;!l)OR£]|$)/dg;
/** "New price 180": with a word that tells of former prices too. */
const NEWLY = /F[a:=-]{0,2}([ni])(?=[.,;!l)OR£]|$)/dg;
/** "Need 180 for it". */
const FOR_IT = /([ni])(?=wz(?:[.,;!l)]|$))/dg;
/** "40 for the 45s, 20 a pair for the 25s". */
const FOR_SIZES = /([ni])(?=(?:[ra/]{0,2}[pe])?wa?n[uhs](?:[.,;!l)c]|$))/dg;
/** "The rack is 200", "bench is 50 more". */
const GOODS_ARE = /kz([ni])(?=m?(?:[.,;!l)c]|$))/dg;
/** "200 takes what's left", "200 takes everything", "500 takes both". */
const TAKES_REST = /([ni])(?=A[zLd])/dg;
/** "All three 130", "both 60": behind the prices of each. */
const ALL_OF_THEM = /(?:z[dn][pkj]?|d)(n)(?=[.,;!l)OR£]|$)/dg;
/** "$1 a lb so 400", "... = 337.50": what a rate comes to. */
const WORKED_OUT = /[z=](n)(?=[.,;!l)c]|$)/dg;
/** "Best offer over 100 gets it": where nothing else is asked. */
const OFFERS_OVER = /OU([ni])(?![x-]?[uhxfnJqskm])/dg;
/** "640 is fine", "a hundred and fifty and it's yours". */
const ENOUGH = /([ni])(?=[zcAP£])/dg;
/** "... 85 apiece, one is torn so that one is 60". */
const ONE_IS = /dz([ni])(?=[.,;!?l)R]|$)/dg;
/** "$75, would do 65". */
const WOULD_DO = /[zA]([ni])(?=[.,;!l)]|$)/dg;
/** "Rack alone 350", "rack by itself 350": beside a price for all. */
const ALONE = /kz[:=-]?([ni])(?=[.,;!?l)R]|$)/dg;
/** "70-80 obo". */
const RANGE_BEFORE_TERMS = /(?<![nx-])n-n(?=[,(]?[OR£])/dg;
const BEFORE_TERMS = /([ni])(?=[,(]?[OR£])/dg;
/** "All: 450", "rack $100, bench $60 or all 140". */
const ALL_BEFORE = /(?<=[l.,;(]|^|[l.,;(M]z)z[:=-]{0,2}(n)(?=[.,;!l)OR£]|$)/dg;

/** From a rate to what it comes to, in tokens. */
const WORKED_REACH = 8;
const HEAVIEST_PLATE = 55;
const LOT_BEFORE = /L[:=-]{0,2}(n)(?=[.,;!l)OR£]|$)/dg;
/** Tokens between the price of each and that of one of them. */
const REACH = 30;

/** "$500 takes both", and not "takes both standard and olympic plates". */
export const takesBoth = (scan: Scan, price: number): boolean =>
  scan.tokens[price + 1]?.term?.sense === 'take' &&
  says(scan, price + 2, 'both') &&
  '.,;!)lO'.includes(scan.plain[price + 3] ?? 'l');

interface Wording {
  /** A letter that the pattern can't do without, so that most ads are done with it at once. */
  readonly needs: string;
  readonly pattern: RegExp;
  readonly rule: string;
  readonly least: number;
  /** Whether the words are such; `from` and `to` are those of the match, of which the number is one. */
  readonly is: (scan: Scan, from: number, to: number, found: readonly Price[]) => boolean;
}

/** In this order. The number is the last token of the match, or the only one. */
const WORDINGS: readonly Wording[] = [
  {
    needs: 'k',
    pattern: GOODS_ARE,
    rule: 'price-of-goods',
    least: 20,
    is: (scan, from, to) => says(scan, from + 1, 'is-now') && isUnweighed(scan, from) && (valueAt(scan, to) ?? 0) % 5 === 0,
  },
  {
    needs: '',
    pattern: FOR_ALL,
    rule: 'price-for-all',
    least: 15,
    is: (scan, _, to) => scan.tokens[to + 1]?.term?.sense === 'whole' || says(scan, to + 1, 'priced-for-all'),
  },
  { needs: 'i', pattern: IN_WORDS, rule: 'price-in-words', least: 20, is: (scan, from) => says(scan, from, 'for') },
  {
    needs: 'w',
    pattern: FOR_GOODS_TOLD,
    rule: 'price-for-goods',
    least: 60,
    is: (scan, from, _, found) => found.length === 0 && says(scan, from, 'for'),
  },
  {
    needs: 'i',
    pattern: ANOTHER,
    rule: 'price-in-words',
    least: 50,
    is: (scan, from, _, found) => found.length > 0 && says(scan, from, 'one-more'),
  },
  {
    needs: 'z',
    pattern: FOR_REST,
    rule: 'price-for-rest',
    least: 10,
    is: (scan, from) => scan.tokens[from]?.term?.sense === 'rest',
  },
  {
    needs: 'F',
    pattern: NEWLY,
    rule: 'price-now',
    least: 10,
    is: (scan, from, _, found) => found.length === 0 && says(scan, from, 'new-price'),
  },
  {
    needs: 'w',
    pattern: FOR_IT,
    rule: 'price-told',
    least: 20,
    is: (scan, from, to, found) => found.length === 0 && says(scan, to + 2, 'them') && scan.plain[from - 1] !== 'F',
  },
  {
    needs: 'w',
    pattern: FOR_SIZES,
    rule: 'price-for-goods',
    least: 10,
    is: (scan, from) => scan.plain.slice(from + 1, from + 5).includes('w') && !'nxd$'.includes(scan.plain[from - 1] ?? 'l'),
  },
  {
    needs: 'd',
    pattern: ONE_IS,
    rule: 'price-of-goods',
    least: 5,
    is: (scan, from) =>
      valueAt(scan, from) === 1 &&
      says(scan, from + 1, 'is-now') &&
      /[ni][ra/]?e/.test(scan.plain.slice(Math.max(0, from - REACH), from)),
  },
  {
    needs: 'A',
    pattern: TAKES_REST,
    rule: 'price-for-all',
    least: 15,
    is: (scan, _, to) =>
      takesBoth(scan, to) ||
      (scan.tokens[to + 1]?.term?.sense === 'take' &&
        (scan.tokens[to + 2]?.term?.sense === 'rest' ||
          scan.tokens[to + 2]?.term?.sense === 'whole' ||
          begins(scan, to + 2, 'whole-lot'))),
  },
  {
    needs: 'd',
    pattern: ALL_OF_THEM,
    rule: 'price-for-all',
    least: 20,
    is: (scan, from, to, found) =>
      (found.length > 1 || (valueAt(scan, to) ?? 0) > 2 * HEAVIEST_PLATE) &&
      (to - from > 1 ? says(scan, from, 'all') : says(scan, from, 'both') && (valueAt(scan, to) ?? 0) > HEAVIEST_PLATE),
  },
  {
    needs: '',
    pattern: WORKED_OUT,
    rule: 'price-worked-out',
    least: 20,
    is: (scan, from, _, found) =>
      (scan.plain[from] === '=' || says(scan, from, 'so')) &&
      found.some(
        (price) =>
          from > price.to &&
          from - price.to <= WORKED_REACH &&
          /^[ra/]{1,2}[uh]/.test(scan.plain.slice(price.to + 1, price.to + 4)),
      ),
  },
  {
    needs: '',
    pattern: ENOUGH,
    rule: 'price-told',
    least: 15,
    is: (scan, from) =>
      begins(scan, from + 1, 'is-enough') &&
      !/F[^.;!?l]{0,6}$/.test(scan.plain.slice(Math.max(0, from - 7), from)) &&
      !/[nxhfUFGKBSTPXNJ$%j-]$/.test(scan.plain.slice(Math.max(0, from - 1), from)),
  },
  { needs: 'O', pattern: OFFERS_OVER, rule: 'price-told', least: 20, is: (_scan, _from, _to, found) => found.length === 0 },
  {
    needs: '',
    pattern: WOULD_DO,
    rule: 'price-told',
    least: 10,
    is: (scan, from, to, found) =>
      says(scan, from, 'lets-go') &&
      says(scan, from - 1, 'would') &&
      found.some(({ amount }) => amount > (valueAt(scan, to) ?? 0) && amount <= 2 * (valueAt(scan, to) ?? 0)),
  },
  {
    needs: 'z',
    pattern: ALONE,
    rule: 'price-for-goods',
    least: 20,
    is: (scan, from, _, found) => found.length > 0 && scan.tokens[from + 1]?.term?.sense === 'only',
  },
  {
    needs: '',
    pattern: BEFORE_TERMS,
    rule: 'price-before-terms',
    least: 10,
    // "25 20 15 10, offers": the last of a list.
    is: (scan, from) => !/n,?n,?$/.test(scan.plain.slice(Math.max(0, from - 4), from)),
  },
];

/** Goods that nobody tells the weight of. */
const isUnweighed = (scan: Scan, at: number): boolean =>
  ['rack', 'stands', 'bench', 'storage'].includes(scan.tokens[at]?.term?.kind ?? 'other');

export function readWordedPrices(scan: Scan, found: Price[]): void {
  findAll(scan, NOW, ({ from }) =>
    says(scan, from + 1, 'now') && (valueAt(scan, from) ?? 0) >= 15 ? putNumber(scan, found, 'price-now', from) : false,
  );
  if (scan.senses.has('spoken')) readSpoken(scan, found);
  if (scan.plain.includes('i')) readGoodsInWords(scan, found);
  findAll(scan, RANGE_BEFORE_TERMS, ({ from, to }) => {
    const [low, high] = [valueAt(scan, from) ?? 0, valueAt(scan, to) ?? 0];
    if (low < 20 || high <= low || high > 2 * low) return false;
    return putPrice(scan, found, 'price-before-terms', { from, to, at: from, highAt: to });
  });
  for (const { needs, pattern, rule, least, is } of WORDINGS)
    if (needs === '' || scan.plain.includes(needs))
      findAll(scan, pattern, ({ from, to }) =>
        (valueAt(scan, to) ?? 0) >= least && is(scan, from, to, found) ? putNumber(scan, found, rule, to) : false,
      );
}

/** "Asking three fifty", "a fiver each", "one fifty a pound", but not "benched two twenty". */
function readSpoken(scan: Scan, found: Price[]): void {
  findAll(scan, SPOKEN, ({ from }) => {
    const { sense, currency = null } = scan.tokens[from]?.term ?? {};
    if (sense !== 'spoken' || /[PKXN][a-z]{0,2}$/.test(scan.plain.slice(Math.max(0, from - 3), from))) return false;
    const rate = currency === null && /^[ra/]{1,2}[uh]/.test(scan.plain.slice(from + 1, from + 4));
    const amount = (valueAt(scan, from) ?? 0) / (rate ? 100 : 1);
    return putAmount(scan, found, { rule: 'price-spoken', from, to: from, amount, currency, sure: true });
  });
}

/** "Half rack eighty, flat bench forty": goods and prices in words. */
const GOODS_IN_WORDS = /k[:=-]?(i)(?=[.,;!l)c]|$)/dg;
const BAR_WEIGHTS = [20, 25, 35, 44, 45];

/** At least two such in a row. */
function readGoodsInWords(scan: Scan, found: Price[]): void {
  const told: number[] = [];
  findAll(scan, GOODS_IN_WORDS, ({ to }) => {
    const amount = valueAt(scan, to) ?? 0;
    if (amount >= 15 && !BAR_WEIGHTS.includes(amount)) told.push(to);
    return false;
  });
  const spoken = found.filter(({ rule }) => rule === 'price-spoken').length;
  if (told.length + spoken >= 2) for (const at of told) putNumber(scan, found, 'price-in-words', at);
}

/** "All: 450", read last: beside two other prices. */
export function readPriceOfAll(scan: Scan, found: Price[]): void {
  if (found.length < 2) return;
  findAll(scan, ALL_BEFORE, ({ from, to }) =>
    says(scan, from, 'all') && (valueAt(scan, to) ?? 0) >= 20 ? putNumber(scan, found, 'price-for-all', to) : false,
  );
  // "Complete 260", "total 280": less than the prices before it come to, and more than each.
  const amounts = found.map(({ amount }) => amount);
  const [most, sum] = [Math.max(...amounts), amounts.reduce((total, amount) => total + amount, 0)];
  findAll(scan, LOT_BEFORE, ({ to }) => {
    const value = valueAt(scan, to) ?? 0;
    return value > most && value <= 1.05 * sum ? putNumber(scan, found, 'price-for-all', to) : false;
  });
}
