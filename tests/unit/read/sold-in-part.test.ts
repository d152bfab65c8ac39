/** Fewer than the seller has, or would part from the rest: what counts is what is on offer. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { offer } from './goods.ts';

describe('he sells some of those he has', () => {
  it.each([
    ['Olympic bumper plates 45 lb. I have 8, selling 4. $200', '200 lot | 4 bumper 45 lb'],
    ['Olympic 45 lb plates. Have 8, only selling 4. $200', '200 lot | 4 plate 45 lb'],
    ['Got 8 45 lb olympic plates, selling 4 of them. $200', '200 lot | 4 plate 45 lb'],
    ['Olympic plates, 8x45 lb but only selling 4. $200', '200 lot | 4 plate 45 lb'],
    ['I have ten 45 lb olympic plates and am selling six. $300', '300 lot | 6 plate 45 lb'],
    ['10 x 45 lb olympic plates, keeping 4. $300', '300 lot | 6 plate 45 lb'],
    ["6 olympic 45 lb plates and I'm keeping two. $120", '120 lot | 4 plate 45 lb'],
    ['Olympic plates 8x45 lb, $40 each. Keeping 2.', '240 each of 40 | 6 plate 45 lb'],
    ['Have 3 squat racks, selling two. Olympic. $300', '300 lot | 2 rack'],
    ['I own 6 olympic bars, letting go of 2. $150', '150 lot | 2 bar'],
    ['Habe 8 Hantelscheiben 20 kg 50 mm, verkaufe nur 4. 200 €', '200 lot | 4 plate 20 kg'],
    ['Hantelscheiben 50 mm 8x 20 kg, behalte 4. 200 €', '200 lot | 4 plate 20 kg'],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));

  it.each([
    ['Olympic plates 4x45 lb. Selling 4, $200', '200 lot | 4 plate 45 lb'],
    ['Olympic plates 4x45 lb. Selling 2 benches too. $200', '200 lot | 4 plate 45 lb, 2 bench'],
    ['Olympic plates 4x45, 4x25. Selling 2 sizes only. $300', '300 lot | 4 plate 45 lb, 4 plate 25 lb'],
    ['Olympic plates 4x45, 4x25. Keeping 2. $300', '300 lot | 4 plate 45 lb, 4 plate 25 lb'],
    ['Selling 4 45 lb olympic plates. $200', '200 lot | 4 plate 45 lb'],
  ])('but not: %s', (text, said) => expect(offer(text)).toBe(said));
});

describe('what he would not part from the rest adds nothing', () => {
  it.each([
    ['Olympic plates 6x45 lb. I am not going to sell you two 45s, all or nothing. $300', '300 lot | 6 plate 45 lb'],
    ['Olympic plates 4x45 lb 2x25 lb. Will not split off two 45s. $200', '200 lot | 4 plate 45 lb, 2 plate 25 lb'],
    ["Olympic plates 4x45 lb. Don't ask me for two 45s, it's all four. $200", '200 lot | 4 plate 45 lb'],
    ["Olympic plates 4x45 lb. Please don't ask if I'll sell two 45s. $200", '200 lot | 4 plate 45 lb'],
    ["Olympic plates 4x45 lb. Won't sell 2 45s for $50. $200 for all", '200 lot | 4 plate 45 lb'],
    [
      'Hantelscheiben 50 mm 4x20 kg 2x10 kg. Bitte nicht fragen, ob ich zwei 20 kg einzeln verkaufe. 200 €',
      '200 lot | 4 plate 20 kg, 2 plate 10 kg',
    ],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));

  it.each([
    ["Olympic plates. I won't split the four 45s and two 25s. $200", '200 lot | 4 plate 45 lb, 2 plate 25 lb'],
    ["Olympic plates, won't split: 4x45 lb, 2x25 lb. $200", '200 lot | 4 plate 45 lb, 2 plate 25 lb'],
    ['Olympic plates, not rusty, asking $200 for 4x45 and 2x45 in the shed', '200 lot | 6 plate 45 lb'],
  ])('but not where nothing else tells of them: %s', (text, said) => expect(offer(text)).toBe(said));
});

it.each([
  ['Olympic weights. There are 11 of the big plates that say 45. And 6 that say 25. $400', '11 plate 45 lb, 6 plate 25 lb'],
  ['Olympic weights. There are four of the ones marked 45 and two of the ones marked 25. $400', '4 plate 45 lb, 2 plate 25 lb'],
  ['Olympic weights. Six big plates, each marked 45, and four marked 10. $400', '6 plate 45 lb, 4 plate 10 lb'],
])('%s', (text, said) => expect(offer(text)).toBe(`400 lot | ${said}`));

it.each([
  ['Plates fit olympic bars. 4x45 lb 2x25 lb $150', '150 lot | 4 plate 45 lb, 2 plate 25 lb'],
  ['Olympic bars. 4x45 lb 2x25 lb $150', '150 lot | 4 bar 45 lb, 2 bar 25 lb'],
  ['Hantelscheiben 1,25 kg, 2,5 kg, 5 kg je 4x, 30 mm, 50 €', '50 lot | 4 plate 1.25 kg, 4 plate 2.5 kg, 4 plate 5 kg'],
  ['Squat racks, I have 2. $300 each', '600 each of 300 | 2 rack'],
])('%s', (text, said) => expect(offer(text)).toBe(said));

it.each([
  ['Kettlebell 12,16 kg zusammen 50 €', '50 lot | 1 kettlebell 12 kg, 1 kettlebell 16 kg'],
  ['Kettlebells 8,12,16 kg 60 €', '60 lot | 1 kettlebell 8 kg, 1 kettlebell 12 kg, 1 kettlebell 16 kg'],
  ['Kettlebell 7,26 kg 20 €', '20 lot | 1 kettlebell 7.26 kg'],
  ['Hantelscheibe 2,50 kg 30 mm 5 €', '5 lot | ? plate 2.5 kg'],
  ['Hantelscheiben 2x 20,40 kg 50 mm 80 €', '80 lot | 2 plate 20.4 kg'],
  ['Langhantel 50 mm, 10,50 kg 40 €', '40 lot | 1 bar 10.5 kg'],
])('%s: whole sizes in a list, or a decimal', (text, said) => expect(offer(text)).toBe(said));
