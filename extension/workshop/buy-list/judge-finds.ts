/** Judges the finds that are still to be had, a few at a time; what was judged before and has not changed is taken as it was. */
import { lookUp, markOf } from '../../../src/again/index.ts';
import { type JudgedFind, refusalAt } from '../../../src/kit/buy-list/consider.ts';
import type { Settings } from '../../../src/listing/settings.ts';
import type { Place } from '../../../src/trip/great-circle.ts';
import { judgedAsKept } from '../../panel/judged-as-kept.ts';
import type { Find, KeptAd, Store } from '../../store/index.ts';
import type { Core } from '../host.ts';
import { askedAt } from '../side-by-side/columns.ts';

/** Long enough to get on, short enough for the page to answer between two. */
const SLICE_MS = 30;
const AHEAD = 40;
const breathe = (): Promise<unknown> => new Promise((done) => setTimeout(done, 0));

interface Known {
  readonly find: Find;
  readonly asked: string;
  readonly mark: ReturnType<typeof markOf>;
  readonly judged: Omit<JudgedFind, 'same'>;
}

/** By id of the find. One page has one store. */
const known = new Map<string, Known>();

export interface ToJudge {
  readonly store: Store;
  readonly core: Core;
  readonly settings: Settings;
  /** The place that an ad names, where that is clear. */
  readonly placeOf: (name: string) => Place | null;
  readonly seen: (count: number) => void;
  readonly isOff: () => boolean;
}

const knownOf = (find: Find, asked: string): Known | null => {
  const before = known.get(find.id);
  return before?.asked === asked && before.find.changedAt === find.changedAt ? before : null;
};

function judgeOne(find: Find, asked: string, place: Place | null, kept: KeptAd, { core, settings }: ToJudge): Known {
  const { evaluation, sellerAt, withMore } = judgedAsKept(core.evaluate, kept, settings, place);
  const refusal = refusalAt(evaluation, (price) => withMore(askedAt(price)));
  const made = { find, asked, mark: markOf(kept.listing), judged: { id: find.id, evaluation, refusal, sellerAt } };
  known.set(find.id, made);
  return made;
}

/** Null when it was called off. What can't be opened is passed over. */
export async function judgeFinds(finds: readonly Find[], given: ToJudge): Promise<readonly JudgedFind[] | null> {
  const asked = JSON.stringify(given.settings);
  const made: Known[] = [];
  const toDo = finds.map((find) => {
    const place = find.summary.place === null ? null : given.placeOf(find.summary.place);
    return { find, place, asked: `${asked}${JSON.stringify(place)}` };
  });
  // Read some ahead: asked for one by one the database takes longer than the judging.
  const read = (from: number) =>
    Promise.all(
      toDo
        .slice(from, from + AHEAD)
        .map((one) => (knownOf(one.find, one.asked) === null ? given.store.finds.get(one.find.id) : null)),
    );
  let next = read(0);
  let ads: Awaited<typeof next> = [];
  let start = performance.now();
  for (const [index, { find, place, asked: key }] of toDo.entries()) {
    if (index % AHEAD === 0) {
      ads = await next;
      next = read(index + AHEAD);
    }
    const ad = ads[index % AHEAD];
    const one = knownOf(find, key) ?? (ad?.ok ? judgeOne(find, key, place, ad.value, given) : null);
    if (one !== null) made.push(one);
    if (performance.now() - start < SLICE_MS) continue;
    given.seen(index + 1);
    await breathe();
    if (given.isOff()) return null;
    start = performance.now();
  }
  const again = lookUp(made.map(({ find, mark }) => [find.id, mark]));
  return made.map(({ find, mark, judged }) => ({
    ...judged,
    same: again
      .find(mark)
      .map(({ id }) => id)
      .filter((id) => id !== find.id),
  }));
}
