/** What the kill test does to a store, step by step, and what must then be in it. Pure: page and test run the same steps from the same seed. */

export interface Kept {
  readonly status: string;
  readonly notes: string;
  /** Asking prices in minor units, oldest first. */
  readonly prices: readonly number[];
  readonly text: string;
}

export interface Model {
  readonly finds: Readonly<Record<string, Kept>>;
  /** Removed finds by id, with the token that brings each back. */
  readonly removed: Readonly<Record<string, { readonly token: string; readonly kept: Kept }>>;
  /** Pieces of each need. */
  readonly needs: Readonly<Record<string, number>>;
  readonly margin: number;
}

export const EMPTY: Model = { finds: {}, removed: {}, needs: {}, margin: 0 };

export type Step =
  | { readonly do: 'keep'; readonly id: string; readonly price: number }
  | { readonly do: 'refresh'; readonly id: string; readonly price: number }
  | { readonly do: 'status'; readonly id: string; readonly status: string }
  | { readonly do: 'notes'; readonly id: string; readonly notes: string }
  | { readonly do: 'remove'; readonly id: string; readonly token: string }
  | { readonly do: 'undo'; readonly id: string; readonly token: string }
  | { readonly do: 'purge' }
  | { readonly do: 'need'; readonly id: string; readonly pieces: number }
  | { readonly do: 'settings'; readonly margin: number }
  | { readonly do: 'import'; readonly ids: readonly string[]; readonly price: number };

/** Numbers from 0 to 1, the same for a seed: mulberry32 (public domain, from memory). */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let hash = Math.imul(state ^ (state >>> 15), state | 1);
    hash = (hash + Math.imul(hash ^ (hash >>> 7), hash | 61)) ^ hash;
    return ((hash ^ (hash >>> 14)) >>> 0) / 2 ** 32;
  };
}

const STATUSES = ['new', 'asked', 'going', 'bought', 'gone'];
/** Long, so that a write takes its time. */
export const textOf = (id: string, price: number): string =>
  `Iron plates, lot ${id}: 4 x 45 lb, 2 x 25 lb. $${price} for all.\n${`Kept dry in the shed, holes measured, no cracks seen, lot ${id}. `.repeat(30)}`;

const fresh = (id: string, price: number): Kept => ({ status: 'new', notes: '', prices: [price * 100], text: textOf(id, price) });

/** The next step for a store in this state. `name` is new and unused. */
export function nextStep(model: Model, random: () => number, name: string): Step {
  const pick = <T>(all: readonly T[]): T | undefined => all[Math.floor(random() * all.length)];
  const price = 50 + Math.floor(random() * 400);
  const id = pick(Object.keys(model.finds));
  const gone = pick(Object.entries(model.removed));
  const dice = random();
  if (id === undefined || dice < 0.3) return { do: 'keep', id: name, price };
  if (dice < 0.42) return { do: 'refresh', id, price };
  if (dice < 0.54) return { do: 'status', id, status: pick(STATUSES) ?? 'new' };
  if (dice < 0.64) return { do: 'notes', id, notes: `note ${name}` };
  if (dice < 0.74) return { do: 'remove', id, token: name };
  if (dice < 0.8 && gone) return { do: 'undo', id: gone[0], token: gone[1].token };
  if (dice < 0.82) return { do: 'purge' };
  if (dice < 0.9) return { do: 'need', id: `need-${Math.floor(random() * 5)}`, pieces: price };
  if (dice < 0.95) return { do: 'settings', margin: Math.floor(random() * 90) / 100 };
  return { do: 'import', ids: Array.from({ length: 25 }, (_, at) => `${name}-${at}`), price };
}

const without = <T>(record: Readonly<Record<string, T>>, id: string): Record<string, T> =>
  Object.fromEntries(Object.entries(record).filter(([key]) => key !== id));

/** What a store in this state holds after a step. */
export function after(model: Model, step: Step): Model {
  const { finds, removed } = model;
  const changed = (id: string, change: (kept: Kept) => Kept): Model => {
    const kept = finds[id];
    return kept ? { ...model, finds: { ...finds, [id]: change(kept) } } : model;
  };
  switch (step.do) {
    case 'keep':
      return { ...model, finds: { ...finds, [step.id]: fresh(step.id, step.price) } };
    case 'refresh':
      return changed(step.id, (kept) => ({
        ...kept,
        text: textOf(step.id, step.price),
        prices: kept.prices.at(-1) === step.price * 100 ? kept.prices : [...kept.prices, step.price * 100],
      }));
    case 'status':
      return changed(step.id, (kept) => ({ ...kept, status: step.status }));
    case 'notes':
      return changed(step.id, (kept) => ({ ...kept, notes: step.notes }));
    case 'remove': {
      const kept = finds[step.id];
      return kept
        ? { ...model, finds: without(finds, step.id), removed: { ...removed, [step.id]: { token: step.token, kept } } }
        : model;
    }
    case 'undo': {
      const back = removed[step.id];
      return back ? { ...model, finds: { ...finds, [step.id]: back.kept }, removed: without(removed, step.id) } : model;
    }
    case 'purge':
      return { ...model, removed: {} };
    case 'need':
      return { ...model, needs: { ...model.needs, [step.id]: step.pieces } };
    case 'settings':
      return { ...model, margin: step.margin };
    case 'import':
      return { ...model, finds: { ...finds, ...Object.fromEntries(step.ids.map((id) => [id, fresh(id, step.price)])) } };
  }
}

/** One text per state, whatever the order of its keys. */
export const stateText = (model: Model): string =>
  JSON.stringify(model, (_, value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );
