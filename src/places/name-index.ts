/** A country's places, to be found by name and by where they lie. */
import { greatCircleKm, type Place } from '../trip/great-circle.ts';
import { foldName, foldUmlauts, shorterNames } from './fold.ts';
import { otherNames } from './other-names.ts';
import type { Rows } from './unpack.ts';

export interface Index {
  readonly rows: Rows;
  /** Rows by folded name, and by shorter ways to say it. */
  readonly byName: ReadonlyMap<string, readonly number[]>;
  readonly byShorter: ReadonlyMap<string, readonly number[]>;
  /** Rows whose folded names begin so, each once. */
  readonly beginning: (start: string) => readonly number[];
}

function add(map: Map<string, number[]>, name: string, at: number): void {
  const known = map.get(name);
  if (known === undefined) map.set(name, [at]);
  else if (known.at(-1) !== at) known.push(at);
}

export function indexOf(rows: Rows): Index {
  const byName = new Map<string, number[]>();
  const byShorter = new Map<string, number[]>();
  for (const [at, name] of rows.names.entries()) {
    const folded = foldName(name);
    add(byName, folded, at);
    const umlauts = foldUmlauts(name);
    if (umlauts !== null) add(byName, umlauts, at);
    for (const other of otherNames(rows.country, folded, rows.people[at] ?? 0)) add(byName, other, at);
    if (folded.includes(' ')) for (const shorter of shorterNames(name, folded)) add(byShorter, shorter, at);
  }
  let sorted: string[] | null = null;
  const beginning = (start: string): readonly number[] => {
    sorted ??= [...byName.keys()].sort();
    let [low, high] = [0, sorted.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((sorted[middle] ?? '') < start) low = middle + 1;
      else high = middle;
    }
    const found = new Set<number>();
    for (let i = low; sorted[i]?.startsWith(start); i += 1) for (const at of byName.get(sorted[i] ?? '') ?? []) found.add(at);
    return [...found];
  };
  return { rows, byName, byShorter, beginning };
}

/** A degree of latitude in kilometres, rounded down: what is farther north or south need not be measured. */
const DEGREE_KM = 110;

/** The largest or the nearest place within `km`, without the row `but`; null when there is none. */
export function nearest(
  { rows }: Index,
  from: Pick<Place, 'lat' | 'lon'>,
  km: number,
  but: number,
  wanted: 'largest' | 'nearest',
): number | null {
  let best: number | null = null;
  let measure = Number.NEGATIVE_INFINITY;
  const wide = Math.cos((from.lat * Math.PI) / 180) * DEGREE_KM;
  for (let at = 0; at < rows.names.length; at += 1) {
    const lat = rows.lat[at] ?? 0;
    const lon = rows.lon[at] ?? 0;
    if (at === but || Math.abs(lat - from.lat) * DEGREE_KM > km || Math.abs(lon - from.lon) * wide > 1.1 * km) continue;
    const away = greatCircleKm(from, { lat, lon });
    const mine = wanted === 'largest' ? (rows.people[at] ?? 0) : -away;
    if (away > km || mine <= measure) continue;
    best = at;
    measure = mine;
  }
  return best;
}
