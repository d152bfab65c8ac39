import { dictionary } from '../../text/terms.ts';
import { cues } from '../cues.ts';
import type { Language } from '../language.ts';
import { AROUND, PARTS, THINGS } from './around-conditions.ts';
import { WAYS } from './condition-ways.ts';
import { CONDITIONS } from './conditions.ts';
import { CUES } from './cues.ts';
import { NOUNS } from './nouns.ts';
import { TOPICS } from './other-topics.ts';
import { OTHER_TRADES } from './other-trades.ts';
import { MEASURES, PRICES, RELATIONS } from './senses.ts';
import { HAGGLING, WHOLES } from './whole.ts';
import { COUNTS, MODIFIERS, MONEY, UNITS } from './words.ts';

/** English: "1,200.50"; a comma before one or two digits is a decimal sign only where a European unit follows ("2,5 kg", "10,50 €"). */
export const ENGLISH: Language = {
  code: 'en',
  ways: WAYS,
  cues: cues(CUES),
  currency: 'USD',
  number:
    /\d{1,3}(?:\.\d{3}){1,3}(?:,\d{2}(?!\d)|(?=,-)|(?= ?(?:€|eur)))|(?<=€ ?)\d{1,3}(?:\.\d{3})+(?!\d)|(?<=€ ?)\d{1,5},\d{2}(?!\d)|\d{1,3}(?:,\d{3}){1,4}(?!\d)(?:\.\d{1,6})?|\d{1,15},\d{1,2}(?= ?(?:kg|kilo|mm|cm|m(?![a-z])|€|eur))|\d{1,15}(?:\.\d{1,6})?|\.\d{1,6}/y,
  valueOf: (digits, { before, behind }) => {
    const european = before.endsWith('€') || /^(?:,-| ?€| ?eur)/.test(behind) || digits.includes(',');
    if (european && /^\d{1,3}(?:\.\d{3})+(?:,\d{2})?$/.test(digits)) return Number(digits.replaceAll('.', '').replace(',', '.'));
    return Number(/,\d{1,2}$/.test(digits) ? digits.replace(',', '.') : digits.replaceAll(',', ''));
  },
  dictionary: dictionary([
    NOUNS,
    COUNTS,
    UNITS,
    MONEY,
    MODIFIERS,
    PRICES,
    WHOLES,
    HAGGLING,
    RELATIONS,
    MEASURES,
    CONDITIONS,
    PARTS,
    AROUND,
    THINGS,
    OTHER_TRADES,
  ]),
  topics: dictionary([TOPICS]),
};
