/** Tables with a row of headings: the column of counts and the columns of prices are read by their headings, whatever order they stand in. */
import type { Price, Quantity } from '../mention.ts';
import { blank, claim, type Scan, unitBetween, valueAt } from '../text/scan.ts';
import { isCount, isSize } from './notation.ts';

type Role = 'count' | 'each' | 'line' | 'weight' | 'other';
type Cell = readonly [from: number, to: number];

const COUNT_WORDS = /^(?:qty|quantity|how many|no|number|pieces|pcs|count|anzahl|menge|stk|stuck|x|units)$/;
const PRICE_WORDS = /^(?:price|preis|each|ea|cost|asking|per|je|stuckpreis|einzelpreis|apiece)$/;
const LINE_WORDS = /^(?:line|row|total|subtotal|sum|gesamt|summe|together|amount)$/;
const PRICED: readonly Role[] = ['count', 'each', 'line'];
const WEIGHT_WORDS = /^(?:weight|size|plate|plates|item|gewicht|scheibe|artikel|what|description|was)$/;

/** Lines of the text that hold cells: for each its cells as token ranges. */
function rowsOf(scan: Scan): Map<number, Cell[]> {
  const rows = new Map<number, Cell[]>();
  if (!scan.plain.includes('|')) return rows;
  let start = 0;
  let cells: Cell[] = [];
  for (let i = 0; i <= scan.plain.length; i += 1) {
    const letter = scan.plain[i] ?? 'l';
    if (letter !== '|' && letter !== 'l') continue;
    cells.push([start, i - 1]);
    start = i + 1;
    if (letter === 'l') {
      if (cells.length > 1) rows.set(scan.tokens[Math.max(0, i - 1)]?.line ?? 0, cells);
      cells = [];
    }
  }
  return rows;
}

function roleOf(scan: Scan, [from, to]: Cell): Role {
  const words = scan.tokens.slice(from, to + 1).flatMap((token) => token.text.split(' '));
  const whole = words.join(' ');
  if (words.some((word) => LINE_WORDS.test(word))) return 'line';
  if (
    COUNT_WORDS.test(whole) ||
    words.some((word) => COUNT_WORDS.test(word) && word !== 'x') ||
    scan.plain.slice(from, to + 1).includes('j')
  )
    return 'count';
  if (words.some((word) => PRICE_WORDS.test(word)) || scan.plain.slice(from, to + 1).includes('$')) return 'each';
  if (words.some((word) => WEIGHT_WORDS.test(word)) || unitBetween(scan, from, to)) return 'weight';
  return 'other';
}

/** The number that a cell is, perhaps with a currency or an x, or null. */
function numberIn(scan: Scan, [from, to]: Cell): number | null {
  const letters = scan.plain.slice(from, to + 1);
  if (!/^(?:\$?n\$?|x?n(?:x|j)?|d)$/.test(letters)) return null;
  for (let i = from; i <= to; i += 1) if ('nd'.includes(scan.plain[i] ?? '_')) return i;
  return null;
}

export function readTables(scan: Scan): { quantities: Quantity[]; prices: Price[] } {
  const quantities: Quantity[] = [];
  const prices: Price[] = [];
  // "Prices are per line" is told anywhere.
  const perLine = scan.tokens.some(({ term }) => term?.sense === 'per-line');
  let roles: Role[] | null = null;
  let headings: Cell[] = [];
  for (const cells of rowsOf(scan).values()) {
    const heading = cells.map((cell) => roleOf(scan, cell));
    const numbers = cells.filter((cell) => numberIn(scan, cell) !== null).length;
    if (numbers === 0 && heading.includes('count') && heading.length > 1) {
      roles = perLine && !heading.includes('line') ? heading.map((role) => (role === 'each' ? 'line' : role)) : heading;
      headings = cells;
      continue;
    }
    if (!roles) continue;
    readRow(scan, cells, roles, headings, quantities, prices);
  }
  return { quantities, prices };
}

function readRow(
  scan: Scan,
  cells: readonly Cell[],
  roles: readonly Role[],
  headings: readonly Cell[],
  quantities: Quantity[],
  prices: Price[],
): void {
  const [first] = cells;
  if (!first) return;
  // A row may lack its last cells when they are empty; a row that begins with "total" is no row of goods.
  const sums = cells.length < roles.length && scan.plain[first[0]] === 'L';
  const columns = sums || cells.length > roles.length || cells.length < 2 ? [] : roles.slice(0, cells.length);
  const at = (role: Role): Cell | undefined => cells[columns.indexOf(role)];
  const countAt = columns.includes('count') ? numberIn(scan, at('count') ?? first) : null;
  const count = countAt === null ? null : valueAt(scan, countAt);
  // The weight may stand in a column of its own beside the name of the goods, whatever its heading ("Each: 45 lb").
  const told = (cell: Cell, letters: RegExp): boolean => letters.test(scan.plain.slice(cell[0], cell[1] + 1));
  const weightCell =
    cells.find((cell) => told(cell, /n[uh]/)) ??
    cells.find((cell, index) => !PRICED.includes(columns[index] ?? 'other') && told(cell, /[nv]/));
  const nounCell = cells.find((cell) => told(cell, /k/));
  if ((weightCell || nounCell) && countAt !== null && isCount(count)) {
    readGoods(
      scan,
      {
        weightCell,
        nounCell,
        heading: weightCell ? headings[cells.indexOf(weightCell)] : undefined,
        row: [first[0], cells[cells.length - 1]?.[1] ?? first[1]],
      },
      count,
      quantities,
    );
    blank(scan, countAt);
    // What else stands in the row (subtotals in pounds) is no quantity.
    const priced = (token: number): boolean =>
      cells.some(
        (cell, index) =>
          PRICED.includes(columns[index] ?? 'other') &&
          columns[index] !== 'count' &&
          cell !== weightCell &&
          numberIn(scan, cell) !== null &&
          token >= cell[0] &&
          token <= cell[1],
      );
    for (let i = (weightCell ?? nounCell ?? first)[1] + 1; i <= (cells[cells.length - 1]?.[1] ?? 0); i += 1)
      if ('nuh'.includes(scan.letters[i] ?? '_') && columns.length > 0 && !priced(i)) blank(scan, i);
  }
  const total = cells.length < roles.length && scan.plain[first[0]] === 'L';
  const last = cells[cells.length - 1];
  const priceCells: readonly (readonly [Cell | undefined, Price['role']])[] = total
    ? [[last, 'all']]
    : at('line')
      ? [[at('line'), 'asking']]
      : [[at('each'), 'each']];
  for (const [cell, role] of priceCells) {
    const number = cell ? numberIn(scan, cell) : null;
    if (!cell || number === null) continue;
    const heading = headings[cells.indexOf(cell)];
    const currency = [
      ...(heading ? scan.tokens.slice(heading[0], heading[1] + 1) : []),
      ...scan.tokens.slice(cell[0], cell[1] + 1),
    ]
      .map(({ text, term }) => ({ $: 'USD', '€': 'EUR', '£': 'GBP' })[text] ?? term?.currency)
      .find(Boolean);
    prices.push({
      rule: 'table-price',
      from: cell[0],
      to: cell[1],
      amount: valueAt(scan, number) ?? 0,
      currency: currency ?? null,
      role,
      sure: true,
    });
    claim(scan, cell[0], cell[1], 'M');
  }
  // Further prices of the row say the same again.
  if (at('line') && at('each') && !total) for (let i = at('each')?.[0] ?? 0; i <= (at('each')?.[1] ?? -1); i += 1) blank(scan, i);
}

interface Goods {
  readonly weightCell: Cell | undefined;
  readonly nounCell: Cell | undefined;
  readonly heading: Cell | undefined;
  readonly row: Cell;
}

/** Weight and noun of a row, with the row's count. */
function readGoods(scan: Scan, { weightCell, nounCell, heading, row }: Goods, count: number, quantities: Quantity[]): void {
  const find = (cell: Cell | undefined, test: (at: number) => boolean): number | null => {
    for (let i = cell?.[0] ?? 1; i <= (cell?.[1] ?? 0); i += 1) if (test(i)) return i;
    return null;
  };
  const noun = find(nounCell, (i) => scan.plain[i] === 'k');
  const measured = (i: number): boolean => i < row[1] && 'f"\''.includes(scan.plain[i + 1] ?? 'l');
  const weight = find(weightCell, (i) => 'nv'.includes(scan.plain[i] ?? '_') && !measured(i));
  const unit =
    weight === null || !weightCell
      ? null
      : (unitBetween(scan, weight, weightCell[1]) ?? (heading ? unitBetween(scan, heading[0], heading[1]) : null));
  const value = weight === null ? null : valueAt(scan, weight);
  if (weightCell && weight !== null && value !== null && isSize(value, unit)) {
    const from = Math.min(weightCell[0], noun ?? weightCell[0]);
    const to = Math.max(weightCell[1], noun ?? weightCell[1]);
    quantities.push({ rule: 'table-row', from, to, count, weight: value, unit, noun });
    for (let i = weightCell[0]; i <= weightCell[1]; i += 1) if ('nuhqsv'.includes(scan.plain[i] ?? '_')) blank(scan, i);
    if (noun !== null) blank(scan, noun);
  } else if (noun !== null) scan.nounCounts.set(noun, count);
}
