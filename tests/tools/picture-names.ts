/** The pictures that `npm run pictures` makes. The README shows them, and a test sees that they are there. */
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
