import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { settings } from '../making/readings.ts';

const flags = (text: string) =>
  evaluate(listingFromText(text), settings())
    .flags.filter(({ id }) => /^rack-(?:no-floor|pins|parts)/.test(id))
    .map(({ id, weight, evidence }) => `${id} ${weight}: ${evidence.map(({ start, end }) => text.slice(start, end)).join(', ')}`);

// Forms that sellers write: common practice, no source.
describe('what keeps a rack up', () => {
  it.each([
    ['Wall mounted squat rack with j-cups, $200', ['rack-no-floor caution: Wall mounted']],
    ['Wall mounted folding rack, $300, with j cups and spotter arms.', ['rack-no-floor caution: Wall mounted']],
    ['Bench, olympic plates with pins, wall mounted squat rack, all for $300', ['rack-no-floor caution: wall mounted']],
    ['Half rack with pins, $200. Bolted to the slab right now.', ['rack-no-floor note: Bolted to the slab']],
    ['Power rack with pins, $200. No floor frame, needs a new one.', ['rack-no-floor caution: No floor frame']],
  ])('%s', (text, said) => expect(flags(text)).toEqual(said));

  it.each([
    'Power rack with pins, $200. Wall mounted pull up bar for another $40.',
    'Power rack with pins, $200. Does not need to be bolted to the floor.',
    'Power rack with pins, $200. Can be bolted to the floor.',
    'Free standing squat rack, safeties, $275. Also 2 wall mounted double rigs - those are spoken for.',
    'Power rack with pins, bolts included, $200',
  ])('nothing of: %s', (text) => expect(flags(text)).toEqual([]));
});

describe('what catches the bar', () => {
  it.each([
    ['Squat rack $150. No hooks, the bar sits in notches.', ['rack-pins-missing caution: No hooks']],
    ['Power rack $150, comes without any safety pins', ['rack-pins-missing caution: without any safety pins']],
    ['Power rack $150. J-cups lost in the flood.', ['rack-pins-missing caution: lost']],
    ['Power rack, $150', ['rack-pins-unsaid note: Power rack']],
  ])('%s', (text, said) => expect(flags(text).map((one) => one.slice(0, 20))).toEqual(said.map((one) => one.slice(0, 20))));

  it.each([
    'Power rack with pins and j-cups, $150',
    'Dumbbells with rack, 5 lb to 25 lb pairs, $150',
    'Squat rack $150 with safeties. Olympic bar, no hooks needed.',
  ])('nothing of: %s', (text) => expect(flags(text)).toEqual([]));

  it('is soon done with a text that repeats it without end', () => {
    const began = performance.now();
    flags(`Power rack $150 ${'no pins wall mounted bolted to the floor not '.repeat(2000)}`);
    expect(performance.now() - began).toBeLessThan(5000);
  });
});
