/** Places by name and postcode, out of lists that ship with the extension. Nothing is asked of anybody. */
import { greatCircleKm, type Place } from '../trip/great-circle.ts';
import { type Candidate, clearlyMeant, ranked } from './candidate.ts';
import { foldName } from './fold.ts';
import { type Index, indexOf, nearest } from './name-index.ts';
import { meanings, partsOf } from './query.ts';
import { regionNames, regionShort, type Within } from './regions.ts';
import { type Packed, type Rows, unpack } from './unpack.ts';

export type Found =
  | {
      readonly ok: true;
      /** The likeliest first, never empty. */
      readonly candidates: readonly Candidate[];
      /** The one that is clearly meant: see clearlyMeant. Null: ask. */
      readonly chosen: Candidate | null;
      /** The surroundings of the place are meant: "near X", "north X". */
      readonly loose: boolean;
    }
  | {
      readonly ok: false;
      /** `no-postcodes`: a postcode of a country whose postcodes are in no list. */
      readonly code: 'empty' | 'too-long' | 'unknown' | 'unknown-postcode' | 'no-postcodes';
    };

type Home = Pick<Place, 'lat' | 'lon'> | null;

export interface Gazetteer {
  /** Places that a text may mean: "Name", "Name, State", a ZIP code. Nearness to `home` ranks them. Never throws. */
  readonly find: (text: string, home?: Home) => Found;
  /** Places whose names begin so, for a list under a field: `most` at most, the likeliest first. */
  readonly suggest: (text: string, home?: Home, most?: number) => readonly Candidate[];
}

/** Nobody writes more for a place. */
const LONGEST = 120;
/** A larger place within so many kilometres tells one village from another. */
const AROUND_KM = 40;

interface Spot {
  readonly list: Index;
  readonly at: number;
  readonly exact: boolean;
}

const within = ({ rows }: Index, at: number, wanted: readonly Within[] | null): boolean =>
  wanted === null ||
  wanted.some(({ country, region }) => country === rows.country && (region === null || region === rows.regions[at]));

/** Places of a folded name within these regions, in every list. */
const named = (lists: readonly Index[], name: string, wanted: readonly Within[] | null): Spot[] =>
  lists.flatMap((list) =>
    [
      ...(list.byName.get(name) ?? []).map((at) => ({ list, at, exact: true })),
      ...(list.byShorter.get(name) ?? []).map((at) => ({ list, at, exact: false })),
    ].filter(({ at }, i, all) => within(list, at, wanted) && all.findIndex((one) => one.at === at) === i),
  );

const labelOf = (rows: Rows, at: number): string =>
  [rows.names[at], regionShort(rows.country, rows.regions[at] ?? '')].filter((part) => part).join(', ');

function candidate({ list: { rows }, at, exact }: Spot, home: Home): Candidate {
  const place = { lat: rows.lat[at] ?? 0, lon: rows.lon[at] ?? 0 };
  return {
    ...place,
    name: rows.names[at] ?? '',
    region: regionShort(rows.country, rows.regions[at] ?? ''),
    country: rows.country,
    people: rows.people[at] ?? 0,
    km: home === null ? null : greatCircleKm(home, place),
    exact,
    near: null,
    by: 'name',
  };
}

/** Ranked, and those that name and region leave alike told apart by the largest place around. */
function candidates(spots: readonly Spot[], home: Home): Candidate[] {
  const all = spots.map((spot) => ({ spot, ...candidate(spot, home) }));
  return ranked(all).map(({ spot, ...one }) => {
    const alike = all.some((other) => other.spot !== spot && labelOfCandidate(other) === labelOfCandidate(one));
    const at = alike ? nearest(spot.list, one, AROUND_KM, spot.at, 'largest') : null;
    return at === null ? one : { ...one, near: labelOf(spot.list.rows, at) };
  });
}

const labelOfCandidate = ({ name, region, country }: Candidate): string => `${name}|${region}|${country}`;

function byCode(lists: readonly Index[], code: number, home: Home): Candidate | null {
  for (const list of lists) {
    const { rows } = list;
    const i = codeAt(rows.codes, code);
    if (i === null) continue;
    const place = { lat: rows.codesLat[i] ?? 0, lon: rows.codesLon[i] ?? 0 };
    const at = nearest(list, place, AROUND_KM, -1, 'nearest');
    return {
      ...place,
      name: String(code).padStart(5, '0'),
      region: at === null ? null : regionShort(rows.country, rows.regions[at] ?? ''),
      country: rows.country,
      people: 0,
      km: home === null ? null : greatCircleKm(home, place),
      exact: true,
      near: at === null ? null : labelOf(rows, at),
      by: 'postcode',
    };
  }
  return null;
}

/** Where a code stands among ascending ones; null when it does not. */
function codeAt(codes: Uint32Array, code: number): number | null {
  let [low, high] = [0, codes.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((codes[middle] ?? 0) < code) low = middle + 1;
    else high = middle;
  }
  return codes[low] === code ? low : null;
}

/** A gazetteer of these countries. Throws a RangeError on a damaged list. */
export function makeGazetteer(packed: readonly Packed[]): Gazetteer {
  const lists = packed.map((one) => indexOf(unpack(one)));
  const regions = regionNames(packed.map(({ country }) => country));
  const find = (text: string, home: Home = null): Found => {
    if (text.length > LONGEST) return { ok: false, code: 'too-long' };
    const { zip, code, rest } = partsOf(text.trim());
    const hit = zip === null ? null : byCode(lists, zip, home);
    if (hit !== null) return { ok: true, candidates: [hit], chosen: hit, loose: false };
    if (foldName(rest) === '') {
      if (!code) return { ok: false, code: 'empty' };
      return {
        ok: false,
        code: zip !== null && lists.some(({ rows }) => rows.codes.length > 0) ? 'unknown-postcode' : 'no-postcodes',
      };
    }
    for (const { name, within: wanted, loose, open } of meanings(rest, regions)) {
      const spots = named(lists, name, wanted);
      if (spots.length === 0) continue;
      const all = candidates(spots, home);
      return { ok: true, candidates: all, chosen: open ? null : clearlyMeant(all, wanted !== null), loose };
    }
    return { ok: false, code: 'unknown' };
  };
  const suggest = (text: string, home: Home = null, most = 8): readonly Candidate[] => {
    const start = text.length > LONGEST ? '' : foldName(text);
    if (start.length < 2) return [];
    const spots = lists.flatMap((list) => list.beginning(start).map((at) => ({ list, at, exact: list.rows.names[at] === text })));
    return candidates(
      ranked(spots.map((spot) => ({ spot, ...candidate(spot, home) })))
        .slice(0, most)
        .map(({ spot }) => spot),
      home,
    );
  };
  return { find, suggest };
}
