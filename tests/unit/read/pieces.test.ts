/** Pieces told behind the weight. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods } from './goods.ts';

/** Text of the ad, then its goods with the rule that read them and the words they were read from. */
const NOTATIONS: readonly (readonly [string, ...string[]])[] = [
  ['10 kg plates 4 pieces', '4 plate 10 kg | weight-pieces | 10 kg plates 4 pieces'],
  ['45 lb olympic plates 4ct', '4 plate 45 lb | weight-pieces | 45 lb olympic plates 4ct'],
  ['olympic plates 4 ct. 45 lb', '4 plate 45 lb | count-weight | 4 ct. 45 lb + olympic plates'],
  ['Hantelscheiben 10 kg 4 Stück', '4 plate 10 kg | weight-pieces | 10 kg 4 Stück + Hantelscheiben'],
  ['Hantelscheiben 20er 2 Stück', '2 plate 20 kg | weight-pieces | 20er 2 Stück + Hantelscheiben'],
];

/** Read wrongly as yet: text and what it says. */
const AMISS: readonly (readonly [string, ...string[]])[] = [['45 lb 4 pcs plates', '4 plate 45 lb']];

describe('pieces.ts', () => {
  it.each(NOTATIONS)('%s', (text, ...said) => expect(goods(text)).toEqual(said));
  it.fails.each(AMISS)('%s', (text, ...said) => expect(goods(text).map((line) => line.split(' | ')[0])).toEqual(said));
});
