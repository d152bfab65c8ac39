/** What an ad says of a rack in words that are no condition of the reading: what catches the bar, and what keeps the frame up. */
import type { Span } from '../listing/page-listing.ts';
import type { Item, Reading } from '../listing/reading.ts';

const CATCHERS =
  '(?:pins?|safet(?:y|ies)|spotters?|j-?\\s?(?:hooks?|cups?)|hooks?|cups|catch(?:es|ers?)?|sicherheits\\w*|ablagen?|ablage\\w+|haken|bolzen)';

/** Words for what catches and what holds the bar. */
export const CATCHES = new RegExp(`\\b${CATCHERS}\\b`, 'i');

/** Said to be missing: before the word ("without any safety pins") or behind it ("the hooks were lost", "Ablagen fehlen"). */
export const CATCHES_MISSING = new RegExp(
  `\\b(?:no|without(?: any| the)?|missing|lost|lacks|minus|ohne|keine?)(?: [\\w-]+){0,3} ${CATCHERS}\\b|\\b${CATCHERS}(?: [\\w-]+){0,2} (?:missing|lost|gone|fehl(?:t|en))\\b`,
  'gi',
);

/** It does not stand by itself. */
export const NO_FLOOR =
  /\b(?:wall[- ]?mount(?:s|ed)?|mounts? to (?:the |a )?wall|fold(?:s|ing)?[- ](?:back |flat |up )?(?:in|to|against)?[- ]?(?:the )?wall|(?:no|without a|without|missing the|missing) (?:base|floor frame|floor member|cross-?\s?members?|bottom frame|rear base)|wandmontage|zur wandbefestigung|ohne bodenrahmen)\b/gi;

/** It is bolted down where it stands, which says nothing of how it stands without. */
export const BOLTED_DOWN =
  /\b(?:(?:bolts|bolted|anchored|anchors|lagged|screwed)(?: in| down)? ?(?:in)?to (?:the |a |my |our )?(?:floor|wall|concrete|ground|slab|joists?)|im boden verschraubt|am boden verschraubt)\b/gi;

/** Before such words: not so, or only when one likes. */
const DENIED =
  /\b(?:not|never|no need|needn['’]t|\w+n['’]?t|can be|could be|may be|optional\w*|if (?:you|u)|nicht|kein)\b[^.]{0,25}$/i;

/** Goods of which the same words are said: where such a noun stands in the sentence, they may not be of the rack. */
const OTHER_GOODS =
  /\b(?:racks?|rigs?|cages?|shel(?:f|ves)|stands?|storage|holders?|pull-?\s?up bars?|chin-?\s?up bars?|hangers?|mirrors?|tv|fan|bench(?:es)?|bags?|trees?)\b/i;

const SENTENCE_END = /[.!?;](?=\s)|\n/g;
/** Where something else is said. */
const CLAUSE_END = /[.!?;,:](?=\s)|\n|\(|\)|\b(?:but|aber)\b/gi;

/** Where the sentence around a place of the text begins and ends, or whatever else `ends` parts. */
function sentenceAt(text: string, place: number, ends = SENTENCE_END): Span {
  let start = 0;
  for (const { index } of text.matchAll(ends)) {
    if (index >= place) return { start, end: index };
    start = index + 1;
  }
  return { start, end: text.length };
}

/** An ad says it once or twice; a text that repeats it without end is looked at no further. */
const MOST_LOOKED_AT = 12;
/** How far before the words a denial may begin. */
const REACH = 60;

const touches = (a: Span, b: Span): boolean => a.start < b.end && b.start < a.end;

/** The last item that was named before a place of the text. */
function lastBefore(reading: Reading, place: number): Item | null {
  let last: Item | null = null;
  let at = -1;
  for (const item of reading.items)
    for (const { start } of item.evidence) if (start <= place && start > at) [last, at] = [item, start];
  return last;
}

/** Words between an adjective and its noun. */
const NEXT = /^[ -](?:[\p{L}\d-]{1,20} ){0,2}$/u;

/** Of several items the one whose name follows the words at once: "wall mounted folding rack". */
const ledTo = (items: readonly Item[], { end }: Span, text: string): Item | undefined =>
  items.find(({ evidence }) =>
    evidence.some(({ start }) => start >= end && start - end < 45 && NEXT.test(text.slice(end, start))),
  );

/**
 * Where the ad says a thing of this item: in a sentence that names it, or in one that names no goods and follows it. Null when it
 * doesn't, or only of other goods, or denies it. Of several items that one sentence names, it is said of the last before the words, or,
 * where they are of the kind that stands before a noun (`leads`), of the one that follows them at once.
 */
export function saidOf(item: Item, pattern: RegExp, reading: Reading, leads = false): Span | null {
  const { text } = reading;
  let looked = 0;
  for (const found of text.matchAll(pattern)) {
    looked += 1;
    if (looked > MOST_LOOKED_AT) return null;
    const span = { start: found.index, end: found.index + found[0].length };
    const sentence = sentenceAt(text, span.start);
    if (DENIED.test(text.slice(Math.max(sentence.start, span.start - REACH), span.start))) continue;
    const named = reading.items.filter((one) => one.evidence.some((place) => touches(place, sentence)));
    if (named.length === 1 && named[0] === item) return span;
    if (named.length === 0 && OTHER_GOODS.test(text.slice(sentence.start, sentence.end))) continue;
    if (named.length === 1) continue;
    const led = leads ? ledTo(named, span, text) : undefined;
    if ((led ?? lastBefore(reading, span.end)) === item) return span;
  }
  return null;
}

/** Whether a word of condition stands in a sentence that speaks of pins or hooks. */
export function isOfCatches(reading: Reading, evidence: readonly Span[]): boolean {
  return evidence.some(({ start }) => {
    const sentence = sentenceAt(reading.text, start);
    return CATCHES.test(reading.text.slice(sentence.start, sentence.end));
  });
}

/** What carries: where such a word stands beside "cracked" or "bent", the frame itself is meant. */
const CARRIES =
  /\b(?:frames?|uprights?|posts?|welds?|welded|members?|cross-?\s?members?|braces?|beams?|legs?|bases?|feet|foot|steel|metal|tub(?:e|es|ing)|gussets?|spine|rahmen|pfosten|holme?|streben?|(?:schwei(?:ß|ss))?n(?:a|ä)hte?|rohre?|träger|beine?|füße|stahl)\b/i;

/** What hangs on a frame or covers it, and carries no barbell. */
const ATTACHED =
  /\b(?:pull-?\s?ups?|chin-?\s?ups?|dips?|lat|handles?|grips?|pegs?|horns?|landmines?|caps?|covers?|liners?|plastic|rubber|paint|powder-?\s?coat|stickers?|decals?|wheels?|casters?|rollers?|cables?|pulleys?|leg (?:curls?|extensions?|developers?)|preachers?|attachments?|klimmzug\w*|griffe?|kappen?|gummi\w*|kunststoff\w*|plastik\w*|lack|farbe|rollen?|bein(?:curler|strecker)\w*)\b/i;

/** Leg curls and extensions are no legs. */
const LEG_WORK = /\bleg (?:curls?|extensions?|developers?|attachments?)\b/gi;

const clauseAt = (text: string, place: number): string => {
  const { start, end } = sentenceAt(text, place, CLAUSE_END);
  return text.slice(start, end);
};

/** What a weight lies in, what a bar is capped with, and what both are coated with; and what of them is gripped or loaded. */
const CASING =
  /\b(?:trays?|stands?|racks?|cradles?|docks?|cases?|boxes|box|dials?|plastic|rubber|coatings?|paint|chrome|plating|finish|stickers?|caps?|end-?caps?|schale|endkappen?|kappen?|chrom|ablage|kunststoff\w*|gummi\w*|lack)\b/i;
const HELD = /\b(?:handles?|heads?|shafts?|sleeves?|welds?|iron|steel|schaft|hülsen?|griffe?|köpfe?|kopf|naht)\b/i;

/** Whether the words of a condition speak of what a weight or a bar lies in or is coated with, and not of itself. */
export const isOfCasing = ({ text }: Reading, evidence: readonly Span[]): boolean =>
  evidence.length > 0 &&
  evidence.every(({ start }) => {
    const clause = clauseAt(text, start);
    return CASING.test(clause) && !HELD.test(clause);
  });

export type FramePart = 'frame' | 'catches' | 'attachment';

/**
 * Which part of a frame the words of a condition speak of, by the clause that they stand in. The frame itself where it says nothing, or
 * nobody's words stand behind it: what is not known to be an attachment is taken for what carries.
 */
export function framePart(reading: Reading, evidence: readonly Span[]): FramePart {
  const parts = evidence.map(({ start }): FramePart => {
    const clause = clauseAt(reading.text, start);
    if (CARRIES.test(clause.replace(LEG_WORK, ''))) return 'frame';
    if (CATCHES.test(clause)) return 'catches';
    return ATTACHED.test(clause) ? 'attachment' : 'frame';
  });
  return parts.find((part) => part === 'frame') ?? parts[0] ?? 'frame';
}
