/** Finds to rows and back. Rows are what the browser indexes; the find inside is what is checked and shown. */
import { keysOf, MARK_VERSION, markOf } from '../../src/again/index.ts';
import type { Find, Summary } from '../../src/finds/record.ts';
import { inMiles } from '../../src/units/length.ts';
import { POUND_IN_KILOGRAMS } from '../../src/units/mass.ts';
import type { FindRow, MarkRow } from './database.ts';
import type { Ad } from './records.ts';

/** Words as they are looked up: lower case, without accents, at most so many per find. */
const MOST_WORDS = 400;
export const wordsIn = (text: string): readonly string[] => [
  ...new Set(
    text
      .normalize('NFKD')
      .replace(/\p{M}/gu, '')
      .toLowerCase()
      .match(/[\p{L}\d]{1,40}/gu) ?? [],
  ),
];

const perPound = ({ perUsable }: Summary): Pick<FindRow, 'perUsable'> => {
  if (perUsable === null || perUsable.per === 'lot') return {};
  return { perUsable: perUsable.per === 'lb' ? perUsable.likely : perUsable.likely * POUND_IN_KILOGRAMS };
};

export function rowOf(find: Find): FindRow {
  const { summary } = find;
  const row = {
    id: find.id,
    find,
    status: find.status,
    kinds: summary.kinds,
    words: wordsIn(`${find.title} ${summary.place ?? ''} ${find.notes}`).slice(0, MOST_WORDS),
    title: find.title.slice(0, 200).toLowerCase(),
    changed: find.changedAt,
    kept: find.keptAt,
    usable: summary.usable.likely,
  };
  return {
    ...row,
    // A price for the lot is no price per pound: not put in one order with them.
    ...perPound(summary),
    ...(summary.allIn && { allIn: summary.allIn.likely }),
    ...(summary.saving && { saving: summary.saving.minor }),
    ...(summary.distance && { distance: inMiles(summary.distance) }),
  };
}

export function markRowOf({ id, listing }: Ad): MarkRow {
  const mark = markOf(listing);
  return { id, mark, keys: keysOf(mark), version: MARK_VERSION };
}
