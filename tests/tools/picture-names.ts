/**
 * The pictures that `npm run pictures` makes, in docs/pictures/. The README shows these, and a test sees that they are there. Those of
 * 1280 by 800 are for the stores too, which take five.
 */
export const PICTURES = [
  'beside-the-page.png',
  'what-is-wrong.png',
  'page-of-ads.png',
  'panel-light.png',
  'panel-dark.png',
  'finds.png',
  'side-by-side.png',
  'buy-list.png',
  'pickup.png',
] as const;

/** The same for the stores' pages in German. */
export const GERMAN_PICTURES = [
  'de/beside-the-page.png',
  'de/what-is-wrong.png',
  'de/page-of-ads.png',
  'de/buy-list.png',
  'de/pickup.png',
] as const;

export type Name = (typeof PICTURES)[number];
export type Language = 'en' | 'de';

/** Null where there is no such picture in the language. */
export function fileOf(folder: string, language: Language, name: Name): `${string}.png` | null {
  const inGerman = GERMAN_PICTURES.find((german) => german === `de/${name}`);
  return language === 'en' ? `${folder}/${name}` : inGerman === undefined ? null : `${folder}/${inGerman}`;
}

/** The small tile that a store shows of it in lists. */
export const TILE = 'tile.png';
