/** Words of condition and make, with denial and hearsay. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { facts, readText } from './goods.ts';

const CONDITIONS: readonly (readonly [string, ...string[]])[] = [
  ['barbell, bent', 'condition bent'],
  ['barbell, not bent', 'condition straight'],
  ['barbell, slight bend', 'condition bent'],
  ['barbell, no bends', 'condition straight'],
  ['barbell is straight', 'condition straight'],
  ['barbell, spins true', 'condition straight'],
  ["barbell, sleeves don't spin", 'condition seized-sleeves'],
  ['barbell, sleeves spin freely', 'condition spins'],
  ['barbell, sleeves are seized', 'condition seized-sleeves'],
  ['barbell, never been left outside', 'condition stored-indoors'],
  ['barbell, no rust, bent', 'condition no-rust', 'condition bent'],
  ['4x45 plates, no rust', 'condition no-rust'],
  ['4x45 plates, light rust', 'condition rust-light'],
  ['4x45 plates, surface rust', 'condition rust-light'],
  ['4x45 plates, rusty', 'condition rust'],
  ['4x45 plates, heavy rust', 'condition rust-heavy'],
  ['4x45 plates, no sign of rust', 'condition no-rust'],
  ['4x45 plates, no rust, cracks or chips', 'condition no-rust'],
  ['4x45 plates, one is cracked', 'condition cracked'],
  ['4x45 plates, not cracked'],
  ['4x45 plates, repainted', 'condition repainted'],
  ['4x45 plates, brand new', 'condition new'],
  ['4x45 plates, like new', 'condition like-new'],
  ['4x45 plates, stored in garage', 'condition stored-indoors'],
  ['4x45 plates, left outside', 'condition stored-outdoors'],
  ['power rack, welded', 'condition welded'],
  ['power rack, bolts together', 'condition bolted'],
  ['power rack, homemade', 'condition home-made'],
  ['power rack, missing a bolt', 'condition missing-parts'],
  ['bench, torn pad', 'condition torn'],
  ['bench, a little wobbly', 'condition wobbly'],
  ['bench, not wobbly'],
  ['bumper plates 2x45, split hub', 'condition split-hub'],
  ['4x45 iron plates', 'material iron'],
  ['4x45 rubber coated plates', 'material rubber', 'grade rubber-coated'],
  ['2x20kg bumpers, urethane', 'material urethane'],
  ['4x45 machined plates', 'grade machined'],
  ['2x20kg calibrated plates', 'grade calibrated'],
  ['vinyl weights 4x10', 'material vinyl'],
];

describe('conditions.ts', () => {
  it.each(CONDITIONS)('%s', (text, ...said) =>
    expect(facts(text).map((line) => line.replace(/^\S+ /, '').split(' | ')[0])).toEqual(said),
  );

  it('says which word was read, and whether it was denied', () => {
    expect(facts('barbell, slight bend')).toEqual(['bar-1 condition bent | condition | slight bend']);
    expect(facts('barbell, no bends')[0]).toContain('| condition-denied | ');
  });

  // The highlighted word would say the contrary of the value.
  it.fails('cites the denial with the word', () =>
    expect(facts('barbell, not bent')).toEqual(['bar-1 condition straight | condition-denied | not bent']));

  it('takes hearsay for no statement', () => {
    const basis = (text: string): string[] =>
      readText(text).items.flatMap(({ conditions }) => conditions.map((fact) => fact.basis));
    expect(basis('barbell, I think it is straight')).toEqual(['implied']);
    expect(basis('barbell, it is straight')).toEqual(['stated']);
  });
});
