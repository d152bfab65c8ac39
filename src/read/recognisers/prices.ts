/** Amounts of money and what part they play: asked, per pound, each, a pair, for all; former, saved, delivery, deposit. */
import type { Price, PriceRole } from '../mention.ts';
import { claim, findAll, type Scan, valueAt } from '../text/scan.ts';
import { linePrices } from './line-prices.ts';

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
/** "Take A and B for 300", "take both for 80". */
const TAKEN = /A[aczmkndL]{1,6}w([ni])(?![x-]?[uhxfnJqskm])/dg;
/** "2.1 per lb". */
const PER_WEIGHT = /(n)(?=r[uh])/dg;
/** "500 now". */
const NOW = /([ni])(?=A[.,;!l)])/dg;
const FOR_ALL = /([ni])(?=L|wap)/dg;
const BEFORE_TERMS = /([ni])(?=[,(]?[OR£])/dg;
/** "350 for rack. 75 for the bar." */
const FOR_GOODS = /(?<=^|[l.,;]|l[-•])([ni])(?=wa?[mC]{0,2}k)/dg;
const OUTCOME = /(?<=[l(.]|^)([ni])(?=[)]?(?:[l.]|$)|cz|ca)|(?<=L[:=]?)(n)(?![uhqsxnfJk])|(?<=X)(n)(?![uhqsxnfJkm])/dg;

const CURRENCIES: Readonly<Record<string, string>> = { $: 'USD', '£': 'GBP', '€': 'EUR' };
const DOLLARS: Readonly<Record<string, string>> = {
  c: 'CAD',
  ca: 'CAD',
  cad: 'CAD',
  cdn: 'CAD',
  a: 'AUD',
  au: 'AUD',
  aud: 'AUD',
  us: 'USD',
  nz: 'NZD',
};

/** Currency of a sign, with the country letters before it ("C$") and the code behind the number ("$50 CAD"). */
function currencyOf(scan: Scan, sign: number, last: number): string | null {
  const token = scan.tokens[sign];
  if (!token) return null;
  const before = scan.tokens[sign - 1];
  if (token.text === '$' && before?.type === 'word' && token.glued) {
    const country = DOLLARS[before.text];
    if (country) return country;
  }
  const behind = scan.tokens[last + 1]?.term?.currency;
  if (token.text === '$' && behind && behind !== 'USD') return behind;
  return CURRENCIES[token.text] ?? token.term?.currency ?? null;
}

/** "50p" and "55 cents" are hundredths; a lone p is pence only when it is glued to its number. */
function centsCurrency(scan: Scan, at: number): string | null {
  const token = scan.tokens[at];
  return (token?.text === 'p' || token?.text === 'c') && !token.glued ? null : (token?.term?.currency ?? 'USD');
}

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
  findAll(scan, CENTS, ({ from, to, group }) => {
    const currency = centsCurrency(scan, to);
    if (currency === null) return false;
    push('cents', from, to, group(1)?.[0] ?? from, null, currency, true, 0.01);
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
  findAll(scan, TOLD, ({ from, to, group }) => {
    const at = group(1)?.[0] ?? to;
    const value = valueAt(scan, at) ?? 0;
    const told = scan.tokens[from]?.term?.sense === 'told';
    const perWeight = scan.tokens[from]?.term?.unit !== undefined;
    // "takes all 300".
    const all =
      value >= 20 &&
      /^(?:takes|take|gets|buys) (?:it |them )?(?:all|everything|the lot)/.test(scan.tokens[from]?.text ?? '') &&
      /[l.,;!]/.test(scan.plain[to + 1] ?? 'l');
    if ((value < 5 && scan.plain[at + 1] !== 'r' && !perWeight) || (scan.plain[from] !== 'A' && !told && !all)) return false;
    const now = scan.tokens[from]?.text === 'now' && value >= 20;
    if (
      !now &&
      !told &&
      !all &&
      !/price|ask|sell|want|take|reduc|for|buy|looking|let|is|call/.test(scan.tokens[from]?.text ?? '')
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
    if ((valueAt(scan, from) ?? 0) < 15 || !/^(for|takes|buys|gets|all for|fur)/.test(behind)) return false;
    push('price-for-all', from, to, from, null, null, true);
    return 'claimed';
  });
  findAll(scan, BEFORE_TERMS, ({ from, to }) => {
    if ((valueAt(scan, from) ?? 0) < 10) return false;
    push('price-before-terms', from, to, from, null, null, true);
    return 'claimed';
  });
  for (const at of linePrices(scan)) push('price-at-line-end', at, at, at, null, null, true);
  found.sort((a, b) => a.from - b.from);
  for (const [index, price] of found.entries()) {
    const next = found[index + 1];
    price.role = roleOf(scan, price, found[index - 1], next);
    // "less than 300$ new. Mine is 180": what it costs new, where less is asked.
    const fresh =
      scan.tokens[price.to + 1]?.term?.condition === 'new' &&
      /^m(?:[.;,)l]|$)/.test(scan.plain.slice(price.to + 1, price.to + 3));
    if (
      fresh &&
      price.role === 'asking' &&
      found.some((other) => other.amount < price.amount && other.amount >= 0.2 * price.amount)
    )
      price.role = 'former';
    // "$1,000 $780": the first of two prices side by side is crossed out.
    if (
      next &&
      next.from === price.to + 1 &&
      next.amount < price.amount &&
      price.role === 'asking' &&
      price.currency &&
      next.currency
    )
      price.role = 'former';
  }
  return found;
}

/** A number that stands alone on its line may be the price; read last, and only used when there is no other. */
export function readLonePrices(scan: Scan): Price[] {
  const found: Price[] = [];
  const padded = { ...scan, letters: scan.letters };
  findAll(padded, FOR_GOODS, ({ from, to }) => {
    const amount = valueAt(scan, from) ?? 0;
    if (amount < 15) return false;
    found.push({ rule: 'price-for-goods', from, to, amount, currency: null, role: 'asking', sure: true });
    claim(scan, from, to, 'M');
    return 'claimed';
  });
  findAll(padded, OUTCOME, ({ from, to }) => {
    const amount = valueAt(scan, from) ?? 0;
    const need = scan.plain[from - 1] === 'X';
    if (amount < 10 || (need && !/^needs?$/.test(scan.tokens[from - 1]?.text ?? ''))) return false;
    found.push({ rule: 'lone-number', from, to, amount, currency: null, role: 'asking', sure: false });
    return true;
  });
  return found;
}

const AFTER: readonly (readonly [RegExp, PriceRole])[] = [
  [/^[/r@ae]?(?:[ra/])?[-]?([uh])(?!n)/, 'per-pound'],
  [/^[,(-]?a?[ra/w]{0,2}e(?!o|E|n)/, 'each'],
  [/^[,(-]?w?a?L/, 'all'],
  [/^[,(]?wap/, 'all'],
  [/^[,(-]?(?:[ra/]{0,2})p(?![oE]|n[uhs])/, 'pair'],
  [/^[,(-]?w[a]?t/, 'all'],
  [/^wa?[nd](?![uhqsnx])/, 'all'],
  [/^[(]?V/, 'saving'],
  [/^[(]?a?D/, 'delivery'],
  [/^[(]?a?H/, 'deposit'],
  [/^[,(-]?(?:[ac]?F(?![aU:]{0,2}n(?![uhxsq]))|b|m:?[)lMz]?F)/, 'former'],
];

/** The part that an amount plays, by the words behind it and before it on its line. */
function roleOf(scan: Scan, price: Price, previous: Price | undefined, next: Price | undefined): PriceRole {
  const behind = scan.plain.slice(price.to + 1, Math.min(price.to + 8, next ? Math.max(price.to + 1, next.from) : price.to + 8));
  const back = Math.max(price.from - 9, previous ? previous.to + 1 : 0);
  const line = scan.plain.slice(back, price.from);
  const before = line.slice(Math.max(line.lastIndexOf('l'), line.search(/[.;!?](?=[^.;!?]*$)/)) + 1);
  const lead = before.match(/([AFVDHL])[^AFVDHLk]{0,5}$/)?.[1];
  const word = lead === undefined ? '' : (scan.tokens[price.from - (before.length - before.lastIndexOf(lead))]?.text ?? '');
  if (price.rule === 'price-now') return 'asking';
  if (isPerDistance(scan, price.to)) return 'delivery';
  if (/b[:aU]?$/.test(before)) return 'former';
  if (scan.tokens.slice(price.to + 1, price.to + 5).some((token) => token.term?.sense === 'unless')) return 'default';
  if (/%U?$/.test(before) && /^f?z/.test(behind)) return 'former';
  // "Plates from $15. 25 lb $25, 35 lb $35": where the prices begin.
  if (next && scan.tokens[price.from - 1]?.term?.sense === 'from') return 'other';
  const denied = /N[a-z]{0,2}$/.test(before);
  if (denied) return 'other';
  const label = /(?:^|l|[•.;])F:$/.test(scan.plain.slice(Math.max(0, price.from - 3), price.from));
  if (lead === 'F' && /^(new price|costs?|value)$/.test(word)) price.weak = true;
  if (lead === 'F' && !(label && /^costs?$/.test(scan.tokens[price.from - 2]?.text ?? ''))) return 'former';
  if (/C[:=-]{1,2}$|m[:=-]{1,2}$/.test(before) && conditionBefore(scan, price.from) === 'new') return 'former';
  if (lead === 'V') return 'saving';
  // "inkl. Versand 45 €" holds the delivery; "Versand möglich, 7 €" is its price.
  const delivery = lead === 'D' ? price.from - before.length + before.lastIndexOf('D') : -1;
  const included = scan.tokens[delivery - 1]?.term?.sense === 'included';
  const possible = scan.tokens[delivery]?.term?.sense === 'possible' && /D,$/.test(before);
  // "$35 shipped or $28": the word speaks of the price before it.
  const shipped = previous !== undefined && delivery === previous.to + 1 && scan.tokens[delivery + 1]?.term?.sense === 'or';
  if (lead === 'D' && !included && !shipped && (possible || /D[zU]{0,2}nJ,$/.test(before) || !/D[^l]{0,3}[,.]/.test(before)))
    return 'delivery';
  if (lead === 'H') return 'deposit';
  const weight = weightPriced(scan, price.from, before);
  if (weight !== null) return weight === 'kg' ? 'per-kilogram' : 'per-pound';
  for (const [pattern, role] of AFTER) {
    const match = pattern.exec(behind);
    if (!match) continue;
    if (role === 'per-pound') {
      const token = scan.tokens[price.to + match[0].length];
      if (match[0].length === 1 && scan.plain[price.to + 2] === 'm' && price.amount >= 5) continue;
      return token?.term?.unit === 'kg' ? 'per-kilogram' : 'per-pound';
    }
    if (role === 'former' && (price.rule === 'price-told' || (next && next.from <= price.to + 1 + match[0].length + 1))) continue;
    // "$120 delivery $20": the word speaks of the price right behind it.
    if (['saving', 'delivery', 'deposit'].includes(role) && next && next.from === price.to + match[0].length + 1) continue;
    // "50 €, zusammen 100 €": the word speaks of the price behind it.
    if (role === 'all' && match[0].startsWith(',') && next && next.from <= price.to + match[0].length + 2) continue;
    if (role === 'all')
      price.whole = /all|every|lot|pile|total|together|package|bundle|whole|entire|komplett|zusammen|alles|gesamt/.test(
        wordsBehind(scan, price.to),
      );
    return role;
  }
  if (scan.tokens[price.from - 1 - Number(/[:=-]$/.test(before))]?.term?.sense === 'per' && /p[:=-]?$/.test(before))
    return 'pair';
  if (/(?:^|[^ndj])j[:=-]?$/.test(before)) return 'each';
  // "each plate is $30".
  if (/e[mC]{0,3}k[zA:=-]{0,2}$/.test(before) && !/[nd]e[mC]{0,3}k[zA:=-]{0,2}$/.test(before)) return 'each';
  if (/e[:=-]{0,2}$/.test(before) && !/[nd]e[:=-]{0,2}$/.test(before)) return 'each';
  // The word behind the last price belongs to that one: "$550 the lot, or $300 for the cage".
  const whole = price.from - before.length + before.lastIndexOf('L');
  const begins =
    /L[w:=U]{0,2}$/.test(before) && previous !== undefined && /[.,;!]/.test(scan.plain.slice(previous.to + 1, whole));
  const spent = previous !== undefined && lead === 'L' && whole <= previous.to + 3 && !begins;
  if (lead === 'L' && !spent) {
    price.whole = true;
    return 'all';
  }
  // "all three for $700", "4 for $150".
  if (
    /\b(?:all|both) ?(?:two|three|four|five|six|seven|eight|\d+)?\b[^.]{0,12}[:=-]?$/.test(
      wordsBefore(scan, price.from)
        .split(/[.;\n]/)
        .at(-1) ?? '',
    ) &&
    /[ndiz][:=-]?$/.test(before)
  ) {
    // "$35 each or both for $60": two pieces, where other goods have prices too.
    price.whole = previous?.role !== 'each' || !/\bboth\b/.test(wordsBefore(scan, price.from));
    return 'all';
  }
  if (/[ndi]w$/.test(before) && !/[uhqs][nd]w$/.test(before)) {
    price.whole = (previous?.role === 'each' ? /\ball\b/ : /\ball\b|\bboth\b/).test(wordsBefore(scan, price.from));
    return 'all';
  }
  // "Any plate $25", "all dumbbells $10": each; "everything $5 unless marked": each line.
  if (/X[mC]{0,3}k[-:=]?$/.test(before) && /\bany\b/.test(wordsBefore(scan, price.from))) return 'each';
  const noun = /^[ra/][mC]{0,3}k/.exec(behind);
  if (noun && !scan.tokens[price.to + noun[0].length]?.term?.plural && /^[r/]|^a/.test(behind)) return 'each';
  return 'asking';
}

/** Unit of weight that the words before a price give it for: "das Kilo 1,50 €", "pro kg: 1,20 €", "Kilopreis 2 €". */
function weightPriced(scan: Scan, at: number, before: string): 'lb' | 'kg' | null {
  const named = /(?:[re]|a)u[wAaU:=-]{0,3}$/.exec(before);
  if (named) return scan.tokens[at - named[0].length + 1]?.term?.unit ?? null;
  const told = /A[U:=a-]{0,3}$/.exec(before);
  return told ? (scan.tokens[at - told[0].length]?.term?.unit ?? null) : null;
}

/** Whether the token between two amounts makes a range of them: "40-50 €", "40 bis 50 €", "zwischen 40 und 50 €". */
const isRange = (scan: Scan, from: number, link: number): boolean =>
  scan.plain[link] === '-' ||
  scan.tokens[link]?.term?.sense === 'to' ||
  (scan.plain[link] === 'c' && scan.tokens[from - 1]?.term?.sense === 'between');

/** "£1 for 1 mile", "$2 a mile". */
const isPerDistance = (scan: Scan, at: number): boolean => {
  const behind = /^[rwa/]{1,2}[nd]?J/.exec(scan.plain.slice(at + 1, at + 5));
  return behind !== null && scan.tokens[at + behind[0].length]?.term?.sense === 'distance';
};

const wordsBehind = (scan: Scan, at: number): string =>
  scan.tokens
    .slice(at + 1, at + 5)
    .map((token) => token.text)
    .join(' ');

const wordsBefore = (scan: Scan, at: number): string =>
  scan.tokens
    .slice(Math.max(0, at - 6), at)
    .map((token) => token.text)
    .join(' ');

const conditionBefore = (scan: Scan, at: number): string | undefined => {
  for (let i = at - 1; i >= Math.max(0, at - 4); i -= 1) {
    const condition = scan.tokens[i]?.term?.condition;
    if (condition) return condition;
  }
  return undefined;
};
