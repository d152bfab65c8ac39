/** What holds of every reading, and the same ad in other characters, over the whole corpus. Relations need no labels and no source. */
import { describe, it } from 'vitest';
import type { Reading } from '../../src/listing/reading.ts';
import { read } from '../../src/read/index.ts';
import { DISGUISES } from './disguises.ts';
import { doubtsTwice, essence, faultsOfForm } from './essence.ts';
import { type Ad, holds, holdsOfAll, rewritten } from './relation.ts';

describe('every reading', { timeout: 120_000 }, () => {
  const twice = 'two doubts about the asking price have the same id';
  it('cites spans inside its text that are not empty, and gives ids once', () =>
    holds(({ reading }) => [...faultsOfForm(reading), ...doubtsTwice(reading)], 300, {
      'bars-racks/cage-with-cable-attachment.txt': twice,
      'long/line-breaks-and-emphasis-moving-sale.html': twice,
      'negatives/griddle-plate-with-offer-data.html': twice,
    }));
  it('is the same the second time', () =>
    holds((ad) => (JSON.stringify(read(ad.listing)) === JSON.stringify(ad.reading) ? [] : ['differs']), 300));
});

describe('the same ad in other characters is read the same', { timeout: 120_000 }, () => {
  const differences = (ad: Ad, put: (text: string) => string): string[] | null => {
    const [text, title] = [put(ad.listing.text), put(ad.listing.title)];
    if (text === ad.listing.text && title === ad.listing.title) return null;
    // A place is known by its capitals: it may come and go with them, and is written as it is written.
    const same = (reading: Reading): object => ({ ...essence(reading), place: null });
    const [before, after] = [same(ad.reading), same(rewritten(ad, text, title))];
    return Object.entries(before)
      .filter(
        ([field, value]) => JSON.stringify(value) !== JSON.stringify(Object.entries(after).find(([name]) => name === field)?.[1]),
      )
      .map(([field]) => field);
  };
  for (const { name, put, except, defect } of DISGUISES) {
    const relation = (ad: Ad): string[] | null => differences(ad, put);
    if (defect === undefined) it(name, () => holds(relation, 30, except, 10));
    else it.fails(`${name}: ${defect}`, () => holds(relation, 30, except));
  }

  // The place is looked for in the text as it came, with the signs for spaces, quotes and marks that it came with.
  it.fails('place and all', () =>
    // Few ads show it.
    holdsOfAll(({ listing, reading }) => {
      if (reading.place === null) return null;
      const put = (text: string): string => text.replaceAll(' ', '\u00a0').replaceAll("'", '\u2019');
      const after = read({ ...listing, text: put(listing.text), title: put(listing.title) }).place;
      return after !== null && after.value.replaceAll('\u00a0', ' ') === reading.place.value ? [] : [reading.place.value];
    }, 5));
});
