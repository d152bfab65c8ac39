/** The buy list: the set of ads that completes the kit at least expected cost within the budget, proven to be the best. */
import { checkMarket, type Market } from './market.ts';
import { type BuyProgram, buyProgram, type Wanted } from './program.ts';
import { type Kit, withoutIdle } from './reckon.ts';
import type { Solve } from './solve.ts';

export type { Market, Offer, Place, WantedPieces } from './market.ts';
export type { Program } from './program.ts';
export type { Kit } from './reckon.ts';
export type { Solution, Solve } from './solve.ts';

export interface Found {
  readonly kit: Kit;
  /** The solver's bound on what was to be least: cost, or money spent. */
  readonly bound: number;
  /** No list is better by a single minor unit. */
  readonly proven: boolean;
}

export type BuyList =
  | ({ readonly kind: 'kit' } & Found)
  /** The budget does not do: `by` how much the kit that takes the least money, `kit`, is over it. */
  | ({ readonly kind: 'short'; readonly by: number } & Found)
  /** Needs that no offer fills and that have no new price. Empty when they could be filled one by one, but not all together. */
  | { readonly kind: 'impossible'; readonly needs: readonly string[] };

/** The offers that a solver's values take. */
export const chosenBy = ({ offers }: BuyProgram, values: readonly number[]) =>
  offers.filter((_, index) => (values[index] ?? 0) > 0.5);

/** The best list for what is wanted; null when there is none. */
export async function bestList(market: Market, wanted: Wanted, solve: Solve): Promise<Found | null> {
  const made = buyProgram(market, wanted);
  const solution = await solve(made.program);
  if (solution.status === 'infeasible') return null;
  const kit = withoutIdle(market, chosenBy(made, solution.values), wanted.with ?? null);
  if (kit === null) throw new Error('buy list: the solver gave what is no list');
  if (wanted.least === 'cost' && market.budget !== null && kit.spent > market.budget) {
    throw new Error('buy list: the solver gave what is over the budget');
  }
  // What the solver calls best is reckoned again in whole numbers; with its bound less than one below, it is the best.
  return { kit, bound: solution.bound, proven: kit[wanted.least] - solution.bound < 1 };
}

function openNeeds({ needs, offers }: Market): string[] {
  const onOffer = (id: string): number =>
    offers
      .filter(({ barred }) => barred === null)
      .flatMap(({ fills }) => fills)
      .filter(({ need }) => need === id)
      .reduce((sum, { pieces }) => sum + pieces, 0);
  return needs.filter(({ id, pieces, fresh }) => fresh === null && onOffer(id) < pieces).map(({ id }) => id);
}

/** Throws a RangeError on a market that is not sound (see checkMarket). */
export async function buyList(market: Market, solve: Solve): Promise<BuyList> {
  checkMarket(market);
  const best = await bestList(market, { least: 'cost' }, solve);
  if (best !== null) return { kind: 'kit', ...best };
  const least = await bestList(market, { least: 'spent' }, solve);
  if (least === null) return { kind: 'impossible', needs: openNeeds(market) };
  return { kind: 'short', by: least.kit.spent - (market.budget ?? 0), ...least };
}
