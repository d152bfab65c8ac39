import { type Dictionary, dictionary } from '../../text/terms.ts';
import { type Cues, cues } from '../cues.ts';
import type { Language } from '../language.ts';
import { WAYS } from './condition-ways.ts';
import { CONDITIONS } from './conditions.ts';
import { CUES } from './cues.ts';
import { NOUNS } from './nouns.ts';
import { OTHER_GOODS } from './other-goods.ts';
import { MEASURES, PRICES, RELATIONS } from './senses.ts';
import { TOPICS } from './topics.ts';
import { COUNTS, MODIFIERS, MONEY, UNITS } from './words.ts';

/** "8,12 kg", "12,16 kg" are two whole sizes: nothing is weighed to such hundredths, and the second is the heavier (20,40 kg is 45 lb). */
const LISTED =
  '(?:[4568],1[0246]|1[0246],(?:16|18|2[0248]|24|3[026]|40)|(?:16|18|2[024]),(?:2[248]|3[026])|(?:16|24),40)(?= ?kg)';

/**
 * German: "1.200,50", "2,5", also "2.5"; Swiss "1'150". A point before three digits parts thousands ("1.200"), but not behind a nought
 * ("0.125"); a comma before three digits parts them only where money follows ("1,200 €"). In "25,20,15" commas part a list.
 */
const NUMBER = new RegExp(
  [
    String.raw`[1-9]\d{0,2}(?:\.\d{3}){1,4}(?!\d)(?:,\d{1,2}(?!\d))?`,
    String.raw`[1-9]\d{0,2}(?:'\d{3}){1,4}(?!\d)(?:[.,]\d{1,2}(?!\d))?`,
    String.raw`[1-9]\d{0,2}(?:,\d{3}){1,4}(?!\d)(?:\.\d{2}(?!\d))?(?= ?(?:€|eur|chf))`,
    String.raw`(?<!\d,)(?!${LISTED})\d{1,15},\d{1,3}(?!\d|,\d)`,
    String.raw`\d{1,15}(?:\.\d{1,3}(?!\d|\.\d))?`,
    String.raw`\.\d{1,3}`,
  ].join('|'),
  'y',
);

/** Value of digits that `NUMBER` matched. */
function amountOf(digits: string): number {
  const plain = digits.replaceAll("'", '');
  const parted = /^[1-9]\d{0,2}(?:\.\d{3})+(?:,\d+)?$/.test(plain) ? plain.replaceAll('.', '') : plain;
  const english = /^[1-9]\d{0,2}(?:,\d{3})+\.\d+$/.test(parted) ? parted.replaceAll(',', '') : parted;
  return Number(english.replace(',', '.'));
}

/** Built when the first German ad comes: most sessions meet none, and it takes longer than reading one. */
let built: Dictionary | undefined;
let topics: Dictionary | undefined;
let asked: Cues | undefined;

export const GERMAN: Language = {
  code: 'de',
  ways: WAYS,
  currency: 'EUR',
  number: NUMBER,
  valueOf: amountOf,
  noCents: /[.,] ?-{1,2}(?![\d-])/y,
  hyphenates: true,
  abbreviations: new Set(
    'ca inkl incl exkl excl zzgl max min mind fr sfr stk stck st ggf evtl bzw ggfs gebr div versch urspr std nr tel ges gesamt durchm orig usw vers u z d h zb'.split(
      ' ',
    ),
  ),
  get dictionary() {
    built ??= dictionary([NOUNS, OTHER_GOODS, COUNTS, UNITS, MONEY, MODIFIERS, PRICES, RELATIONS, MEASURES, CONDITIONS]);
    return built;
  },
  get cues() {
    asked ??= cues(CUES);
    return asked;
  },
  get topics() {
    topics ??= dictionary([TOPICS]);
    return topics;
  },
};
