/** The buyer's finds as a market looks at them: what speaks against one at once, where it is fetched, and what going there costs. */
import type { Evaluation } from '../../listing/evaluation.ts';
import type { Settings } from '../../listing/settings.ts';
import { foldName } from '../../places/fold.ts';
import { costPerMileAway } from '../../trip/drive.ts';
import type { Place as Coordinates } from '../../trip/great-circle.ts';
import { ORDINARY_MILES } from '../../trip/outlook.ts';
import { exponentOf, type Money } from '../../units/money.ts';
import { fillsOf } from '../fills.ts';
import type { Need } from '../needs.ts';
import type { Place } from './market.ts';
import type { ConsideredFind } from './market-of.ts';

/** Why an ad is out of question: the seller wants such goods, something on it rules it out, or the buyer left it out. */
export type Barred = 'wanted' | 'flag' | 'left-out';

/** What the buyer said of one find. */
export type Said = 'must' | 'out';

export interface JudgedFind {
  readonly id: string;
  readonly evaluation: Evaluation;
  /** Chance, 0 to 1, that it is refused at the door: see refusalAt. */
  readonly refusal: number;
  readonly sellerAt: Coordinates | null;
  /** Finds that are the same goods posted again. */
  readonly same: readonly string[];
}

/** A place to drive to, with what the buyer is told of it. */
export interface TripPlace extends Place {
  /** As the ads call it; null when none of them says. */
  readonly name: string | null;
  readonly at: Coordinates | null;
  /** One way in likely miles, and whether nobody said how far it is. */
  readonly miles: number;
  readonly assumed: boolean;
}

export interface Considered {
  readonly finds: readonly ConsideredFind[];
  readonly places: readonly TripPlace[];
}

/**
 * Chance that the goods turn out to be less than the price and are left at the door. At a price above what they are worth at their best
 * that chance says nothing of the goods, so it is then taken at the most one should pay: `at` judges the ad at another price.
 */
export function refusalAt({ reading, worth, prospect }: Evaluation, at: (price: Money) => Evaluation): number {
  const asked = reading.asking.amount?.value ?? null;
  const most = worth.walkAway;
  if (prospect === null || asked === null || most === null || most.minor <= 0) return prospect?.refusal ?? 0;
  if (asked.currency !== most.currency || asked.minor <= most.minor) return prospect.refusal;
  return at(most).prospect?.refusal ?? 0;
}

/** What speaks against an ad whatever it costs. A flag on one thing of several only takes that thing out of it. */
function barredBy(evaluation: Evaluation, open: readonly Need[], { kit }: Settings): Barred | null {
  if (evaluation.reading.wanted) return 'wanted';
  const broken = evaluation.flags.filter(({ weight }) => weight === 'deal-breaker');
  if (broken.some(({ item }) => item === null)) return 'flag';
  return broken.length > 0 && fillsOf(evaluation, open, kit).length === 0 ? 'flag' : null;
}

const keyOf = ({ id, evaluation }: JudgedFind): string => {
  const name = foldName(evaluation.reading.place?.value ?? '');
  return name === '' ? `find ${id}` : `place ${name}`;
};

/** A trip for each place. Of ads in one place the dearest drive that is told counts: its goods may take a van, or two trips. */
function placeOf(id: string, there: readonly JudgedFind[], settings: Settings): TripPlace {
  const trips = there.flatMap(({ evaluation: { trip } }) => (trip?.cost.currency === settings.currency ? [trip] : []));
  const dearest = trips.sort((a, b) => b.cost.likely - a.cost.likely)[0];
  const name = there.find(({ evaluation }) => evaluation.reading.place !== null)?.evaluation.reading.place?.value ?? null;
  const at = there.find(({ sellerAt }) => sellerAt !== null)?.sellerAt ?? null;
  if (dearest !== undefined) {
    const { parts, cost, miles } = dearest;
    const cash = parts.driving.likely + parts.tolls.likely + parts.van.likely;
    return { id, name, at, miles: miles.likely, assumed: false, trip: Math.round(cost.likely), cash: Math.round(cash) };
  }
  const unit = 10 ** exponentOf(settings.currency);
  return {
    id,
    name,
    at,
    miles: ORDINARY_MILES,
    assumed: true,
    trip: Math.round(ORDINARY_MILES * costPerMileAway(settings) + settings.tolls * unit),
    cash: Math.round((ORDINARY_MILES * 2 * settings.perMile + settings.tolls) * unit),
  };
}

/** `said` by id of the find. */
export function consider(
  judged: readonly JudgedFind[],
  open: readonly Need[],
  said: ReadonlyMap<string, Said>,
  settings: Settings,
): Considered {
  const byPlace = new Map<string, JudgedFind[]>();
  for (const find of judged) byPlace.set(keyOf(find), [...(byPlace.get(keyOf(find)) ?? []), find]);
  return {
    finds: judged.map((find) => ({
      id: find.id,
      evaluation: find.evaluation,
      place: keyOf(find),
      refusal: find.refusal,
      barred: said.get(find.id) === 'out' ? 'left-out' : barredBy(find.evaluation, open, settings),
      same: find.same,
      must: said.get(find.id) === 'must',
    })),
    places: [...byPlace].map(([id, there]) => placeOf(id, there, settings)),
  };
}
