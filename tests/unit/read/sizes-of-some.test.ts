/** Holes and sleeves told of some goods, of all, or by the ring in a plate. Phrases that sellers write: common practice, no source. */
import { expect, it } from 'vitest';
import { readText } from './goods.ts';

/** "plate 45: 50mm; plate 10: 25mm bore 25.4". */
const sizes = (text: string): string =>
  readText(text)
    .items.map(({ kind, unitWeight, fits, boreMm, shaftMm, lengthMm }) => {
      const told = [
        fits?.value,
        boreMm && `bore ${boreMm.value}`,
        shaftMm && `shaft ${shaftMm.value}`,
        lengthMm && `${lengthMm.value}`,
      ];
      return `${kind.value}${unitWeight ? ` ${unitWeight.value.value}` : ''}: ${told.filter(Boolean).join(' ') || '?'}`;
    })
    .join('; ');

it.each([
  ['plates: 4x45 have the 2" hole, 4x10 have the 1" hole', 'plate 45: 50mm bore 50.8; plate 10: 25mm bore 25.4'],
  ['4x45 2 inch and 4x10 1 inch plates', 'plate 45: 50mm; plate 10: 25mm'],
  ['4x45 olympic, 4x10 standard plates', 'plate 45: 50mm; plate 10: 25mm'],
  ['4 25s 4 10s 2 5s, 2 inch. 80 cents a lb', 'plate 25: 50mm; plate 10: 50mm; plate 5: 50mm'],
  ['All 2 inch: 4x45, 2x25 plates', 'plate 45: 50mm; plate 25: 50mm'],
  ['everything is 1 inch. bar, 4x10 plates', 'bar: 25mm; plate 10: 25mm'],
  ['bumpers 2" steel insert, 2x45', 'bumper 45: 50mm'],
  ['bumpers stainless insert 50.4 mm 2x20 kg', 'bumper 20: 50mm bore 50.4'],
  ['2 Hantelscheiben 20 kg 50 mm zusammen 60 €', 'plate 20: 50mm'],
  ['Scheiben 4 x 10 kg für 30er Stange', 'plate 10: 25mm'],
  ['2" axle 7ft (25lb)', 'bar 25: shaft 50.8 2133.6'],
  ['Two bars: one olympic 7ft 45lb, one standard 5ft 15 lb', 'bar 45: 50mm 2133.6; bar 15: 25mm 1524'],
  ['None are bent, all have 2" sleeves. Curl bar 20 lb, trap bar 45 lb', 'curl-bar 20: 50mm; hex-bar 45: 50mm'],
  ['BARS\n12 mens, 20kg, 28mm\n7 womens, 15kg, 25mm', 'bar 20: shaft 28; bar 15: shaft 25'],
  // No size of a hole.
  ['4x45 plates, bench pad is 2 inch thick', 'plate 45: ?'],
  ['squat rack of 2 inch tubing, 4x45 plates', 'rack: ?; plate 45: ?'],
  ['4x45 plates, ring me, 2 left', 'plate 45: ?'],
])('%s', (text, wanted) => expect(sizes(text)).toBe(wanted));
