/** Finds to rows and back. Rows are what the browser indexes; the find inside is what is checked and shown. */
import { keysOf, MARK_VERSION, markOf } from '../../src/again/index.ts';
import type { Find } from '../../src/finds/record.ts';
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

export const rowOf = (find: Find, revision: number): FindRow => ({
  id: find.id,
  find,
  status: find.status,
  kept: find.keptAt,
  changed: find.changedAt,
  revision,
  words: wordsIn(`${find.title} ${find.summary.place ?? ''} ${find.notes}`)
    .slice(0, MOST_WORDS)
    .map((word) => ` ${word}`)
    .join(''),
});

export function markRowOf({ id, listing }: Ad): MarkRow {
  const mark = markOf(listing);
  return { id, mark, keys: keysOf(mark), version: MARK_VERSION };
}
