/** The part that an amount of money plays, by the words around it: asked, per pound, each, a pair, for all; former, saved, delivery, deposit. */
import type { CueName } from '../language/cues.ts';
import type { Price, PriceRole } from '../mention.ts';
import { says, saysWithin } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';
import { isOthersOffer, isSeenElsewhere } from './foreign-prices.ts';
import { takesBoth } from './worded-prices.ts';

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
  [/^[,(-]?(?:[ac]?F(?![aU:z]{0,2}n(?![uhxsq]))|b|m:?[)lMz]?F)/, 'former'],
];

/** The part that an amount plays, by the words behind it and before it on its line. */
export function roleOf(scan: Scan, price: Price, previous: Price | undefined, next: Price | undefined): PriceRole {
  const behind = scan.plain.slice(price.to + 1, Math.min(price.to + 8, next ? Math.max(price.to + 1, next.from) : price.to + 8));
  const back = Math.max(price.from - 9, previous ? previous.to + 1 : 0);
  const line = scan.plain.slice(back, price.from);
  const before = line.slice(Math.max(line.lastIndexOf('l'), line.search(/[.;!?](?=[^.;!?]*$)/)) + 1);
  const lead = before.match(/([AFVDHL])[^AFVDHLk]{0,5}$/)?.[1];
  const led = price.from - (before.length - before.lastIndexOf(lead ?? ' '));
  if (price.rule === 'price-now') return 'asking';
  // Where an auction also has a price, what is bid is not it.
  if ([price.from - 3, price.from - 2, price.from - 1].some((at) => says(scan, at, 'bid'))) {
    price.weak = true;
    return 'other';
  }
  if (isStruck(scan, price)) return 'former';
  if (isPerDistance(scan, price.to)) return 'delivery';
  // "The gym charges $65 a month", "spend over $400 and I'll throw in the clips".
  if (/^[ra/]{1,2}J/.test(behind) || isOnSpending(scan, price)) return 'other';
  if (isPaid(scan, price) || isOthersOffer(scan, price) || isSeenElsewhere(scan, price)) return 'other';
  if (/b[:aU]?$/.test(before)) return 'former';
  // "Everything is $5 unless marked", and not the "unless" of the sentence behind.
  const rest = scan.senses.has('unless') ? scan.tokens.slice(price.to + 1, price.to + 5) : [];
  if (rest.some(({ term }, at) => term?.sense === 'unless' && scan.clause[price.to + 1 + at] === scan.clause[price.to]))
    return 'default';
  if (/%U?$/.test(before) && /^f?z/.test(behind)) return 'former';
  // "Plates from $15. 25 lb $25, 35 lb $35": where the prices begin.
  if (next && scan.tokens[price.from - 1]?.term?.sense === 'from') return 'other';
  if (isDenied(scan, price.from, before)) return 'other';
  const label = /(?:^|l|[•.;])F:$/.test(scan.plain.slice(Math.max(0, price.from - 3), price.from));
  if (lead === 'F' && says(scan, led, 'perhaps-former')) price.weak = true;
  // "If you want everything in the shop it's $600": where it is.
  const placed =
    lead === 'F' && scan.tokens[led]?.term?.sense === 'in-shops' && before.slice(0, before.lastIndexOf('F')).includes('L');
  // "EDIT: new price for what's left is $200": what he asks now.
  const newly = lead === 'F' && says(scan, led, 'new-price') && isNewAsking(scan, led, price.from);
  if (lead === 'F' && !placed && !newly && !(label && says(scan, price.from - 2, 'costs'))) return 'former';
  // "New: $400", "new plates run $2 a pound", but "bumpers, new in box - $240".
  if (/(?:^|[,;(])[mC][:=-]{1,2}$|[mC][mk]{1,2}z$/.test(before) && conditionBefore(scan, price.from) === 'new') return 'former';
  if (isOfNewOnes(scan, price.from)) return 'former';
  if (lead === 'V') return 'saving';
  // "inkl. Versand 45 €" holds the delivery; "Versand möglich, 7 €" is its price.
  const delivery = lead === 'D' ? price.from - before.length + before.lastIndexOf('D') : -1;
  const included = scan.tokens[delivery - 1]?.term?.sense === 'included';
  const possible = scan.tokens[delivery]?.term?.sense === 'possible' && /D,$/.test(before);
  // "$35 shipped or $28": the word speaks of the price before it.
  const shipped =
    previous !== undefined &&
    delivery === previous.to + 1 &&
    (scan.tokens[delivery + 1]?.term?.sense === 'or' || price.from - delivery > 2 || scan.tokens[delivery + 1]?.text === '/');
  if (lead === 'D' && !included && !shipped && (possible || /D[zU]{0,2}nJ,$/.test(before) || !/D[^l]{0,3}[,.]/.test(before)))
    return 'delivery';
  if (lead === 'H') return 'deposit';
  const weight = weightPriced(scan, price.from, before, previous);
  if (weight !== null) return weight === 'kg' ? 'per-kilogram' : 'per-pound';
  // "Curl bar, 15, have 2".
  if (price.rule === 'price-per-piece' && /^,?%n/.test(behind)) return 'each';
  if (/^r(?:[.;,!l)]|$)/.test(behind)) return perWhat(scan, price);
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
    if (role === 'all' && match[0].startsWith(',') && next && next.from <= price.to + match[0].length + 3) continue;
    // "4x45, $300 shipped": the price, with the delivery in it.
    const shipped = previous === undefined && says(scan, price.to + 1, 'shipped');
    if (role === 'delivery' && shipped && scan.tokens[next?.from ?? -1]?.line !== scan.tokens[price.to]?.line) continue;
    if (role === 'all')
      price.whole =
        scan.tokens[price.to + match[0].length]?.term?.sense === 'whole' ||
        saysWithin(scan, price.to + 1, price.to + 5, 'whole-lot');
    return role;
  }
  if (placed) {
    price.whole = true;
    return 'all';
  }
  if (scan.tokens[price.from - 1 - Number(/[:=-]$/.test(before))]?.term?.sense === 'per' && /p[:=-]?$/.test(before))
    return 'pair';
  if (/(?:^|[^ndj])j[:=-]?$/.test(before)) return 'each';
  // "Six plates @ $20".
  if (/@[a]?$/.test(before) && /n[uhqs]|xn|nx|[nd][mC]{0,3}k|v/.test(before)) return 'each';
  if (/^@(?:[.;,!l)]|$)/.test(behind)) return 'each';
  // "each plate is $30".
  if (/e[mC]{0,3}k[zA:=-]{0,2}$/.test(before) && !/[nd]e[mC]{0,3}k[zA:=-]{0,2}$/.test(before)) return 'each';
  if (/e[:=-]{0,2}$/.test(before) && !/[nd]e[:=-]{0,2}$/.test(before)) return 'each';
  // The word behind the last price belongs to that one: "$550 the lot, or $300 for the cage".
  const whole = price.from - before.length + before.lastIndexOf('L');
  const begins =
    /L[w:=U]{0,2}$/.test(before) &&
    previous !== undefined &&
    (/[.,;!]/.test(scan.plain.slice(previous.to + 1, whole)) || says(scan, whole - 1, 'or'));
  const spent =
    previous !== undefined && lead === 'L' && whole <= previous.to + 3 && !begins && scan.tokens[whole]?.term?.sense !== 'two';
  if (lead === 'L' && !spent) {
    // "$35 each or both for $60": two pieces, where other goods have prices too.
    price.whole = previous?.role !== 'each' || scan.tokens[whole]?.term?.sense !== 'two';
    return 'all';
  }
  // "all three for $700", "4 for $150".
  if (
    // "$150 for both or $100 for the rack": another price begins with "or".
    !says(scan, price.from - 1, 'or') &&
    /[ndiz][:=-]?$/.test(before) &&
    isBesideAll(scan, price.from)
  ) {
    // "$35 each or both for $60": two pieces, where other goods have prices too.
    price.whole = previous?.role !== 'each' || !saidBefore(scan, price.from, 'both');
    return 'all';
  }
  if (/[ndi]w$/.test(before) && !/[uhqs][nd]w$/.test(before)) {
    price.whole = saidBefore(scan, price.from, 'all') || (previous?.role !== 'each' && saidBefore(scan, price.from, 'both'));
    return 'all';
  }
  // "Any plate $25", "all dumbbells $10": each; "everything $5 unless marked": each line.
  if (/X[mC]{0,3}k[-:=]?$/.test(before) && saidBefore(scan, price.from, 'any')) return 'each';
  // "Bench $100, together $325", "45s and 35s, $90 together".
  const nigh = price.from - 1 - Number(/[:=-]$/.test(before));
  if (says(scan, nigh, 'together') || (says(scan, price.to + 1, 'together') && next?.from !== price.to + 2)) {
    price.whole = true;
    return 'all';
  }
  // "All: 450", "$180 all".
  const labelled = price.from - 1 - Number(/[:=-]$/.test(before));
  const ends = /^.(?:[.,;!l)]|$)/.test(scan.plain.slice(price.to + 1, price.to + 3));
  if (
    (ends && (says(scan, price.to + 1, 'all') || (previous && says(scan, price.to + 1, 'both')))) ||
    (previous !== undefined && says(scan, labelled, 'all'))
  ) {
    price.whole = true;
    return 'all';
  }
  if (isForTheLot(scan, price)) {
    price.whole = true;
    return 'all';
  }
  // "200 takes what's left".
  if (scan.tokens[price.to + 1]?.term?.sense === 'take' && scan.tokens[price.to + 2]?.term?.sense === 'rest') {
    price.whole = true;
    return 'all';
  }
  // "Rack $450, bar $75, or $500 takes both".
  if (takesBoth(scan, price.to)) {
    price.whole = previous?.role !== 'each';
    return 'all';
  }
  const counted = countedBefore(scan, price.from);
  if (counted !== null && (previous !== undefined || next !== undefined)) {
    price.whole = !scan.plain.slice(counted, price.from).includes('k');
    return 'all';
  }
  const noun = /^[ra/][mC]{0,3}k/.exec(behind);
  if (noun && !scan.tokens[price.to + noun[0].length]?.term?.plural && /^[r/]|^a/.test(behind)) return 'each';
  return 'asking';
}

/** "10s $10 per", "300 lb, 95 cents per": of the piece, or where it is too little of the unit of weight. */
function perWhat(scan: Scan, { from, amount }: Price): PriceRole {
  const unit = scan.tokens.slice(Math.max(0, from - 12), from).findLast(({ term }) => term?.unit)?.term?.unit;
  return amount >= 5 || unit === undefined ? 'each' : unit === 'kg' ? 'per-kilogram' : 'per-pound';
}

/** "Take both sets for $220", "all three pieces $350", "all 45s for $160": where the words that take goods together begin, which the price stands right behind. */
function countedBefore(scan: Scan, before: number): number | null {
  let at = before - 1;
  while (at >= before - 2 && /[w:=-]/.test(scan.plain[at] ?? 'l')) at -= 1;
  for (const last = at; at > last - 7 && 'tkjzmCoad&nuhs'.includes(scan.plain[at] ?? 'l'); at -= 1) {
    if (!says(scan, at, 'both') && !says(scan, at, 'all')) continue;
    const opens = at === 0 || scan.clause[at - 1] !== scan.clause[at] || '.,;:()cAlM'.includes(scan.letters[at - 1] ?? 'l');
    return at < last && (opens || says(scan, at - 1, 'or')) ? at : null;
  }
  return null;
}

/** "Spend over $400", "orders above $200", "if your total is more than $300": what must be spent, not what is asked. */
function isOnSpending(scan: Scan, { from }: Price): boolean {
  if (scan.tokens[from - 1]?.term?.sense !== 'bound' && scan.tokens[from - 1]?.text !== 'above') return false;
  return saysWithin(scan, from - 6, from, 'spends');
}

/** "Not $400", "won't even do $400", but "no trades, $400", "not separate $400". */
function isDenied(scan: Scan, at: number, before: string): boolean {
  const words = /N([a-z]{0,2})$/.exec(before)?.[1];
  if (words === undefined) return false;
  return [...words].every(
    (letter, i) => letter !== 'm' && !(letter === 'z' && scan.tokens[at - words.length + i]?.text.endsWith('s')),
  );
}

/** "I pay 40 cents a pound for old weights": what the seller gives, and nothing that he asks. */
function isPaid(scan: Scan, price: Price): boolean {
  if (!scan.senses.has('pays')) return false;
  for (let i = price.from - 1; i >= Math.max(0, price.from - 12) && scan.clause[i] === scan.clause[price.from]; i -= 1) {
    if (scan.tokens[i]?.term?.sense === 'pays') return true;
    if (scan.plain[i] === 'A') return false;
  }
  return false;
}

/** "If someone takes every last thing in one go we would accept $250": the words for the lot stand far before the price in its sentence. */
export function isForTheLot(scan: Scan, price: Price): boolean {
  if (!scan.senses.has('whole')) return false;
  for (let i = price.from - 1; i >= Math.max(0, price.from - 30) && scan.clause[i] === scan.clause[price.from]; i -= 1) {
    // "£550 the lot, or £300 for the cage": right behind a price they are said of that.
    if (scan.tokens[i]?.term?.sense === 'whole') return !'M_'.includes(scan.letters[i - 1] ?? 'l');
    if ('kF'.includes(scan.plain[i] ?? 'l') || scan.letters[i] === 'M') return false;
  }
  return false;
}

/** What a price becomes that another one takes the place of: a former price of the lot, but no former price when it was a unit's. */
export const takenRole = ({ role }: Price): PriceRole => (role === 'asking' || role === 'all' ? 'former' : 'other');

/** Whether a "new price" is the seller's: of what is left, or told by an update on its line. */
function isNewAsking(scan: Scan, led: number, at: number): boolean {
  const line = scan.tokens[at]?.line;
  for (let i = at - 1; i >= Math.max(0, at - 40) && scan.tokens[i]?.line === line; i -= 1) {
    const sense = scan.tokens[i]?.term?.sense;
    if (sense === 'update' || (sense === 'rest' && i > led)) return true;
  }
  return false;
}

/** "New they're like $130", "brand new these are around $400": what others of the kind cost new. */
function isOfNewOnes(scan: Scan, at: number): boolean {
  for (let i = at - 1; i >= at - 5 && scan.clause[i] === scan.clause[at]; i -= 1) {
    if (scan.tokens[i]?.term?.condition === 'new') return i < at - 1 && scan.tokens[i + 1]?.term?.sense === 'they';
    if (!'zUa'.includes(scan.plain[i] ?? 'l')) return false;
  }
  return false;
}

/** "~~$350~~ $300": struck through by hand. */
const isStruck = (scan: Scan, { from, to }: Price): boolean =>
  [from - 2, from - 1, to + 1, to + 2].every((at) => scan.tokens[at]?.text === '~');

/** Unit of weight that the words before a price give it for: "das Kilo 1,50 €", "pro kg: 1,20 €", "Kilopreis 2 €". */
function weightPriced(scan: Scan, at: number, before: string, previous: Price | undefined): 'lb' | 'kg' | null {
  const named = /(?:[re]|a)u[wAaU:=-]{0,3}$/.exec(before);
  // "$1 a pound = $305": the unit of the price before.
  if (named && previous && at - named[0].length <= previous.to + 1) return null;
  if (named) return scan.tokens[at - named[0].length + 1]?.term?.unit ?? null;
  const told = /A[U:=a-]{0,3}$/.exec(before);
  return told ? (scan.tokens[at - told[0].length]?.term?.unit ?? null) : null;
}

/** "£1 for 1 mile", "$2 a mile". */
const isPerDistance = (scan: Scan, at: number): boolean => {
  const behind = /^[rwa/]{1,2}[nd]?J/.exec(scan.plain.slice(at + 1, at + 5));
  return behind !== null && scan.tokens[at + behind[0].length]?.term?.sense === 'distance';
};

/** "Both for $60", "all three $700": the word stands a few letters before the price. */
const isBesideAll = (scan: Scan, at: number): boolean =>
  [at - 1, at - 2, at - 3, at - 4].some(
    (i) =>
      scan.clause[i] === scan.clause[at] &&
      (scan.tokens[at]?.start ?? 0) - (scan.tokens[i]?.end ?? 0) <= 16 &&
      (saysWithin(scan, i, i + 1, 'all') || saysWithin(scan, i, i + 1, 'both')),
  );

const saidBefore = (scan: Scan, at: number, cue: CueName): boolean => saysWithin(scan, at - 6, at, cue);

const conditionBefore = (scan: Scan, at: number): string | undefined => {
  for (let i = at - 1; i >= Math.max(0, at - 4); i -= 1) {
    const condition = scan.tokens[i]?.term?.condition;
    if (condition) return condition;
  }
  return undefined;
};
