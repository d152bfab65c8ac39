/**
 * Bars told line by line under a heading, without their noun: "BARS", then "7 ft olympic, straight, $80 each, have 2", "5 ft standard, 15 lb".
 * A line that begins with a length is one of them; a line that names goods of its own is read like any other.
 */
import type { Kind } from '../../listing/reading.ts';
import type { Quantity } from '../mention.ts';
import { blank, type Scan, valueAt } from '../text/scan.ts';
import { isCount, weightAt } from './notation.ts';

const BARS: readonly (Kind | undefined)[] = ['bar', 'curl-bar', 'hex-bar'];
/** A line of nothing but the heading. */
const HEADING = /^[•-]?m{0,2}k[:-]?$/;
/** Length first, with a mark of the list or a make before it. */
const LINE = /^[•-]?(?:\(?n\)?x?)?m{0,2}n[-]?[f'][^k]{0,60}$/;
/** "have 2", "x2", "2 available", "(2)", and "2 - 7 ft", "(2) 7 ft" before the length. */
const COUNT = /%([nd])(?=[,.;l)]|$)|(?<![$\d])x([nd])(?![unf'$¢])|([nd])&|(?<=[,m])\(([nd])\)/d;
const COUNT_FIRST = /^[•-]?\(?([nd])(?:\)|x|-|p)/d;
const WEIGHT = /(?<![$n-])(n[-]?[uh])(?![-/]?n)/d;

interface Row {
  readonly from: number;
  readonly letters: string;
}

function rowsOf(scan: Scan): Row[] {
  let from = 0;
  return scan.plain.split('l').map((letters) => {
    const row = { from, letters };
    from += letters.length + 1;
    return row;
  });
}

const headingOf = (scan: Scan, { from, letters }: Row): number | null => {
  const at = from + letters.indexOf('k');
  const term = scan.tokens[at]?.term;
  return HEADING.test(letters) && BARS.includes(term?.kind) && term?.plural ? at : null;
};

export function readHeadedBars(scan: Scan): Quantity[] {
  const found: Quantity[] = [];
  let noun: number | null = null;
  for (const row of rowsOf(scan)) {
    const heading = headingOf(scan, row);
    if (heading !== null || !LINE.test(row.letters)) {
      // Lines of other goods may stand between; an empty one ends the list.
      if (heading !== null || row.letters === '') noun = heading;
      continue;
    }
    if (noun === null) continue;
    const first = COUNT_FIRST.exec(row.letters)?.indices?.[1]?.[0];
    const behind = COUNT.exec(row.letters)
      ?.indices?.slice(1)
      .find((place) => place !== undefined)?.[0];
    const at = first ?? behind;
    const told = at === undefined ? 1 : valueAt(scan, row.from + at);
    const place = WEIGHT.exec(row.letters)?.indices?.[1];
    const weight = place ? weightAt(scan, row.from + place[0], row.from + place[1] - 1) : null;
    if (!isCount(told)) continue;
    const count = at !== undefined && row.letters[at + 1] === 'p' ? told * 2 : told;
    const start = row.from + row.letters.search(/[^•-]/);
    found.push({
      rule: 'headed-line',
      from: start,
      to: start,
      count,
      countImplied: at === undefined,
      weight: weight?.value ?? null,
      unit: weight?.unit ?? null,
      noun,
    });
    if (at !== undefined) blank(scan, row.from + at);
    if (place) for (let i = place[0]; i < place[1]; i += 1) blank(scan, row.from + i);
    blank(scan, noun);
  }
  return found;
}
