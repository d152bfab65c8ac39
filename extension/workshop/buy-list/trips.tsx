/** What to buy, trip by trip: each ad with what it fills, what to pay, and the buyer's own word on it. */
import type { TripPlace } from '../../../src/kit/buy-list/consider.ts';
import type { OfferLine, PlaceLines } from '../../../src/kit/buy-list/lines.ts';
import { offered } from '../../../src/kit/buy-list/market-of.ts';
import { useWords } from '../../components/speech.ts';
import { addressOf } from '../route.ts';
import type { ChoicesMade } from './choices.ts';
import type { Names } from './names.ts';
import type { Worked } from './work-out.ts';

export interface TripsProps {
  readonly worked: Worked;
  readonly trips: readonly PlaceLines<TripPlace>[];
  readonly names: Names;
  readonly choices: ChoicesMade;
}

export function Trips({ trips, ...rest }: TripsProps) {
  const { t } = useWords();
  if (trips.length === 0) return null;
  return (
    <section aria-labelledby="buy-trips">
      <h2 id="buy-trips">{t('buy_trips')}</h2>
      <ol class="buy-trips">
        {trips.map((trip) => (
          <Trip key={trip.place.id} trip={trip} {...rest} />
        ))}
      </ol>
    </section>
  );
}

function Trip({ trip: { place, lines }, ...rest }: Omit<TripsProps, 'trips'> & { readonly trip: PlaceLines<TripPlace> }) {
  const { t } = useWords();
  return (
    <li class="buy-trip" data-trip={place.id}>
      <h3>{place.name ?? t('buy_somewhere')}</h3>
      <p class="quiet">
        {t(place.assumed ? 'buy_trip_assumed' : 'buy_trip', {
          trip: rest.names.money(place.trip),
          miles: rest.names.distance(place.miles),
        })}
        {place.cash < place.trip && ` ${t('buy_trip_money', { cash: rest.names.money(place.cash) })}`}
        {lines.length > 1 && ` ${t('buy_one_trip', { n: lines.length })}`}
      </p>
      <ul class="buy-ads">
        {lines.map((line) => (
          <Ad key={line.offer.id} line={line} only={onlyOf(line, lines, rest.worked)} {...rest} />
        ))}
      </ul>
    </li>
  );
}

/** The goods of its ad that the list takes, for links: empty for all of it, null where there is nothing to choose. */
function onlyOf({ offer }: OfferLine, lines: readonly OfferLine[], { made }: Worked): readonly string[] | null {
  const { find } = offered(offer.id);
  if (!made.market.offers.some(({ id }) => offered(id).find === find && offered(id).item !== null)) return null;
  return lines.flatMap((line) => {
    const one = offered(line.offer.id);
    return one.find === find && one.item !== null ? [one.item] : [];
  });
}

interface AdProps extends Omit<TripsProps, 'trips'> {
  readonly line: OfferLine;
  readonly only: readonly string[] | null;
}

function Ad({ line, only, worked, names, choices }: AdProps) {
  const { t, say } = useWords();
  const { offer, fills, spare, brings } = line;
  const { find, item } = offered(offer.id);
  const judged = worked.judged.find(({ id }) => id === find);
  // What all of it is worth says nothing of a part.
  const most = item === null ? (judged?.evaluation.worth.walkAway ?? null) : null;
  const must = choices.said.get(find) === 'must';
  const title = names.title(find);
  return (
    <li class="buy-ad" data-buy={find} data-price={offer.price}>
      <p class="buy-ad-name">
        <a href={addressOf('finds', find, only)}>
          <bdi>{title}</bdi>
        </a>{' '}
        <strong>{names.money(offer.price)}</strong>
      </p>
      {names.part(offer.id) !== null && <p>{t('buy_part', { part: names.part(offer.id) ?? '' })}</p>}
      <p data-fills>
        {fills.length === 0
          ? t('buy_fills_nothing')
          : t('buy_fills', { what: fills.map(({ need, pieces }) => names.pieces(need, pieces)).join('; ') })}
      </p>
      <p class="quiet">
        {most !== null && t('buy_most', { most: say.money(most) })}
        {offer.refusal >= 0.005 && ` ${t('buy_refusal', { chance: { percent: 100 * offer.refusal } })}`}
        {brings > 0 &&
          ` ${
            spare.length > 0
              ? t('buy_spare', {
                  what: spare.map(({ need, pieces }) => names.pieces(need, pieces)).join('; '),
                  brings: names.money(brings),
                })
              : t('buy_rest_brings', { brings: names.money(brings) })
          }`}
      </p>
      <p class="buy-words no-print">
        <a href={addressOf('pickup', find, only)} data-pickup={find}>
          {t('pickup_open')}
        </a>
        <button
          type="button"
          aria-pressed={must}
          data-must={find}
          aria-label={t('buy_must_named', { name: title })}
          onClick={() => choices.say(find, must ? null : 'must')}
        >
          {t('buy_must')}
        </button>
        <button
          type="button"
          data-out={find}
          aria-label={t('buy_leave_named', { name: title })}
          onClick={() => choices.say(find, 'out')}
        >
          {t('buy_leave')}
        </button>
      </p>
    </li>
  );
}
