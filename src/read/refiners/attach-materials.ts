/** Material and make ("cast iron", "rubber coated", "machined"): of the noun they stand before, the goods beside them, else the lot. */
import { isPlate, type Kind, type Material } from '../../listing/reading.ts';
import type { Scan } from '../text/scan.ts';
import type { Term } from '../text/terms.ts';
import { BARS, PIECES, PLATES, type Scope } from './condition-scopes.ts';
import { type Subject, subjectOfWord } from './condition-subject.ts';
import type { Draft } from './draft.ts';

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
    if (!term || (!term.material && !term.grade) || said.length >= MOST_MAKES || isOfOtherThings(scan, at)) return;
    const lot = term.material ? LOTS[term.material] : PLATES;
    const subject = subjectOf(scan, drafts, at, term, { told: ALL, lot }, lines);
    // "Vinyl barbell set" speaks of the plates.
    const bars = term.material !== undefined && subject.told && subject.drafts.every(({ kind }) => BARS.includes(kind));
    const set = bars && term.material !== undefined && !MADE[term.material].includes('bar');
    said.push({ term, at, subject: set ? { drafts: drafts.filter(({ kind }) => lot.includes(kind)), told: false } : subject });
  });
  for (const told of [true, false]) for (const one of said) if (one.subject.told === told) put(one);
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
  if (/N[a-z]?$/.test(scan.plain.slice(Math.max(0, at - 2), at)) && scan.clause[at - 1] === clause) return true;
  for (let i = at - 1; i >= Math.max(0, at - 3) && scan.clause[i] === clause; i -= 1) {
    if (scan.tokens[i]?.term?.sense === 'upon') return true;
    if (!'am'.includes(scan.plain[i] ?? '_')) break;
  }
  // "The vinyl has a tear": of a bench.
  if (scan.tokens[at]?.term?.sense === 'cover' && /^[zF%CN]/.test(scan.plain.slice(at + 1, at + 2))) return true;
  for (let i = at + 1; i <= at + 3 && scan.clause[i] === clause; i += 1) {
    const term = scan.tokens[i]?.term;
    if (term?.part || term?.sense === 'thing' || 'TBS'.includes(scan.plain[i] ?? '_')) return true;
    if (!'mn"f-'.includes(scan.plain[i] ?? '_')) break;
  }
  return false;
}

function subjectOf(scan: Scan, drafts: readonly Draft[], at: number, term: Term, scope: Scope, lines: number): Subject {
  if (term.code !== 'k') return subjectOfWord(scan, drafts, { ...scope, from: at, to: at, joined: true, near: false }, lines);
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
