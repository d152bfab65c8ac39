/** A country's place list as it ships, and back into rows. It is packed by tests/build/place-lists.mjs: numbers as letters, to be small and quick to read. */

export interface Packed {
  /** Two capital letters. */
  readonly country: string;
  /** What digits of packed numbers are written with, the first for 0. */
  readonly letters: string;
  /** Codes of regions as GeoNames has them, and how many places each has: the rows stand in this order. */
  readonly regions: readonly string[];
  readonly counts: readonly number[];
  /** One name a line. */
  readonly names: string;
  /** Three letters a place: thousandths of a degree from the south pole, and from 180° west. */
  readonly lat: string;
  readonly lon: string;
  /** One letter a place: twelve times the logarithm to base ten; 0 when unknown. */
  readonly people: string;
  /** Steps from postcode to postcode, which are numbers: one letter, or the last letter and three more. Empty when none are known. */
  readonly codes: string;
  readonly codesLat: string;
  readonly codesLon: string;
}

/** A list as columns. */
export interface Rows {
  readonly country: string;
  readonly names: readonly string[];
  readonly regions: readonly string[];
  /** Degrees north and east. */
  readonly lat: Float64Array;
  readonly lon: Float64Array;
  /** About so many; 0 when unknown, which mostly means fewer than a thousand. */
  readonly people: Float64Array;
  /** Postcodes, ascending, and where each lies. */
  readonly codes: Uint32Array;
  readonly codesLat: Float64Array;
  readonly codesLon: Float64Array;
}

/** Number of a letter by its character code. */
function digitsOf(letters: string): Uint8Array {
  const digits = new Uint8Array(128);
  for (let i = 0; i < letters.length; i += 1) digits[letters.charCodeAt(i)] = i;
  return digits;
}

function degrees(text: string, digits: Uint8Array, base: number, from: number): Float64Array {
  const out = new Float64Array(text.length / 3);
  for (let i = 0; i < out.length; i += 1) {
    const at = (k: number): number => digits[text.charCodeAt(3 * i + k)] ?? 0;
    // Whole thousandths until the last step, so that degrees come out as they were written.
    out[i] = ((at(0) * base + at(1)) * base + at(2) + 1000 * from) / 1000;
  }
  return out;
}

function codesOf(text: string, digits: Uint8Array, base: number, count: number): Uint32Array {
  const codes = new Uint32Array(count);
  let [at, code] = [0, 0];
  const next = (): number => {
    at += 1;
    return digits[text.charCodeAt(at - 1)] ?? 0;
  };
  for (let i = 0; i < count; i += 1) {
    const step = next();
    code += step < base - 1 ? step : (next() * base + next()) * base + next();
    codes[i] = code;
  }
  return codes;
}

/** Throws a RangeError when the columns are of different lengths: such a list is damaged. */
export function unpack(packed: Packed): Rows {
  const base = packed.letters.length;
  const digits = digitsOf(packed.letters);
  const names = packed.names.split('\n');
  const lat = degrees(packed.lat, digits, base, -90);
  const codesLat = degrees(packed.codesLat, digits, base, -90);
  const people = Float64Array.from(packed.people, (letter) => {
    const step = digits[letter.charCodeAt(0)] ?? 0;
    return step === 0 ? 0 : 10 ** (step / 12);
  });
  const regions = packed.regions.flatMap((region, i) => Array<string>(packed.counts[i] ?? 0).fill(region));
  if ([lat.length, people.length, regions.length, packed.lon.length / 3].some((length) => length !== names.length)) {
    throw new RangeError(`places: the list of ${packed.country} is damaged`);
  }
  return {
    country: packed.country,
    names,
    regions,
    lat,
    lon: degrees(packed.lon, digits, base, -180),
    people,
    codes: codesOf(packed.codes, digits, base, codesLat.length),
    codesLat,
    codesLon: degrees(packed.codesLon, digits, base, -180),
  };
}
