/** What the buyer has said about one ad. Pure: every function gives a new session. */
import type { PageListing } from '../../src/listing/page-listing.ts';
import type { Correction, Doubt } from '../../src/listing/reading.ts';
import type { Settings } from '../../src/listing/settings.ts';
import type { Place } from '../../src/trip/great-circle.ts';

/** One thing the buyer did: a value set by hand, or a doubt settled. */
export type Change =
  | { readonly by: 'hand'; readonly correction: Correction }
  | { readonly by: 'doubt'; readonly doubt: Doubt; readonly choice: number };

export type TypedDistance = NonNullable<Settings['distance']>;

export interface Session {
  /** Name of the ad by its words: see ad-key.ts. */
  readonly key: string;
  readonly listing: PageListing;
  readonly changes: readonly Change[];
  readonly distance: TypedDistance | null;
  /** Where the seller is by the buyer's word: null for nowhere known, undefined while nothing is said of it. */
  readonly sellerAt?: Place | null | undefined;
}

export const startSession = (key: string, listing: PageListing): Session => ({ key, listing, changes: [], distance: null });

const correctionsOf = (change: Change): readonly Correction[] =>
  change.by === 'hand' ? [change.correction] : (change.doubt.choices[change.choice]?.corrections ?? []);

/** All corrections in the order in which they were made: the later one wins. */
export const corrections = (session: Session): readonly Correction[] => session.changes.flatMap(correctionsOf);

/** The correction in force for a path. */
export const correctionAt = (session: Session, path: string): Correction | undefined =>
  corrections(session).findLast((correction) => correction.path === path);

const withoutHand = (changes: readonly Change[], path: string): readonly Change[] =>
  changes.filter((change) => !(change.by === 'hand' && change.correction.path === path));

/** A value set anew takes the place of the one before, unless a doubt settled since has set it too: then it comes last. */
export function setValue(session: Session, correction: Correction): Session {
  const change: Change = { by: 'hand', correction };
  const last = session.changes.findLast((one) => correctionsOf(one).some(({ path }) => path === correction.path));
  const changes =
    last?.by === 'hand'
      ? session.changes.map((one) => (one === last ? change : one))
      : [...withoutHand(session.changes, correction.path), change];
  return { ...session, changes };
}

/** Takes back what was set by hand at a path, or else the settled doubt that set it. */
export function putBack(session: Session, path: string): Session {
  const changes = withoutHand(session.changes, path);
  if (changes.length < session.changes.length) return { ...session, changes };
  return { ...session, changes: changes.filter((change) => !correctionsOf(change).some((one) => one.path === path)) };
}

const isAbout = (path: string, item: string): boolean => path === item || path.startsWith(`${item}.`);

/** Takes back everything said by hand about one line; an added line is gone with it. */
export const putBackItem = (session: Session, item: string): Session => ({
  ...session,
  changes: session.changes.filter((change) => !(change.by === 'hand' && isAbout(change.correction.path, item))),
});

const withoutDoubt = (changes: readonly Change[], id: string): readonly Change[] =>
  changes.filter((change) => !(change.by === 'doubt' && change.doubt.id === id));

export const settleDoubt = (session: Session, doubt: Doubt, choice: number): Session => ({
  ...session,
  changes: [...withoutDoubt(session.changes, doubt.id), { by: 'doubt', doubt, choice }],
});

export const reopenDoubt = (session: Session, id: string): Session => ({
  ...session,
  changes: withoutDoubt(session.changes, id),
});

export const setDistance = (session: Session, distance: TypedDistance | null): Session => ({ ...session, distance });

export const setSeller = (session: Session, sellerAt: Place | null): Session => ({ ...session, sellerAt });

/**
 * The settings as one ad is judged by: a typed distance belongs to the ad, the stored one only remembers the unit; and so does the place of
 * the seller. `supposed`: the place that the ad names, which counts while the buyer has said nothing of it.
 */
export const forAd = (
  settings: Settings,
  session: Pick<Session, 'distance' | 'sellerAt'>,
  supposed: Place | null = null,
): Settings => ({
  ...settings,
  distance: session.distance,
  sellerAt: session.sellerAt === undefined ? supposed : session.sellerAt,
});

const ADDED = /^added-(\d+)\./;

/** Whether a line was added by the buyer. */
export const isAdded = (item: string): boolean => ADDED.test(`${item}.`);

/** The id of the next line that the buyer adds; the core makes the line when its kind is set. */
export function nextAdded(session: Session): string {
  const numbers = corrections(session).map((correction) => Number(ADDED.exec(correction.path)?.[1] ?? 0));
  return `added-${Math.max(0, ...numbers) + 1}`;
}

/** Whether the buyer took a line of the ad out: the line's own path, set to nothing. */
export const isTakenOut = (session: Session, item: string): boolean => correctionAt(session, item)?.value === null;
