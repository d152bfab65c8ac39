/** What the Kit screen writes. */
import { type ListChange, listChange } from '../../../src/kit/need-list.ts';
import type { KitFigures, Settings } from '../../../src/listing/settings.ts';
import { convert, pounds } from '../../../src/units/mass.ts';
import type { Need, Outcome, Owned, Store } from '../../store/index.ts';

/** The figures to begin with, by what the settings say already. */
export const firstFigures = ({ unit, loadLb }: Settings): KitFigures => ({
  best: { value: Math.round(convert(pounds(loadLb), unit).value), unit },
  jump: { value: unit === 'lb' ? 5 : 2.5, unit },
  olympicLifts: false,
  plates: unit,
  budget: null,
  collars: null,
  sleeveLengthMm: null,
  platform: null,
});

const writeChange = (store: Store, { put, remove }: ListChange, now: number): Promise<Outcome<unknown>> =>
  store.kit.needs.change(
    put.map((one) => ({ note: '', ...one })),
    remove,
    now,
  );

/** What the list follows from. */
const LIFTING = ['best', 'jump', 'olympicLifts', 'plates'] as const;

const keepFigures = (store: Store, change: Partial<KitFigures>, now: number) =>
  store.settings.change((settings) => ({ kit: { ...(settings.kit ?? firstFigures(settings)), ...change } }), now);

/** Has the list of needs follow the figures that are stored, but for what the buyer set; nothing is written where it does. */
export async function followFigures(store: Store, now: number, reset = false): Promise<Outcome<unknown>> {
  const loaded = await store.settings.load(now);
  const stored = await store.kit.needs.all();
  if (!loaded.ok) return loaded;
  const { kit } = loaded.value.settings;
  if (!stored.ok || kit === null) return stored;
  const change = listChange(stored.value, kit, reset);
  return change.put.length + change.remove.length === 0 ? stored : writeChange(store, change, now);
}

export type Write = (work: (store: Store, now: number) => Promise<Outcome<unknown>>) => Promise<boolean>;

/**
 * Keeps the figures at once, so that the last key counts though the tab is closed after it; the list of needs follows in its turn, and if not now then
 * when the kit is opened again.
 */
export function saveFiguresNow(store: Store, write: Write, change: Partial<KitFigures>, now: number): void {
  const saved = keepFigures(store, change, now);
  void write(async (_, then) => {
    const outcome = await saved;
    return outcome.ok && LIFTING.some((name) => name in change) ? followFigures(store, then) : outcome;
  });
}

/** Keeps the figures; the list of needs follows them. */
export async function saveFigures(store: Store, change: Partial<KitFigures>, now: number): Promise<Outcome<unknown>> {
  const saved = await keepFigures(store, change, now);
  return saved.ok ? followFigures(store, now) : saved;
}

/** The default list again: what the buyer set, added or took off is forgotten. */
export const resetNeeds = (store: Store, now: number): Promise<Outcome<unknown>> => followFigures(store, now, true);

/** The list as it was. */
export async function putBackNeeds(store: Store, was: readonly Need[], now: number): Promise<Outcome<unknown>> {
  const stored = await store.kit.needs.all();
  if (!stored.ok) return stored;
  const known = new Set(was.map(({ id }) => id));
  const gone = stored.value.flatMap(({ id }) => (known.has(id) ? [] : [id]));
  return store.kit.needs.change(
    was.map(({ changedAt: _, ...need }) => need),
    gone,
    now,
  );
}

/** What `forgetKit` took away, given back. */
export async function putBackKit(
  store: Store,
  { kit, need }: Settings,
  was: readonly Need[],
  now: number,
): Promise<Outcome<unknown>> {
  const saved = await store.settings.change(() => ({ kit, need }), now);
  return saved.ok ? putBackNeeds(store, was, now) : saved;
}

/** No kit any more: no needs, and no limit to what an ad may offer. What is owned stays. */
export async function forgetKit(store: Store, now: number): Promise<Outcome<unknown>> {
  const stored = await store.kit.needs.all();
  if (!stored.ok) return stored;
  const saved = await store.settings.change(() => ({ kit: null, need: null }), now);
  if (!saved.ok) return saved;
  return writeChange(store, { put: [], remove: stored.value.map(({ id }) => id) }, now);
}

/** A thing of the kit that came with no ad. */
export const freshOwned = (): Omit<Owned, 'changedAt'> => ({
  id: crypto.randomUUID(),
  kind: 'plate',
  pieces: 2,
  weight: null,
  weighed: [],
  boreMm: null,
  shaftMm: null,
  sleeveMm: null,
  lengthMm: null,
  note: '',
  thicknessMm: null,
  paid: null,
});
