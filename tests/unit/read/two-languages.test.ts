/** Ads that mix English and German: the language is that of most of the sentences, and words of the other are read too. */
import { expect, it } from 'vitest';
import { offer, readText } from './goods.ts';

it.each([
  ['Selling my olympic Langhantel 20 kg and 4 Hantelscheiben 20 kg. Pick up in the evening.', 'en', '1 bar 20 kg, 4 plate 20 kg'],
  ['Hi, I sell my Hantelbank and Hantelscheiben, all in good condition. Abholung only.', 'en', '1 bench, ? plate'],
  [
    'Power Rack, with pull-up handles. Screws all there, bolted, no wackeln. Dazu Langhantel 20 kg und 100 kg Scheiben. Everything together 550 €. Abholung bis Monatsende.',
    'en',
    '1 rack, 1 bar 20 kg, ? plate (100 kg)',
  ],
  [
    'Verkaufe meine Bumper Plates, 2 x 25 kg, full rubber. Price is 2,50 € pro kg, no discussion please. Langhantel bleibt hier.',
    'de',
    '2 bumper 25 kg',
  ],
  // Of one language alone.
  ['Olympic plates 4x45 and a bar, an old bench. Cash only.', 'en', '4 plate 45 lb, 1 bar, 1 bench'],
  ['Langhantel 20 kg mit 4 Scheiben à 20 kg, Bench dazu.', 'de', '1 bar 20 kg, 4 plate 20 kg, 1 bench'],
])('%s', (text, language, wanted) => {
  expect(readText(text).language).toBe(language);
  expect(offer(text).replace(/^.*? \| /, '')).toBe(wanted);
});
