/** schema.org products and offers in a page's JSON-LD. Pages write it badly: what can be mended is read, the rest is left. */
import type { Offer } from '../../../src/listing/page-listing.ts';
import { MAX_DATA_CHARACTERS, MAX_DATA_NODES, MAX_OFFERS } from './limits.ts';
import { own } from './own.ts';
import { describe, isEmptyOffer, isOfferType, isProductType, type Values } from './structured-types.ts';

type Thing = Readonly<Record<string, unknown>>;

const isThing = (value: unknown): value is Thing => typeof value === 'object' && value !== null && !Array.isArray(value);
/** Own properties only: a page can't reach an object's prototype by a key's name. */
const get = (thing: Thing, key: string): unknown => (Object.hasOwn(thing, key) ? thing[key] : undefined);
const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : value === undefined ? [] : [value]);

/** Nothing that is meant lies deeper in itself than this. */
const DEEPEST = 20;

function textOf(value: unknown, depth = 0): string | null {
  if (depth > DEEPEST) return null;
  if (typeof value === 'string') return value;
  if (typeof value === 'number' && Number.isFinite(value)) return String(value);
  if (Array.isArray(value)) return textOf(value[0], depth + 1);
  if (!isThing(value)) return null;
  return textOf(get(value, '@value') ?? get(value, 'name') ?? get(value, '@id') ?? null, depth + 1);
}

/** Parses JSON; once more with the usual mistakes mended: comment wrappers, raw line breaks in strings, commas before a bracket. */
export function parseTolerantly(source: string): unknown {
  const bare = source
    .replace(/^\s*(?:<!--|\/\/\s*<!\[CDATA\[|\/\*\s*<!\[CDATA\[\s*\*\/|<!\[CDATA\[)/, '')
    .replace(/(?:-->|(?:\/\/|\/\*)?\s*\]\]>\s*(?:\*\/)?)\s*$/, '')
    .replace(/;\s*$/, '');
  const attempts = [bare, bare.replace(/[\u0000-\u001f]+/g, ' ').replace(/,(\s*[\]}])/g, '$1')];
  for (const attempt of attempts) {
    try {
      return JSON.parse(attempt);
    } catch {
      // The next attempt, or nothing.
    }
  }
  return undefined;
}

const UNRELATED = new Set([
  'isRelatedTo',
  'isSimilarTo',
  'isAccessoryOrSparePartFor',
  'isConsumableFor',
  'review',
  'brand',
  'seller',
]);

/** Every object in the data, outermost first, up to a limit; things that are only related are left out. */
function thingsIn(roots: readonly unknown[]): Thing[] {
  const found: Thing[] = [];
  const queue = [...roots];
  for (let next = 0; next < queue.length && next < MAX_DATA_NODES; next += 1) {
    const value = queue[next];
    if (Array.isArray(value)) queue.push(...value.slice(0, MAX_DATA_NODES));
    else if (isThing(value)) {
      found.push(value);
      for (const key of Object.keys(value)) if (!UNRELATED.has(key)) queue.push(value[key]);
    }
  }
  return found;
}

const typesOf = (thing: Thing): readonly string[] => listOf(get(thing, '@type')).filter((type) => typeof type === 'string');

function weightOf(product: Thing): Offer['weight'] {
  const weight = get(product, 'weight');
  if (!isThing(weight)) return typeof weight === 'string' ? { value: weight, unit: null } : null;
  const value = textOf(get(weight, 'value'));
  return value === null ? null : { value, unit: textOf(get(weight, 'unitCode') ?? get(weight, 'unitText')) };
}

const valuesOf =
  (thing: Thing | null): Values =>
  (name) =>
    thing && textOf(get(thing, name));

const describeThing = (product: Thing | null, offer: Thing | null): Offer =>
  describe(
    valuesOf(product),
    valuesOf(offer),
    listOf(offer && get(offer, 'priceSpecification'))
      .filter(isThing)
      .map(valuesOf),
    product && weightOf(product),
  );

/** Products and offers of the page's JSON-LD, in the order in which they are written. */
export function readJsonLd(document: Document, most = MAX_OFFERS): Offer[] {
  const roots: unknown[] = [];
  let left = MAX_DATA_CHARACTERS;
  for (const script of own(document).querySelectorAll('script[type]')) {
    if (!/^\s*application\/ld\+json\b/i.test(script.getAttribute('type') ?? '')) continue;
    const source = script.textContent ?? '';
    left -= source.length;
    if (left >= 0) roots.push(parseTolerantly(source));
  }
  const things = thingsIn(roots);
  const byId = new Map(things.filter((thing) => Object.keys(thing).length > 1).map((thing) => [get(thing, '@id'), thing]));
  const resolve = (value: unknown): Thing | null => (isThing(value) ? (byId.get(get(value, '@id') ?? value) ?? value) : null);
  const offers: Offer[] = [];
  const seen = new Set<Thing>();
  const takeOffers = (product: Thing | null, values: readonly unknown[], depth = 0): void => {
    if (depth > DEEPEST) return;
    for (const value of values) {
      const offer = resolve(value);
      if (!offer || seen.has(offer)) continue;
      seen.add(offer);
      const nested = listOf(get(offer, 'offers'));
      const item = product ?? resolve(get(offer, 'itemOffered'));
      if (item) seen.add(item);
      if (nested.length > 0) takeOffers(item, nested, depth + 1);
      else offers.push(describeThing(item, offer));
    }
  };
  for (const thing of things) {
    if (offers.length >= most || seen.has(thing)) continue;
    const types = typesOf(thing);
    if (types.some(isOfferType)) takeOffers(null, [thing]);
    if (!types.some(isProductType)) continue;
    seen.add(thing);
    const own = listOf(get(thing, 'offers'));
    if (own.length > 0) takeOffers(thing, own);
    else offers.push(describeThing(thing, null));
  }
  return offers.filter((offer) => !isEmptyOffer(offer)).slice(0, most);
}
