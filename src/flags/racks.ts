/** Racks and stands: what catches the bar, what keeps them up, and whether they fit the room and the car. */
import type { Condition, Kind } from '../listing/reading.ts';
import { type Finding, held, type ItemRule, onCondition, sourceOf } from './rule.ts';

const FRAMES: readonly Kind[] = ['rack', 'stands'];

/** Flags that a word of the ad raises by itself. */
const BY_WORD: readonly (readonly [id: string, condition: Condition, kinds: readonly Kind[], weight: ItemRule['weight']])[] = [
  ['rack-parts-missing', 'missing-parts', FRAMES, 'caution'],
  ['rack-wobbly', 'wobbly', FRAMES, 'caution'],
  ['home-made', 'home-made', [...FRAMES, 'bench', 'bar', 'plate'], 'caution'],
  ['welded', 'welded', ['rack'], 'note'],
  ['bolted', 'bolted', ['rack'], 'note'],
];
const byWord = BY_WORD.map(
  ([id, condition, kinds, weight]): ItemRule => ({ id, kinds, weight, source: 'common-practice', test: onCondition(condition) }),
);

const singleStands: ItemRule = {
  id: 'single-stands',
  kinds: ['stands'],
  weight: 'caution',
  source: 'common-practice',
  test: (item) => ({ evidence: item.kind.evidence }),
};

/** Words for what catches and what holds the bar. */
const CATCHES =
  /\b(?:pins?|safet(?:y|ies)|spotters?|j-?\s?(?:hooks?|cups?)|hooks?|cups|catch(?:es|ers?)?|sicherheits\w*|ablagen?|ablage\w+|haken|bolzen|pin)\b/i;

/** Nothing is said of pins or hooks: most racks have them, and those that lost them are sold cheap. */
const pinsUnsaid: ItemRule = {
  id: 'rack-pins-unsaid',
  kinds: ['rack'],
  weight: 'note',
  source: 'common-practice',
  test: (item, { reading }) =>
    CATCHES.test(reading.text) || item.conditions.some(({ value }) => value === 'missing-parts')
      ? null
      : { evidence: item.evidence },
};

/** Words for a rack that does not stand by itself. */
const HELD_BY_THE_ROOM =
  /\b(?:wall[- ]?mount(?:s|ed)?|mounts? to (?:the |a )?wall|fold(?:s|ing)?[- ](?:back |flat |up )?(?:in|to|against)?[- ]?(?:the )?wall|bolt(?:s|ed)?(?: in)?(?: down)? (?:in)?to (?:the |a )?(?:floor|wall|concrete|ground)|(?:no|without a?|missing the) (?:base|floor frame|cross-?\s?members?|bottom frame)|wandmontage|zur wandbefestigung|im boden verschraubt|ohne bodenrahmen)\b/i;

const noFloor: ItemRule = {
  id: 'rack-no-floor',
  kinds: FRAMES,
  weight: 'caution',
  source: 'iso',
  test(_item, { reading }): Finding | null {
    const found = HELD_BY_THE_ROOM.exec(reading.text);
    return found === null ? null : { evidence: [{ start: found.index, end: found.index + found[0].length }] };
  },
};

const ceiling: ItemRule = {
  id: 'rack-too-tall',
  kinds: FRAMES,
  weight: 'deal-breaker',
  source: 'geometry',
  test(item, context) {
    const { ceilingMm } = context.settings;
    const room = held('ceilingRoom', context);
    if (ceilingMm === null || item.heightMm === null || item.heightMm.value <= ceilingMm - room.value) return null;
    const tight = item.heightMm.value <= ceilingMm;
    return {
      ...(tight ? { weight: 'caution', says: 'flag_rack_too_tall_tight', ...sourceOf(room) } : {}),
      found: { height: { mm: item.heightMm.value } },
      limit: { ceiling: { mm: ceilingMm } },
      evidence: item.heightMm.evidence,
    };
  },
};

export const rackRules: readonly ItemRule[] = [singleStands, noFloor, ceiling, ...byWord, pinsUnsaid];
