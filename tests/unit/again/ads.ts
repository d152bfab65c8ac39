/** Invented ads of one seller each, in several postings. */

import { type Mark, markOf } from '../../../src/again/index.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';

export const marked = (text: string, title = '', address: string | null = null): Mark =>
  markOf({ ...listingFromText(text), title, address });

export const GARAGE = `Clearing out the garage before we move.
Six cast iron plates of 45 lb each, two of 25 lb and a pair of 10s. Holes measured at 50.6 mm.
Kept dry, a little rust on the rims, nothing that a wire brush will not take off.
Also a 7 ft bar, 45 lb, sleeves spin, rolled it on the floor and it is straight.
$260 for everything. Collect from Elmwick after work, bring somebody to help carry.`;

export const RACK = `Power rack, 3x3 tubing, 84 in tall, with two safety pins and four hooks.
Bolted together, will be taken apart for you. One bolt is new.
Bench goes with it, flat, 17 in high, the cover has a tear at the foot end.
Asking 350 for both, will not split. Cash only, no holds.`;

export const GERMAN = `Verkaufe wegen Umzug vier Gusseisenscheiben zu je 20 kg und zwei zu 10 kg, Bohrung 51 mm.
Dazu eine Langhantel 2,20 m, 20 kg, gerade, die Hülsen laufen leicht.
Alles trocken gelagert, etwas Flugrost. Nur Abholung, 180 € VB.`;

type Edit = (text: string) => string;

/** What sellers do to an ad when they post it again. */
export const REPOSTS: readonly (readonly [string, Edit])[] = [
  ['as it was', (text) => text],
  ['another price', (text) => text.replace('$260', '$210').replace('Asking 350', 'Asking 300').replace('180 €', '150 €')],
  [
    'price in front',
    (text) =>
      `$199 obo\n${text.replace('$260 for everything.', '').replace('Asking 350 for both,', '').replace(', 180 € VB', '')}`,
  ],
  ['lines in another order', (text) => text.split('\n').reverse().join('\n')],
  ['a call for attention', (text) => `REDUCED!!! Still available.\n${text}\nMust go by Sunday 6 pm, call 555-0142.`],
  ['all capitals', (text) => text.toUpperCase()],
  ['no line breaks', (text) => text.replaceAll('\n', ' ')],
  ['signs added', (text) => text.replaceAll('\n', '\n*** ').replaceAll(', ', ' , ')],
  ['a sentence added', (text) => `${text}\nI am home most evenings and can load your car from the drive.`],
  [
    'some words changed',
    (text) => text.replace('little', 'bit of').replace('taken apart', 'dismantled').replace('etwas', 'leichter'),
  ],
  [
    'numbers in digits',
    (text) => text.replace('Six', '6').replace('two', '2').replace('four hooks', '4 hooks').replace('vier', '4'),
  ],
];

/** The same wording with other goods: other ads, of the same seller perhaps. */
export const OTHERS: readonly (readonly [string, string])[] = [
  [GARAGE, GARAGE.replace('Six', 'Four')],
  [GARAGE, GARAGE.replace('45 lb each', '35 lb each')],
  [GARAGE, GARAGE.replace('two of 25 lb', 'two of 35 lb')],
  [GARAGE, GARAGE.replace('7 ft bar, 45 lb', '5 ft bar, 25 lb')],
  [GARAGE, GARAGE.replace('Six', 'Two').replace('two of 25', 'six of 25')],
  [RACK, RACK.replace('84 in', '72 in')],
  [RACK, RACK.replace('3x3', '2x3')],
  [RACK, RACK.replace('17 in', '19 in')],
  [GERMAN, GERMAN.replace('20 kg und zwei zu 10 kg', '15 kg und zwei zu 5 kg')],
  [GERMAN, GERMAN.replace('vier', 'acht')],
  [GERMAN, GERMAN.replace('51 mm', '31 mm')],
  // Different sellers of the same goods.
  [
    GARAGE,
    'Six 45 lb cast iron plates, two 25 lb, two 10 lb, with a 7 ft bar of 45 lb. Holes 50.6 mm. Rust here and there. $260.',
  ],
  [RACK, 'Squat cage for sale, 3x3 steel, 84 in high, pins and hooks included, comes with a 17 in flat bench. 350 takes both.'],
];
