/** What has to be fetched, whether it goes into the buyer's vehicle, and in which ways it can be brought home. */
import type { Item, Reading } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import { convert, inPounds, pounds as lb, type Weight } from '../units/mass.ts';
import { exponentOf } from '../units/money.ts';
import { type Message, message } from '../words/message.ts';

export interface Load {
  /** Pounds of everything on offer, as far as the ad says; bars at their usual weight. */
  readonly pounds: number;
  /** The longest piece that does not come apart, in mm; null when there is none. */
  readonly longestMm: number | null;
  /** A welded rack: it comes in one piece. */
  readonly welded: boolean;
}

/** One way to bring the goods home: so many trips, and the hire of a van in minor units. */
export interface Way {
  readonly times: number;
  readonly hire: number;
  /** Why there is more than one trip, or a van. */
  readonly why: Message | null;
}

export interface Ways {
  /** At least one. */
  readonly ways: readonly Way[];
  /** What does not fit although no van is counted. */
  readonly note: Message | null;
}

/** A full bar is about 2.2 m long and weighs 45 lb; a one-inch bar is 1.83 m at most. Common practice, no source. */
const FULL_BAR_MM = 2200;
const ONE_INCH_BAR_MM = 1830;
const FULL_BAR_LB = 45;

const isBar = (item: Item): boolean => item.kind.value === 'bar';

function lengthOf(item: Item): number | null {
  if (!isBar(item)) return null;
  return item.lengthMm?.value ?? (item.fits?.value === '25mm' ? ONE_INCH_BAR_MM : FULL_BAR_MM);
}

function poundsOf(item: Item): number {
  if (item.totalWeight !== null) return inPounds(item.totalWeight.value);
  const count = item.count?.value ?? 1;
  if (item.unitWeight !== null) return count * inPounds(item.unitWeight.value);
  return isBar(item) && item.fits?.value !== '25mm' ? count * FULL_BAR_LB : 0;
}

export function loadOf(reading: Reading): Load {
  const lengths = reading.items.map(lengthOf).filter((length) => length !== null);
  const pounds = reading.items.reduce((sum, item) => sum + poundsOf(item), 0);
  return {
    pounds: Math.max(pounds, reading.statedTotal === null ? 0 : inPounds(reading.statedTotal.value)),
    longestMm: lengths.length > 0 ? Math.max(...lengths) : null,
    welded: reading.items.some(
      (item) => item.kind.value === 'rack' && item.conditions.some((condition) => condition.value === 'welded'),
    ),
  };
}

const OWN: Way = { times: 1, hire: 0, why: null };

/**
 * The ways to bring a load home. What is too long, or welded together, takes a van where the buyer has named the price of one; what is
 * only too heavy may also go in several trips. A hired van is taken to carry everything at once.
 */
export function waysOf(load: Load, settings: Settings): Ways {
  const { van, longestMm, payloadLb, unit } = settings;
  const hire = van === null ? null : van.cost * 10 ** exponentOf(settings.currency);
  const tooLong = longestMm !== null && load.longestMm !== null && load.longestMm > longestMm;
  const times = payloadLb === null ? 1 : Math.max(1, Math.ceil(load.pounds / payloadLb));
  const weigh = (weight: number): { weight: Weight } => ({
    weight: { value: Math.round(convert(lb(weight), unit).value), unit },
  });
  const lengths = { length: { mm: load.longestMm ?? 0 }, most: { mm: longestMm ?? 0 } };
  const weights = { n: times, weight: weigh(load.pounds), payload: weigh(payloadLb ?? 0) };
  const own: Way = times > 1 ? { times, hire: 0, why: message('trip_several', weights) } : OWN;
  if (hire === null) return { ways: [own], note: tooLong ? message('trip_too_long', lengths) : null };
  if (tooLong) return { ways: [{ times: 1, hire, why: message('trip_van_long', lengths) }], note: null };
  if (load.welded) return { ways: [{ times: 1, hire, why: message('trip_van_welded') }], note: null };
  if (times > 1) return { ways: [own, { times: 1, hire, why: message('trip_van_heavy', weights) }], note: null };
  return { ways: [own], note: null };
}
