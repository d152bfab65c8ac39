/** Amounts of money in every way that people write them; what part each plays is told by settle-prices.ts. */
import type { Price } from '../mention.ts';
import { claim, findAll, type Scan, valueAt } from '../text/scan.ts';
import { endPrices, goodsPrices, loweredPrices, stockPrices, unitPrices } from './bare-prices.ts';
import { inlinePrices, linePrices, mixedPrices } from './line-prices.ts';
import { centsCurrency, currencyOf } from './price-currency.ts';
import { isFromTo, settlePrices } from './settle-prices.ts';

const SIGNED = /(\$\.?:?)([ni])¤?(?:-\$?(n)(?![x\-uhfsk]))?(\$(?!n))?/dg;
const BEHIND = /([nid])¤?(?:([-zc])(n))?\.?-?¤?(\$)/dg;
/** "120,-" with no currency. */
const NO_CENTS = /([ni])¤/dg;
const CENTS = /([ni])(¢)/dg;
/** "a buck a pound". */
const BUCK = /(?:a|(?<=^|[l,.;(]))(\$)(?=[ra/]u)/dg;
/** "asking three fifty". */
const SPOKEN = /A[a:]{0,2}(d)(i)/dg;
const TOLD = /[AORLe][a:azUw=\-@.]{0,3}([ni])(?:-(n))?(?![x-]?[uhxfnJqskm]|[ar]J)/dg;
/** "Dropped price from 275 to 240", "von 300 auf 250 reduziert". */
const FROM_TO = /(?<=[zo])([ni])[zA]([ni])(?![x-]?[uhxfnJqskm])/dg;
const LOWERED = /^(?:price|dropped|dropping|lowered|lowering|reduced|down|preis|reduziert|gesenkt)/;
/** "Take A and B for 300", "take both for 80". */
const TAKEN = /A[aczmkndL]{1,6}w([ni])(?![x-]?[uhxfnJqskm])/dg;
/** "2.1 per lb", "1.10 a lb". */
const PER_WEIGHT = /(n)(?=[ra/][uh](?![hx]?n))/dg;
/** "1.10 a lb if you take 200 lb, otherwise 1.35". */
const PER_WEIGHT_TOO = /n(?=[.,;!l)]|$)/dg;
/** "a buck twenty five a pound". */
const BUCK_AND_CENTS = /a?(\$)(i)(?=[ra/]u)/dg;
/** "60 per pair for the 45s and 40 per pair for the 25s": like the one before it. */
const PER_PIECE = /(?<=[,c])(n)(?=[ra]p(?![on])|r?e(?=[,.;!l)w]|$))/dg;
/** "500 now". */
const NOW = /([ni])(?=A[.,;!l)])/dg;
const FOR_ALL = /([ni])(?=L|wap)/dg;
/** "für hundertfünfzig", "for one seventy five": a number in words at the end of the clause. */
const IN_WORDS = /w(a?)(i)(?=[.,;!l)]|$)/dg;
/** "Rack, bar, 4x45 for 500." */
const FOR_GOODS_TOLD = /(?<=[km)snv])w(n)(?=[.!l]|$)/dg;
/** "Bar's another hundred". */
const ANOTHER = /[zm](i)(?=[.,;!l)c]|$)/dg;
/** "New price 180": with a word that tells of former prices too. */
const NEWLY = /F[a:=-]{0,2}([ni])(?=[.,;!l)OR£]|$)/dg;
/** "Need 180 for it". */
const FOR_IT = /([ni])(?=wz(?:[.,;!l)]|$))/dg;
/** "All: 450", "rack $100, bench $60 or all 140". */
const ALL_BEFORE = /(?<=[l.,;(]|^|[l.,;(M]z)z[:=-]{0,2}(n)(?=[.,;!l)OR£]|$)/dg;
/** "Rest 90", "rest is 240". */
const FOR_REST = /z[a:=-]{0,2}([ni])(?=[.,;!l)OR£]|$)/dg;
const BEFORE_TERMS = /([ni])(?=[,(]?[OR£])/dg;

const thousands = (scan: Scan, at: number): number =>
  scan.tokens[at + 1]?.text === 'k' && scan.tokens[at + 1]?.glued ? 1000 : 1;

export function readPrices(scan: Scan): Price[] {
  const found: Price[] = [];
  const push = (
    rule: string,
    from: number,
    to: number,
    at: number,
    highAt: number | null,
    currency: string | null,
    sure: boolean,
    factor = 1,
  ): true => {
    const amount = (valueAt(scan, at) ?? 0) * thousands(scan, at) * factor;
    const high = highAt === null ? null : (valueAt(scan, highAt) ?? 0);
    const price: Price = {
      rule,
      from,
      to,
      amount,
      currency,
      role: 'asking',
      sure,
      ...(high !== null && high > amount ? { high } : {}),
    };
    found.push(price);
    claim(scan, from, to, 'M');
    return true;
  };
  findAll(scan, BUCK_AND_CENTS, ({ from, to, group }) => {
    const cents = valueAt(scan, to) ?? 0;
    const currency = scan.tokens[group(1)?.[0] ?? from]?.term?.currency ?? null;
    if (cents >= 100 || currency === null) return false;
    found.push({ rule: 'price-of-one', from, to, amount: 1 + cents / 100, currency, role: 'asking', sure: true });
    claim(scan, from, to, 'M');
    return 'claimed';
  });
  findAll(scan, CENTS, ({ from, to, group }) => {
    const currency = centsCurrency(scan, to);
    if (currency === null) return false;
    // ".75 cents a pound" is meant as 75 cents.
    const factor = (valueAt(scan, from) ?? 1) < 1 ? 1 : 0.01;
    push('cents', from, to, group(1)?.[0] ?? from, null, currency, true, factor);
    return 'claimed';
  });
  findAll(scan, SIGNED, ({ from, to, group }) => {
    const currency = currencyOf(scan, from, group(4) ? to - 1 : to);
    const high = group(3)?.[0] ?? null;
    const sensible = high !== null && (valueAt(scan, high) ?? 0) > (valueAt(scan, group(2)?.[0] ?? from) ?? 0);
    // "$25 - 45s": the second number is no price; give back what is behind the first.
    const end = high !== null && !sensible ? (group(2)?.[0] ?? to) : to;
    push('price-sign-first', from, end, group(2)?.[0] ?? to, sensible ? high : null, currency, true);
    return 'claimed';
  });
  findAll(scan, BEHIND, ({ from, to, group }) => {
    const sign = group(4)?.[0] ?? to;
    const link = group(2)?.[0];
    if (link !== undefined && !isRange(scan, from, link)) return false;
    push('price-sign-behind', from, to, group(1)?.[0] ?? from, group(3)?.[0] ?? null, currencyOf(scan, sign, to), true);
    return 'claimed';
  });
  findAll(scan, NO_CENTS, ({ from, to }) => {
    push('price-no-cents', from, to, from, null, null, true);
    return 'claimed';
  });
  findAll(scan, FROM_TO, ({ from, to }) => {
    const [low, high] = [valueAt(scan, to) ?? 0, valueAt(scan, from) ?? 0];
    const around = [...scan.tokens.slice(Math.max(0, from - 4), from - 1), ...scan.tokens.slice(to + 1, to + 2)];
    const told = around.some(({ text }) => LOWERED.test(text));
    if (!told || low >= high || low < 10 || !isFromTo(scan, from, to)) return false;
    push('price-told', from, from, from, null, null, true);
    push('price-told', to, to, to, null, null, true);
    return 'claimed';
  });
  findAll(scan, TOLD, ({ from, to, group }) => {
    const at = group(1)?.[0] ?? to;
    const value = valueAt(scan, at) ?? 0;
    const told = scan.tokens[from]?.term?.sense === 'told';
    const perWeight = scan.tokens[from]?.term?.unit !== undefined;
    // "takes all 300".
    const takes = /^(?:takes|take|gets|buys) (?:it |them )?(?:all|everything|the lot)/.test(scan.tokens[from]?.text ?? '');
    const allFor = scan.plain[from] === 'L' && isForAll(scan, from);
    const all = value >= 20 && (allFor || (takes && /[l.,;!]/.test(scan.plain[to + 1] ?? 'l')));
    if ((value < 5 && scan.plain[at + 1] !== 'r' && !perWeight) || (scan.plain[from] !== 'A' && !told && !all)) return false;
    const now = scan.tokens[from]?.text === 'now' && value >= 20;
    if (
      !now &&
      !told &&
      !all &&
      !/price|ask|sell|want|take|reduc|for|buy|looking|let|is|call|make|down/.test(scan.tokens[from]?.text ?? '')
    )
      return false;
    push('price-told', at, to, at, group(2)?.[0] ?? null, null, true);
    return 'claimed';
  });
  findAll(scan, TAKEN, ({ from, to }) => {
    if (scan.tokens[from]?.term?.sense !== 'take' || !/[cdL]/.test(scan.plain.slice(from, to))) return false;
    push('price-for-all', to, to, to, null, null, true);
    return 'claimed';
  });
  findAll(scan, PER_WEIGHT, ({ from, to }) => {
    if ((valueAt(scan, from) ?? 99) > 20) return false;
    push('price-per-weight', from, to, from, null, null, true);
    return 'claimed';
  });
  findAll(scan, PER_WEIGHT_TOO, ({ from, to }) => {
    const value = valueAt(scan, from) ?? 0;
    const fraction = value < 20 && /^\d*\.\d\d$/.test(scan.tokens[from]?.text ?? '');
    const beside = found.some((price) => scan.clause[price.from] === scan.clause[from] && isPerWeight(scan, price));
    if (!fraction || !beside) return false;
    push('price-per-weight', from, to, from, null, null, true);
    return 'claimed';
  });
  findAll(scan, PER_PIECE, ({ from, to }) => {
    const beside = found.some((price) => scan.clause[price.from] === scan.clause[from] && price.to < from);
    if ((valueAt(scan, from) ?? 0) < 5 || !beside) return false;
    push('price-per-piece', from, to, from, null, null, true);
    return 'claimed';
  });
  findAll(scan, BUCK, ({ from, to }) => {
    if (!/^(buck|dollar|euro|quid)$/.test(scan.tokens[to]?.text ?? '')) return false;
    const price: Price = {
      rule: 'price-of-one',
      from,
      to,
      amount: 1,
      currency: scan.tokens[to]?.term?.currency ?? null,
      role: 'asking',
      sure: true,
    };
    found.push(price);
    claim(scan, from, to, 'M');
    return 'claimed';
  });
  findAll(scan, NOW, ({ from, to }) => {
    if (scan.tokens[to + 1]?.text !== 'now' || (valueAt(scan, from) ?? 0) < 15) return false;
    push('price-now', from, to, from, null, null, true);
    return 'claimed';
  });
  findAll(scan, SPOKEN, ({ from, to, group }) => {
    const hundreds = valueAt(scan, group(1)?.[0] ?? from) ?? 0;
    const rest = valueAt(scan, to) ?? 0;
    if (hundreds > 9 || rest < 10 || rest > 99) return false;
    const price: Price = {
      rule: 'price-spoken',
      from: group(1)?.[0] ?? from,
      to,
      amount: hundreds * 100 + rest,
      currency: null,
      role: 'asking',
      sure: true,
    };
    found.push(price);
    claim(scan, price.from, to, 'M');
    return 'claimed';
  });
  findAll(scan, FOR_ALL, ({ from, to }) => {
    const behind = scan.tokens[to + 1]?.text ?? '';
    if (
      (valueAt(scan, from) ?? 0) < 15 ||
      !(
        scan.tokens[to + 1]?.term?.sense === 'whole' ||
        /^(for|takes|buys|gets|all for|fur|the lot|the whole lot|as a lot|alles$|komplett$)/.test(behind)
      )
    )
      return false;
    push('price-for-all', from, to, from, null, null, true);
    return 'claimed';
  });
  findAll(scan, IN_WORDS, ({ from, to }) => {
    const value = valueAt(scan, to) ?? 0;
    if (value < 20 || !/^(?:for|fur|um)$/.test(scan.tokens[from]?.text ?? '')) return false;
    push('price-in-words', to, to, to, null, null, true);
    return 'claimed';
  });
  findAll(scan, FOR_GOODS_TOLD, ({ from, to }) => {
    if ((valueAt(scan, to) ?? 0) < 60 || found.length > 0 || !/^(?:for|fur|um)$/.test(scan.tokens[from]?.text ?? ''))
      return false;
    push('price-for-goods', to, to, to, null, null, true);
    return 'claimed';
  });
  findAll(scan, ANOTHER, ({ from, to }) => {
    const more = /^(?:another|an extra|extra|an additional|additional)$/.test(scan.tokens[from]?.text ?? '');
    if (!more || (valueAt(scan, to) ?? 0) < 50 || found.length === 0) return false;
    push('price-in-words', to, to, to, null, null, true);
    return 'claimed';
  });
  findAll(scan, FOR_REST, ({ from, to }) => {
    if (scan.tokens[from]?.term?.sense !== 'rest' || (valueAt(scan, to) ?? 0) < 10) return false;
    push('price-for-rest', to, to, to, null, null, true);
    return 'claimed';
  });
  findAll(scan, NEWLY, ({ from, to }) => {
    if (found.length > 0 || !/^new (?:asking |sale )?price/.test(scan.tokens[from]?.text ?? '') || (valueAt(scan, to) ?? 0) < 10)
      return false;
    push('price-now', to, to, to, null, null, true);
    return 'claimed';
  });
  findAll(scan, FOR_IT, ({ from, to }) => {
    const it = /^(?:it|them|these)$/.test(scan.tokens[to + 2]?.text ?? '');
    if (found.length > 0 || !it || scan.plain[from - 1] === 'F' || (valueAt(scan, from) ?? 0) < 20) return false;
    push('price-told', from, from, from, null, null, true);
    return 'claimed';
  });
  findAll(scan, BEFORE_TERMS, ({ from, to }) => {
    if ((valueAt(scan, from) ?? 0) < 10) return false;
    push('price-before-terms', from, to, from, null, null, true);
    return 'claimed';
  });
  for (const [former, now] of loweredPrices(scan)) {
    push('price-told', former, former, former, null, null, true);
    push('price-now', now, now, now, null, null, true);
  }
  for (const at of unitPrices(scan)) push('price-per-piece', at, at, at, null, null, true);
  for (const at of stockPrices(scan, found)) push('price-per-piece', at, at, at, null, null, true);
  for (const at of new Set([...linePrices(scan), ...inlinePrices(scan), ...mixedPrices(scan)]))
    push('price-at-line-end', at, at, at, null, null, true);
  for (const at of goodsPrices(scan, found)) push('price-of-goods', at, at, at, null, null, true);
  findAll(scan, ALL_BEFORE, ({ from, to }) => {
    if (!ALL.test(scan.tokens[from]?.text ?? '') || (valueAt(scan, to) ?? 0) < 20 || found.length < 2) return false;
    push('price-for-all', to, to, to, null, null, true);
    return 'claimed';
  });
  if (found.length === 0) for (const at of endPrices(scan)) push('lone-number', at, at, at, null, null, false);
  settlePrices(scan, found);
  return found;
}

/** Whether a number behind words for the lot can be its price: "everything for 300", "the whole bunch 300", but not "total 300" or "set 300". */
function isForAll(scan: Scan, at: number): boolean {
  const { term, text } = scan.tokens[at] ?? {};
  return (
    term?.sense !== 'sum' &&
    (term?.sense === 'whole' || scan.plain[at + 1] === 'w' || / (?:for|fur)$|^(?:alle?s?|beides?|all) /.test(text ?? ''))
  );
}

const ALL = /^(?:all|alles|alle)$/;

const isPerWeight = (scan: Scan, { to }: Price): boolean => /^[ra/][uh]/.test(scan.plain.slice(to + 1, to + 3));

/** Whether the token between two amounts makes a range of them: "40-50 €", "40 bis 50 €", "zwischen 40 und 50 €". */
const isRange = (scan: Scan, from: number, link: number): boolean =>
  scan.plain[link] === '-' ||
  scan.tokens[link]?.term?.sense === 'to' ||
  (scan.plain[link] === 'c' && scan.tokens[from - 1]?.term?.sense === 'between');
