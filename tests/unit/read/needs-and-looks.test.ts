/** Needing, buying and wall racks in ads that sell, and things that only look like a barbell. Forms that sellers write: common practice, no source. */
import { expect, it } from 'vitest';
import { readText } from './goods.ts';

it.each([
  "I've got more than I need after buying out a neighbour. Full rack and 4x45 plates. Everything for $700",
  'More than I need: bench and weights, $60',
  'Selling after buying a bigger rack. Half rack, $200',
  'Habe mehr als ich brauche: Hantelbank und 4x20 kg Scheiben, 120 €',
])('sells: %s', (text) => expect(readText(text)).toMatchObject({ wanted: false, aboutThisTrade: true }));

it.each(['I need two 45 lb plates, paying $40 each', 'Buying old weights, any condition'])('seeks: %s', (text) =>
  expect(readText(text).wanted).toBe(true),
);

it.each([
  'Folding wall rack w/ stringer boards & hardware. One bolt missing. Asking $290',
  'Olympic barbell, some marks. Came with a metal sign too. $150',
])('is of the trade: %s', (text) => expect(readText(text).aboutThisTrade).toBe(true));

it.each([
  'Folding wall rack for coats and hats. $20',
  'Wall decor, metal sign of a barbell, 36 inches long, black. Hooks on the back. Not a real barbell. $18',
  'Barbell wall art, wood. $25',
  'Metal sign with a dumbbell on it, 20 inches $15',
  'Wanddeko Langhantel aus Holz, 80 cm. 20 €',
])('is not: %s', (text) => expect(readText(text).aboutThisTrade).toBe(false));
