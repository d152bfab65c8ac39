/** Whom a condition speaks of, and words that are none of the goods. Forms that sellers write: common practice, no source. */
import { expect, it } from 'vitest';
import { readText } from './goods.ts';

/** "bar-1 bent, plate-2 rust-light". */
const said = (text: string): string =>
  readText(text)
    .items.flatMap(({ id, conditions }) => conditions.map(({ value }) => `${id} ${value}`))
    .join(', ');

it.each([
  ['1 inch bar (5ft) and 4x10kg 2x5kg plates. bit rusty on the bar but plates r fine.', 'bar-1 rust-light'],
  ['Plates: 4 x 45 lb deep dish. 2 x 25 lb flat. The deep dish ones have old paint and no rust to speak of.', 'plate-1 no-rust'],
  ["Olympic bar, bent a bit. $30\nAnother olympic bar that is straight, 7', 45 lb. $100", 'bar-1 bent, bar-2 straight'],
  [
    "I have two bars. One's a good bar, 7 ft, straight as a string. The other is a beater and it has a bend in it.",
    'bar-1 straight, bar-2 bent',
  ],
  ['Two olympic bars, one has a bow in it the other is straight', 'bar-1 bent, bar-2 straight'],
  ['Power bar 45 lb $125. Two olympic bars, both bent, $35 each.', 'bar-2 bent'],
  ['One 100 lb dumbbell. Hex, rubber, handle bent from being dropped off a truck.', 'dumbbell-1 bent'],
  ['Olympic bar 35 lb. Collars spin fine.', 'bar-1 spins'],
  ["yes they are olympic plates 4x45, no they don't match", 'plate-1 mismatched'],
  [
    '1 inch curl bar, screw collars, 4 10s and 4 5s. All stored in the shop, no rust.',
    'curl-bar-1 stored-indoors, curl-bar-1 no-rust, collars-1 stored-indoors, plate-1 stored-indoors, plate-1 no-rust, plate-2 stored-indoors, plate-2 no-rust',
  ],
  ['Hantelbank mit Langhantelablage, klappbar, wackelt etwas.', 'bench-1 wobbly'],
  ['SZ-Stange 120 cm, Langhantel 180 cm. Die lange ist minimal krumm.', 'bar-1 bent'],
  ['Trap Bar, selbst geschweißt, 20 kg', 'hex-bar-1 home-made, hex-bar-1 welded'],
  ['Two 45 lb plates. One has a split at the hub.', 'plate-1 split-hub'],
])('%s', (text, conditions) => expect(said(text).split(', ').sort()).toEqual(conditions.split(', ').sort()));

it.each([
  ['- Adjustable bench, goes from flat up to almost straight\n- Olympic bar, 45 lb'],
  ['EZ curl bar + straight bar. The curly one is 4 ft long and the straight one is 5 ft.'],
  ['7ft olympic bar. I think its straight but cant promise.'],
  ['bumper plates 2x25 kg. $600 firm, they were eleven hundred new.'],
  ['Half rack $375. Trampoline mini, one leg cap missing'],
  ['Olympic barbells, 7 ft, quantity 8. Various makers.\nOlympic plates, 45 lb, quantity 24.'],
  ['Power rack. I lost the argument. Breaks down flat for transport.'],
  ['Half rack. The leg part was in the box, never used that part.'],
])('of none: %s', (text) => expect(said(text)).toBe(''));
