/**
 * What things cost until the buyer says otherwise: US dollars, per pound for weight categories, per piece for the others.
 * Shipping is that of an ordinary parcel: fees for long and heavy ones come on top (shipping.ts). Used iron, bars and racks follow the trade's rules of thumb; every other figure is an assumption to be edited.
 */
import type { CategoryRate, RateCategory, RateCell } from '../listing/settings.ts';

export const DEFAULT_CURRENCY = 'USD';
const DATE = '2026-01';
const ASSUMPTION = 'assumption';
const PRACTICE = 'common-practice';

const cell = (low: number, likely: number, high: number, source: string): RateCell => ({ low, likely, high, source, date: DATE });
type Numbers = readonly [number, number, number];
const assumed = (used: Numbers, fresh: Numbers, shipping: Numbers): CategoryRate => ({
  used: cell(...used, ASSUMPTION),
  new: cell(...fresh, ASSUMPTION),
  shipping: cell(...shipping, ASSUMPTION),
});

export const DEFAULT_RATES: Readonly<Record<RateCategory, CategoryRate>> = {
  // $0.50 to $1.00 a pound used, about twice that new, shipping on top.
  iron: {
    used: cell(0.5, 0.75, 1, PRACTICE),
    new: cell(1.1, 1.5, 2, PRACTICE),
    shipping: cell(0.25, 0.45, 0.7, ASSUMPTION),
  },
  machined: assumed([0.7, 1, 1.4], [1.7, 2.1, 2.8], [0.25, 0.45, 0.7]),
  calibrated: assumed([1.5, 2.2, 3], [3, 4, 5.5], [0.25, 0.45, 0.7]),
  'rubber-coated': assumed([0.55, 0.85, 1.2], [1.4, 1.8, 2.5], [0.25, 0.45, 0.7]),
  // Dear even used, and rarely found.
  bumper: assumed([1, 1.4, 1.9], [1.7, 2.3, 3.2], [0.25, 0.45, 0.7]),
  micro: assumed([2, 3.5, 6], [4, 7, 12], [0.5, 1, 2]),
  'one-inch-plate': assumed([0.25, 0.45, 0.7], [0.9, 1.3, 1.8], [0.25, 0.45, 0.7]),
  dumbbell: assumed([0.7, 1, 1.4], [1.4, 1.9, 2.6], [0.25, 0.45, 0.7]),
  kettlebell: assumed([0.8, 1.1, 1.6], [1.5, 2, 3], [0.25, 0.45, 0.7]),
  // A good bar is about $300, used or new; far under that is luck or junk.
  bar: {
    used: cell(80, 160, 300, PRACTICE),
    new: cell(260, 300, 350, PRACTICE),
    shipping: cell(12, 20, 35, ASSUMPTION),
  },
  'curl-bar': assumed([20, 35, 60], [50, 75, 120], [5, 8, 14]),
  'hex-bar': assumed([50, 90, 150], [120, 170, 250], [15, 25, 40]),
  'one-inch-bar': assumed([10, 20, 35], [35, 50, 70], [4, 6, 12]),
  // A very good power rack is $1,000 to $1,200 new, often less used.
  rack: {
    used: cell(250, 500, 850, ASSUMPTION),
    new: cell(1000, 1100, 1200, PRACTICE),
    shipping: cell(100, 150, 250, ASSUMPTION),
  },
  // One of the two that make a pair.
  stands: assumed([15, 30, 55], [50, 75, 110], [15, 22, 35]),
  bench: assumed([40, 75, 130], [120, 180, 280], [30, 45, 70]),
  collars: assumed([3, 6, 12], [8, 12, 20], [2, 3, 5]),
  storage: assumed([25, 45, 80], [70, 110, 160], [25, 40, 60]),
};
