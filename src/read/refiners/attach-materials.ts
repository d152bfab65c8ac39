/** Material and make ("cast iron", "rubber coated", "machined"): of the noun they stand before, the goods beside them, else the lot. */
import { isPlate, type Kind, type Material } from '../../listing/reading.ts';
import { isAside } from '../recognisers/nouns.ts';
import { says } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';
import type { Term } from '../text/terms.ts';
import { BARS, PIECES, PLATES, type Scope } from './condition-scopes.ts';
import { type Subject, subjectOfWord } from './condition-subject.ts';
import { type Draft, firstToken } from './draft.ts';
import { clauseAround } from './subject.ts';

const FRAMES: readonly Kind[] = ['rack', 'stands', 'bench', 'storage'];
const OTHERS: readonly Kind[] = ['other', 'collars', 'storage'];
const ALL: readonly Kind[] = [...PIECES, ...BARS, ...FRAMES, ...OTHERS];

/** Goods that take a material which is said of no goods in particular. */
const LOTS: Readonly<Record<Material, readonly Kind[]>> = {
  iron: PIECES,
  rubber: PIECES,
  urethane: PIECES,
  vinyl: PIECES,
  cement: PLATES,
  chrome: BARS,
  steel: PLATES,
  wood: [],
};
/** Goods of which the material can be said; the others only keep it from being put on these. */
const MADE: Readonly<Record<Material, readonly Kind[]>> = {
  iron: PIECES.filter((kind) => kind !== 'bumper'),
  rubber: PIECES,
  urethane: PIECES,
  vinyl: PIECES.filter((kind) => kind !== 'bumper'),
  cement: PIECES,
  chrome: [...BARS, ...PIECES],
  steel: ALL,
  wood: FRAMES,
};
const MOST_MAKES = 300;

interface Said {
  readonly term: Term;
  readonly at: number;
  readonly subject: Subject;
}

export function attachMaterials(scan: Scan, drafts: readonly Draft[]): void {
  const lines = new Set(drafts.flatMap((item) => item.places.map(({ from }) => scan.tokens[from]?.line))).size;
  const said: Said[] = [];
  scan.tokens.forEach((token, at) => {
    const term = token.term;
    if (!term || (!term.material && !term.grade) || said.length >= MOST_MAKES) return;
    const frames = ofUprights(scan, drafts, at, term);
    if (frames.length > 0) said.push({ term, at, subject: { drafts: frames, told: true } });
    if (frames.length > 0 || isOfOtherThings(scan, at) || isOfAside(scan, at)) return;
    const lot = term.material ? LOTS[term.material] : PLATES;
    const subject = subjectOf(scan, drafts, at, term, { told: ALL, lot }, lines);
    // "Vinyl barbell set" speaks of the plates.
    const bars = term.material !== undefined && subject.told && subject.drafts.every(({ kind }) => BARS.includes(kind));
    const set = bars && term.material !== undefined && !MADE[term.material].includes('bar');
    said.push({ term, at, subject: set ? { drafts: drafts.filter(({ kind }) => lot.includes(kind)), told: false } : subject });
  });
  for (const told of [true, false]) for (const one of said) if (one.subject.told === told) put(one);
  shareMakes(scan, drafts);
  for (const one of said) {
    spreadBack(scan, drafts, one, said);
    spreadFromHead(scan, drafts, one);
  }
  attachTimber(scan, drafts);
}

/** "2x20 kg, 2x15 kg, 2x10 kg black rubber.": the one make that ends a list is that of the whole list. */
function spreadBack(scan: Scan, drafts: readonly Draft[], { term, at, subject }: Said, said: readonly Said[]): void {
  const [last] = subject.drafts;
  if (!last || !term.material || subject.drafts.length > 1 || last.weight === null || !/[.;!l]|^$/.test(scan.plain[at + 1] ?? ''))
    return;
  const clause = scan.clause[at];
  const alone = !said.some((other) => other.at !== at && other.term.material && scan.clause[other.at] === clause);
  if (!alone || !last.places.some(({ to }) => to < at && at - to <= 2 && scan.clause[to] === clause)) return;
  for (const item of drafts)
    if (item.kind === last.kind && item.weight && item.places.some(({ from }) => scan.clause[from] === clause))
      item.material ??= { value: term.material, rule: 'make', from: at, to: at };
}

/** "2x 25 lb rubber coated plates, 2x 10, 2x 5": sizes without a noun of their own are of the noun before them, and of its make. */
function shareMakes(scan: Scan, drafts: readonly Draft[]): void {
  for (const item of drafts) {
    if (item.material || item.weight === null || !PLATES.includes(item.kind) || scan.plain[item.kindAt] !== 'k') continue;
    const owner = drafts.find(
      (other) =>
        other !== item &&
        other.kindAt === item.kindAt &&
        other.material &&
        other.places.some(({ from, to }) => from < item.kindAt && to >= item.kindAt),
    );
    const make = owner?.material;
    if (make && Math.abs(make.from - item.kindAt) <= 2 && scan.clause[firstToken(item)] === scan.clause[item.kindAt]) {
      item.material = make;
      item.grade ??= owner.grade;
    }
  }
}

/** "Plates cast iron 2x45, 2x25", "Scheiben kalibriert 2x25, 2x20": a make right behind the noun that heads a list is that of the list. */
function spreadFromHead(scan: Scan, drafts: readonly Draft[], { term, at, subject }: Said): void {
  const noun = scan.plain[at - 1] === 'm' ? at - 2 : at - 1;
  const named = scan.tokens[noun]?.term;
  if (scan.plain[noun] !== 'k' || !named?.plural || !PLATES.includes(named.kind ?? 'other')) return;
  if (
    !subject.drafts.some(
      (item) => item.kindAt === noun || item.places.some(({ from }) => from === noun || (from > at && from - at <= 3)),
    )
  )
    return;
  for (const item of drafts) {
    const place = firstToken(item);
    const listed = item.kind === named.kind && item.weight !== null && scan.clause[place] === scan.clause[noun];
    const own = item.kindAt !== noun && scan.plain[item.kindAt] === 'k';
    if (listed && !own && !subject.drafts.includes(item)) put({ term, at, subject: { drafts: [item], told: true } });
  }
}

/** Sizes that timber is sold in, in inches; 2x3 and 3x3 are tubes of steel. */
const TIMBER = ['2x4', '2x6', '2x8', '2x10', '2x12', '4x4', '4x6', '6x6'];

/** "Rack made out of 4x4 and 2x8": of wood, where the words "of" or "from" lead to a size of timber and no steel is named. */
function attachTimber(scan: Scan, drafts: readonly Draft[]): void {
  const frames = drafts.filter((item) => FRAMES.includes(item.kind) && item.material === null);
  if (frames.length === 0) return;
  for (let i = scan.plain.indexOf('nxn', 1); i > 0; i = scan.plain.indexOf('nxn', i + 1)) {
    if (scan.letters[i] !== '_') continue;
    if (
      !TIMBER.includes(`${scan.tokens[i]?.value}x${scan.tokens[i + 2]?.value}`) ||
      /^["'f]/.test(scan.plain.slice(i + 3, i + 4))
    )
      continue;
    const lead = scan.tokens[i - 1]?.term;
    if (lead?.code !== 'o' && lead?.sense !== 'from') continue;
    const [from, to] = clauseAround(scan, i);
    if (scan.tokens.slice(from, to + 1).some(({ term }) => term?.material === 'steel')) continue;
    const told = frames.filter((item) => item.kindAt < i && i - item.kindAt < 30).sort((a, b) => b.kindAt - a.kindAt)[0];
    if (told) told.material ??= { value: 'wood', rule: 'timber', from: i, to: i + 2 };
  }
}

function put({ term, at, subject }: Said): void {
  const place = { rule: 'make', from: at, to: at };
  for (const item of subject.drafts) {
    if (term.grade && (isPlate(item.kind) || term.grade === 'rubber-coated')) item.grade ??= { value: term.grade, ...place };
    if (!term.material || !MADE[term.material].includes(item.kind)) continue;
    // Plastic over cement is cement.
    if (item.material?.value === 'vinyl' && term.material === 'cement') item.material = null;
    item.material ??= { value: term.material, ...place };
  }
}

/** A denied material, one that things stand on, and one of a part or of other things ("steel ring", "rubber mats"). */
function isOfOtherThings(scan: Scan, at: number): boolean {
  const clause = scan.clause[at];
  const before = scan.tokens[at - 1];
  // "Some metal, some plastic": nobody knows which.
  if (before?.term?.sense === 'some' && scan.clause[at - 1] === clause && scan.plain[at + 1] !== 'k') return true;
  if (isOneOfTwo(scan, at) || isThing(scan, at)) return true;
  if (/N[a-z]?$/.test(scan.plain.slice(Math.max(0, at - 2), at)) && scan.clause[at - 1] === clause) return true;
  for (let i = at - 1; i >= Math.max(0, at - 3) && scan.clause[i] === clause; i -= 1) {
    if (scan.tokens[i]?.term?.sense === 'upon') return true;
    if (!'am'.includes(scan.plain[i] ?? '_')) break;
  }
  // "Hooks are rubber coated".
  if (says(scan, at - 1, 'is-now') && isThingOrPart(scan, at - 2) && scan.clause[at - 2] === clause) return true;
  // "The vinyl has a tear": of a bench.
  if (scan.tokens[at]?.term?.sense === 'cover' && /^[zF%CN]/.test(scan.plain.slice(at + 1, at + 2))) return true;
  for (let i = at + 1; i <= at + 3 && scan.clause[i] === clause; i += 1) {
    if (isThingOrPart(scan, i) || 'TBS'.includes(scan.plain[i] ?? '_')) return true;
    if (!'mn"f-'.includes(scan.plain[i] ?? '_')) break;
  }
  return false;
}

/** A thing beside the goods, or a part or the handles of them. */
function isThingOrPart(scan: Scan, at: number): boolean {
  const term = scan.tokens[at]?.term;
  return !!term?.part || term?.sense?.startsWith('thing') === true || (term?.sense === 'handle' && scan.plain[at] === 'z');
}

/** "Everything steel or iron": nobody knows which. */
const isOneOfTwo = (scan: Scan, at: number): boolean =>
  [1, -1].some((way) => {
    const other = scan.tokens[at + 2 * way]?.term?.material;
    return (
      scan.tokens[at + way]?.term?.sense === 'or' &&
      other !== undefined &&
      other !== scan.tokens[at]?.term?.material &&
      scan.clause[at] === scan.clause[at + 2 * way]
    );
  });

/** "Moving the old iron", "now the iron can go": the goods as a thing, whatever they are made of. */
function isThing(scan: Scan, at: number): boolean {
  if (scan.tokens[at]?.term?.sense !== 'goods-too') return false;
  if (isSubject(scan, at)) return true;
  // "Here's the iron." tells what is on offer.
  const [from, to] = clauseAround(scan, at);
  if (to - from < 4) return false;
  let first = at - 1;
  while (first >= at - 3 && scan.plain[first] === 'm' && scan.clause[first] === scan.clause[at]) first -= 1;
  return (
    scan.plain[first] === 'a' && scan.clause[first] === scan.clause[at] && !/^[kndvmC(:]/.test(scan.plain.slice(at + 1, at + 2))
  );
}

/** "It turns out iron counts", "we also buy used iron from gyms": a thing that a sentence speaks of. */
function isSubject(scan: Scan, at: number): boolean {
  const before = scan.tokens[at - 1];
  const plain = scan.plain[at - 1] === 'z' ? before?.term?.sense === undefined : before?.text === 'used';
  const behind = scan.tokens[at + 1];
  return (
    plain &&
    before?.type === 'word' &&
    behind?.type === 'word' &&
    scan.plain[at + 1] === 'z' &&
    behind.term?.condition === undefined &&
    scan.clause[at + 1] === scan.clause[at] &&
    !says(scan, at + 1, 'concerning')
  );
}

/** "Want cast iron olympic plates", "fits rubber plates": the make of goods that are not on offer. */
function isOfAside(scan: Scan, at: number): boolean {
  if (scan.tokens[at]?.term?.code !== 'm') return false;
  let noun = at + 1;
  while (noun - at < 4 && 'mC'.includes(scan.plain[noun] ?? '_')) noun += 1;
  return scan.plain[noun] === 'k' && scan.clause[noun] === scan.clause[at] && isAside(scan, noun);
}

/** "3x3 steel uprights", "steel frame": of the racks. */
function ofUprights(scan: Scan, drafts: readonly Draft[], at: number, term: Term): Draft[] {
  if (term.material !== 'steel' || scan.tokens[at + 1]?.term?.part !== 'rack' || scan.clause[at + 1] !== scan.clause[at])
    return [];
  return drafts.filter(({ kind }) => kind === 'rack' || kind === 'stands');
}

/** "A steel vertical bar holder": a material behind an article is of what follows it, and of nothing before. */
function isOfNext(scan: Scan, at: number): boolean {
  return (
    scan.plain[at - 1] === 'a' &&
    scan.tokens[at - 1]?.term?.sense === undefined &&
    scan.plain[at + 1] === 'z' &&
    /^z{1,3}k/.test(scan.plain.slice(at + 1, at + 5))
  );
}

/** "Iron 45 pair, 5 pair, 2.5 pair": at the head of a list without other makes it is said of all that stand behind it in the clause. */
function withRow(scan: Scan, drafts: readonly Draft[], at: number, subject: Subject): Subject {
  if (
    !subject.told ||
    (!/(?:^|[l•:;-])$/.test(scan.plain.slice(Math.max(0, at - 1), at)) &&
      scan.tokens[at - 1]?.text !== '~' &&
      scan.clause[at - 1] === scan.clause[at])
  )
    return subject;
  if (!/^(?:[mkz]{0,2}[:-])?n/.test(scan.plain.slice(at + 1, at + 5))) return subject;
  let end = at + 1;
  while (end < scan.tokens.length && scan.clause[end] === scan.clause[at] && end - at < 60) {
    if ('mkCM'.includes(scan.plain[end] ?? 'm')) break;
    end += 1;
  }
  const row = drafts.filter((item) => PIECES.includes(item.kind) && item.places.some(({ from }) => from > at && from < end));
  return { ...subject, drafts: [...new Set([...subject.drafts, ...row])] };
}

function subjectOf(scan: Scan, drafts: readonly Draft[], at: number, term: Term, scope: Scope, lines: number): Subject {
  if (term.code !== 'k') {
    if (isOfNext(scan, at)) return { drafts: [], told: true };
    return withRow(
      scan,
      drafts,
      at,
      subjectOfWord(scan, drafts, { ...scope, from: at, to: at, joined: true, near: false }, lines),
    );
  }
  // "Rubber bumpers: 2 x 10, 2 x 15": those of its kind in its clause, else all of that kind.
  const alike = drafts.filter(({ kind }) => kind === term.kind);
  const own = alike.filter((item) => item.kindAt === at || item.places.some((place) => at >= place.from && at <= place.to));
  if (own.some(({ weight }) => weight !== null) && !term.plural) return { drafts: own, told: true };
  const near = alike.filter(
    (item) => item.kindAt === at || item.places.some((place) => scan.clause[place.from] === scan.clause[at]),
  );
  const weighed = near.some(({ weight }) => weight !== null);
  return { drafts: weighed || !term.plural ? near : alike, told: weighed || !term.plural };
}
