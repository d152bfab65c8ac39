/** Where the goods are: behind "located in" and the like, or where a page shows it: beside the miles to it, with its state on a line of its own. */
import type { Fact } from '../../listing/reading.ts';

const LEAD =
  /\b(?:located\s(?:in|near|at):?|(?:ago|today|yesterday)\sin|pick[-\s]?up\s(?:only\s)?(?:in|at|near|from)|collection\s(?:only\s)?(?:from|in)|collect\s(?:from|in)|ships\sfrom|i['’]?m\sin|i\sam\sin|we\sare\sin|abholung\sin|abzuholen\sin|standort:?|location:?|(?:^where|^ort)(?::|(?=[\t\n])))\s{1,3}/gimu;
/** Capitalised words, with a state, a county or a postcode behind a comma: "Eastwick", "St. Mary Mead, KS 66000", "Moosbrunn an der Leine". */
const WORDS =
  "\\p{Lu}[\\p{L}'’.-]{1,30}(?:,?[ \\u00a0](?:(?:an der|in der|vor der|ob der|upon)[ \\u00a0])?(?:\\p{Lu}[\\p{L}'’.-]{0,30}|\\d{4,5})){0,3}";
const NAME = new RegExp(`^${WORDS}`, 'u');
/** "Dunmarrow, PA · 6.2 mi away", "Ferrow Heights · listed 2 days ago", "Stonefleet | 14 miles from you", "Tavish, posted today". */
const BESIDE = new RegExp(
  `(?:^|[·•|\\t] ?)(${WORDS}) ?[·•|] ?(?:(?:listed|posted) |\\d{1,4}(?:\\.\\d)? ?(?:mi|km|miles)\\b)|` +
    // A comma alone parts much else: more is asked beside it.
    `^(${WORDS}), (?:(?:listed|posted) (?:an? |on |today|yesterday|\\d)|\\d{1,4}(?:\\.\\d)? ?(?:mi|km|miles) (?:away|from)\\b)|` +
    // Its state stands behind a comma: less is needed beside it.
    `(?:^|[·•|\\t] ?)(\\p{Lu}[\\p{L}'’. -]{1,40}, \\p{Lu}[\\p{L}'’.-]{1,30}) ?(?:[·•|] ?\\d{1,3} \\p{L}{3,8} ago\\b|(?:[A-Z]\\d[A-Z] ?\\d[A-Z]\\d |\\d{5} )?\\((?:view |see )?map\\))|` +
    `[$€£] ?\\d[\\d.,]{0,9} \\((${WORDS})\\)`,
  'gmu',
);
const COMMON =
  /^(?:My|The|Our|Your|A|An|This|Person|Store|Cash|Evenings?|Mornings?|Weekends?|Used|New|Like|Good|Fair|Free|Firm|Excellent|Poor|Sold|Condition|Can|Will|Deliver\w*|Shipping|Local|Pickup|Each|Both|Or|Obo|OBO|Ono|ONO|VB|Neg\w*)\b/;

/** "Pick up in Elmwick. No holds", but "St. Elmwick". */
const SENTENCE = /(?<=\p{L}{4})\. /u;

const fact = (value: string, start: number): Fact<string> => ({
  value,
  basis: 'stated',
  rule: 'place',
  evidence: [{ start, end: start + value.length }],
});

/** Place for pickup, as written: capitalised words behind "located in", "pickup in" and the like, or where the page shows the place. */
export function readPlace(text: string): Fact<string> | null {
  for (const lead of text.matchAll(LEAD)) {
    const start = lead.index + lead[0].length;
    const name = NAME.exec(text.slice(start, start + 140))?.[0]
      .split(SENTENCE)[0]
      ?.replace(/[.,\s]+$/, '');
    if (name && !COMMON.test(name)) return fact(name, start);
  }
  for (const shown of text.matchAll(BESIDE)) {
    const name = (shown.slice(1).find(Boolean) ?? '').replace(/[.,\s]+$/, '');
    if (name !== '' && !COMMON.test(name)) return fact(name, shown.index + shown[0].indexOf(name));
  }
  return null;
}
