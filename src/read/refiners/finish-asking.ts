/** Makes the asking price of the reading. */
import type { Asking, Fact } from '../../listing/reading.ts';
import { type Money, money } from '../../units/money.ts';
import type { Price } from '../mention.ts';
import { begins, says, saysWithin } from '../text/says.ts';
import { type Scan, span } from '../text/scan.ts';
import type { Asked } from './asked.ts';

/** Whether an offer is what nobody is to write or call about. */
const isForbidden = (scan: Scan, at: number): boolean =>
  [9, 8, 7, 6, 5, 4, 3, 2, 1]
    .map((back) => at - back)
    .some((i) => says(scan, i, 'contact') && scan.plain[i - 1] === 'N' && scan.clause[i] === scan.clause[at]);

/** "Flexible on the stands", "Bench: make offer": said of some of the goods, where there are others. */
function isOfSome(scan: Scan, at: number): boolean {
  const behind = '_M'.includes(scan.letters[at - 1] ?? 'l') ? '' : scan.plain.slice(at + 1, at + 8);
  if (/^[zw]a?[mC]{0,2}k/.test(behind) && says(scan, at + 1, 'concerning')) return true;
  const before = scan.plain.slice(Math.max(0, at - 7), at);
  return /(?:^|[l.;•])[mC]{0,3}k[:-]$/.test(before) && (scan.tokens[at]?.line ?? 0) > 0;
}

/** "The trade should be pound for pound but we can talk about it": of the trade and not of the price. */
function isOfTrade(scan: Scan, at: number): boolean {
  if (scan.tokens[at]?.term?.sense !== 'talks' || !scan.senses.has('trade')) return false;
  for (let i = at - 1; i >= 0 && scan.clause[i] === scan.clause[at]; i -= 1)
    if (scan.tokens[i]?.term?.sense === 'trade') return true;
  return false;
}

/** "Could be talked into $300 for just the bumpers": another price for some of the goods. */
function isForPartOnly(scan: Scan, at: number): boolean {
  if (scan.letters[at + 1] !== 'M' && !/^[$n]/.test(scan.plain.slice(at + 1))) return false;
  return [3, 4, 5, 6].some((on) => ['only', 'those-only'].includes(scan.tokens[at + on]?.term?.sense ?? ''));
}

/** "The pad is wide and fairly firm." */
function isOfPad(scan: Scan, at: number): boolean {
  for (let i = at - 1; i >= at - 7 && scan.clause[i] === scan.clause[at]; i -= 1) {
    if (scan.letters[i] === 'M') return false;
    if (scan.tokens[i]?.term?.part === 'bench' || scan.language.cues.cover.is(scan.tokens[i]?.text.replace(/'s$/, '') ?? ''))
      return true;
  }
  return false;
}

/** "The district offers the following items": a verb, "tho I appreciate the offers" behind what he would not trade for. */
function isOfOffering(scan: Scan, at: number): boolean {
  if (scan.plain[at + 1] === 'a' && /s$/.test(scan.tokens[at]?.text ?? '') && /^[zk]/.test(scan.plain.slice(at + 2))) return true;
  let denied = false;
  for (let i = at - 1; i >= 0 && scan.clause[i] === scan.clause[at]; i -= 1) {
    if (scan.plain[i] === 'N') denied = true;
    if (scan.tokens[i]?.term?.sense === 'trade')
      return denied || scan.plain[i - 1] === 'N' || scan.plain.slice(Math.max(0, i - 4), i).includes('N');
  }
  return false;
}

/** "Scoreboard buzzer, works. Make an offer": instead of the price, in a line between others that have one. */
function isOfItsLine(scan: Scan, at: number): boolean {
  const line = scan.tokens[at]?.line ?? 0;
  const letters = scan.letters;
  let from = at;
  while (from > Math.max(0, at - 60) && scan.tokens[from - 1]?.line === line && letters[from - 1] !== 'l') from -= 1;
  const before = scan.plain.slice(from, at);
  if (line === 0 || !/[zk][,.:-]{1,2}$/.test(before) || /[AL]/.test(before) || letters.slice(from, at).includes('M'))
    return false;
  if (!/^[.!)]?(?:l|$)/.test(scan.plain.slice(at + 1, at + 3))) return false;
  const above = letters.slice(Math.max(0, from - 40), Math.max(0, from - 1)).join('');
  const priced = new Set(scan.tokens.flatMap(({ line: on }, i) => (letters[i] === 'M' ? on : [])));
  return priced.size > 1 && above.slice(above.lastIndexOf('l') + 1).includes('M');
}

/** "A firm flick": of something else than the price. */
const isOfThing = (scan: Scan, at: number): boolean =>
  scan.plain[at - 1] === 'a' && scan.plain[at + 1] === 'z' && !says(scan, at + 1, 'price') && !scan.tokens[at + 1]?.term?.sense;

/** "Sleeves won't budge". */
const isOfSleeves = (scan: Scan, at: number): boolean =>
  [at - 1, at - 2].some((i) => scan.plain[i] === 'T' || says(scan, i, 'turning'));

/** "We offer delivery", "make offer on the mower": a verb, or an offer for goods that we know nothing of. */
function isOfOthers(scan: Scan, at: number): boolean {
  const verb = scan.tokens[at]?.text === 'offer' && /^(?:we|i|they|you|also|can)$/.test(scan.tokens[at - 1]?.text ?? '');
  const thing = scan.tokens[at + 3];
  const on =
    /^make|^offers?$/.test(scan.tokens[at]?.text ?? '') &&
    /^[zw]az/.test(scan.plain.slice(at + 1, at + 4)) &&
    says(scan, at + 1, 'concerning');
  return verb || (on && thing?.type === 'word' && (thing.term === null || thing.term.sense?.startsWith('thing') === true));
}

/** "Offers below will be ignored", "no 'lowest price?' messages": what nobody is to offer or ask, where what forbids it begins. */
function isForbidding(scan: Scan, at: number): boolean {
  for (let i = at + 1; i <= at + 7 && scan.clause[i] === scan.clause[at] && scan.letters[i] !== 'M'; i += 1)
    if (begins(scan, i, 'ignored')) return !'NU'.includes(scan.plain[at - 1] ?? '_');
  return false;
}

const isQuoted = (scan: Scan, at: number): boolean => '"\''.includes(scan.plain[at - 1] ?? '_');

/** "No 'what's your lowest' messages". */
const isDeniedAsking = (scan: Scan, at: number): boolean =>
  /N[a-z]{0,4}["']?[a-z]{0,3}$/.test(scan.plain.slice(Math.max(0, at - 8), at)) ||
  /^["'?]{0,2}[a-z]{1,5}N/.test(scan.plain.slice(at + 1, at + 9)) ||
  isForbidding(scan, at);

/** First letter of a class in the text that no "not" stands before. */
function term(scan: Scan, letter: string, various: boolean): Fact<boolean> | null {
  for (let at = scan.plain.indexOf(letter); at !== -1; at = scan.plain.indexOf(letter, at + 1)) {
    if (/N[a-z£]{0,2}$/.test(scan.plain.slice(Math.max(0, at - 3), at))) continue;
    if (various && isOfSome(scan, at)) continue;
    if (letter === 'O' && isForbidding(scan, at)) continue;
    // "Please no 'lowest price?' messages" speaks of others.
    if (isQuoted(scan, at)) continue;
    // "Do NOT contact me with services or offers" speaks of the site.
    if (letter === 'O' && (isForbidden(scan, at) || isOfTrade(scan, at) || isForPartOnly(scan, at))) continue;
    // "If you offer half I'll block you."
    if (letter === 'O' && saysWithin(scan, at - 3, at, 'if-you') && scan.clause[at - 1] === scan.clause[at]) continue;
    if (letter === 'R' && (isOfPad(scan, at) || isOfThing(scan, at) || isOfSleeves(scan, at))) continue;
    if (letter === 'O' && isOfOthers(scan, at)) continue;
    if (letter === 'O' && (isOfOffering(scan, at) || (various && isOfItsLine(scan, at)))) continue;
    return { value: true, basis: 'stated', rule: letter === 'R' ? 'firm' : 'open-to-offers', evidence: [span(scan, at, at)] };
  }
  return null;
}

/** Said of the price where the page shows it, outside the text: it has no place there. */
const termBeside = (shown: Scan | null, letter: string): Fact<boolean> | null => {
  const fact = shown && term(shown, letter, false);
  return fact && { ...fact, evidence: [] };
};

/** "Offers below will be ignored", and where none are asked for: "no 'lowest price?' messages". */
function forbidden(scan: Scan, open: boolean): Fact<boolean> | null {
  const at = scan.tokens.findIndex(({ term: said }, i) =>
    said?.code === 'O'
      ? isForbidding(scan, i)
      : !open && (said?.sense === 'lowest' || (said?.code === 'R' && isQuoted(scan, i))) && isDeniedAsking(scan, i),
  );
  return at < 0 ? null : { value: true, basis: 'stated', rule: 'firm', evidence: [span(scan, at, at)] };
}

/** "No, I won't do 10": an offer that is turned down beforehand. */
function refused(scan: Scan): Fact<boolean> | null {
  if (!scan.senses.has('refuses')) return null;
  const at = scan.tokens.findIndex(
    ({ term: said }, index) => said?.sense === 'refuses' && /^[$]?[ni]/.test(scan.plain.slice(index + 1, index + 3)),
  );
  return at < 0 ? null : { value: true, basis: 'stated', rule: 'firm', evidence: [span(scan, at, at + 1)] };
}

/** "$45 but I'd take 40": less than what is asked, with nothing that it hangs on. */
function conceded(scan: Scan, asked: Asked, prices: readonly Price[]): Fact<boolean> | null {
  const price = prices.find(
    ({ role, amount, from, to }) =>
      role === 'asking' &&
      from >= 0 &&
      amount < (asked.amount ?? 0) &&
      amount >= 0.6 * (asked.amount ?? 0) &&
      [from - 3, from - 2, from - 1].some((i) => says(scan, i, 'would-perhaps')) &&
      !/^[^.;!l]{0,6}N/.test(scan.plain.slice(to + 1, to + 9)),
  );
  return price ? { value: true, basis: 'stated', rule: 'open-to-offers', evidence: [span(scan, price.from, price.to)] } : null;
}

/**
 * `various`: whether goods of more than one kind are offered, of which some may have terms of their own. `shown` is what the page shows as the
 * price, when the text does not say it.
 */
export function finishAsking(
  scan: Scan,
  asked: Asked,
  prices: readonly Price[],
  currency: string | null,
  various: boolean,
  shown: Scan | null,
): Asking {
  const moneyOf = (amount: number, place: Price | null, worked = false): Fact<Money> => ({
    value: money(amount, currency ?? scan.language.currency),
    basis: worked ? 'implied' : place?.sure === false ? 'assumed' : 'stated',
    rule: place?.rule ?? 'worked-out',
    evidence: place && place.to >= place.from && place.from >= 0 ? [span(scan, place.from, place.to)] : [],
  });
  const stated = prices.find((price) => price.currency !== null && price.from >= 0);
  const delivery = prices.find((price) => price.role === 'delivery');
  const open = term(scan, 'O', various) ?? conceded(scan, asked, prices) ?? termBeside(shown, 'O');
  return {
    amount: asked.amount === null ? null : moneyOf(asked.amount, asked.price ?? asked.unitPrice, asked.worked),
    basis: asked.basis,
    unitAmount: asked.unitAmount === null ? null : moneyOf(asked.unitAmount, asked.unitPrice),
    high: asked.high === null ? null : moneyOf(asked.high, asked.price),
    currency:
      currency === null
        ? null
        : {
            value: currency,
            basis: stated ? 'stated' : 'implied',
            rule: 'currency',
            evidence: stated ? [span(scan, stated.from, stated.to)] : [],
          },
    firm: term(scan, 'R', various) ?? forbidden(scan, open !== null) ?? refused(scan) ?? termBeside(shown, 'R'),
    openToOffers: open,
    former: prices.filter((price) => price.role === 'former').map((price) => moneyOf(price.amount, price)),
    delivery: delivery ? moneyOf(delivery.amount, delivery) : null,
    placeholder: asked.placeholder,
  };
}
