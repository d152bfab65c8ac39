/** Racks and stands: what catches the bar, what keeps them up, and whether they fit the room and the car. */
import type { Span } from '../listing/page-listing.ts';
import type { Condition, Item, Kind, Reading } from '../listing/reading.ts';
import { held } from './limits.ts';
import { BOLTED_DOWN, CATCHES, CATCHES_MISSING, framePart, isOfCatches, NO_FLOOR, saidOf } from './rack-words.ts';
import { type ItemRule, onCondition, sourceOf, stated } from './rule.ts';

const FRAMES: readonly Kind[] = ['rack', 'stands'];

/** Flags that a word of the ad raises by itself. */
const BY_WORD: readonly (readonly [id: string, condition: Condition, kinds: readonly Kind[], weight: ItemRule['weight']])[] = [
  ['rack-wobbly', 'wobbly', FRAMES, 'caution'],
  ['storage-wobbly', 'wobbly', ['storage'], 'caution'],
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

const CATCHING: readonly Kind[] = [...FRAMES, 'bench'];
const BROKEN: readonly Condition[] = ['bent', 'cracked'];

/**
 * What catches or holds the bar is missing, bent or broken: as the buyer found it, by the condition in a sentence that names it, or in so
 * many words.
 */
function missingCatches(item: Item, reading: Reading): readonly Span[] | null {
  const found = stated(item, 'missing-catches');
  // Of a bench a pin may be the one that sets its back.
  if (found !== null || item.kind.value === 'bench') return found?.evidence ?? null;
  for (const condition of BROKEN) {
    const broken = stated(item, condition);
    if (broken !== null && framePart(reading, broken.evidence) === 'catches') return broken.evidence;
  }
  const missing = stated(item, 'missing-parts');
  if (missing !== null && isOfCatches(reading, missing.evidence)) return missing.evidence;
  const said = saidOf(item, CATCHES_MISSING, reading);
  return said === null ? null : [said];
}

const pinsMissing: ItemRule = {
  id: 'rack-pins-missing',
  kinds: CATCHING,
  weight: 'caution',
  source: 'common-practice',
  test(item, { reading }) {
    const evidence = missingCatches(item, reading);
    return evidence === null ? null : { evidence };
  },
};

const partsMissing: ItemRule = {
  id: 'rack-parts-missing',
  kinds: CATCHING,
  weight: 'caution',
  source: 'common-practice',
  test(item, { reading }) {
    const missing = stated(item, 'missing-parts');
    return missing === null || missingCatches(item, reading) !== null ? null : { evidence: missing.evidence };
  },
};

/** A rack among dumbbells alone is one that they lie on. */
const holdsDumbbells = ({ items }: Reading): boolean =>
  items.some(({ kind }) => kind.value === 'dumbbell') &&
  items.every(({ kind }) => kind.value === 'dumbbell' || kind.value === 'kettlebell' || kind.value === 'rack');

/** Nothing is said of pins or hooks: most racks have them, and those that lost them are sold cheap. */
const pinsUnsaid: ItemRule = {
  id: 'rack-pins-unsaid',
  kinds: ['rack'],
  weight: 'note',
  source: 'common-practice',
  test: (item, { reading }) =>
    CATCHES.test(reading.text) || stated(item, 'missing-parts') !== null || holdsDumbbells(reading)
      ? null
      : { evidence: item.evidence },
};

const noFloor: ItemRule = {
  id: 'rack-no-floor',
  kinds: FRAMES,
  weight: 'caution',
  source: 'iso',
  test(item, { reading }) {
    const loose = saidOf(item, NO_FLOOR, reading, true);
    if (loose !== null) return { evidence: [loose] };
    const bolted = saidOf(item, BOLTED_DOWN, reading);
    return bolted === null ? null : { weight: 'note', says: 'flag_rack_no_floor_bolted', evidence: [bolted] };
  },
};

const ceiling: ItemRule = {
  id: 'rack-too-tall',
  kinds: FRAMES,
  weight: 'deal-breaker',
  source: 'ceiling',
  test(item, context) {
    const { ceilingMm } = context.settings;
    const room = held('ceilingRoom', context.settings);
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

export const rackRules: readonly ItemRule[] = [singleStands, pinsMissing, partsMissing, noFloor, ceiling, ...byWord, pinsUnsaid];
