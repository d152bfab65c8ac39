/** Bars told line by line under their heading. Common practice, no source. */
import { expect, it } from 'vitest';
import { facts, offer } from './goods.ts';

it.each([
  ['4x45 plates $160\nBars:\n- 7ft 45 lb $90\n- 5ft 15 lb $30', '280 lot | 4 plate 45 lb =160, 1 bar 45 lb =90, 1 bar 15 lb =30'],
  [
    'Gym gear\n\nBARS\n7 ft olympic, straight, have 2\n5 ft standard\nez curl, have 1\n\n$200',
    '200 lot | 2 bar, 1 bar, 1 curl-bar',
  ],
  ['Gym gear $200\nBARS\n(2) 7 ft, 45 lb\n6 ft x2', '200 lot | 2 bar 45 lb, 2 bar'],
  // A heading with text of its own, an empty line, and other goods end the list.
  ['Gym gear $200\nOlympic bars and plates\n7 ft ceiling here', '200 lot | ? bar, ? plate'],
  ['Gym gear $200\nBars\n\n7 ft ceiling here', '200 lot | ? bar'],
  ['Gym gear $200\nBars\n7 ft rack', '200 lot | ? bar, 1 rack'],
])('%s', (text, said) => expect(offer(text)).toBe(said));

it('gives each bar the length of its line', () =>
  expect(facts('Gym gear\nBars:\n- 7ft 45 lb, straight\n- 5ft 15 lb, bent').map((line) => line.split(' |')[0])).toEqual([
    'bar-1 lengthMm 2133.6',
    'bar-1 condition straight',
    'bar-2 lengthMm 1524',
    'bar-2 condition bent',
  ]));
