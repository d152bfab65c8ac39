import type { Fact } from '../../listing/reading.ts';

const LEAD =
  /\b(?:located\s(?:in|near|at)|pick[-\s]?up\s(?:only\s)?(?:in|at|near|from)|collection\s(?:only\s)?(?:from|in)|collect\s(?:from|in)|i['’]?m\sin|i\sam\sin|we\sare\sin|abholung\sin|abzuholen\sin|standort:?|location:)\s{1,3}/giu;
/** Capitalised words, with a state, a county or a postcode behind a comma: "Eastwick", "St. Mary Mead, KS 66000". */
const NAME = /^\p{Lu}[\p{L}'’.-]{1,30}(?:,?[ \u00a0](?:\p{Lu}[\p{L}'’.-]{0,30}|\d{4,5})){0,3}/u;
const COMMON = /^(?:My|The|Our|Your|A|An|This|Person|Store|Cash|Evenings?|Mornings?|Weekends?)\b/;

/** Place for pickup, as written: capitalised words behind "located in", "pickup in" and the like. */
export function readPlace(text: string): Fact<string> | null {
  for (const lead of text.matchAll(LEAD)) {
    const start = lead.index + lead[0].length;
    const name = NAME.exec(text.slice(start, start + 140))?.[0].replace(/[.,\s]+$/, '');
    if (name && !COMMON.test(name))
      return { value: name, basis: 'stated', rule: 'place', evidence: [{ start, end: start + name.length }] };
  }
  return null;
}
