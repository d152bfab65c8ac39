/** What is written for a place, in the ways in which it may be meant. */
import { foldName } from './fold.ts';
import type { Within } from './regions.ts';

/** One way to understand it. */
export interface Meant {
  /** Folded name. */
  readonly name: string;
  /** Null when no region is named. */
  readonly within: readonly Within[] | null;
  /** The place itself is not meant, or not only: "near X", "north X", or a word behind the name that says nothing to us. */
  readonly loose: boolean;
  /** A word behind the name is neither region nor country: which place is meant stays open. */
  readonly open: boolean;
}

/** Said of a place's surroundings, before its name and behind it. English and German. */
const BEFORE =
  /^(?:(?:just |right )?(?:near|close to|nearby|outside(?: of)?|north of|south of|east of|west of)|around|greater|downtown|central|north|south|east|west|northern|southern|eastern|western|in|at|raum|grossraum|nahe|bei|in der nahe von|nahe bei|umgebung|kreis|landkreis|nord|sud|ost|west) (?:the )?(.+)$/;
const BEHIND =
  /^(.+?) (?:area|metro|metro area|region|suburbs?|downtown|and surroundings|nord|sud|ost|west|mitte|umgebung|und umgebung|umland|kreis)$/;

/** The name without words about its surroundings; null when there are none. */
function withoutSurroundings(name: string): string | null {
  const shorter = BEFORE.exec(name)?.[1] ?? BEHIND.exec(name)?.[1];
  return shorter === undefined ? null : (withoutSurroundings(shorter) ?? shorter);
}

/** No name of a region has more words. */
const REGION_WORDS = 5;

/** The name with its last words taken for a region, longest first. */
function* withRegion(name: string, regions: ReadonlyMap<string, readonly Within[]>): Generator<[string, readonly Within[]]> {
  const words = name.split(' ');
  for (let count = Math.min(REGION_WORDS, words.length - 1); count > 0; count -= 1) {
    const within = regions.get(words.slice(-count).join(' '));
    if (within !== undefined) yield [words.slice(0, -count).join(' '), within];
  }
}

function* ways(text: string, regions: ReadonlyMap<string, readonly Within[]>): Generator<Omit<Meant, 'loose'>> {
  const whole = foldName(text);
  yield { name: whole, within: null, open: false };
  for (const [name, within] of withRegion(whole, regions)) {
    yield { name, within, open: false };
    // "X, State, USA": the country says nothing that the state has not said.
    for (const [inner, narrower] of withRegion(name, regions)) yield { name: inner, within: narrower, open: false };
  }
  const head = foldName(text.split(/[,(/]/, 1)[0] ?? '');
  if (head !== '' && head !== whole) yield { name: head, within: null, open: true };
}

/** Ways to understand a text, the most literal first. Names that stand in `regions` behind a place's are taken for its region. */
export function* meanings(text: string, regions: ReadonlyMap<string, readonly Within[]>): Generator<Meant> {
  for (const way of ways(text, regions)) yield { ...way, loose: way.open };
  for (const way of ways(text, regions)) {
    const name = withoutSurroundings(way.name);
    if (name !== null) yield { ...way, name, loose: true };
  }
}

/** A ZIP code, with or without its four more digits; what is left beside it. */
const ZIP = /(?<![\d-])(\d{5})(?:-\d{4})?(?![\d-])/;
/** Postcodes that no list has: of four or five digits, of Britain, Canada and Ireland. */
const OTHER_CODE =
  /(?<![\p{L}\d-])(?:[A-Z]{1,2}-)?(?:\d{4,5}|[A-Z]{1,2}\d[A-Z\d]?(?: ?\d[A-Z]{2})?|[A-Z]\d[A-Z] ?\d[A-Z]\d|[A-Z]\d[\dW] ?[A-Z\d]{4})(?![\p{L}\d-])/u;

export interface Parts {
  /** Folded to a number; null when there is none. */
  readonly zip: number | null;
  /** Whether any postcode stands there, of whichever country. */
  readonly code: boolean;
  readonly rest: string;
}

/** The postcode and the rest of a text, which is empty when there is nothing else. */
export function partsOf(text: string): Parts {
  const zip = ZIP.exec(text);
  const found = zip ?? OTHER_CODE.exec(text);
  const rest = found === null ? text : `${text.slice(0, found.index)} ${text.slice(found.index + found[0].length)}`;
  return {
    zip: zip === null ? null : Number(zip[1]),
    code: found !== null,
    rest: rest.replace(/^[\s,;.-]+|[\s,;-]+$/g, ''),
  };
}
