/** The finds as CSV for a spreadsheet. */
import { json2csv } from 'csv42';
import { adAddress } from '../../src/again/index.ts';
import type { Find } from '../../src/finds/record.ts';
import { inMiles } from '../../src/units/length.ts';
import { inMajor, type Money } from '../../src/units/money.ts';
import { today } from '../components/today.ts';

/**
 * A cell that a spreadsheet would take for a formula gets an apostrophe before it: those beginning with = + - @, tab or carriage return
 * (OWASP, "CSV Injection"), also in their full-width forms and behind blanks.
 */
export const harmless = (text: string): string =>
  /^\s*[=+\-@\t\r\uff1d\uff0b\uff0d\uff20]|^[\t\r]/.test(text) ? `'${text}` : text;

const major = (money: Money | null | undefined): number | '' => (money ? inMajor(money) : '');
const rounded = (value: number): number => Math.round(value * 100) / 100;

type Cell = string | number;

/** The words for a key of the strings. */
export type WordsFor = (key: string) => string;

const day = (at: number): string => today(new Date(at));

const perWords = (per: 'lot' | 'lb' | 'kg' | undefined, words: WordsFor): string =>
  per === 'lot' ? words('panel_per_lot') : (per ?? '');

/** Columns by the key of their heading. Numbers stay numbers; money is in major units; days are the buyer's own, as on the screens. */
const COLUMNS: Readonly<Record<string, (find: Find, words: WordsFor) => Cell>> = {
  store_csv_title: ({ title }) => title,
  store_csv_status: ({ status }, words) => words(`finds_status_${status}`),
  store_csv_call: ({ summary }, words) => words(`finds_call_${summary.call}`),
  store_csv_price: ({ prices }) => major(prices.at(-1)),
  store_csv_currency: ({ prices, summary }) => prices.at(-1)?.currency ?? summary.allIn?.currency ?? '',
  store_csv_first_price: ({ prices }) => major(prices[0]),
  store_csv_per_usable: ({ summary: { perUsable } }) =>
    perUsable ? rounded(inMajor({ minor: perUsable.likely, currency: perUsable.currency })) : '',
  store_csv_per: ({ summary }, words) => perWords(summary.perUsable?.per, words),
  store_csv_usable: ({ summary }) => rounded(summary.usable.likely),
  store_csv_all_in: ({ summary: { allIn } }) =>
    allIn ? rounded(inMajor({ minor: allIn.likely, currency: allIn.currency })) : '',
  store_csv_saving: ({ summary }) => major(summary.saving),
  store_csv_paid: ({ paid }) => major(paid),
  store_csv_kinds: ({ summary }, words) =>
    summary.kinds.map((kind) => words(`panel_kind_${kind.replaceAll('-', '_')}`)).join(', '),
  store_csv_place: ({ summary }) => summary.place ?? '',
  store_csv_distance: ({ summary }) => (summary.distance ? rounded(inMiles(summary.distance)) : ''),
  store_csv_kept: ({ keptAt }) => day(keptAt),
  store_csv_met: ({ metAt }) => day(metAt),
  store_csv_address: ({ address }) => (adAddress(address) ? (address ?? '') : ''),
  store_csv_notes: ({ notes }) => notes,
};

/** One line per find, RFC 4180, with a byte order mark, by which spreadsheets know UTF-8. */
export function findsCsv(finds: readonly Find[], words: WordsFor): string {
  const fields = Object.entries(COLUMNS).map(([name, cell]) => ({
    name: harmless(words(name)),
    getValue: (find: Find): Cell => {
      const value = cell(find, words);
      return typeof value === 'string' ? harmless(value) : value;
    },
  }));
  return `\ufeff${json2csv([...finds], { fields })}`;
}
