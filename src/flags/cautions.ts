/** The usual cautions, each only where the goods of the ad make it matter. Common practice, no source, but where one is named. */
import type { Flag } from '../listing/evaluation.ts';
import { type Item, isPlate, type Kind, type Reading } from '../listing/reading.ts';
import { inPounds } from '../units/mass.ts';
import { type Message, message } from '../words/message.ts';
import { LIMITS } from './limits.ts';

export const CAUTIONS = [
  'straighten',
  'stands',
  'collars',
  'pins',
  'two-people',
  'lifting',
  'money',
  'meet',
  'ratings',
  'no-inspection',
] as const;
export type CautionKind = (typeof CAUTIONS)[number];

export interface Caution {
  readonly kind: CautionKind;
  readonly says: Message;
  /** A deal-breaker stands behind it: it can't be put away. */
  readonly bound: boolean;
}

/** A flag of these ids makes the caution matter; so does an item for which the test holds. */
interface Cause {
  readonly flags?: readonly string[];
  readonly items?: (item: Item) => boolean;
}

const isKind =
  (...kinds: readonly Kind[]) =>
  (item: Item): boolean =>
    kinds.includes(item.kind.value);

const isHeavy = (item: Item): boolean => item.unitWeight !== null && inPounds(item.unitWeight.value) > LIMITS.liftFromBoot.value;

const CAUSES: Readonly<Record<CautionKind, Cause>> = {
  straighten: { flags: ['bent', 'bow-doubtful'] },
  stands: { flags: ['single-stands'] },
  collars: { flags: ['bore-oversized'] },
  pins: { items: isKind('rack', 'stands', 'bench') },
  'two-people': { flags: ['welded'], items: isKind('rack') },
  lifting: { items: (item) => (isPlate(item.kind.value) || isKind('dumbbell', 'kettlebell')(item)) && isHeavy(item) },
  money: { flags: ['pay-ahead', 'stock-wording', 'no-test', 'bar-too-cheap'] },
  meet: { items: () => true },
  ratings: { flags: ['capacity-claim', 'low-capacity', 'rack-low-capacity', 'bench-low-capacity', 'rack-no-floor'] },
  'no-inspection': { items: isKind('bar', 'rack', 'stands', 'bench') },
};

/** Cautions for an ad, in the order in which they weigh. None where nothing is on offer. */
export function cautionsOf(reading: Reading, flags: readonly Flag[]): Caution[] {
  if (reading.wanted || !reading.aboutThisTrade || reading.items.length === 0) return [];
  return CAUTIONS.flatMap((kind): Caution[] => {
    const { flags: ids = [], items } = CAUSES[kind];
    const raised = flags.filter(({ id }) => ids.includes(id));
    if (raised.length === 0 && !(items && reading.items.some(items))) return [];
    const bound = raised.some(({ weight }) => weight === 'deal-breaker');
    return [{ kind, says: message(`caution_${kind.replaceAll('-', '_')}`), bound }];
  });
}
