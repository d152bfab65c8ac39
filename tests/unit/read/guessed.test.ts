/** Counts and weights that the seller guesses raise a doubt. Phrases that sellers write: common practice, no source. */
import { expect, it } from 'vitest';
import { correct } from '../../../src/read/correct.ts';
import { readText } from './goods.ts';

const guesses = (text: string): string[] =>
  readText(text)
    .doubts.map(({ id }) => id)
    .filter((id) => id.startsWith('guessed'));

it.each([
  ['about ten 10 lb olympic plates and a few 5s', ['guessed_count:plate-1.count']],
  ['Olympic plates. 45s: four. 10s: I think six.', ['guessed_count:plate-2.count']],
  ['4x45 I think, 2x25, olympic', ['guessed_count:plate-1.count']],
  ['45s x 6? olympic plates, 25s x 2', ['guessed_count:plate-1.count']],
  ['4 plates, 45 lb I think, olympic', ['guessed_weight:plate-1.unitWeight']],
  ['ca. 10 Scheiben 10 kg, Langhantel', ['guessed_count:plate-1.count']],
  ['4 Scheiben, etwa 10 kg, Langhantel', ['guessed_weight:plate-1.unitWeight']],
  ['olympic bar, about 45 lb, $50', []],
  ['4x45 olympic plates, about 5 miles from town, asking about 200', []],
  ['They say 45 on them, olympic plates, four', []],
  ['squat rack holds about 700 lb. 4x45 plates', []],
])('%s', (text, wanted) => expect(guesses(text)).toEqual(wanted));

it('is settled in one press', () => {
  const reading = readText('about ten 10 lb olympic plates');
  const [, open] = reading.doubts.find(({ id }) => id.startsWith('guessed'))?.choices ?? [];
  const { reading: settled } = correct(reading, open?.corrections ?? []);
  expect(settled.items[0]?.count).toBeNull();
  expect(settled.doubts.some(({ id }) => id.startsWith('guessed'))).toBe(false);
});
