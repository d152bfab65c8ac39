/**
 * Cracks and bends in what must hold: frames, bars, dumbbells, kettlebells. What is cracked there gives way under load and without
 * warning, so nothing of it is worth paying for. Common practice, no source.
 */
import { type Condition, type Item, type Kind, OF_ONE_PIECE } from '../listing/reading.ts';
import { framePart, isOfCasing } from './rack-words.ts';
import { type Context, type Finding, type ItemRule, onCondition, stated } from './rule.ts';

/** A frame that is cracked or bent. Where the ad says it of an attachment, that is a reason to look; pins and hooks have a flag of their own. */
const onFrame =
  (condition: Condition, id: string) =>
  (item: Item, { reading }: Pick<Context, 'reading'>): Finding | null => {
    const fact = stated(item, condition);
    if (fact === null) return null;
    const { evidence } = fact;
    const part = framePart(reading, evidence);
    if (part === 'catches') return null;
    if (part === 'attachment') return { weight: 'caution', says: `flag_${id}_attachment`, evidence };
    if (item.kind.value !== 'storage') return { evidence };
    return { weight: condition === 'bent' ? 'caution' : 'deal-breaker', says: `flag_${id}_storage`, evidence };
  };

/** A bar or a weight that is cracked, and not only what it is coated with or lies in. */
const onPiece =
  (id: string) =>
  (item: Item, { reading }: Pick<Context, 'reading'>): Finding | null => {
    const fact = stated(item, 'cracked');
    if (fact === null) return null;
    const { evidence } = fact;
    return isOfCasing(reading, evidence) ? { weight: 'caution', says: `flag_${id}_casing`, evidence } : { evidence };
  };

/** Of several the ad may speak of one: that one is scrap, the others are not. */
const onOneOf =
  (id: string) =>
  (item: Item, context: Pick<Context, 'reading'>): Finding | null => {
    const found = onPiece(id)(item, context);
    const ofOne = stated(item, 'cracked')?.rule === OF_ONE_PIECE;
    return found === null || found.weight !== undefined || !ofOne
      ? found
      : { ...found, weight: 'caution', says: `flag_${id}_piece` };
  };

const FRAMES: readonly Kind[] = ['rack', 'stands', 'bench', 'storage'];
const BARS: readonly Kind[] = ['bar', 'curl-bar', 'hex-bar'];
const WEIGHTS: readonly Kind[] = ['dumbbell', 'kettlebell'];

const RULES: readonly Omit<ItemRule, 'source'>[] = [
  { id: 'cracked-frame', kinds: FRAMES, weight: 'deal-breaker', test: onFrame('cracked', 'cracked_frame') },
  { id: 'bent-frame', kinds: FRAMES, weight: 'deal-breaker', test: onFrame('bent', 'bent_frame') },
  { id: 'cracked-bar', kinds: BARS, weight: 'deal-breaker', test: onOneOf('cracked_bar') },
  { id: 'cracked-weight', kinds: WEIGHTS, weight: 'deal-breaker', test: onOneOf('cracked_weight') },
  // A handle that is bent has been dropped or overloaded, and what it holds may come off.
  { id: 'bent-handle', kinds: WEIGHTS, weight: 'deal-breaker', test: onCondition('bent') },
  // What a buyer finds at the door: the head moves on the handle.
  { id: 'loose-head', kinds: ['dumbbell'], weight: 'caution', test: onCondition('wobbly') },
  { id: 'broken-collars', kinds: ['collars'], weight: 'deal-breaker', test: onCondition('cracked') },
];

export const breakRules: readonly ItemRule[] = RULES.map((rule) => ({ ...rule, source: 'common-practice' }));
