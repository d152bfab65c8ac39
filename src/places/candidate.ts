/** A place that may be meant, and which of several is clearly meant. */
import type { Place } from '../trip/great-circle.ts';

export interface Candidate extends Place {
  /** State or province as it is written behind the name; null where nobody writes one. */
  readonly region: string | null;
  /** Two capital letters. */
  readonly country: string;
  /** About so many people, within a tenth; 0 when unknown. */
  readonly people: number;
  /** Straight line from where the buyer sets out, in kilometres; null when that is not known. */
  readonly km: number | null;
  /** It has exactly this name; false when a part was left out ("am Fluss"). */
  readonly exact: boolean;
  /** The largest place within reach, told where name and region do not tell it from others; else null. For a postcode the nearest place. */
  readonly near: string | null;
  readonly by: 'name' | 'postcode';
}

/** Ads are local: so far a buyer is taken to look. An assumption. */
const LOCAL_KM = 150;
/** Others of the name must be so many times as far away. An assumption. */
const FARTHER = 3;
/** A name alone means the city of so many people, when no other place of the name has more than a twentieth of that. An assumption. */
const CITY = 100_000;
const LARGER = 20;
/** A place farther off is not taken for the seller's by its name alone, even if no list has another: 250 miles. An assumption. */
const FARTHEST_KM = 400;

/** Near places of the exact name first, then by people, a hundred times the people for ten times the distance. */
export function ranked<T extends Candidate>(candidates: readonly T[]): T[] {
  const rank = ({ people, km, exact }: Candidate): number =>
    Math.log10(people + 100) + (exact ? 0.5 : 0) - (km === null ? 0 : 2 * Math.log10(km + 10));
  return [...candidates].sort((a, b) => rank(b) - rank(a));
}

/**
 * The one that is clearly meant, or null when the buyer is to be asked. It is so when it is the only one, and either its region was
 * named with it, or it has 100,000 people, or it is within 400 km of a home that is known; when it alone is local (within 150 km of home)
 * and every other three times as far; or when it is a city of 100,000 with twenty times the people of each other, no other is nearer to
 * home, and no other has the name more exactly.
 */
export function clearlyMeant<T extends Candidate>(candidates: readonly T[], regionNamed: boolean): T | null {
  const only = candidates.length === 1 ? candidates[0] : undefined;
  if (only !== undefined) return regionNamed || only.people >= CITY || (only.km ?? 0) <= FARTHEST_KM ? only : null;
  const alone = (is: (one: T, other: T) => boolean, one: T): boolean =>
    candidates.every((other) => other === one || is(one, other));
  const local = candidates.find(
    (one) =>
      one.km !== null &&
      one.km <= LOCAL_KM &&
      alone((mine, other) => (other.km ?? 0) > Math.max(LOCAL_KM, FARTHER * (mine.km ?? 0)), one),
  );
  const city = candidates.find(
    (one) =>
      one.people >= CITY &&
      alone(
        (mine, other) =>
          mine.people >= LARGER * other.people &&
          (mine.exact || !other.exact) &&
          (mine.km === null || mine.km <= (other.km ?? 0)),
        one,
      ),
  );
  return local ?? city ?? null;
}
