/** Letters by which recognisers match, clauses that notations do not cross, and the use of tokens. */
import { describe, expect, it } from 'vitest';
import { ENGLISH } from '../../../../src/read/language/en/index.ts';
import { blank, claim, findAll, type Scan, scanText, span, unitBetween, valueAt } from '../../../../src/read/text/scan.ts';

const scan = (text: string): Scan => scanText(text, ENGLISH);

describe('letters', () => {
  it.each([
    ['4 x 45 lb plates', 'nxnuk'],
    ['pair of 45s', 'pons'],
    ['two 45# olympic plates', 'dnhk'],
    ['45 pounders', 'nq'],
    ['$120 obo', '$nO'],
    ['a\nb', 'alz'],
    ['4\t45', 'n|n'],
    ['7 ft', 'nf'],
    ['2 in the garage', 'nzaz'],
    ['(2) [4] {6}', '(n)(n)(n)'],
    ['~50', 'Un'],
    ['4 * 45', 'nxn'],
    ['* 45', '•n'],
    ['45 ........ $40', 'n-$n'],
    ['sold... or not', 'Y;zN'],
  ])('%j', (text, letters) => expect(scan(text).plain).toBe(letters));
});

describe('clauses', () => {
  const clauses = (text: string): number => new Set(scan(text).clause).size;
  it.each([
    ['one two three', 1],
    ['One. Two.', 2],
    ['one\ntwo', 2],
    ['• one • two', 3],
    ['45 lb. plates', 1],
    ['45 lb. Bar is sold', 2],
    ['2.5 and 1.25', 1],
  ])('%j has %i', (text, count) => expect(clauses(text)).toBe(count));

  it('are cut where none ends', () => expect(clauses('word '.repeat(2000))).toBeGreaterThan(5));
});

describe('findAll', () => {
  const places = (one: Scan, pattern: RegExp, take: () => boolean = () => true): string[] => {
    const found: string[] = [];
    findAll(one, pattern, ({ from, to }) => {
      const { start, end } = span(one, from, to);
      found.push(one.text.slice(start, end));
      return take();
    });
    return found;
  };

  it('uses tokens up, so that nobody reads them again', () => {
    const one = scan('2 x 45 and 4 x 25');
    expect(places(one, /nxn/dg)).toEqual(['2 x 45', '4 x 25']);
    expect(places(one, /nxn/dg)).toEqual([]);
    expect(one.plain).toBe('nxncnxn');
  });

  it('goes on one token further where a match is not taken', () =>
    expect(places(scan('1 2 3'), /nn/dg, () => false)).toEqual(['1 2', '2 3']));

  it('does not run over the end of a sentence', () => expect(places(scan('take 2. 45 lb plates'), /n\.n/dg)).toEqual([]));

  it('gives the tokens of a group, and null for one that took no part', () => {
    const groups: unknown[] = [];
    findAll(scan('2 x 45 lb'), /(n)x(n)(u)(k)?/dg, ({ group }) => groups.push([group(1), group(2), group(3), group(4)]) > 0);
    expect(groups).toEqual([[[0, 0], [2, 2], [3, 3], null]]);
  });
});

it('blanks one token or more', () => {
  const one = scan('2 x 45 lb');
  blank(one, 0);
  claim(one, 2, 3, 'M');
  expect(one.letters.join('')).toBe('_xM_');
});

it('knows values and units', () => {
  const one = scan('two 45# or 20 kg');
  expect([valueAt(one, 0), valueAt(one, 1), valueAt(one, 3)]).toEqual([2, 45, null]);
  expect([unitBetween(one, 0, 2), unitBetween(one, 3, 5), unitBetween(one, 0, 1)]).toEqual(['lb', 'kg', null]);
});
