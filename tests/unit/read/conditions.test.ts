/** Conditions with degree, denial and hearsay, and whom they speak of. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { facts } from './goods.ts';

/** Text of the ad, then the conditions and materials read of its goods, each with its rule. */
const SAID: readonly (readonly [string, ...string[]])[] = [
  [
    'barbell 45 lb, never bent, spins freely',
    'bar-1 condition straight | condition | never bent',
    'bar-1 condition spins | condition | spins freely',
  ],
  [
    'barbell 45 lb. Bend: none. Rust: none.',
    'bar-1 condition straight | condition-denied | Bend',
    'bar-1 condition no-rust | condition-denied | Rust',
  ],
  ['4 x 45 lb plates, pretty much new', 'plate-1 condition like-new | condition | pretty much new'],
  ['4 x 45 lb plates, pretty much new to this'],
  ['4 x 45 lb plates, a few specks of rust', 'plate-1 condition rust-light | condition | rust'],
  ['4 x 45 lb plates, rusted pretty bad', 'plate-1 condition rust-heavy | condition | rusted'],
  ['4 x 45 lb plates, not much rust', 'plate-1 condition rust-light | condition-denied | rust'],
  ['4 x 45 lb plates, not chipped or cracked, no rust', 'plate-1 condition no-rust | condition-denied | rust'],
  [
    'no rust, cracks or bends: barbell',
    'bar-1 condition no-rust | condition-denied | rust',
    'bar-1 condition straight | condition-denied | bends',
  ],
  ['I do not know if the barbell is bent'],
  ['6 barbells, some may be bent'],
  ['I think the barbell is straight', 'bar-1 condition straight | condition | is straight'],
  ['straight olympic bar 45 lb'],
  ['power rack, brand new in box', 'rack-1 condition new | condition | brand new'],
  ['power rack, $900 new, asking $400'],
  ['selling my power rack, new owner of a house'],
  ['barbell spins like new', 'bar-1 condition spins | condition | spins like new'],
  [
    'Everything was kept in a dry basement. Power rack, 4 x 45 lb plates, barbell with collars',
    'rack-1 condition stored-indoors | condition | dry basement',
    'plate-1 condition stored-indoors | condition | dry basement',
    'bar-1 condition stored-indoors | condition | dry basement',
    'collars-1 condition stored-indoors | condition | dry basement',
  ],
  [
    'None of it has been outside. Power rack and barbell',
    'rack-1 condition stored-indoors | condition-denied | been outside',
    'bar-1 condition stored-indoors | condition-denied | been outside',
  ],
  [
    'The plates have been under a tarp. 4 x 45 lb plates, barbell',
    'plate-1 condition stored-outdoors | kept-at | been under a tarp',
  ],
  ['pick up at the garage: barbell'],
  ['2 x 45 lb plates, rusty, 2 x 25 lb plates', 'plate-1 condition rust | condition | rusty'],
  ['surface rust on the 45s. 2 x 45 lb plates, 2 x 25 lb plates', 'plate-1 condition rust-light | condition | rust'],
  [
    '2 x 45 lb plates, 2 x 25 lb plates. Some rust on the 45s, the rest have no rust',
    'plate-1 condition rust | condition | rust',
    'plate-2 condition no-rust | condition-denied | rust',
  ],
  ['2 x 45 lb plates, barbell, light rust on the knurl', 'bar-1 condition rust-light | condition | rust'],
  ['flat bench, power rack, rip in the seat', 'bench-1 condition torn | condition | rip in the seat'],
  ['Power rack: 3x3, one safety pin missing\n2 x 45 lb plates\nbarbell', 'rack-1 condition missing-parts | condition | missing'],
  ['2 x 45 lb plates\nbarbell, 7 ft. Slight rust.\npower rack', 'bar-1 condition rust-light | condition | rust'],
  ['2 x 45 lb plates, 3 x 10 lb, one has no mate', 'plate-2 condition odd | condition | has no mate'],
  ['rack bolted to the floor'],
  ['rack bolts together', 'rack-1 condition bolted | condition | bolts together'],
  ['2 x 45 lb cast iron plates and a barbell', 'plate-1 material iron | make | cast iron'],
  [
    'barbell and plates: 2 x 45 lb, 2 x 25 lb, all cast iron',
    'plate-1 material iron | make | cast iron',
    'plate-2 material iron | make | cast iron',
  ],
  ['2 x 45 lb bumpers with steel rings, kept on rubber mats'],
  ['2 x 25 lb plates, plastic filled with cement', 'plate-1 material cement | make | filled with cement'],
  ['flat bench, vinyl has a tear, and 2 x 25 lb plates', 'bench-1 condition torn | condition | tear'],
  ['vinyl barbell set: 2 x 25 lb plates and bar', 'plate-1 material vinyl | make | vinyl'],
  ['2 x 45 lb plates, not rubber'],
];

describe('conditions.ts, newness.ts, attach-conditions.ts, attach-materials.ts', () => {
  it.each(SAID)('%s', (text, ...said) => {
    expect(facts(text).filter((line) => / (?:condition|material) /.test(line))).toEqual(said);
  });
});
