/** Folding for matching. That compatibility forms fold to plain letters and digits: Unicode Standard Annex 15 (NFKD), here by the engine itself. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fold } from '../../../../src/read/text/fold.ts';

describe('fold', () => {
  it.each([
    ['Olympic PLATES', 'olympic plates'],
    ['４５ ｌｂ', '45 lb'],
    ['4×45', '4x45'],
    ['4–45 — 5−2', '4-45 - 5-2'],
    ['7’ 2”', `7' 2"`],
    ['2½ in', '2 1/2 in'],
    ['¼', ' 1/4'],
    ['Stück Größe', 'stuck grosse'],
    ['é', 'e'],
    ['e\u0301', 'e'],
    ['4\u200b5\u00ad \u200elb', '45 lb'],
    ['a\u00a0b\u2009c\u3000d', 'a b c d'],
    ['a\r\nb\rc\u2028d', 'a\nb\nc\nd'],
    ['a\u0000b\u0007c', 'a b c'],
    ['▪ one ● two', '• one • two'],
    ['№ 5', 'no 5'],
    ['ﬁt', 'fit'],
    ['…', '...'],
    ['a\ud83db', 'a\ufffdb'],
    ['', ''],
  ])('%j is %j', (text, folded) => expect(fold(text).text).toBe(folded));

  it('leads from every folded place to its place in the original, never backwards', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        const { text: folded, map } = fold(text);
        expect(map.length).toBe(folded.length + 1);
        expect(map[folded.length]).toBe(text.length);
        expect(map.every((place, i) => i === 0 || place >= (map[i - 1] ?? 0))).toBe(true);
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  it('changes nothing any more the second time', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 40 }), (text) => {
        const once = fold(text).text;
        // Two combining forms may meet only when what stood between them is gone: then a second folding joins them.
        expect(fold(once).text.normalize('NFKD')).toBe(fold(fold(once).text).text.normalize('NFKD'));
      }),
      { seed: 2, numRuns: 500 },
    );
  });
});
