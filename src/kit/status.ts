/** Where a kit that was set up stands, line by line and in money. */
import type { KitFigures, Settings } from '../listing/settings.ts';
import { inOwn } from '../price/exchange.ts';
import { FOOT_IN_MILLIMETRES } from '../units/length.ts';
import { exponentOf, type Money, money } from '../units/money.ts';
import { scale } from '../units/range.ts';
import { asCounted } from './both-sets.ts';
import type { NamedNeed } from './need-list.ts';
import type { PiecePrice } from './piece-prices.ts';
import { nearestLayers, platformPlan } from './platform.ts';
import { kitState, type OwnedThing, type RestCost, restCost } from './state.ts';

/** A platform as large as a rack's usual room, where nobody measured: 8 × 8 ft, and a rack that stands on its floor's height of 2 1/4 in. */
export const USUAL_PLATFORM = { rackFloorMm: 57, widthMm: 8 * FOOT_IN_MILLIMETRES, depthMm: 8 * FOOT_IN_MILLIMETRES } as const;
/** More of a step trips people. Common practice, no source. */
export const FLUSH_MM = 3;

export interface NeedLine {
  readonly need: NamedNeed;
  /** Pieces that count for it, and pieces still lacking. */
  readonly owned: number;
  readonly lacking: number;
}

/** Whether the money that is left does for the rest at the going rate: for sure, as a rule, or not. Null without a budget. */
export type Fits = 'fits' | 'tight' | 'short' | null;

export interface KitStatus {
  readonly lines: readonly NeedLine[];
  readonly open: readonly NamedNeed[];
  readonly surplus: readonly OwnedThing[];
  /** In minor units of the buyer's currency. */
  readonly spent: number;
  /** What was paid in currencies that the buyer gave no rate for: not in the sums. */
  readonly foreign: readonly Money[];
  /** Below zero when overspent; null without a budget. */
  readonly left: number | null;
  readonly rest: RestCost;
  readonly fits: Fits;
  /** Minor units that are missing at the likely going rate; 0 when none are. */
  readonly shortBy: number;
}

export interface KitGiven {
  readonly figures: KitFigures;
  readonly needs: readonly NamedNeed[];
  readonly owned: readonly Omit<OwnedThing, 'paid'>[];
  /** Everything that was paid: for single things, and for finds as a whole. */
  readonly paid: readonly Money[];
  readonly settings: Settings;
}

/** What building the platform costs: the same used and new, for sheets are bought new. Its prices are in US dollars: null where the buyer gave no rate. */
export function platformPrice({ platform }: KitFigures, settings: Settings): PiecePrice | null {
  const wish = { ...(platform ?? USUAL_PLATFORM), toleranceMm: FLUSH_MM };
  const one = inOwn(money(1, 'USD'), settings);
  if (one.currency !== settings.currency) return null;
  const price = scale(platformPlan({ ...wish, layers: nearestLayers(wish.rackFloorMm) }).price, one.minor);
  return { used: price, fresh: price };
}

export function kitStatus({ figures, needs, owned, paid, settings }: KitGiven): KitStatus {
  const things = asCounted(owned, figures).map((one): OwnedThing => ({ ...one, paid: null }));
  const { open, surplus } = kitState(needs, things, null);
  const lacking = new Map(open.map(({ id, pieces }) => [id, pieces]));
  const inBuyers = paid.map((one) => ({ one, own: inOwn(one, settings) }));
  const counted = inBuyers.filter(({ own }) => own.currency === settings.currency);
  const spent = Math.round(counted.reduce((sum, { own }) => sum + own.minor, 0));
  const budget = figures.budget === null ? null : Math.round(figures.budget * 10 ** exponentOf(settings.currency));
  const rest = restCost(open, settings, open.some(({ kind }) => kind === 'platform') ? platformPrice(figures, settings) : null);
  const left = budget === null ? null : budget - spent;
  return {
    lines: needs.map((need) => {
      const pieces = lacking.get(need.id) ?? 0;
      return { need, owned: need.pieces - pieces, lacking: pieces };
    }),
    open,
    surplus,
    spent,
    foreign: inBuyers.flatMap(({ one, own }) => (own.currency === settings.currency ? [] : [one])),
    left,
    rest,
    fits: left === null ? null : left >= rest.used.high ? 'fits' : left >= rest.used.likely ? 'tight' : 'short',
    shortBy: left === null ? 0 : Math.max(0, Math.round(rest.used.likely - left)),
  };
}
