/** The finds as CSV for a spreadsheet. */
import { json2csv } from 'csv42';
import { adAddress } from '../../src/again/index.ts';
import type { Find } from '../../src/finds/record.ts';
import { inMiles } from '../../src/units/length.ts';
import { inMajor, type Money } from '../../src/units/money.ts';

/**
 * A cell that a spreadsheet would take for a formula gets an apostrophe before it: those beginning with = + - @, tab or carriage return
 * (OWASP, "CSV Injection"), also in their full-width forms and behind blanks.
 */
export const harmless = (text: string): string =>
  /^\s*[=+\-@\t\r\uff1d\uff0b\uff0d\uff20]|^[\t\r]/.test(text) ? `'${text}` : text;

const day = (at: number): string => new Date(at).toISOString().slice(0, 10);
const major = (money: Money | null | undefined): number | '' => (money ? inMajor(money) : '');
const rounded = (value: number): number => Math.round(value * 100) / 100;

type Cell = string | number;

/** Columns by the tail of their heading's key, "store_csv_…". Numbers stay numbers; money is in major units. */
const COLUMNS: Readonly<Record<string, (find: Find) => Cell>> = {
  title: ({ title }) => title,
  status: ({ status }) => status,
  call: ({ summary }) => summary.call,
  price: ({ prices }) => major(prices.at(-1)),
  currency: ({ prices, summary }) => prices.at(-1)?.currency ?? summary.allIn?.currency ?? '',
  first_price: ({ prices }) => major(prices[0]),
  per_usable: ({ summary: { perUsable } }) =>
    perUsable ? rounded(inMajor({ minor: perUsable.likely, currency: perUsable.currency })) : '',
  per: ({ summary }) => summary.perUsable?.per ?? '',
  usable: ({ summary }) => rounded(summary.usable.likely),
  all_in: ({ summary: { allIn } }) => (allIn ? rounded(inMajor({ minor: allIn.likely, currency: allIn.currency })) : ''),
  saving: ({ summary }) => major(summary.saving),
  paid: ({ paid }) => major(paid),
  kinds: ({ summary }) => summary.kinds.join(', '),
  place: ({ summary }) => summary.place ?? '',
  distance: ({ summary }) => (summary.distance ? rounded(inMiles(summary.distance)) : ''),
  kept: ({ keptAt }) => day(keptAt),
  met: ({ metAt }) => day(metAt),
  address: ({ address }) => (adAddress(address) ? (address ?? '') : ''),
  notes: ({ notes }) => notes,
};

export const CSV_COLUMNS = Object.keys(COLUMNS);

/** One line per find, RFC 4180, with a byte order mark, by which spreadsheets know UTF-8. `heading` gives the words over a column. */
export function findsCsv(finds: readonly Find[], heading: (column: string) => string): string {
  const fields = Object.entries(COLUMNS).map(([name, cell]) => ({
    name: harmless(heading(name)),
    getValue: (find: Find): Cell => {
      const value = cell(find);
      return typeof value === 'string' ? harmless(value) : value;
    },
  }));
  return `\ufeff${json2csv([...finds], { fields })}`;
}
