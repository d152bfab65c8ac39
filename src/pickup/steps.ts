/** What to check on a seller's driveway, in the order in which one does it: quick looks that may end the visit first, lifting last. */
import { uprightsOf } from '../flags/benches.ts';
import { type Item, isKept, isPlate, type Kind, type Reading } from '../listing/reading.ts';

/** In the order in which they are done. */
export const STEP_IDS = [
  'count',
  'straight',
  'spin',
  'shaft',
  'bore',
  'cracks',
  'frame',
  'pins',
  'hooks',
  'bench',
  'collars',
  'weigh',
] as const;
export type PickupStepId = (typeof STEP_IDS)[number];

export interface PickupStep {
  readonly id: PickupStepId;
  /** What it is done to; never empty. */
  readonly items: readonly Item[];
}

const isKind =
  (...kinds: readonly Kind[]) =>
  ({ kind }: Item): boolean =>
    kinds.includes(kind.value);

const plates = ({ kind }: Item): boolean => isPlate(kind.value);

type Goods = Pick<Reading, 'items' | 'text'>;

const DONE_TO: Readonly<Record<PickupStepId, (item: Item, reading: Goods) => boolean>> = {
  count: () => true,
  straight: isKind('bar'),
  // A hex bar's sleeves are fixed to its frame as a rule.
  spin: isKind('bar', 'curl-bar'),
  shaft: isKind('bar'),
  bore: plates,
  cracks: (item) => plates(item) || isKind('dumbbell', 'kettlebell', 'bar', 'curl-bar', 'hex-bar')(item),
  frame: isKind('rack', 'stands', 'storage'),
  pins: isKind('rack'),
  hooks: (item, reading) => isKind('stands')(item) || (isKind('bench')(item) && uprightsOf(item, reading) !== null),
  bench: isKind('bench'),
  collars: isKind('collars'),
  weigh: plates,
};

/** The steps that the goods of an ad call for. What the buyer counts for nothing is not looked at. */
export function pickupSteps(reading: Goods): PickupStep[] {
  const wanted = reading.items.filter((item) => isKept(item) || item.plan?.value === 'sell');
  return STEP_IDS.flatMap((id) => {
    const done = wanted.filter((item) => DONE_TO[id](item, reading));
    return done.length > 0 ? [{ id, items: done }] : [];
  });
}

const TOOLS = ['calipers', 'tape', 'scale', 'string', 'chalk', 'collars', 'wrench', 'straps', 'gloves', 'help', 'cash'] as const;
export type Tool = (typeof TOOLS)[number];

const NEEDED: Readonly<Partial<Record<Tool, readonly PickupStepId[]>>> = {
  calipers: ['shaft', 'bore'],
  tape: ['straight', 'frame', 'bench'],
  scale: ['weigh'],
  string: ['straight'],
  chalk: ['weigh'],
  collars: ['spin', 'weigh'],
  wrench: ['frame'],
  help: ['frame'],
};

/** What to bring for these steps, in the order in which it is used. Straps, gloves and cash always. */
export function toolsFor(steps: readonly PickupStep[]): Tool[] {
  if (steps.length === 0) return [];
  return TOOLS.filter((tool) => NEEDED[tool]?.some((id) => steps.some((step) => step.id === id)) ?? true);
}

const LOADING = ['strap', 'low', 'bar', 'payload'] as const;

/** Cautions for the boot, by what is loaded: plates lie flat and low, a bar must not come through to the front. Common practice, no source. */
export const loadingCautions = ({ items }: Pick<Reading, 'items'>): (typeof LOADING)[number][] =>
  LOADING.filter((one) => {
    if (one === 'low' || one === 'payload') return items.some((item) => plates(item) || isKind('dumbbell', 'kettlebell')(item));
    return one === 'strap' ? items.length > 0 : items.some(isKind('bar', 'curl-bar', 'rack', 'stands'));
  });
