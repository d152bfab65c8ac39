/** A packed list of invented places, in the form in which the build makes them. */
import type { Packed } from '../../../src/places/unpack.ts';

const LETTERS = [...'!#%&)*+,-.0123456789:;<=>?@ABCDEFGHIJKLMNOPQRSTUVWXYZ[]^_abcdefghijklmnopqrstuvwxyz{|}~'].join('');

const digits = (value: number, width: number): string => {
  const base = LETTERS.length;
  const letters = Array.from({ length: width }, (_, i) => LETTERS[Math.floor(value / base ** (width - 1 - i)) % base]);
  return letters.join('');
};

const thousandths = (value: number, from: number): string => digits(Math.round((value - from) * 1000), 3);

export type Row = readonly [name: string, region: string, lat: number, lon: number, people: number];

export function list(country: string, rows: readonly Row[], zips: readonly (readonly [number, number, number])[] = []): Packed {
  const regions = [...new Set(rows.map(([, region]) => region))];
  const ordered = regions.flatMap((region) => rows.filter((row) => row[1] === region));
  const steps = zips.map(([code], i) => code - (zips[i - 1]?.[0] ?? 0));
  return {
    country,
    letters: LETTERS,
    regions,
    counts: regions.map((region) => rows.filter((row) => row[1] === region).length),
    names: ordered.map(([name]) => name).join('\n'),
    lat: ordered.map((row) => thousandths(row[2], -90)).join(''),
    lon: ordered.map((row) => thousandths(row[3], -180)).join(''),
    people: ordered.map((row) => digits(row[4] < 1 ? 0 : Math.round(12 * Math.log10(row[4])), 1)).join(''),
    codes: steps
      .map((step) => (step < LETTERS.length - 1 ? digits(step, 1) : digits(LETTERS.length - 1, 1) + digits(step, 3)))
      .join(''),
    codesLat: zips.map(([, lat]) => thousandths(lat, -90)).join(''),
    codesLon: zips.map(([, , lon]) => thousandths(lon, -180)).join(''),
  };
}
