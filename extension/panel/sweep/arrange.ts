/** Sorting and filtering the list. Pure. */
import type { Kind } from '../../../src/listing/reading.ts';
import type { Row, Verdict } from './rows.ts';

export const ORDERS = ['page', 'cost', 'call', 'saving', 'distance'] as const;
export type Order = (typeof ORDERS)[number];

export const VERDICTS = ['go', 'haggle', 'ask', 'leave', 'unsaid', 'wanted', 'other'] as const satisfies readonly Verdict[];

export interface Filter {
  /** Words that the ad must have, all of them, in any case. */
  readonly text: string;
  readonly verdict: Verdict | 'all';
  readonly kind: Kind | 'all';
}

export const NO_FILTER: Filter = { text: '', verdict: 'all', kind: 'all' };

/** What is not known comes last. */
const ascending = (of: (row: Row) => number | null) => (a: Row, b: Row) => {
  const [left, right] = [of(a), of(b)];
  if (left === null || right === null) return Number(left === null) - Number(right === null);
  return left - right;
};

const COMPARE: Readonly<Record<Exclude<Order, 'page'>, (a: Row, b: Row) => number>> = {
  cost: ascending(({ cost }) => cost),
  call: ascending(({ verdict }) => VERDICTS.indexOf(verdict)),
  saving: ascending(({ saving }) => (saving === null ? null : -saving)),
  distance: ascending(({ distance }) => distance),
};

/** The rows that pass, in order; equal ones stay in the order of the page. */
export function arrange(rows: readonly Row[], filter: Filter, order: Order): Row[] {
  const wanted = filter.text.toLowerCase().split(/\s+/).filter(Boolean);
  const passing = rows.filter(({ verdict, kinds, listing }) => {
    if (filter.verdict !== 'all' && verdict !== filter.verdict) return false;
    if (filter.kind !== 'all' && !kinds.includes(filter.kind)) return false;
    if (wanted.length === 0) return true;
    const words = `${listing.title}\n${listing.text}`.toLowerCase();
    return wanted.every((word) => words.includes(word));
  });
  return order === 'page' ? passing : passing.sort(COMPARE[order]);
}

/** Kinds of equipment that the list has, in the order of the trade's list. */
export const kindsIn = (rows: readonly Row[], all: readonly Kind[]): Kind[] => {
  const found = new Set(rows.flatMap(({ kinds }) => kinds));
  return all.filter((kind) => found.has(kind));
};
