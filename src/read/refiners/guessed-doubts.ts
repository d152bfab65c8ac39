/** Doubts about counts and weights that the seller only guesses: "about ten 10s", "4x45 I think", "35 lb plates x 6?". */
import { type Doubt, isPlate, type Kind } from '../../listing/reading.ts';
import { message } from '../../words/message.ts';
import { type Scan, span, valueAt } from '../text/scan.ts';
import type { Draft } from './draft.ts';

interface Named {
  readonly id: string;
  readonly item: Draft;
}

/** Goods whose price hangs on what they weigh. */
const WEIGHED: readonly Kind[] = ['dumbbell', 'kettlebell'];

/** How far behind its goods a count may stand. */
const LATER = 8;

/** Tokens of numbers that a word of guessing speaks of: the number behind it, or what stands right before it. */
function guessedNumbers(scan: Scan): number[] {
  const found: number[] = [];
  const isNumber = (at: number): boolean => 'nd'.includes(scan.plain[at] ?? '_');
  for (const { index: at, 0: letter } of scan.plain.matchAll(/[Uy?]/g)) {
    const term = scan.tokens[at]?.term;
    // "Over 40 lb", "they say 45".
    if (term?.sense === 'bound' || term?.sense === 'marking') continue;
    const next = 'azo%'.includes(scan.plain[at + 1] ?? '_') ? at + 2 : at + 1;
    if (letter !== '?' && isNumber(next) && scan.clause[next] === scan.clause[at]) {
      found.push(next);
      continue;
    }
    // "15 kg I think", "x 6?": back over the unit, the noun and a mark.
    let back = at - 1;
    while (back >= 0 && at - back < 5 && 'uhsqkm,('.includes(scan.plain[back] ?? '_')) back -= 1;
    // Of "4x45" it is the count that is guessed.
    if (letter !== 'U' && isNumber(back) && scan.clause[back] === scan.clause[at - 1])
      found.push(scan.plain[back - 1] === 'x' && !'uhs'.includes(scan.plain[back - 2] ?? 'u') ? back - 2 : back);
  }
  return found;
}

export function guessedDoubts(scan: Scan, named: readonly Named[]): Doubt[] {
  const doubts: Doubt[] = [];
  for (const at of guessedNumbers(scan)) {
    const value = valueAt(scan, at);
    for (const { id, item } of named) {
      const later = item.count?.rule.endsWith('-counted-later') && item.count.value === value;
      if (!item.places.some(({ from, to }) => at >= from && (at <= to || (later && at - to < LATER)))) continue;
      const { count, weight } = item;
      const evidence = [span(scan, at, at)];
      const about = `${id}.${count && !count.implied && count.value === value ? 'count' : 'unitWeight'}`;
      if (doubts.some((doubt) => doubt.about === about)) continue;
      if (about.endsWith('count')) {
        const choices = [
          { says: message('choice_pieces', { n: count?.value ?? 0 }), corrections: [] },
          { says: message('choice_not_counted'), corrections: [{ path: about, value: null }] },
        ];
        doubts.push({ id: `guessed_count:${about}`, about, why: message('doubt_guessed_count'), choices, evidence });
      } else if (weight?.value === value && (isPlate(item.kind) || WEIGHED.includes(item.kind))) {
        const choices = [
          {
            says: message('choice_weight', { weight: { weight: { value: weight.value, unit: item.unit ?? 'lb' } } }),
            corrections: [],
          },
          { says: message('choice_not_weighed'), corrections: [{ path: about, value: null }] },
        ];
        doubts.push({ id: `guessed_weight:${about}`, about, why: message('doubt_guessed_weight'), choices, evidence });
      }
    }
  }
  return doubts;
}
