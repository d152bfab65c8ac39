/** The place lists, read out of the extension's own files when they are first asked for. */
import { createContext } from 'preact';
import type { Gazetteer } from '../../src/places/gazetteer.ts';
import type { Packed } from '../../src/places/unpack.ts';

type List = () => Promise<{ readonly default: Packed }>;

const LISTS = {
  us: () => import('places:us'),
  de: () => import('places:de'),
  gb: () => import('places:gb'),
  ca: () => import('places:ca'),
  au: () => import('places:au'),
  at: () => import('places:at'),
  ch: () => import('places:ch'),
  ie: () => import('places:ie'),
  nz: () => import('places:nz'),
} satisfies Record<string, List>;

/** Where a buyer pays in a currency: which lists are read. */
const PAID_IN: Readonly<Record<string, readonly (keyof typeof LISTS)[]>> = {
  USD: ['us'],
  EUR: ['de', 'at', 'ie'],
  GBP: ['gb'],
  CAD: ['ca'],
  AUD: ['au'],
  CHF: ['ch'],
  NZD: ['nz'],
};

export const hasPlaces = (currency: string): boolean => PAID_IN[currency] !== undefined;

const read = new Map<string, Promise<Gazetteer>>();

/** The places where a currency is paid in; the same promise every time. Rejects when a file can't be read, and tries anew the next time. */
export function placesFor(currency: string): Promise<Gazetteer> {
  const known = read.get(currency);
  if (known !== undefined) return known;
  const loading = Promise.all([
    import('../../src/places/gazetteer.ts'),
    ...(PAID_IN[currency] ?? []).map((country) => LISTS[country]()),
  ]).then(([{ makeGazetteer }, ...lists]) => makeGazetteer(lists.map((list) => list.default)));
  read.set(currency, loading);
  loading.catch(() => read.delete(currency));
  return loading;
}

/** How lists are read; tests bring their own. */
export const PlaceLists = createContext<(currency: string) => Promise<Gazetteer>>(placesFor);
