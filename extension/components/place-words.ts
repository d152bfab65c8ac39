/** Places as they are named and told apart. */
import type { Candidate } from '../../src/places/candidate.ts';
import type { Found, Gazetteer } from '../../src/places/gazetteer.ts';
import type { Place } from '../../src/trip/great-circle.ts';
import type { DistanceUnit } from '../../src/units/length.ts';
import { MILE_IN_KILOMETRES } from '../../src/units/length.ts';
import type { Words } from './speech.ts';

/** Name and region; of a postcode the place that it is near. */
export const placeName = ({ by, name, region, near }: Candidate): string =>
  by === 'postcode'
    ? [name, near && `(${near})`].filter((part) => part).join(' ')
    : [name, region].filter((part) => part).join(', ');

/** What is kept of a place. */
export const placeOf = (candidate: Candidate): Place => ({
  name: placeName(candidate),
  lat: candidate.lat,
  lon: candidate.lon,
});

/** What tells a place from others of its name: what is near, the country among several, how far it is. */
export function placeDetail({ t, say }: Words, one: Candidate, all: readonly Candidate[], unit: DistanceUnit): string {
  const countries = new Set(all.map(({ country }) => country));
  const away = one.km === null ? null : { value: unit === 'km' ? one.km : one.km / MILE_IN_KILOMETRES, unit };
  const parts = [
    one.near !== null && one.by === 'name' ? t('places_near', { place: one.near }) : '',
    countries.size > 1 ? one.country : '',
    away === null ? '' : t('places_away', { distance: { distance: away } }),
  ];
  return say.list(parts.filter((part) => part !== ''));
}

/** As many as a list under a field shows. */
const SHOWN = 8;

/** What stands in the list for a text: places that it may mean, then places whose names go on from it. */
export function choices(gazetteer: Gazetteer, found: Found, text: string, home: Place | null): readonly Candidate[] {
  const meant = found.ok ? found.candidates : [];
  const more = meant.length >= SHOWN ? [] : gazetteer.suggest(text, home, SHOWN);
  const fresh = more.filter((one) => !meant.some((other) => other.lat === one.lat && other.lon === one.lon));
  return [...meant, ...fresh].slice(0, SHOWN);
}

/** Why a text is no place that can be taken, as a key of the strings; null when it is one, or empty. */
export function placeTrouble(found: Found): string | null {
  if (found.ok) return found.chosen ? null : 'places_which';
  return found.code === 'empty' ? null : `places_${found.code.replaceAll('-', '_')}`;
}
