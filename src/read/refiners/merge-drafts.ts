/** Joins drafts that speak of the same goods (a title repeated in the body), and adds up those that are several lots of one size. */
import { OF_ONE_PIECE } from '../../listing/reading.ts';
import { inPounds } from '../../units/mass.ts';
import { isPlateSize } from '../recognisers/notation.ts';
import { says, saysWithin } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';
import { isOfPiece } from './condition-scopes.ts';
import type { Draft } from './draft.ts';
import { firstToken } from './draft.ts';
import { lotAt, lotsOf } from './lots.ts';
import { calledAlike } from './subject.ts';
import { isDefinite, isSingledOut, isToldAgain } from './told-again.ts';

const keyOf = (item: Draft): string =>
  `${item.kind}|${item.weight?.value ?? '-'}|${item.unit ?? '-'}|${item.sold}|${item.label ?? ''}`;

function absorb(into: Draft, other: Draft): void {
  into.places.push(...other.places);
  takeFacts(into, other);
  into.total ??= other.total;
  if (into.kindAssumed && !other.kindAssumed) into.kindAssumed = false;
}

/** Count of two mentions of one size: the same said twice, or two lots. */
function joinCounts(into: Draft, other: Draft, scan: Scan, lots: readonly number[]): void {
  if (other.count === null || other.partitive || other.label !== undefined || isSingledOut(scan, into, other)) return;
  if (into.partitive) {
    into.partitive = false;
    into.count = other.count;
    return;
  }
  if (into.count === null || (into.count.implied && !other.count.implied)) {
    into.count = other.count;
    return;
  }
  const listed = into.count.rule === 'one-weight' && other.count.rule === 'one-weight';
  if (other.count.implied && !listed) return;
  const lineA = scan.tokens[firstToken(into)]?.line ?? 0;
  const lineB = scan.tokens[firstToken(other)]?.line ?? 0;
  const ownPrices = into.ownPrice !== null && other.ownPrice !== null;
  const lotA = lotAt(lots, firstToken(into));
  const lotB = lotAt(lots, firstToken(other));
  if (lotA > 0 && lotB > 0 && lotA !== lotB) {
    into.count = { ...into.count, value: into.count.value + other.count.value };
    return;
  }
  const sameLine = lineA === lineB;
  const title = lineA === 0 || lineB === 0;
  const differ = into.count.value !== other.count.value;
  if (!differ && isDefinite(scan, other)) return;
  if (!differ && !ownPrices && isToldAgain(scan, into, other)) return;
  if (sameLine || ownPrices || (listed && !title) || (differ && !title))
    into.count = { ...into.count, value: into.count.value + other.count.value };
  else if (differ) into.count = other.count;
}

/** "Two bars. One bar has a crack": of the one that was told by itself. */
const ofOne = (side: Draft, fact: Draft['conditions'][number]): Draft['conditions'][number] =>
  isOfPiece(fact.value, side) ? { ...fact, rule: OF_ONE_PIECE } : fact;

const WEIGHED = ['plate', 'bumper', 'micro', 'dumbbell', 'kettlebell'];

/** "Olympic bar, 45 lb. Standard bar, bent": goods of two sleeves. */
const fitsDiffer = (a: Draft, b: Draft): boolean => !!a.fits && !!b.fits && a.fits.value !== b.fits.value;

/** "Rubber coated discs: 4 x 2.5 kg. … Technique plates, plastic, 2.5 kg, pair, £10": of another make and at a price of their own. */
function madeOtherwise(scan: Scan, a: Draft, b: Draft): boolean {
  const line = (item: Draft): number => scan.tokens[firstToken(item)]?.line ?? 0;
  return (
    a.material !== null &&
    b.material !== null &&
    a.material.value !== b.material.value &&
    b.ownPrice !== null &&
    a.count !== null &&
    line(a) !== line(b)
  );
}

/** "7 ft olympic barbell straight, 6 ft olympic barbell bent": of two lengths, by more than one of them could be measured wrongly. */
function lengthsDiffer(a: Draft, b: Draft): boolean {
  const [one, other] = [a, b].map(({ measures }) => measures.get('lengthMm')?.value ?? 0);
  return !!one && !!other && Math.abs(one - other) > 0.1 * Math.max(one, other);
}

/** Two bars, racks or benches are two when each has its own price or its own line of a list. */
function apart(scan: Scan, a: Draft, b: Draft, lots: readonly number[]): boolean {
  if (a.again || b.again) return false;
  if (fitsDiffer(a, b)) return true;
  const [lotA, lotB] = [a, b].map((item) => lotAt(lots, firstToken(item)));
  if (lotA && lotB && lotA !== lotB && !WEIGHED.includes(a.kind)) return true;
  if (WEIGHED.includes(a.kind)) return madeOtherwise(scan, a, b);
  if (lengthsDiffer(a, b)) return true;
  if (a.ownPrice && b.ownPrice && a.ownPrice.amount !== b.ownPrice.amount) return true;
  const starts = (item: Draft): boolean => {
    const first = firstToken(item);
    // "Rack is already off the wall": of the one that was told.
    if (item === b && item.count?.implied && !item.ownPrice && scan.tokens[item.kindAt + 1]?.term?.sense === 'is') return false;
    const line = scan.tokens[first]?.line ?? 0;
    let begin = first;
    while (begin > Math.max(0, first - 30) && scan.tokens[begin - 1]?.line === line) begin -= 1;
    // "The rack I paid 700 for": told before.
    for (let i = begin; i < first; i += 1) if (says(scan, i, 'the')) return false;
    return line > 0 && !/[^•amCnd()Ux-]/.test(scan.plain.slice(begin, first));
  };
  return starts(a) && starts(b) && scan.tokens[firstToken(a)]?.line !== scan.tokens[firstToken(b)]?.line;
}

export function mergeDrafts(scan: Scan, drafts: readonly Draft[]): Draft[] {
  const merged: Draft[] = [];
  const byKey = new Map<string, Draft>();
  const lots = lotsOf(scan);
  for (const item of drafts) {
    const key = keyOf(item);
    const known = byKey.get(key);
    if (!known || (item.label === undefined && apart(scan, known, item, lots))) {
      byKey.set(key, item);
      merged.push(item);
      continue;
    }
    const pieces = [known, item].map((side) => (side.count?.implied ? null : (side.count?.value ?? null)));
    joinCounts(known, item, scan, lots);
    for (const [index, side] of [known, item].entries())
      if (pieces[index] === 1 && (known.count?.value ?? 0) > 1)
        side.conditions = side.conditions.map((fact) => ofOne(side, fact));
    if (item.ownPrice) {
      known.ownPrice = known.ownPrice
        ? { ...known.ownPrice, amount: known.ownPrice.amount + item.ownPrice.amount }
        : item.ownPrice;
    }
    absorb(known, item);
  }
  return dropVague(scan, merged);
}

/** A noun with no weight says nothing beside weighed goods of its kind but what holds for all of them; a bar without a weight is the bar that has one. */
/** Named in the first line, and nowhere else in this way. */
const isTitle = (scan: Scan, item: Draft): boolean => item.places.every(({ from }) => scan.tokens[from]?.line === 0);

/** How far from its name the weight of a piece may lie on the scale: common practice, no source. */
const SCALED = 0.08;

/**
 * "45s ... some say 20.4 kg on the back": a weight without a count that another has in the other unit, to the half per cent; "one of the 45s was
 * 43.8 lb", "20 kg bar, actual mass 19.96 kg": what a piece weighed on the scale, near its name and no name of its own.
 */
function isOnScale(item: Draft, weighed: readonly Draft[]): boolean {
  if (!item.weight || item.count !== null || item.ownPrice !== null) return false;
  const { value } = item.weight;
  const pounds = (one: Draft): number => inPounds({ value: one.weight?.value ?? 0, unit: one.unit ?? 'lb' });
  const apart = (other: Draft): number => Math.abs(pounds(other) / pounds(item) - 1);
  return weighed.some((other) => {
    if (other === item || other.count === null || (other.kind !== item.kind && !item.kindAssumed)) return false;
    if (other.unit !== item.unit) return !Number.isInteger(value) && other.kind === item.kind && apart(other) <= 0.005;
    return !isPlateSize(value) && value > 5 && value !== other.weight?.value && apart(other) <= SCALED;
  });
}

/** Counted as several behind one that was told, and none of them named before. */
const isMoreThan = (scan: Scan, item: Draft, first: Draft | undefined): boolean =>
  first?.count?.value === 1 &&
  item.count !== null &&
  !item.count.implied &&
  item.count.value > 1 &&
  item.places.every(({ from }) => from > firstToken(first) && scan.clause[from] !== scan.clause[firstToken(first)]) &&
  !isDefinite(scan, item);

/** The weighed goods that a noun without a weight names: those of its kind; "plates" the bumpers too where no others are told, or all are meant. */
function toldBy(scan: Scan, item: Draft, weighed: readonly Draft[]): readonly Draft[] {
  const same = weighed.filter(({ kind }) => kind === item.kind);
  if (item.kind !== 'plate' || (same.length > 0 && !saysWithin(scan, item.kindAt - 3, item.kindAt, 'all'))) return same;
  return weighed.filter(({ kind }) => kind === 'plate' || kind === 'bumper' || kind === 'micro');
}

function dropVague(scan: Scan, drafts: readonly Draft[]): Draft[] {
  const kept: Draft[] = [];
  const weighed = drafts.filter((other) => !other.sold && other.weight !== null);
  for (const item of drafts) {
    if (isOnScale(item, weighed)) continue;
    const vague =
      item.weight === null && item.total === null && !item.sold && item.label === undefined && item.kindRule !== 'headed-line';
    const plates = WEIGHED.includes(item.kind);
    const telling = vague ? toldBy(scan, item, weighed) : [];
    const [first] = telling;
    // "Weights" over a list of dumbbells names those.
    if (
      vague &&
      !first &&
      item.kind === 'plate' &&
      item.ownPrice === null &&
      weighed.some(({ kind }) => kind === 'dumbbell' || kind === 'kettlebell') &&
      says(scan, item.kindAt, 'weights')
    )
      continue;
    // "Youth barbells and plates" in the title, and below it each bar with its weight.
    const title = (item.count === null || item.count.implied) && isTitle(scan, item);
    // "Two bars. One is a 45 lb bar …, the other a 35 lb one": each is told.
    const sum = telling.reduce((pieces, { count }) => pieces + (count?.value ?? 0), 0);
    // "BARS" over a list of bars, "I won't test bars" behind it, count none.
    const summary = title || item.count === null || item.count.value === sum;
    if (!plates && telling.length > 1 && item.ownPrice === null && summary) {
      // "Bars are the two inch kind": said of each.
      if (scan.tokens[item.kindAt]?.term?.plural) for (const other of telling) other.fits ??= item.fits;
      continue;
    }
    // "Power bar 45 lb $125. Two beater bars, bent": more than the one told before.
    const more = !plates && telling.length === 1 && isMoreThan(scan, item, first);
    if (more) {
      kept.push(item);
      continue;
    }
    if (!first || (!plates && (telling.length !== 1 || fitsDiffer(first, item)))) {
      kept.push(item);
      continue;
    }
    for (const other of calledAlike(scan, telling, item.kindAt))
      if (!plates || other === first || other.kind === first.kind) takeFacts(other, item);
    first.places.push(...item.places);
    if (telling.length === 1) {
      joinVagueCount(first, item);
      if (item.ownPrice && !first.ownPrice) first.ownPrice = item.ownPrice;
    }
  }
  return kept;
}

/** What "rubber plates, 50 mm holes, no rust" says of the plates listed elsewhere. */
function takeFacts(into: Draft, from: Draft): void {
  if (from.pending) into.pending ??= from.pending;
  into.fits ??= from.fits;
  into.material ??= from.material;
  into.grade ??= from.grade;
  for (const [measure, fact] of from.measures) if (!into.measures.has(measure)) into.measures.set(measure, fact);
  for (const condition of from.conditions)
    if (!into.conditions.some(({ value }) => value === condition.value)) into.conditions.push(condition);
}

function joinVagueCount(into: Draft, other: Draft): void {
  if (other.count && (into.count === null || (into.count.implied && !other.count.implied))) into.count = other.count;
}

/** "Flat bench $40 (sold), incline bench $60" are two. */
function isOtherSort(scan: Scan, gone: Draft, item: Draft): boolean {
  const [a, b] = [gone, item].map(({ kindAt }) => (scan.tokens[kindAt]?.text ?? '').split(' '));
  return a !== undefined && b !== undefined && a.length > 1 && b.length > 1 && a.at(-1) === b.at(-1) && a[0] !== b[0];
}

const wordOf = (scan: Scan, item: Draft): string => (scan.tokens[item.places[0]?.to ?? -1]?.text ?? '').replace(/s$/, '');

/** "UPDATE: the bench is gone" holds for the bench wherever it is named; "the other 45s are sold" only for those. */
export function spreadSold(scan: Scan, drafts: readonly Draft[]): void {
  for (const gone of drafts) {
    if (!gone.sold) continue;
    // "The two 10s got stolen" are those of which as many are told elsewhere.
    const counted = gone.count !== null && !gone.count.implied;
    if (counted && !(gone.weight && says(scan, firstToken(gone) - 1, 'the'))) continue;
    if (saysWithin(scan, firstToken(gone) - 3, firstToken(gone) + 1, 'others')) continue;
    // "The bar that came with it was junk, I threw it out": that one, and no other.
    if (gone.places.some(({ to }) => scan.tokens[to + 1]?.term?.sense === 'which')) continue;
    // "Dumbbells gone" are all of them, of whatever weight.
    const any = gone.weight === null && gone.count === null && gone.total === null;
    const alike = drafts.filter(
      (item) =>
        !item.sold &&
        item.kind === gone.kind &&
        (any || item.weight?.value === gone.weight?.value) &&
        (!counted || item.count?.value === gone.count?.value) &&
        !isOtherSort(scan, gone, item) &&
        // "Rowers SOLD" says nothing of the boxes, though both are goods of other kinds.
        (item.kind !== 'other' || wordOf(scan, item) === wordOf(scan, gone)),
    );
    for (const item of alike) item.sold = true;
  }
}
