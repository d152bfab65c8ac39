/** Goods told one by one: under labels, by pronouns, in a list behind their sum; parts of what was counted. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods, readText } from './goods.ts';

/** Text of the ad, then its goods as "count kind weight <rule>". */
const TOLD: readonly (readonly [string, ...string[]])[] = [
  ['Two racks. Rack one: bolted. Rack two: welded.', '1 rack ? <labelled>', '1 rack ? <labelled>'],
  ['2 benches. Bench 1: flat. Bench 2: incline.', '1 bench ? <labelled>', '1 bench ? <labelled>'],
  ['Bar A straight, Bar B bent. Bar A has new sleeves.', '1 bar ? <labelled>', '1 bar ? <labelled>'],
  ['Two bars. One is 45 lb, the other is 35 lb.', '1 bar 45 lb <told-apart>', '1 bar 35 lb <told-apart>'],
  ['2 bars. First one: 20 kg, spins. Second: 15 kg.', '1 bar 20 kg <told-apart>', '1 bar 15 kg <told-apart>'],
  ['2 barbells. One is straight. The other is bent. $90 for both bars', '1 bar ? <told-apart>', '1 bar ? <told-apart>'],
  ['two bars, an olympic bar and a curl bar', '1 bar ? <noun>', '1 curl-bar ? <noun>'],
  ['Four 15 kg discs. One 15 kg disc with a crack.', '4 plate 15 kg <count-weight>'],
  ['Six 45 lb plates, sold two of them', '4 plate 45 lb <count-weight-left>'],
  ['3 x 45 lb plates (was 4, sold one)', '3 plate 45 lb <count-times-weight>'],
  ['one of my three bars', '1 bar ? <noun>'],
  // Not told apart.
  ['Three squat racks. One shelf is bent.', '3 rack ? <noun>'],
  ['Two bars and a bench. One owner.', '2 bar ? <noun>', '1 bench ? <noun>'],
  ['Rack one of a kind', '1 rack ? <noun>'],
  ['Six 45 lb plates. One 35 lb plate with a crack.', '6 plate 45 lb <count-weight>', '1 plate 35 lb <count-weight>'],
];

const pieces = (text: string): string[] =>
  readText(text).items.map(({ kind, count, unitWeight }) => {
    const weight = unitWeight ? `${unitWeight.value.value} ${unitWeight.value.unit}` : '?';
    return `${count?.value ?? '?'} ${kind.value} ${weight} <${count?.rule}>`;
  });

describe('labelled.ts, told-apart.ts, and parts of what was counted', () => {
  it.each(TOLD)('%s', (text, ...said) => expect(pieces(text)).toEqual(said));

  it('keeps what is said of both with each', () => {
    const fits = readText('Two olympic bars. One is 45 lb, the other is 35 lb.').items.map((item) => item.fits?.value);
    expect(fits).toEqual(['50mm', '50mm']);
  });

  it('leaves goods that are traded away or for out', () => {
    expect(goods('4 x 45 lb plates. Will swap two 45s for a pair of 25s.')).toHaveLength(1);
  });
});
