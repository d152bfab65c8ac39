/** The pictures that `npm run pictures` makes, in docs/pictures/. The README shows these, and a test sees that they are there. */
export const PICTURES = [
  'beside-the-page.png',
  'panel-light.png',
  'panel-dark.png',
  'finds.png',
  'side-by-side.png',
  'kit.png',
  'buy-list.png',
  'pickup.png',
] as const;

/** The same for the stores' pages in German. */
export const GERMAN_PICTURES = [
  'de/beside-the-page.png',
  'de/finds.png',
  'de/side-by-side.png',
  'de/kit.png',
  'de/buy-list.png',
] as const;

/** The small tile that a store shows of it in lists. */
export const TILE = 'tile.png';
