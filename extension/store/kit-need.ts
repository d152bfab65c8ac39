/** The setting `need` follows the kit: the plates that it still lacks, so that every ad is judged by them. */
import { asCounted } from '../../src/kit/both-sets.ts';
import { type NamedNeed, needList } from '../../src/kit/need-list.ts';
import { kitState, plateNeed } from '../../src/kit/state.ts';
import type { KitFigures, Settings } from '../../src/listing/settings.ts';
import type { Need, Outcome, Owned, Stop, Store } from './index.ts';

/** More than the setting holds of one plate is no need of anybody. */
const MOST_PIECES = 1000;
const MOST_PLATES = 100;

/** Everything that the kit lacks. */
export function openOf(kit: KitFigures, needs: readonly Need[], owned: readonly Owned[]): readonly NamedNeed[] {
  const things = asCounted(owned, kit).map(({ kind, weight, pieces }) => ({ kind, weight, pieces, paid: null }));
  return kitState(needList(needs, kit), things, null).open;
}

/** What the kit lacks as it is stored; null where none was set up. */
export async function openNeeds(store: Store, now: number): Promise<Outcome<readonly NamedNeed[] | null>> {
  const [needs, owned, stored] = await Promise.all([store.kit.needs.all(), store.kit.owned.all(), store.settings.load(now)]);
  if (!needs.ok) return needs;
  if (!owned.ok) return owned;
  if (!stored.ok) return stored;
  const { kit } = stored.value.settings;
  return { ok: true, value: kit && openOf(kit, needs.value, owned.value) };
}

/** Plates still lacking by what is needed and owned; as it was where no kit was set up. Nothing lacking is an empty list. */
function lackingPlates(settings: Settings, needs: readonly Need[], owned: readonly Owned[]): Settings['need'] {
  const { kit } = settings;
  if (kit === null) return settings.need;
  const plates = plateNeed(openOf(kit, needs, owned));
  return plates.slice(0, MOST_PLATES).map((one) => ({ ...one, pieces: Math.min(MOST_PIECES, one.pieces) }));
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Brings `need` up to date; nothing is written where it is. */
async function followKit(store: Store, now: number): Promise<Outcome<unknown>> {
  const [needs, owned, stored] = await Promise.all([store.kit.needs.all(), store.kit.owned.all(), store.settings.load(now)]);
  if (!needs.ok) return needs;
  if (!owned.ok) return owned;
  if (!stored.ok) return stored;
  const need = (settings: Settings) => lackingPlates(settings, needs.value, owned.value);
  const { settings } = stored.value;
  if (same(need(settings), settings.need)) return stored;
  return store.settings.change((latest) => ({ need: need(latest) }), now);
}

/** Follows now and after every change of the kit or the settings, by whichever page, one after the other. */
export function keepFollowingKit(store: Store, clock: () => number): Stop {
  let last: Promise<unknown> = Promise.resolve();
  // What can't be written now is written at the next change, or when a screen is opened again.
  const follow = () => {
    last = last.then(() => followKit(store, clock())).catch((error: unknown) => console.error('Ironsift:', error));
  };
  const stops = [store.kit.needs.watch(follow), store.kit.owned.watch(follow), store.settings.watch(follow)];
  return () => {
    for (const stop of stops) stop();
  };
}
