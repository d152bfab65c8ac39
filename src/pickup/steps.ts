/** What to check on a seller's driveway, in the order in which one does it: quick looks that may end the visit first, lifting last. */
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

const DONE_TO: Readonly<Record<PickupStepId, (item: Item) => boolean>> = {
  count: () => true,
  straight: isKind('bar'),
  spin: isKind('bar', 'curl-bar', 'hex-bar'),
  shaft: isKind('bar'),
  bore: plates,
  cracks: (item) => plates(item) || isKind('dumbbell', 'kettlebell')(item),
  frame: isKind('rack', 'stands', 'storage'),
  pins: isKind('rack', 'stands', 'bench'),
  bench: isKind('bench'),
  collars: isKind('collars'),
  weigh: plates,
};

/** The steps that the goods of an ad call for. What the buyer counts for nothing is not looked at. */
export function pickupSteps({ items }: Pick<Reading, 'items'>): PickupStep[] {
  const wanted = items.filter((item) => isKept(item) || item.plan?.value === 'sell');
  return STEP_IDS.flatMap((id) => {
    const done = wanted.filter(DONE_TO[id]);
    return done.length > 0 ? [{ id, items: done }] : [];
  });
}

export const TOOLS = [
  'calipers',
  'tape',
  'scale',
  'string',
  'chalk',
  'collars',
  'wrench',
  'straps',
  'gloves',
  'help',
  'cash',
] as const;
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

export const LOADING = ['strap', 'low', 'bar', 'payload'] as const;

/** Cautions for the boot, by what is loaded: plates lie flat and low, a bar must not come through to the front. Common practice, no source. */
export const loadingCautions = ({ items }: Pick<Reading, 'items'>): (typeof LOADING)[number][] =>
  LOADING.filter((one) => {
    if (one === 'low' || one === 'payload') return items.some((item) => plates(item) || isKind('dumbbell', 'kettlebell')(item));
    return one === 'strap' ? items.length > 0 : items.some(isKind('bar', 'curl-bar', 'rack', 'stands'));
  });
