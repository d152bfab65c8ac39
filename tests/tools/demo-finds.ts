/** The demo's ads as a buyer takes them from their pages, with how far he has to each place: for pictures of what is kept. */
import { JSDOM } from 'jsdom';
import { readElement } from '../../extension/capture/readers/index.ts';
import { judgedAsKept } from '../../extension/panel/judged-as-kept.ts';
import type { AdToKeep } from '../../extension/store/index.ts';
import { evaluate } from '../../src/evaluate.ts';
import { DEFAULT_SETTINGS } from '../../src/listing/settings.ts';

/** Miles from the buyer's own place to where an ad is. */
const MILES: Readonly<Record<string, number>> = {
  'Coldwater Flats': 18,
  'Ferry Bank': 6,
  'Mill Island': 11,
  'North Weir': 9,
  'Saltbox Hill': 24,
  'Tannery Row': 4,
  'Upper Quillby': 15,
};

export const milesTo = (place: string): number => {
  const miles = MILES[place];
  if (miles === undefined) throw new Error(`the demo has no distance to ${place}`);
  return miles;
};

/** Null of what looks for goods or is of another trade, and of an ad whose words are in a frame: they are not on its page. */
export async function demoFind(url: string, place: string): Promise<AdToKeep | null> {
  const page = new JSDOM(await (await fetch(url)).text(), { url });
  const main = page.window.document.querySelector('main');
  if (main === null || main.querySelector('iframe') !== null) return null;
  const { listing } = readElement(main, { origin: 'pick', address: url });
  const edits = { changes: [], distance: { value: milesTo(place), unit: 'mi' as const }, sellerAt: null };
  const { evaluation } = judgedAsKept(evaluate, { listing, edits }, DEFAULT_SETTINGS);
  page.window.close();
  return evaluation.reading.aboutThisTrade ? { listing, edits, evaluation } : null;
}
