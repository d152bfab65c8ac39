/** Terms and types: schema.org Product, Offer, AggregateOffer, PriceSpecification; microdata values: HTML standard, 5.2.4; Open Graph. */
import { describe, expect, it } from 'vitest';
import { parseTolerantly } from '../../../extension/capture/readers/json-ld.ts';
import { readMicrodata } from '../../../extension/capture/readers/microdata.ts';
import { readOpenGraph } from '../../../extension/capture/readers/open-graph.ts';
import { pageListingSchema } from '../../../src/listing/page-listing.ts';
import { linked, pick, show } from './page.ts';

const product = (rest: object): string =>
  JSON.stringify({ '@context': 'https://schema.org', '@type': 'Product', name: 'Plates', ...rest });

describe('JSON-LD', () => {
  it('reads a product with its offer, price as number or text', () => {
    expect(linked(product({ description: '4 x 45', offers: { '@type': 'Offer', price: 120, priceCurrency: 'USD' } }))).toEqual([
      {
        name: 'Plates',
        price: '120',
        currency: 'USD',
        condition: null,
        availability: null,
        description: '4 x 45',
        weight: null,
      },
    ]);
  });
  it.each([
    ['an array at the top', `[${product({ offers: { price: '120.00' } })}]`, ['120.00']],
    [
      'a graph',
      JSON.stringify({ '@graph': [{ '@type': 'WebPage' }, { '@type': 'Product', offers: [{ price: 80 }, { price: 90 }] }] }),
      ['80', '90'],
    ],
    [
      'an offer around its item',
      JSON.stringify({ '@type': 'Offer', price: 75, itemOffered: { '@type': 'Product', name: 'Bar' } }),
      ['75'],
    ],
    [
      'types as addresses and lists',
      JSON.stringify({ '@type': ['https://schema.org/Product', 'x'], offers: { price: 5 } }),
      ['5'],
    ],
    [
      'references by @id',
      JSON.stringify([
        { '@type': 'Product', offers: { '@id': '#o' } },
        { '@id': '#o', '@type': 'Offer', price: 66 },
      ]),
      ['66'],
    ],
    [
      'an aggregate with its offers',
      product({ offers: { '@type': 'AggregateOffer', lowPrice: 1, offers: [{ price: 40 }] } }),
      ['40'],
    ],
    ['an aggregate of one price', product({ offers: { '@type': 'AggregateOffer', lowPrice: 30, highPrice: 30 } }), ['30']],
    ['an aggregate range', product({ offers: { '@type': 'AggregateOffer', lowPrice: 30, highPrice: 50 } }), ['30-50']],
    [
      'a price specification that is not the former price',
      product({
        offers: { priceSpecification: [{ priceType: 'https://schema.org/StrikethroughPrice', price: 200 }, { price: 150 }] },
      }),
      ['150'],
    ],
    ['no offer', product({}), [null]],
    [
      'related products left out',
      product({ offers: { price: 9 }, isRelatedTo: { '@type': 'Product', name: 'Bench', offers: { price: 1 } } }),
      ['9'],
    ],
    ['other things left out', JSON.stringify({ '@type': 'Organization', name: 'Town' }), []],
  ])('%s', (_, source, prices) => expect(linked(source).map(({ price }) => price)).toEqual(prices));

  it('reads a weight with its unit code', () =>
    expect(linked(product({ weight: { '@type': 'QuantitativeValue', value: 45, unitCode: 'LBR' } }))[0]?.weight).toEqual({
      value: '45',
      unit: 'LBR',
    }));

  it.each([
    ['comment wrappers', '<!-- {"a":1} -->'],
    ['a CDATA wrapper', '//<![CDATA[\n{"a":1}\n//]]>'],
    ['commas before a bracket', '{"a":1,}'],
    ['a semicolon', '{"a":1};'],
  ])('mends %s', (_, source) => expect(parseTolerantly(source)).toEqual({ a: 1 }));
  it('mends line breaks in texts', () => expect(parseTolerantly('{"a":"b\nc"}')).toEqual({ a: 'b c' }));
  it('leaves what can not be mended, and reads the rest', () => {
    expect(parseTolerantly('{"a":')).toBeUndefined();
    expect(linked('{"@type":"Product",', product({ offers: { price: 7 } })).map(({ price }) => price)).toEqual(['7']);
  });
  it('is not led to prototypes', () => {
    const offers = linked(
      '{"@type":"Product","__proto__":{"name":"evil"},"constructor":{"name":"evil"},"offers":{"price":3,"toString":"x"}}',
    );
    expect(offers).toMatchObject([{ name: null, price: '3' }]);
    expect(({} as { name?: string }).name).toBeUndefined();
    const polluted = Object.prototype as { name?: string };
    polluted.name = 'evil';
    try {
      expect(linked('{"@type":"Product","offers":{"price":3}}')).toMatchObject([{ name: null }]);
    } finally {
      delete polluted.name;
    }
  });
  it('stops at its limits: many offers, long texts, deep nesting, very long scripts', () => {
    expect(linked(JSON.stringify(Array.from({ length: 500 }, (_, n) => ({ '@type': 'Offer', price: n }))))).toHaveLength(20);
    expect(linked(product({ name: 'x'.repeat(9000), offers: { price: '1'.repeat(900) } }))[0]?.name).toHaveLength(2000);
    expect(linked(`${'['.repeat(3000)}${']'.repeat(3000)}`)).toEqual([]);
    expect(linked(product({ description: 'x'.repeat(2_100_000) }))).toEqual([]);
  });
});

describe('microdata', () => {
  it('reads a product with its offer by the values that HTML defines', () => {
    show(`<div itemscope itemtype="https://schema.org/Product"><h2 itemprop="name">Bar</h2>
      <div itemprop="weight" itemscope><meta itemprop="value" content="20"><meta itemprop="unitCode" content="KGM"></div>
      <div itemprop="offers" itemscope itemtype="https://schema.org/Offer"><meta itemprop="priceCurrency" content="EUR">
      <data itemprop="price" value="150">150 €</data><link itemprop="itemCondition" href="https://schema.org/UsedCondition"></div></div>`);
    expect(readMicrodata(document).map(({ offer }) => offer)).toEqual([
      {
        name: 'Bar',
        price: '150',
        currency: 'EUR',
        condition: 'https://schema.org/UsedCondition',
        availability: null,
        description: null,
        weight: { value: '20', unit: 'KGM' },
      },
    ]);
  });
  it('leaves the properties of an item within to that item', () => {
    show(`<div itemscope itemtype="https://schema.org/Offer"><div itemprop="seller" itemscope><b itemprop="name">A seller</b></div>
      <b itemprop="price">60</b></div>`);
    expect(readMicrodata(document)).toMatchObject([{ offer: { name: null, price: '60' } }]);
  });
  it('follows itemref, and not in circles', () => {
    show(
      '<div id="a" itemscope itemtype="http://schema.org/Offer" itemref="a b"></div><p id="b"><span itemprop="price">60</span></p>',
    );
    expect(readMicrodata(document).map(({ offer }) => offer.price)).toEqual(['60']);
  });
});

describe('meta elements', () => {
  it('gives the price of the page', () => {
    show(
      '',
      '<meta property="og:title" content="Bar"><meta property="product:price:amount" content="99"><meta property="product:price:currency" content="CAD">',
    );
    expect(readOpenGraph(document)).toMatchObject({ name: 'Bar', price: '99', currency: 'CAD' });
  });
  it('gives none without a price', () => {
    show('', '<meta property="og:title" content="Bar">');
    expect(readOpenGraph(document)).toBeNull();
  });
});

describe('offers for a block', () => {
  const two = [
    { name: 'Bar', price: 90 },
    { name: 'Bench', price: 40 },
  ].map(({ name, price }) => ({ '@type': 'Product', name, offers: { price } }));
  const results = `<script type="application/ld+json">${JSON.stringify(two)}</script><div id="bar"><h3>Bar</h3>$90</div><div id="other">Rack</div>`;
  it('are those that it names', () => {
    show(results);
    expect(pick('#bar').listing.offers.map(({ name }) => name)).toEqual(['Bar']);
    expect(pick('#other').listing.offers).toEqual([]);
  });
  it('are the marked-up ones around or in it', () => {
    const card = (name: string) =>
      `<div itemscope itemtype="https://schema.org/Product"><b itemprop="name">${name}</b><p id="${name}">text</p></div>`;
    show(card('one') + card('two'));
    expect(pick('#two').listing.offers.map(({ name }) => name)).toEqual(['two']);
  });
  it('fit the schema whatever the page holds', () => {
    show(
      `<main><h1>x</h1><p>4 x 45</p></main>`,
      `<script type="application/ld+json">${product({ name: { a: 1 }, sku: [], offers: [null, 3, { price: {} }, { price: 'x'.repeat(9999) }] })}</script>`,
    );
    expect(pageListingSchema.safeParse(pick('main').listing).error).toBeUndefined();
  });
});
