/** What the Kit screen writes. */
import { type ListChange, listChange } from '../../../src/kit/need-list.ts';
import type { KitFigures, Settings } from '../../../src/listing/settings.ts';
import type { Outcome, Owned, Store } from '../../store/index.ts';
import { type Failed, firstFailure } from '../bought.ts';

/** The figures to begin with, by what the settings say already. */
export const firstFigures = ({ unit, loadLb }: Settings): KitFigures => ({
  best: unit === 'lb' ? { value: Math.round(loadLb), unit } : { value: Math.round(loadLb * 0.45359237), unit },
  jump: { value: unit === 'lb' ? 5 : 2.5, unit },
  olympicLifts: false,
  plates: unit,
  budget: null,
  collars: null,
  sleeveLengthMm: null,
  platform: null,
});

async function writeChange(store: Store, { put, remove }: ListChange, now: number): Promise<Failed | null> {
  return firstFailure([
    ...put.map((one) => () => store.kit.needs.put({ note: '', ...one }, now)),
    ...remove.map((id) => () => store.kit.needs.remove(id, now)),
  ]);
}

/** What the list follows from. */
const LIFTING = ['best', 'jump', 'olympicLifts', 'plates'] as const;

/** Keeps the figures; the list of needs follows them but for what the buyer set. */
export async function saveFigures(store: Store, change: Partial<KitFigures>, now: number): Promise<Outcome<unknown>> {
  const saved = await store.settings.change(
    (settings) => ({ kit: { ...(settings.kit ?? firstFigures(settings)), ...change } }),
    now,
  );
  if (!saved.ok || !(Object.keys(change).length === 0 || LIFTING.some((name) => name in change))) return saved;
  return (await followFigures(store, saved.value.kit, now)) ?? saved;
}

async function followFigures(store: Store, figures: KitFigures | null, now: number, reset = false): Promise<Failed | null> {
  const stored = await store.kit.needs.all();
  if (!stored.ok) return stored;
  return figures && writeChange(store, listChange(stored.value, figures, reset), now);
}

/** The default list again: what the buyer set, added or took off is forgotten. */
export async function resetNeeds(store: Store, now: number): Promise<Outcome<unknown>> {
  const loaded = await store.settings.load(now);
  if (!loaded.ok) return loaded;
  return (await followFigures(store, loaded.value.settings.kit, now, true)) ?? loaded;
}

/** No kit any more: no needs, and no limit to what an ad may offer. What is owned stays. */
export async function forgetKit(store: Store, now: number): Promise<Outcome<unknown>> {
  const stored = await store.kit.needs.all();
  if (!stored.ok) return stored;
  const saved = await store.settings.change(() => ({ kit: null, need: null }), now);
  if (!saved.ok) return saved;
  return (await writeChange(store, { put: [], remove: stored.value.map(({ id }) => id) }, now)) ?? saved;
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
