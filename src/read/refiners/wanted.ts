/**
 * Whether the ad seeks instead of offering. A word of seeking counts when nothing is offered before it: no word of selling, and no goods but those
 * of its own clause in the headline ("Olympic plates wanted"). "Looking for $200" names a price, "trade wanted" a way to pay, "looking for a
 * good home" an offer; "need" and the like must be followed by goods. An ad that seeks first and then sells something with a price is an offer.
 */

import type { Price } from '../mention.ts';
import { isAside } from '../recognisers/nouns.ts';
import type { Scan } from '../text/scan.ts';
import type { Token } from '../text/tokens.ts';

type Sense = 'seek' | 'may-seek' | 'needs' | 'after' | 'sell';

/** What a token says of seeking; a language without topics says it by the class W. */
function senseOf({ term }: Token): Sense | null {
  const sense = term?.sense;
  if (sense === 'seek' || sense === 'may-seek' || sense === 'needs' || sense === 'after' || sense === 'sell') return sense;
  return term?.code === 'W' && sense !== 'rather' ? 'seek' : null;
}

/** A sum of money right behind the word ("looking for $200", "wanted about 300"), and no weight or count. */
function isSum(letters: string): boolean {
  return /^[zaU:]{0,2}(?:[$M]|n\$|n(?![uhqsxkmCfp("'./-]|[/,-]n|$))/.test(letters);
}

/** "Looking for a power rack or cash 260": money in the place of what is sought, asked by one who has goods to give. */
function isOffered(scan: Scan, price: Price | null): boolean {
  if (!price || price.from < 0) return false;
  const or = [1, 2, 3].map((back) => price.from - back).find((at) => scan.tokens[at]?.term?.sense === 'or');
  if (or === undefined || !/^[£U$]{0,2}$/.test(scan.plain.slice(or + 1, price.from))) return false;
  return /W[amzuhsn]{0,4}k[,]?$/.test(scan.plain.slice(Math.max(0, or - 8), or));
}

export function isWanted(scan: Scan, hasPrice: boolean, price: Price | null = null): boolean {
  let swapClause = -1;
  let seeks = false;
  let firstGoods: number | null = null;
  let at = 0;
  for (const word of scan.words) {
    while ((scan.tokens[at + 1]?.start ?? Number.POSITIVE_INFINITY) <= word.start) at += 1;
    const clause = scan.clause[at] ?? 0;
    const sense = senseOf(word);
    if (word.term?.sense === 'swap') swapClause = clause;
    if (word.term?.kind && firstGoods === null && !isAside(scan, at)) firstGoods = at;
    if (sense === 'sell') {
      if (!seeks || hasPrice) return false;
    } else if (sense !== null && !seeks) {
      let next = at + 1;
      while ((scan.tokens[next]?.start ?? Number.POSITIVE_INFINITY) < word.end) next += 1;
      const letters = scan.letters.slice(next, next + 8).join('');
      if (
        // "No plates wanted", "no plates needed", "suche keine Tauschangebote".
        /N[amCk]{0,3}$/.test(scan.plain.slice(Math.max(0, at - 4), at)) ||
        letters.startsWith('N') ||
        swapClause === clause ||
        // "Paying up to $1 a pound for plates" buys.
        (isSum(letters) && !/\bpay/.test(word.text)) ||
        /^[zaU:]{0,2}nw/.test(scan.plain.slice(next, next + 4))
      )
        continue;
      // "After one 10 kg bumper plate": the goods right behind it, at the head of the sentence.
      if (
        sense === 'after' &&
        ((at > 0 && scan.clause[at - 1] === clause) || !/^[nmCuhsd-]{0,6}k/.test(scan.plain.slice(next, next + 8)))
      )
        continue;
      // "I've got more than I need".
      if (sense === 'needs' && [at - 1, at - 2].some((i) => scan.tokens[i]?.term?.sense === 'bound')) continue;
      const beside =
        firstGoods === null ||
        (clause === scan.clause[firstGoods] &&
          (scan.tokens[at]?.line ?? 0) === 0 &&
          sense !== 'needs' &&
          !scan.letters.slice(firstGoods, at).includes('M'));
      // "Need it gone by the 30th" sells.
      if (sense === 'needs' && scan.tokens.slice(next, next + 3).some(({ term }) => term?.sense === 'be-gone')) continue;
      const goods = /^[^l.;!?]{0,6}[kuv]|^[^.;!?]{0,3}n/.test(scan.plain.slice(next, next + 8));
      if (beside && (sense !== 'needs' || goods)) seeks = true;
    }
  }
  return seeks && !isOffered(scan, price);
}
