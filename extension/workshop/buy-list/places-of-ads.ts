/** Where the ads are, by the places that they name. */
import type { Settings } from '../../../src/listing/settings.ts';
import type { Gazetteer } from '../../../src/places/gazetteer.ts';
import type { Place } from '../../../src/trip/great-circle.ts';
import { hasPlaces } from '../../components/place-lists.ts';
import { placeOf } from '../../components/place-words.ts';
import type { Find } from '../../store/index.ts';

/** Looks up where the ads are, once it is known where the buyer sets out; a name that may be several places is none. */
export async function placesOf(
  { home, currency }: Settings,
  finds: readonly Find[],
  load: (currency: string) => Promise<Gazetteer>,
): Promise<(name: string) => Place | null> {
  if (home === null || !hasPlaces(currency) || finds.every(({ summary }) => summary.place === null)) return () => null;
  const known = new Map<string, Place | null>();
  try {
    const gazetteer = await load(currency);
    return (name) => {
      const before = known.get(name);
      if (before !== undefined) return before;
      const found = gazetteer.find(name, home);
      const place = found.ok && found.chosen ? placeOf(found.chosen) : null;
      known.set(name, place);
      return place;
    };
  } catch (error) {
    // Without the lists the ads' own distances do.
    console.error('Ironsift:', error);
    return () => null;
  }
}
