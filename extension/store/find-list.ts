/**
 * Which finds, in which order. Chosen among all rows in memory: at ten thousand finds a browser takes longer for two of its
 * indexes, measured, and any filter comes free. Only the rows that are shown are checked.
 */
import type { Find } from '../../src/finds/record.ts';
import { fillsNeed, type Thing } from '../../src/kit/same-thing.ts';
import { inMiles } from '../../src/units/length.ts';
import { POUND_IN_KILOGRAMS } from '../../src/units/mass.ts';
import type { FindPage, ListQuery, Order } from './api.ts';
import { type Damage, soundFind } from './checked.ts';
import type { Database, FindRow } from './database.ts';
import { wordsIn } from './rows.ts';

/** A price for the lot is no price per pound, and is not put in one order with them. */
function perPound({ summary: { perUsable } }: Find): number | undefined {
  if (!perUsable || perUsable.per === 'lot') return undefined;
  return perUsable.per === 'lb' ? perUsable.likely : perUsable.likely * POUND_IN_KILOGRAMS;
}

const VALUES: Readonly<Record<Order, (find: Find) => number | string | null | undefined>> = {
  changed: ({ changedAt }) => changedAt,
  kept: ({ keptAt }) => keptAt,
  'per-usable': perPound,
  'all-in': ({ summary }) => summary.allIn?.likely,
  usable: ({ summary }) => summary.usable.likely,
  saving: ({ summary }) => summary.saving?.minor,
  distance: ({ summary }) => summary.distance && inMiles(summary.distance),
  title: ({ title }) => title.toLowerCase(),
};

interface Placed {
  readonly row: FindRow;
  readonly value: number | string | undefined;
}

/** A damaged row has no value, stands last, and is found out when it is shown. */
function placed(row: FindRow, order: Order): Placed {
  try {
    return { row, value: VALUES[order](row.find) ?? undefined };
  } catch {
    return { row, value: undefined };
  }
}

/** Those without a value last either way; equal ones by id, in the same direction as an index gives them, so that pages do not overlap. */
const before =
  (descending: boolean) =>
  (one: Placed, other: Placed): number => {
    if (one.value === undefined || other.value === undefined) {
      if (one.value !== undefined) return -1;
      if (other.value !== undefined) return 1;
    } else if (one.value !== other.value) {
      return one.value < other.value === descending ? 1 : -1;
    }
    return one.row.id < other.row.id === descending ? 1 : -1;
  };

/** Something of it is wanted. A damaged row stays in, and is found out when it is shown. */
function offersOne(find: Find, wanted: readonly Thing[]): boolean {
  try {
    return find.summary.offers?.some((offer) => wanted.some((one) => fillsNeed(offer, one))) ?? false;
  } catch {
    return true;
  }
}

/** A row whose words are damaged stays in: nothing that was kept hides for that. */
function fits({ words, statuses, calls, kinds, fills }: ListQuery): (row: FindRow) => boolean {
  const beginnings = wordsIn(words ?? '').map((word) => ` ${word}`);
  const ofStatus = statuses?.length ? new Set<string>(statuses) : null;
  const ofCall = calls?.length ? new Set<string>(calls) : null;
  const ofKind = kinds?.length ? new Set<string>(kinds) : null;
  return (row) =>
    (!ofStatus || ofStatus.has(row.status)) &&
    (!ofCall || ofCall.has(row.find?.summary?.call)) &&
    (!ofKind || (row.find?.summary?.kinds?.some((kind) => ofKind.has(kind)) ?? false)) &&
    (!fills || offersOne(row.find, fills)) &&
    (typeof row.words !== 'string' || beginnings.every((beginning) => row.words.includes(beginning)));
}

/** Ids of all that match. */
export const idsOf = (rows: readonly FindRow[], query: ListQuery): readonly string[] =>
  rows.filter(fits(query)).map(({ id }) => id);

export function pageOf(rows: readonly FindRow[], query: ListQuery, damage: Damage[]): FindPage {
  const matching = rows.filter(fits(query)).map((row) => placed(row, query.order));
  const from = Math.max(0, query.from);
  const shown = matching.sort(before(query.descending)).slice(from, from + Math.max(0, query.count));
  return { rows: shown.flatMap(({ row }) => soundFind(row, damage) ?? []), total: matching.length };
}

/** More rows than a screen shows are no opening page. */
const MOST_OPENING = 500;

/** The list as it is first opened: the latest changes of everything. */
const isOpening = ({ order, descending, words, statuses, calls, kinds, fills, from, count }: ListQuery): boolean =>
  count <= MOST_OPENING &&
  order === 'changed' &&
  descending &&
  from === 0 &&
  !words?.trim() &&
  !statuses?.length &&
  !calls?.length &&
  !kinds?.length &&
  !fills;

/**
 * The opening page by the browser's own index, before all rows are in memory: at ten thousand finds that is a few milliseconds
 * against a second. Null for any other page.
 */
export async function openingPage(db: Database, query: ListQuery, damage: Damage[]): Promise<FindPage | null> {
  if (!isOpening(query)) return null;
  const [rows, total] = await Promise.all([
    db.finds.orderBy('changed').reverse().limit(Math.max(0, query.count)).toArray(),
    db.finds.count(),
  ]);
  return { rows: rows.flatMap((row) => soundFind(row, damage) ?? []), total };
}
