/** The rates that go into the calculation, with where they come from and which setting each is. */
import type { Step } from '../listing/evaluation.ts';
import type { CategoryRate, LearnedRate, RateCategory, RateCell, Settings } from '../listing/settings.ts';
import { exponentOf } from '../units/money.ts';
import { exactly, scale } from '../units/range.ts';
import { type Message, message } from '../words/message.ts';
import { isByWeight } from './categories.ts';
import type { Good } from './goods.ts';
import { cellOf, ordered, type Prices, parcelFeeOf, pricesOf } from './rates.ts';
import { line } from './step-line.ts';

/** Sources that have words of their own; a buyer's may be any words. */
const KNOWN_SOURCES = ['own', 'assumption', 'common-practice'];

/** A learned rate that rests on at least so much of its finds needs no word on what old ones and unusual prices count. */
const COUNTED = 0.75;

/** The words for where a cell comes from; null for a buyer's own words. */
function wordsFor(cell: RateCell | LearnedRate): Message | null {
  if ('finds' in cell) {
    const { finds: n, effective } = cell;
    return message(effective < COUNTED * n ? 'source_learned_less' : 'source_learned', { n });
  }
  return KNOWN_SOURCES.includes(cell.source) ? message(`source_${cell.source.replaceAll('-', '_')}`) : null;
}

/** Where a cell comes from, and when. */
export function sourceOf(cell: RateCell | LearnedRate | null): Message | null {
  if (cell === null) return null;
  const words = wordsFor(cell);
  const source = words === null ? cell.source : { message: words };
  return cell.date === ''
    ? message('step_rate_undated', { source })
    : message('step_rate_source', { source, date: { day: cell.date } });
}

/** Rates are the buyer's, in the buyer's currency. */
const own = (settings: Settings, more: Partial<Step> = {}): Partial<Step> => ({
  group: 'rates',
  currency: settings.currency,
  ...more,
});

const PARCEL_WORDS = {
  handling: 'step_parcel_handling',
  large: 'step_parcel_large',
  freight: 'step_parcel_freight',
} as const;

/** What a shop adds for long or heavy parcels, once for each category and class. */
export function feeSteps(goods: readonly Good[], settings: Settings): Step[] {
  const steps = new Map<string, Step>();
  for (const { item, category, prices } of goods) {
    const charged = category === null || prices === null ? null : parcelFeeOf(item, category, settings);
    if (category === null || charged === null) continue;
    const { parcel, fee } = charged;
    const label = message(PARCEL_WORDS[parcel], { category: { message: message(`category_${category.replaceAll('-', '_')}`) } });
    const id = `parcel-${parcel}:${category}`;
    steps.set(id, {
      id,
      label,
      result: fee,
      unit: 'money',
      basis: 'assumed',
      source: message('source_parcel'),
      ...own(settings),
    });
  }
  return [...steps.values()];
}

/** What a category costs used, new, and to send; the buyer may put other figures there. */
function categorySteps(category: RateCategory, prices: Prices, settings: Settings): Step[] {
  const unit = isByWeight(category) ? 'money-per-lb' : 'money';
  const params = { category: { message: message(`category_${category.replaceAll('-', '_')}`) } };
  const minor = 10 ** exponentOf(settings.currency);
  const ofCell = (id: string, which: keyof CategoryRate): Step[] => {
    const cell = cellOf(category, which, settings);
    if (cell === null) return [];
    const edit = own(settings, { edit: `rates.${category}.${which}`, ...('finds' in cell && { fromFinds: true as const }) });
    return [{ ...line(`${id}:${category}`, scale(ordered(cell), minor), unit, 'assumed', sourceOf(cell), params), ...edit }];
  };
  return [
    ...ofCell('used-rate', 'used'),
    ...ofCell('new-price', 'new'),
    ...ofCell('new-shipping', 'shipping'),
    {
      ...line(`new-rate:${category}`, prices.delivered, unit, 'worked-out', null, params),
      ...own(settings, { formula: message('formula_new_rate') }),
    },
  ];
}

/** The rates that went in, each category once, with date and source. */
export function rateSteps(goods: readonly Good[], settings: Settings): Step[] {
  const steps = new Map<RateCategory, Step[]>();
  for (const { category } of goods) {
    const prices = category === null || steps.has(category) ? null : pricesOf(category, settings);
    if (category !== null && prices !== null) steps.set(category, categorySteps(category, prices, settings));
  }
  if (steps.size === 0) return [];
  const tax = exactly(settings.salesTax);
  return [
    { ...line('sales-tax', tax, 'fraction', 'assumed'), ...own(settings, { edit: 'salesTax' }) },
    ...[...steps.values()].flat(),
  ];
}
