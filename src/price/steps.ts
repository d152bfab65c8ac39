/** The calculation line by line, for "How was this worked out?". */
import type { Step, Worth } from '../listing/evaluation.ts';
import type { Basis } from '../listing/reading.ts';
import type { LearnedRate, RateCategory, RateCell, Settings } from '../listing/settings.ts';
import { exactly, type Range } from '../units/range.ts';
import { type Message, message } from '../words/message.ts';
import type { Price } from './asking-price.ts';
import { isByWeight } from './categories.ts';
import { type Good, isKeptPlate } from './goods.ts';
import { cellOf, parcelFeeOf, pricesOf } from './rates.ts';

type Unit = Step['unit'];

const line = (
  id: string,
  result: Range,
  unit: Unit,
  basis: Basis | 'worked-out',
  source: Message | null = null,
  params?: Message['params'],
): Step => ({ id, label: message(`step_${id.split(':')[0]?.replaceAll('-', '_')}`, params), result, unit, basis, source });

/** Sources that have words of their own; a buyer's may be any words. */
const KNOWN_SOURCES = ['own', 'assumption', 'common-practice'];

/** The words for where a cell comes from; null for a buyer's own words. */
function wordsFor(cell: RateCell | LearnedRate): Message | null {
  if ('finds' in cell) return message('source_learned', { n: cell.finds, effective: Math.round(cell.effective * 10) / 10 });
  return KNOWN_SOURCES.includes(cell.source) ? message(`source_${cell.source.replaceAll('-', '_')}`) : null;
}

function sourceOf(cell: RateCell | LearnedRate | null): Message | null {
  if (cell === null) return null;
  const words = wordsFor(cell);
  const source = words === null ? cell.source : { message: words };
  return cell.date === '' ? message('step_rate_undated', { source }) : message('step_rate_source', { source, date: cell.date });
}

const PARCEL_WORDS = {
  handling: 'step_parcel_handling',
  large: 'step_parcel_large',
  freight: 'step_parcel_freight',
} as const;

/** What a shop adds for long or heavy parcels, once for each category and class. */
function feeSteps(goods: readonly Good[], settings: Settings): Step[] {
  const steps = new Map<string, Step>();
  for (const { item, category, prices } of goods) {
    const charged = category === null || prices === null ? null : parcelFeeOf(item, category, settings);
    if (category === null || charged === null) continue;
    const { parcel, fee } = charged;
    const label = message(PARCEL_WORDS[parcel], { category: { message: message(`category_${category.replaceAll('-', '_')}`) } });
    const id = `parcel-${parcel}:${category}`;
    steps.set(id, { id, label, result: fee, unit: 'money', basis: 'assumed', source: message('source_parcel') });
  }
  return [...steps.values()];
}

/** The rates that went in, each category once, with date and source. */
function rateSteps(goods: readonly Good[], settings: Settings): Step[] {
  const seen = new Set<RateCategory>();
  const steps: Step[] = [];
  for (const { category } of goods) {
    const prices = category === null || seen.has(category) ? null : pricesOf(category, settings);
    if (category === null || prices === null) continue;
    seen.add(category);
    const unit: Unit = isByWeight(category) ? 'money-per-lb' : 'money';
    const params = { category: { message: message(`category_${category.replaceAll('-', '_')}`) } };
    steps.push(line(`used-rate:${category}`, prices.used, unit, 'assumed', sourceOf(cellOf(category, 'used', settings)), params));
    steps.push(
      line(`new-rate:${category}`, prices.delivered, unit, 'assumed', sourceOf(cellOf(category, 'new', settings)), params),
    );
  }
  return steps;
}

/** `trip` are the steps of the drive, none when the distance isn't known. */
export function stepsOf(
  worth: Omit<Worth, 'steps'>,
  goods: readonly Good[],
  price: Price | null,
  trip: readonly Step[],
  settings: Settings,
): Step[] {
  const steps: Step[] = [];
  if (goods.some((good) => good.plate !== null)) {
    const weighed = goods.some(({ item }) => item.weighed !== null);
    steps.push(line('offered', worth.offered, 'lb', 'worked-out'));
    steps.push(line('true-weight', worth.trueWeight, 'lb', weighed ? 'measured' : 'assumed', message('step_true_weight_source')));
    steps.push(line('usable', worth.usable, 'lb', 'worked-out'));
  }
  if (price !== null) steps.push(line('price', price.range, 'money', 'stated'));
  steps.push(...trip);
  if (worth.allIn !== null) steps.push(line('all-in', worth.allIn, 'money', 'worked-out'));
  const plates = worth.split.filter((_, index) => isKeptPlate(goods[index]));
  if (plates.length > 0 && plates.length < worth.split.length) {
    const share = plates.reduce((sum, part) => sum + part.allIn.minor, 0);
    steps.push(line('plates-share', exactly(share), 'money', 'worked-out'));
  }
  steps.push(...rateSteps(goods, settings), ...feeSteps(goods, settings));
  if (worth.goingWorth !== null) steps.push(line('going-worth', worth.goingWorth, 'money', 'worked-out'));
  if (worth.newWorth !== null) steps.push(line('new-worth', worth.newWorth, 'money', 'worked-out'));
  if (worth.saving !== null) steps.push(line('saving', exactly(worth.saving.minor), 'money', 'worked-out'));
  if (worth.walkAway !== null) steps.push(line('walk-away', exactly(worth.walkAway.minor), 'money', 'worked-out'));
  return steps;
}
