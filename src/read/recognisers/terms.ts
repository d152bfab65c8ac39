/** What an ad says of the terms of sale, in phrases that tell no goods. Common practice, no source. Every quantifier is bounded. */
import type { Fact, SaleTerm } from '../../listing/reading.ts';

const PICTURES = '(?:photos?|pictures?|pics?|images?)';
const BY_CARD = '(?:gift ?cards?|wire transfers?|bank wires?|crypto(?:currency|currencies)?|bitcoins?)';

const PHRASES: Readonly<Record<SaleTerm, readonly string[]>> = {
  'no-test': [
    'no[ -]test(?:s|ing)?(?! (?:needed|required))',
    'no inspections?',
    "can(?:not| not|['’]?t) be (?:tested|tried(?: out)?|inspected)",
    'untested',
    'ungetestet|nicht getestet',
    'keine? (?:tests?|probe|besichtigung)|ohne (?:probe|besichtigung)',
  ],
  'stock-photo': [
    `stock ${PICTURES}`,
    `${PICTURES} (?:shown )?(?:is |are )?(?:just |only )?(?:for (?:reference|illustration)|(?:taken )?(?:from|off) (?:the |a )?(?:internet|web ?site|web|manufacturer|maker|catalog(?:ue)?)|not (?:of )?the actual)`,
    'ships? (?:free )?from (?:our |the |a )?warehouse',
    '(?:symbol|beispiel|hersteller|katalog|archiv)(?:bild|bilder|foto|fotos)',
    '(?:bild|bilder|fotos?) (?:ist |sind )?(?:aus dem |vom |von der )(?:internet|netz|hersteller|webseite)',
  ],
  'paid-ahead': [
    '(?:deposit|down ?payment) (?:is )?(?:required|needed|requested|first)',
    'non-?refundable deposit',
    '(?:pay|payment|paid|money|funds|full amount) (?:(?:is|must be|due|required|needed|in full) ){0,2}(?:up ?front|in advance|before (?:pick ?-?up|viewing|shipping|you (?:come|see)))',
    `(?:pay|payment|payable|paid|accept|accepts|accepted|accepting|take|send|via|by|with) (?:[\\w,/]{1,12} ){0,3}${BY_CARD}`,
    `${BY_CARD} (?:only|accepted|preferred)`,
    'nur (?:gegen |per )?vorkasse|vorkasse (?:nötig|erforderlich)',
    'anzahlung (?:ist )?(?:nötig|erforderlich|vorab)|vorab (?:überweisen|bezahlen|zahlen)',
    '(?:gutscheinkarten?|krypto\\w{0,10}) (?:nur|bevorzugt)|(?:nur|per|mit) (?:gutscheinkarten?|krypto\\w{0,10})',
  ],
};

const TERMS = Object.entries(PHRASES).map(([term, phrases]) => ({
  term: term as SaleTerm,
  pattern: new RegExp(`(?<![\\p{L}\\d-])(?:${phrases.join('|')})(?![\\p{L}\\d-])`, 'giu'),
}));

/** Said before such words, they are denied, or a site's own warning: "no stock photos", "never pay in advance". */
const DENIED =
  /(?<!\p{L})(?:no|not|never|avoid|beware|without|don['’]?t|won['’]?t|keine?n?|nie|niemals|nicht|ohne)(?!\p{L})[^.!?\n]{0,30}$/iu;
const REACH = 40;

/** Each at the first place where it is said and not denied. */
export function readTerms(ad: string): Fact<SaleTerm>[] {
  // Signs of one length, so that the place found is the place in the ad.
  const text = ad.replace(/[\u00a0\u2007\u202f]/g, ' ');
  return TERMS.flatMap(({ term, pattern }): Fact<SaleTerm>[] => {
    for (const { index, 0: words } of text.matchAll(pattern)) {
      // "No test" denies nothing but the test.
      if (term !== 'no-test' && DENIED.test(text.slice(Math.max(0, index - REACH), index))) continue;
      return [{ value: term, basis: 'stated', rule: 'term', evidence: [{ start: index, end: index + words.length }] }];
    }
    return [];
  });
}
