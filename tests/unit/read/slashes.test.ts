/** Counts and weights with a slash between. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods } from './goods.ts';

/** What was read and by which rule, without the words. */
const said = (text: string): string[] => goods(text).map((line) => line.split(' | ').slice(0, 2).join(' | '));

describe('slashes.ts', () => {
  it.each([
    ['olympic plates 45lb/4, 25lb/2', ['4 plate 45 lb | weight-slash-count', '2 plate 25 lb | weight-slash-count']],
    ['olympic plates 45s/four, 25s/two', ['4 plate 45 lb | weight-slash-count', '2 plate 25 lb | weight-slash-count']],
    ['Hantelscheiben 20kg/4 Stück, 5 kg/2 Stück', ['4 plate 20 kg | weight-slash-count', '2 plate 5 kg | weight-slash-count']],
    ['olympic plates 4/45lb, 2/25lb', ['4 plate 45 lb | count-slash-weight', '2 plate 25 lb | count-slash-weight']],
    ['olympic plates 4/45 2/25', ['4 plate 45 lb | count-slash-weight', '2 plate 25 lb | count-slash-weight']],
    ['olympic plates\n10/5# and 2/45#', ['10 plate 5 lb | count-slash-weight', '2 plate 45 lb | count-slash-weight']],
    ['olympic plates\n- 6/45lb\n- 2/10lb', ['6 plate 45 lb | count-slash-weight', '2 plate 10 lb | count-slash-weight']],
  ])('%s', (text, lines) => expect(said(text)).toEqual(lines));

  it('keeps the words of each', () =>
    expect(goods('olympic plates 45lb/4, 25lb/2')[1]).toBe('2 plate 25 lb | weight-slash-count | 25lb/2'));

  it.each([
    'olympic plates 25lb/45lb, 10lb/5lb',
    'olympic plates 10/15 lb, 25/35 lb',
    'olympic plates 25/45 lb',
    'olympic plates 45lb/2',
    'olympic plates 10 kg/22, 5 kg/11',
    'olympic plates 44/20 kg, 22/10 kg',
    'olympic plates $4/45lb, $2/25lb',
    'olympic plates 45lb/$4, 25lb/$2',
    'olympic plates 45lb/40, 25lb/30',
    'olympic plates 10/25/45 lb, 5/35 lb',
    'micro plates 1/2 lb, 1/4 lb',
    'olympic plates 10/25 5/35',
  ])('leaves %s', (text) => expect(said(text).join(' ')).not.toContain('slash'));
});
