/** The calculation line by line, for "How was this worked out?". */
import type { Step, Worth } from '../listing/evaluation.ts';
import type { Settings } from '../listing/settings.ts';
import { inPounds } from '../units/mass.ts';
import { exactly, type Range, scale } from '../units/range.ts';
import { message } from '../words/message.ts';
import type { Price } from './asking-price.ts';
import { type Good, isKeptPlate } from './goods.ts';
import { feeSteps, rateSteps } from './rate-steps.ts';
import { line } from './step-line.ts';
import { ceilingOf } from './walk-away.ts';

function weightSteps(worth: Omit<Worth, 'steps'>, goods: readonly Good[], settings: Settings): Step[] {
  if (!goods.some((good) => good.plate !== null)) return [];
  const weighed = goods.some(({ item }) => item.weighed !== null);
  const sleeve = exactly(settings.sleeveMm);
  return [
    { ...line('offered', worth.offered, 'lb', 'worked-out'), group: 'weight' },
    line('true-weight', worth.trueWeight, 'lb', weighed ? 'measured' : 'assumed', message('step_true_weight_source')),
    { ...line('sleeve', sleeve, 'mm', 'assumed'), edit: 'sleeveMm' },
    { ...line('usable', worth.usable, 'lb', 'worked-out'), formula: message('formula_usable') },
  ];
}

/** What everything costs, the plates' part of it, and a usable pound. */
function costSteps(worth: Omit<Worth, 'steps'>, goods: readonly Good[], price: Price | null, drive: Range | null): Step[] {
  const { allIn, perUsablePound, currency } = worth;
  if (allIn === null || price === null) return [];
  const money = ({ likely }: Range) => ({ money: { minor: Math.round(likely), currency } });
  const driven = drive !== null && drive.likely > 0;
  const formula = driven
    ? message('formula_all_in', { price: money(price.range), drive: money(drive) })
    : message('formula_price_alone');
  const steps: Step[] = [{ ...line('all-in', allIn, 'money', 'worked-out'), group: 'cost', formula }];
  const plates = worth.split.filter((_, index) => isKeptPlate(goods[index]));
  if (plates.length > 0 && plates.length < worth.split.length) {
    const share = plates.reduce((sum, part) => sum + part.allIn.minor, 0);
    steps.push(line('plates-share', exactly(share), 'money', 'worked-out'));
  }
  if (perUsablePound !== null) {
    const perPound = perUsablePound.per === 'kg' ? scale(perUsablePound, 1 / inPounds({ value: 1, unit: 'kg' })) : perUsablePound;
    steps.push({ ...line('per-usable', perPound, 'money-per-lb', 'worked-out'), formula: message('formula_per_usable') });
  }
  return steps;
}

/** What is kept at most and why: the margin, what the goods are worth paying for, and that less the drive. */
function mostSteps(worth: Omit<Worth, 'steps'>, goods: readonly Good[], settings: Settings): Step[] {
  if (worth.walkAway === null) return [];
  return [
    { ...line('margin', exactly(settings.margin), 'fraction', 'assumed'), group: 'most', edit: 'margin' },
    { ...line('ceiling', exactly(ceilingOf(goods)), 'money', 'worked-out'), formula: message('formula_ceiling') },
    { ...line('walk-away', exactly(worth.walkAway.minor), 'money', 'worked-out'), formula: message('formula_walk_away') },
  ];
}

/** What the goods are worth used and new, and what is saved. */
function worthSteps({ goingWorth, newWorth, saving }: Omit<Worth, 'steps'>): Step[] {
  const steps = [
    goingWorth && { ...line('going-worth', goingWorth, 'money', 'worked-out'), formula: message('formula_going_worth') },
    newWorth && { ...line('new-worth', newWorth, 'money', 'worked-out'), formula: message('formula_new_worth') },
    saving && { ...line('saving', exactly(saving.minor), 'money', 'worked-out'), formula: message('formula_saving') },
  ];
  return steps.filter((step) => step !== null).map((step) => ({ ...step, group: 'worth' }));
}

/** `trip` are the steps of the drive, and `drive` its cost in minor units, null when the distance isn't known. */
export function stepsOf(
  worth: Omit<Worth, 'steps'>,
  goods: readonly Good[],
  price: Price | null,
  trip: readonly Step[],
  drive: Range | null,
  settings: Settings,
): Step[] {
  if (goods.length === 0) return [];
  return [
    ...weightSteps(worth, goods, settings),
    ...(price === null ? [] : [{ ...line('price', price.range, 'money', 'stated'), group: 'price' as const }]),
    ...trip,
    ...costSteps(worth, goods, price, drive),
    ...rateSteps(goods, settings),
    ...feeSteps(goods, settings),
    ...worthSteps(worth),
    ...mostSteps(worth, goods, settings),
  ];
}
