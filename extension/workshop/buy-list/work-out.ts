/** The list as it is worked out: the finds judged, the best list solved beside the page, then one by one what else there is. */
import { type Considered, consider, type JudgedFind } from '../../../src/kit/buy-list/consider.ts';
import { type BuyList, buyList, type Found, type Solve } from '../../../src/kit/buy-list/index.ts';
import { type MadeMarket, marketOf } from '../../../src/kit/buy-list/market-of.ts';
import { alternatives, leftOut, type PriceCut, priceCut } from '../../../src/kit/buy-list/others.ts';
import type { Settings } from '../../../src/listing/settings.ts';
import type { Gazetteer } from '../../../src/places/gazetteer.ts';
import type { Find, Store } from '../../store/index.ts';
import type { Core } from '../host.ts';
import type { Choices } from './choices.ts';
import { placesOf } from './places-of-ads.ts';
import type { KitNeeds } from './use-kit-needs.ts';

/** Ads left out for which the price at which they would come in belongs to the answer: the nearest. The others' follow behind it. */
export const MOST_CUTS = 25;
/** Prices that come one upon the other are shown together, so many ms apart: each time the whole list is drawn. */
const TOGETHER = 300;
const MOST_OTHERS = 3;

/** By what lists are compared: where every list is over the budget, by the money that it takes. */
export const leastOf = ({ kind }: BuyList): 'cost' | 'spent' => (kind === 'short' ? 'spent' : 'cost');

export interface Given {
  readonly finds: readonly Find[];
  readonly kit: KitNeeds;
  readonly settings: Settings;
  readonly choices: Choices;
}

export interface Worked extends Pick<Given, 'kit' | 'settings'> {
  readonly considered: Considered;
  readonly judged: readonly JudgedFind[];
  readonly made: MadeMarket;
  readonly list: BuyList;
  /** What came after the list, so far. */
  readonly others: readonly Found[];
  /** Offers left out, nearest first, and their cuts as far as they are known. */
  readonly left: readonly string[];
  readonly cuts: ReadonlyMap<string, PriceCut>;
}

/** How far it is. `rest`: the answer stands, and what is left comes behind it. */
export type Working =
  | { readonly at: 'judging' | 'rest'; readonly seen: number; readonly all: number }
  | { readonly at: 'solving' | 'others' | 'cuts' | 'done' };

/** What it is worked out with. */
export interface Means {
  readonly store: Store;
  readonly core: () => Promise<Core>;
  readonly places: (currency: string) => Promise<Gazetteer>;
  readonly startSolver: () => Promise<Solve>;
}

/** Whoever waits for it. What is told and shown once nobody does is not heard. */
export interface Waiting {
  /** Nobody waits any more. */
  readonly isOff: () => boolean;
  readonly tell: (stage: Working) => void;
  readonly show: (worked: Worked) => void;
  /** Of the rest, the offer that is asked for; null for none. */
  readonly askedFor: () => string | null;
  readonly answered: () => void;
}

type Show = (more: Partial<Worked>) => void;

export async function workOut(given: Given, means: Means, waiting: Waiting): Promise<void> {
  const { isOff, tell } = waiting;
  tell({ at: 'judging', seen: 0, all: given.finds.length });
  // It loads beside the judging: that takes as long as a list.
  const starting = means.startSolver();
  const judged = await judge(given, means, waiting);
  if (judged === null || isOff()) return;
  tell({ at: 'solving' });
  const { considered, made } = marketFor(judged, given);
  const solve = await starting;
  if (isOff()) return;
  const list = await buyList(made.market, solve);
  if (isOff()) return;
  const { kit, settings } = given;
  let now: Worked = { considered, judged, made, list, kit, settings, others: [], left: [], cuts: new Map() };
  const show: Show = (more) => {
    now = { ...now, ...more };
    waiting.show(now);
  };
  show({});
  if (list.kind !== 'impossible') await addOthers(now, list, show, solve, waiting);
  tell({ at: 'done' });
}

/** Null when it was called off. */
async function judge({ finds, settings }: Given, { store, core, places }: Means, { isOff, tell }: Waiting) {
  const [loaded, placeOf] = await Promise.all([core(), placesOf(settings, finds, places)]);
  const seen = (count: number) => tell({ at: 'judging', seen: count, all: finds.length });
  // Fetched when there is something to judge: the pieces that it needs come with it.
  const { judgeFinds } = await import('./judge-finds.ts');
  return judgeFinds(finds, { store, core: loaded, settings, placeOf, seen, isOff });
}

function marketFor(judged: readonly JudgedFind[], { kit: { status, platform }, settings, choices }: Given) {
  const considered = consider(judged, status.open, choices.said, settings);
  const made = marketOf(status.open, considered.finds, {
    settings,
    places: considered.places.map(({ id, trip, cash }) => ({ id, trip, cash })),
    budget: status.left === null ? null : Math.max(0, status.left),
    paying: choices.paying,
    platform,
  });
  return { considered, made };
}

/** A list that can be had at all. */
type Possible = Exclude<BuyList, { readonly kind: 'impossible' }>;

/** The next best lists, and the prices at which ads that were left out would come in: the nearest first, then the rest. */
async function addOthers({ made }: Worked, list: Possible, show: Show, solve: Solve, waiting: Waiting): Promise<void> {
  const { isOff, tell } = waiting;
  const least = leastOf(list);
  const cutOf = (offer: string) => priceCut(made.market, list.kit, offer, solve, least);
  tell({ at: 'others' });
  let others: readonly Found[] = [];
  for await (const other of alternatives(made.market, list.kit, solve, MOST_OTHERS, least)) {
    if (isOff()) return;
    others = [...others, other];
    show({ others });
  }
  const left = leftOut(made.market, list.kit, least);
  show({ left });
  tell({ at: 'cuts' });
  const cuts = new Map<string, PriceCut>();
  for (const offer of left.slice(0, MOST_CUTS)) {
    cuts.set(offer, await cutOf(offer));
    if (isOff()) return;
    show({ cuts: new Map(cuts) });
  }
  await addRest(left.slice(MOST_CUTS), cuts, cutOf, show, waiting);
}

/** The answer stands: behind it whatever is left, and before that what is asked for. */
async function addRest(
  left: readonly string[],
  nearest: ReadonlyMap<string, PriceCut>,
  cutOf: (offer: string) => Promise<PriceCut>,
  show: Show,
  { isOff, tell, askedFor, answered }: Waiting,
): Promise<void> {
  const rest = [...left];
  const all = rest.length;
  const cuts = new Map(nearest);
  const showAll = () => show({ cuts: new Map(cuts) });
  let shownAt = 0;
  while (rest.length > 0) {
    if (performance.now() - shownAt >= TOGETHER) {
      showAll();
      tell({ at: 'rest', seen: all - rest.length, all });
      shownAt = performance.now();
    }
    const asked = askedFor();
    const [offer = ''] = rest.splice(asked === null ? 0 : Math.max(0, rest.indexOf(asked)), 1);
    cuts.set(offer, await cutOf(offer));
    if (isOff()) return;
    if (offer !== askedFor()) continue;
    showAll();
    answered();
  }
  showAll();
  answered();
}
