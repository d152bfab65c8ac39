/** Lines that speak for themselves may change places or go, over the whole corpus. */
import { describe, it } from 'vitest';
import { read } from '../../src/read/index.ts';
import { spansOf } from './essence.ts';
import { type Ad, holds, keyOf, keys, rewritten } from './relation.ts';
import { moneyOf } from './rescale.ts';
import { linesOf, simpleRuns } from './simple-lines.ts';

const without = (text: string, line: { start: number; end: number }): string =>
  text.slice(0, line.start) + text.slice(line.end + 1);

describe('lines that speak for themselves', { timeout: 120_000 }, () => {
  it('may stand in any order', () =>
    holds(
      ({ listing, reading }) => {
        const runs = simpleRuns(listing.text);
        if (runs.length === 0 || reading.items.length === 0) return null;
        const lines = linesOf(listing.text).map(({ text }) => text);
        const starts = linesOf(listing.text).map(({ start }) => start);
        for (const run of runs) {
          const turned = [...run].reverse();
          for (const [index, line] of run.entries()) lines[starts.indexOf(line.start)] = turned[index]?.text ?? '';
        }
        const after = read({ ...listing, text: lines.join('\n') });
        const same = JSON.stringify(keys(reading)) === JSON.stringify(keys(after));
        return same && moneyOf(after)[0] === moneyOf(reading)[0] ? [] : [`${keys(reading)} became ${keys(after)}`];
      },
      40,
      {
        's5/box-closing-everything-must-go.txt':
          'DEFECT: of prices that headings give for their lines the first alone is taken for all',
      },
    ));

  const lost = ({ listing, reading }: Ad, line: { start: number; end: number }): string[] => {
    const shift = reading.text.length - listing.text.length;
    const within = ({ start, end }: { start: number; end: number }): boolean =>
      start - shift <= line.end && end - shift > line.start;
    const left = keys(rewritten({ name: '', listing, reading }, without(listing.text, line)));
    return reading.items.filter((item) => !item.evidence.some(within) && !left.includes(keyOf(item))).map(keyOf);
  };

  it('may go without taking other goods along', () =>
    holds(
      (ad) => {
        const runs = simpleRuns(ad.listing.text).filter((run) => run.length > 2);
        return runs.length === 0 || ad.reading.items.length === 0 ? null : runs.flat().flatMap((line) => lost(ad, line));
      },
      30,
      {
        's6/long-per-pound-seller-explains.txt':
          '"the 35s are all one make" speaks of a line of the list, without which nobody knows how many they are, and so what all of it costs',
      },
    ));

  it('that nothing was read from take nothing along when they go', () =>
    holds(
      (ad) => {
        const shift = ad.reading.text.length - ad.listing.text.length;
        const spans = spansOf(ad.reading);
        // A table's headings say what its columns are, and are cited for none of them.
        const silent = linesOf(ad.listing.text).filter(
          ({ text, start, end }) =>
            text.trim() !== '' &&
            !text.includes('\t') &&
            !spans.some((span) => span.start - shift <= end && span.end - shift > start),
        );
        return silent.length === 0 || ad.reading.items.length === 0 ? null : silent.flatMap((line) => lost(ad, line));
      },
      50,
      {
        'hand/garage-flip-buying-selling-iron.txt': 'the heading "BARS" says what its lines are, and is cited for none of them',
        'long/dealer-page-item-cards.html': '"Six in stock" counts goods of the line before and is not cited for it',
        's6/de-umzug-hantelbank-und-schrank.txt': 'DEFECT: "die Bank" of the text below is read as another bench',
        'long/nested-divs-phone-app-page.html': 'the heading over the next ads tells where this one ends',
      },
    ));
});
