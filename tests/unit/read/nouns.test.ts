/** Goods named without a weight, and those that are only spoken of. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods } from './goods.ts';

/** Text of the ad, then its goods with the rule that read them and the words they were read from. */
const NOTATIONS: readonly (readonly [string, ...string[]])[] = [
  ['power rack', '1 rack ? | noun | power rack'],
  ['a squat rack and a bench', '1 rack ? | noun | squat rack', '1 bench ? | noun | bench'],
  ['2 benches and a power rack', '2 bench ? | noun | 2 benches', '1 rack ? | noun | power rack'],
  ['pair of squat stands', '2 stands ? | noun | pair of squat stands'],
  ['olympic barbell with collars', '1 bar ? | noun | olympic barbell', '2 collars ? | noun | collars'],
  ['barbell with 2 spring collars', '1 bar ? | noun | barbell', '2 collars ? | noun | 2 spring collars'],
  ['barbell, collars x2', '1 bar ? | noun | barbell', '2 collars ? | noun | collars'],
  ['barbell (2)', '2 bar ? | noun | barbell'],
  ['EZ curl bar and a trap bar', '1 curl-bar ? | noun | EZ curl bar', '1 hex-bar ? | noun | trap bar'],
  ['plate tree and barbell', '1 storage ? | noun | plate tree', '1 bar ? | noun | barbell'],
  ['power rack, no bar', '1 rack ? | noun | power rack'],
  ['power rack, bench not included', '1 rack ? | noun | power rack'],
  ['power rack that fits any olympic bar', '1 rack ? | noun | power rack'],
  ['safety squat bar and barbell', '1 other ? | noun | safety squat bar', '1 bar ? | noun | barbell'],
  ['four olympic plates', '4 plate ? | noun | four olympic plates'],
  ['power rack, barbell sold', '1 rack ? | noun | power rack'],
];

describe('nouns.ts and noun-counts.ts', () => {
  it.each(NOTATIONS)('%s', (text, ...said) => expect(goods(text)).toEqual(said));
});
