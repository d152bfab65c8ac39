/**
 * The forms in which pages and sellers tell since when an ad stands: common practice, no source. In each is a `date`, a `today`, or a `count` with its `unit`. Every quantifier is bounded.
 */

const SPACE = '[^\\S\\n]{1,3}';
/** Between a name and its value, which may stand in the next line or cell. */
const THEN = '\\s{0,3}[:–-]?\\s{1,3}';
const MONTH =
  '(?:jan(?:uary|uar)?|feb(?:ruary|ruar)?|mar(?:ch)?|märz?|apr(?:il)?|may|mai|june?|juni|july?|juli|aug(?:ust)?|sept?(?:ember)?|o[ck]t(?:ober)?|nov(?:ember)?|de[cz](?:ember)?)';
const YEAR = `(?:,?${SPACE}20\\d{2})?`;
/** "2026-10-02", "10/2/2026", "2.10.", "Oct 2, 2026", "2nd of October", "2. Oktober 2026". Never "9/10", which may be a mark. */
const DATE = `(?<date>${[
  '\\d{4}[-/.]\\d{1,2}[-/.]\\d{1,2}',
  '\\d{1,2}/\\d{1,2}/(?:\\d{4}|\\d{2})',
  '\\d{1,2}-\\d{1,2}-\\d{4}',
  '\\d{1,2}\\.\\d{1,2}\\.(?:\\d{4}|\\d{2})?',
  `${MONTH}\\.?${SPACE}\\d{1,2}(?:st|nd|rd|th)?${YEAR}`,
  `\\d{1,2}(?:st|nd|rd|th|\\.)?${SPACE}(?:of${SPACE})?${MONTH}\\.?${YEAR}`,
].join('|')})(?![\\d%\\p{L}]|[.,/-]\\d)`;

const NUMBER = '\\d{1,3}\\+?';
const form = (body: string, before = '(?<![\\p{L}\\d-])'): RegExp => new RegExp(`${before}(?:${body})(?!\\p{L})`, 'gimu');
/** Where a sentence, a line or a cell begins, with `words` before it or without. */
const beginning = (words: string): string => `(?<=(?:^|[|·•\\t(.!?])\\s{0,3}(?:(?:${words})${SPACE}){0,2})`;

const ROUGHLY = `(?:(?:about|around|over|almost|nearly|more${SPACE}than)${SPACE})?`;
const SPAN =
  `${ROUGHLY}(?<count>${NUMBER}|an?(?:${SPACE}couple${SPACE}of)?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)[^\\S\\n]{0,3}` +
  '(?<unit>seconds?|secs?|minutes?|mins?|hours?|hrs?|days?|weeks?|wks?|months?|mos?|years?|yrs?|[hdwy])(?!\\p{L})';
const PUT_UP = '(?:posted|listed|published|advertised)';
/** "Can be posted today" is the mail, "not listed" is no listing, and what was listed again stands for longer. */
const NO_MAIL = '(?<![\\p{L}\\d-]|\\b(?:be|being|get|not|never|items?|parcels?|again)\\s)';
const THIS = `(?:${SPACE}(?:it|this|the|ad|here|on|first)){0,4}`;

const ENGLISH = [
  form(`(?:${PUT_UP}${THIS}|(?:date|day)${SPACE}${PUT_UP}|(?:posting|listing|ad)${SPACE}date)${THEN}${DATE}`, NO_MAIL),
  form(`${PUT_UP}${THIS}${THEN}${SPAN}${SPACE}ago`, NO_MAIL),
  form(`${PUT_UP}${THEN}(?<today>today|yesterday|just${SPACE}now)(?!${SPACE}(?:if|by|when|for|with)\\b)`, beginning('ad|first')),
  form(
    `(?:on${SPACE}(?:the${SPACE})?market|for${SPACE}sale|been${SPACE}(?:up|here)|online|${PUT_UP})(?:${SPACE}here)?${SPACE}for${SPACE}${SPAN}(?!${SPACE}only)`,
  ),
  form(
    `(?:on${SPACE}(?:the${SPACE})?market|for${SPACE}sale|been${SPACE}(?:up|here)|online|${PUT_UP})(?:${SPACE}here)?${SPACE}since${SPACE}${DATE}`,
  ),
  form(`days${SPACE}(?:on${SPACE}(?:the${SPACE})?market|listed|online)${THEN}(?<count>\\d{1,4})`),
  form(`(?:ad${SPACE}age|age${SPACE}of${SPACE}(?:the${SPACE})?ad|time${SPACE}listed)${THEN}${SPAN}`),
];

const SPANNE =
  `(?:(?:etwa|ungefähr|circa|ca\\.|rund|über|gut|mehr${SPACE}als|knapp|schon)${SPACE}){0,2}(?<count>${NUMBER}|eine[rmn]?|zwei|drei|vier|fünf|sechs|sieben|acht|neun|zehn|elf|zwölf)${SPACE}` +
  '(?<unit>sekunden?|minuten?|min\\.?|stunden?|std\\.?|tag(?:en?)?|wochen?|monat(?:en?)?|jahr(?:en?)?)(?!\\p{L})';
const AD = '(?:anzeige|inserat|angebot|artikel)';
/** What is done to ads alone, and what is done to much else: training is "eingestellt" when it is given up. */
const INSERTED = `(?:inseriert|veröffentlicht|online${SPACE}gestellt|hochgeladen)`;
const SET = '(?:eingestellt|reingestellt|aufgegeben|erstellt|geschaltet)';
const ABOUT_AD = beginning(`(?:die|das|meine|unsere|dieses?|mein)${SPACE}${AD}|${AD}|wurde|hier`);
const OF_AD = `(?:${ABOUT_AD}|(?<=(?<!\\p{L})${AD}${SPACE}(?:(?:wurde|habe|hier|ich|erst)${SPACE}){0,3}))`;
const STANDS = `(?:online|inseriert|im${SPACE}angebot|auf${SPACE}dem${SPACE}markt|zum${SPACE}verkauf|eingestellt)`;

const GERMAN = [
  form(
    `(?:${AD}${SPACE}vom|(?:anzeigen?|einstell(?:ungs)?|erstell(?:ungs)?|inserats?|veröffentlichungs)datum|${INSERTED}${SPACE}am|${STANDS}${SPACE}seit(?:${SPACE}dem)?)${THEN}${DATE}`,
  ),
  form(`${SET}(?:${SPACE}am)?${THEN}${DATE}`, OF_AD),
  form(`am${SPACE}${DATE}${SPACE}${INSERTED}`),
  form(`am${SPACE}${DATE}${SPACE}${SET}`, OF_AD),
  form(`seit${SPACE}(?:dem${SPACE})?${DATE}${SPACE}${STANDS}`),
  form(`vor${SPACE}${SPANNE}${SPACE}${INSERTED}`),
  form(`vor${SPACE}${SPANNE}${SPACE}${SET}`, OF_AD),
  form(`${INSERTED}${THEN}vor${SPACE}${SPANNE}`),
  form(`${SET}${THEN}vor${SPACE}${SPANNE}`, OF_AD),
  form(`${STANDS}${SPACE}seit${THEN}${SPANNE}`),
  form(`seit${SPACE}${SPANNE}${SPACE}${STANDS}`),
  form(
    `(?:(?<today>heute|gestern)(?:,?${SPACE}\\d{1,2}:\\d{2}(?:${SPACE}Uhr)?)?${SPACE}(?:${INSERTED}|${SET}))`,
    beginning('erst'),
  ),
];

export const POSTED: readonly RegExp[] = [...ENGLISH, ...GERMAN];
