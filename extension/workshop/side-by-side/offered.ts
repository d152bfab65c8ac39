/** What several lots offer, in the same rows: one row for each kind and weight that any of them has. Pure. */
import { type Item, KINDS } from '../../../src/listing/reading.ts';
import { inPounds } from '../../../src/units/mass.ts';

export interface OfferedRow {
  /** The first item of the row: it gives the row its name. */
  readonly like: Item;
  /** For each lot its items of this row. */
  readonly items: readonly (readonly Item[])[];
}

const weightOf = (item: Item): number => (item.unitWeight ? inPounds(item.unitWeight.value) : 0);
const rowOf = (item: Item): string => `${item.kind.value} ${weightOf(item).toFixed(2)} ${item.unitWeight?.value.unit ?? ''}`;

/** Rows by kind, heaviest first within each. */
export function offeredRows(lots: readonly (readonly Item[])[]): readonly OfferedRow[] {
  const rows = new Map<string, { like: Item; items: Item[][] }>();
  for (const [lot, items] of lots.entries()) {
    for (const item of items) {
      const key = rowOf(item);
      const row = rows.get(key) ?? { like: item, items: lots.map(() => []) };
      row.items[lot]?.push(item);
      rows.set(key, row);
    }
  }
  const kindOf = ({ like }: OfferedRow): number => KINDS.indexOf(like.kind.value);
  return [...rows.values()].sort((a, b) => kindOf(a) - kindOf(b) || weightOf(b.like) - weightOf(a.like));
}

/** Pieces of one lot in a row; null when the ad doesn't say. */
export const piecesIn = (items: readonly Item[]): number | null =>
  items.some(({ count }) => count === null) ? null : items.reduce((sum, { count }) => sum + (count?.value ?? 0), 0);
