/** What the things of a list are called. */
import type { Offer } from '../../../src/kit/buy-list/index.ts';
import { offered } from '../../../src/kit/buy-list/market-of.ts';
import type { Need } from '../../../src/kit/needs.ts';
import { distanceUnit } from '../../../src/trip/distance.ts';
import { MILE_IN_KILOMETRES } from '../../../src/units/length.ts';
import type { Figure } from '../../../src/words/message.ts';
import type { Words } from '../../components/speech.ts';
import { itemName } from '../../panel/item-words.ts';
import type { Find } from '../../store/index.ts';
import { countedName } from '../kit/thing-words.ts';
import type { Worked } from './work-out.ts';

export interface Names {
  readonly find: (offer: string) => string;
  /** The find's title as it is; of a part what it is of. */
  readonly title: (find: string) => string;
  /** "4 × Plates, 45 lb" for pieces of a need. */
  readonly pieces: (need: string, pieces: number) => string;
  /** Name of the part that an offer is; null for all of an ad. */
  readonly part: (offer: string) => string | null;
  readonly need: (need: Need) => string;
  readonly money: (minor: number) => string;
  /** In the buyer's unit, as a parameter of a message. */
  readonly distance: (miles: number) => Figure;
  readonly offer: (id: string) => Offer | undefined;
}

export function namesOf(words: Words, { made, kit, judged, settings }: Worked, finds: readonly Find[]): Names {
  const { say, t } = words;
  const unit = distanceUnit(settings);
  const titles = new Map(finds.map(({ id, title }) => [id, title || t('finds_untitled')]));
  const items = new Map(judged.map(({ id, evaluation }) => [id, evaluation.reading.items]));
  const offers = new Map(made.market.offers.map((offer) => [offer.id, offer]));
  const title = (find: string): string => titles.get(find) ?? t('finds_untitled');
  const part = (offer: string): string | null => {
    const { find, item } = offered(offer);
    const found = items.get(find)?.find(({ id }) => id === item);
    return found === undefined ? null : itemName(words, found);
  };
  return {
    title,
    part,
    find: (offer) => {
      const only = part(offer);
      const name = title(offered(offer).find);
      return only === null ? name : t('buy_only', { name, part: only });
    },
    pieces: (need, pieces) => {
      const wanted = kit.status.open[Number(need)];
      return wanted === undefined ? '' : countedName(words, { ...wanted, pieces });
    },
    need: (need) => countedName(words, need),
    distance: (miles) => ({
      distance: unit === 'km' ? { value: miles * MILE_IN_KILOMETRES, unit } : { value: miles, unit },
    }),
    money: (minor) => say.money({ minor, currency: settings.currency }),
    offer: (id) => offers.get(id),
  };
}
