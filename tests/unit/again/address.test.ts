/** Addresses of one page, and of different ones. What counts as tracking or as an ad's number is common practice, no source; escapes are RFC 3986, 6.2.2. */
import { describe, expect, it } from 'vitest';
import { adAddress } from '../../../src/again/index.ts';

const AD = 'https://ads.invalid/item/1234567-plates';

describe('the same page', () => {
  it.each([
    'http://ads.invalid/item/1234567-plates',
    'https://www.ads.invalid/item/1234567-plates/',
    'https://m.ads.invalid/item/1234567-plates',
    'https://www.m.ads.invalid/item/1234567-plates',
    'https://mobile.ads.invalid/item/1234567-plates#photos',
    'HTTPS://ADS.invalid:443/item//1234567-plates',
    `${AD}?utm_source=mail&utm_medium=x`,
    `${AD}?someclid=abc&ref=home`,
    `${AD}?pos=3&q=plates`,
    `${AD};jsessionid=0A1B`,
    'https://ads.invalid/item/%31234567-plates',
    'https://ads.invalid/amp/item/1234567-plates',
    ` ${AD} `,
  ])('%s', (address) =>
    expect(adAddress(address)).toEqual({ key: 'ads.invalid/item/1234567-plates', namesAd: true, path: '/item/1234567-plates' }),
  );

  it('with its parameters in another order', () =>
    expect(adAddress('https://a.invalid/view?id=77123&x=1&gclid=9')?.key).toBe(
      adAddress('https://a.invalid/view?x=1&id=77123')?.key,
    ));
});

describe('another page', () => {
  it.each([
    ['https://ads.invalid/item/1234568-plates'],
    ['https://other.invalid/item/1234567-plates'],
    ['https://ads.invalid/item/1234567-Plates'],
    ['https://mads.invalid/item/1234567-plates'],
  ])('%s', (address) => expect(adAddress(address)?.key).not.toBe('ads.invalid/item/1234567-plates'));

  it('by the parameter that names it', () =>
    expect(adAddress('https://a.invalid/view?id=77123')?.key).not.toBe(adAddress('https://a.invalid/view?id=77124')?.key));
});

describe('an address that names one ad', () => {
  it.each([
    [AD, true],
    ['https://a.invalid/view?id=77123', true],
    ['https://a.invalid/ads/4711', true],
    ['https://a.invalid/ads/4711.html', true],
    ['https://a.invalid/a/3f2504e0-4f89-11d3-9a0c-0305e82c3301', true],
    ['https://a.invalid/', false],
    ['https://a.invalid/search?q=plates&zip=94107', false],
    ['https://a.invalid/search/94107', false],
    ['https://a.invalid/gym/page/412', false],
    ['https://a.invalid/sport/gym-equipment', false],
  ])('%s: %s', (address, names) => expect(adAddress(address)?.namesAd).toBe(names));
});

it.each([null, '', 'file:///ad.html', 'about:blank', 'javascript:alert(1)', 'plates'])('%j is no web address', (address) =>
  expect(adAddress(address)).toBeNull(),
);

it('a mobile host is not taken down to a bare top-level domain', () =>
  expect(adAddress('https://m.invalid/item/1234567')?.key).toBe('m.invalid/item/1234567'));
