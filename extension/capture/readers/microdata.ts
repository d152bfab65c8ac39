/** schema.org products and offers in a page's microdata (HTML standard, section 5: itemscope, itemtype, itemprop, itemref). */
import type { Offer } from '../../../src/listing/page-listing.ts';
import { MAX_OFFERS } from './limits.ts';
import { own } from './own.ts';
import { tagOf } from './rendered.ts';
import { describe, isEmptyOffer, isOfferType, isProductType, type Values } from './structured-types.ts';

type Properties = ReadonlyMap<string, readonly Element[]>;

/** The properties of an item: elements with `itemprop` in it, not in an item inside it, and those that `itemref` names. */
function propertiesOf(item: Element): Properties {
  const found = new Map<string, Element[]>();
  const pending: Element[] = [...own(item).children].reverse();
  for (const id of (own(item).getAttribute('itemref') ?? '').split(/\s+/)) {
    const referred = id === '' ? null : own(own(item).ownerDocument).getElementById(id);
    if (referred && !own(item).contains(referred) && !own(referred).contains(item)) pending.push(referred);
  }
  for (let element = pending.pop(); element; element = pending.pop()) {
    for (const name of (own(element).getAttribute('itemprop') ?? '').split(/\s+/).filter(Boolean)) {
      found.set(name, [...(found.get(name) ?? []), element]);
    }
    if (!own(element).hasAttribute('itemscope')) for (const child of [...own(element).children].reverse()) pending.push(child);
  }
  return found;
}

/** The value of a property as the HTML standard defines it. */
export function microdataValue(element: Element): string {
  const reading = own(element);
  const content = reading.getAttribute('content');
  if (content !== null) return content;
  const tag = tagOf(element);
  if (tag === 'A' || tag === 'LINK' || tag === 'AREA') return reading.getAttribute('href') ?? '';
  if (tag === 'DATA' || tag === 'METER') return reading.getAttribute('value') ?? '';
  if (tag === 'TIME') return reading.getAttribute('datetime') ?? reading.textContent ?? '';
  return reading.textContent ?? '';
}

const value = (properties: Properties, name: string): string | null => {
  const [first] = properties.get(name) ?? [];
  return first ? microdataValue(first) : null;
};

const typesOf = (item: Element): readonly string[] => (own(item).getAttribute('itemtype') ?? '').split(/\s+/);

function weightOf(properties: Properties): Offer['weight'] {
  const [weight] = properties.get('weight') ?? [];
  if (!weight) return null;
  if (!own(weight).hasAttribute('itemscope')) return { value: microdataValue(weight), unit: null };
  const parts = propertiesOf(weight);
  return { value: value(parts, 'value') ?? '', unit: value(parts, 'unitCode') ?? value(parts, 'unitText') };
}

const valuesOf =
  (properties: Properties): Values =>
  (name) =>
    value(properties, name);

const describeItem = (product: Properties, offer: Properties): Offer =>
  describe(
    valuesOf(product),
    valuesOf(offer),
    (offer.get('priceSpecification') ?? []).map(propertiesOf).map(valuesOf),
    weightOf(product),
  );

/** An offer of the page with the element that marks it. */
export interface MarkedOffer {
  readonly offer: Offer;
  readonly element: Element;
}

export function readMicrodata(document: Document, most = MAX_OFFERS): MarkedOffer[] {
  const found: MarkedOffer[] = [];
  const taken = new Set<Element>();
  for (const item of own(document).querySelectorAll('[itemscope][itemtype]')) {
    if (found.length >= most) break;
    if (taken.has(item)) continue;
    const types = typesOf(item);
    const properties = propertiesOf(item);
    if (types.some(isProductType)) {
      const offers = (properties.get('offers') ?? []).filter((offer) => own(offer).hasAttribute('itemscope'));
      for (const offer of offers) taken.add(offer);
      const described =
        offers.length > 0
          ? offers.map((offer) => describeItem(properties, propertiesOf(offer)))
          : [describeItem(properties, properties)];
      found.push(...described.map((offer) => ({ offer, element: item })));
    } else if (types.some(isOfferType)) {
      const [product] = properties.get('itemOffered') ?? [];
      if (product) taken.add(product);
      found.push({ offer: describeItem(product ? propertiesOf(product) : new Map(), properties), element: item });
    }
  }
  return found.filter(({ offer }) => !isEmptyOffer(offer)).slice(0, most);
}
