/** Which records a transaction wrote: what the second copy has to follow. */
import Dexie, { type DBCore, type DBCoreMutateRequest } from 'dexie';
import type { Database } from './database.ts';

/** Table to the ids written or deleted. */
export type Touched = ReadonlyMap<string, ReadonlySet<string>>;

const byTransaction = new WeakMap<object, Map<string, Set<string>>>();

function note(table: string, request: DBCoreMutateRequest): void {
  const all = byTransaction.get(request.trans) ?? new Map<string, Set<string>>();
  byTransaction.set(request.trans, all);
  const ids = all.get(table) ?? new Set<string>();
  all.set(table, ids);
  if (request.type === 'delete') for (const key of request.keys) ids.add(String(key));
  if (request.type === 'add' || request.type === 'put') for (const { id } of request.values) ids.add(String(id));
}

/** Has a database write down what is written. All its tables have the key "id", and none is written by range. */
export const followWrites = (db: Database): void => {
  db.use({
    stack: 'dbcore',
    name: 'touched',
    create: (core: DBCore) => ({
      ...core,
      table: (name) => {
        const table = core.table(name);
        return {
          ...table,
          mutate: (request) => {
            note(name, request);
            return table.mutate(request);
          },
        };
      },
    }),
  });
};

/** What the transaction under way has written so far. */
export const touchedHere = (): Touched => byTransaction.get(Dexie.currentTransaction.idbtrans) ?? new Map();
