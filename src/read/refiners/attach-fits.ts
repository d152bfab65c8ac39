/** Attaches words of fit to the drafts they speak of: "Olympic", "standard" and the like, and what a measured bore says of the sleeve. */
import { isPlate, type Kind } from '../../listing/reading.ts';
import { isAside } from '../recognisers/nouns.ts';
import { endsIn, says, saysWithin } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';
import { isBar, toldApartBy } from './attach-facts.ts';
import { type Draft, firstToken } from './draft.ts';
import { clauseAround } from './subject.ts';

/**
 * A word of fit speaks of its own noun ("Olympic bar"), of the goods of its clause, or of the whole lot. Bars take it from plates and lots,
 * plates only from plates and lots: an Olympic bar may be sold with other plates.
 */
function attachFits(scan: Scan, drafts: readonly Draft[], at: number, value: '50mm' | '25mm'): void {
  const known = { value, rule: scan.tokens[at]?.term?.sense === 'standard' ? 'loose-standard' : 'make', from: at, to: at };
  const near50 = scan.tokens.slice(Math.max(0, at - 3), at + 5).some(({ term }) => term?.fits === '50mm');
  if (scan.tokens[at]?.term?.sense === 'standard' && near50) return;
  // "Plate tree, holds olympic".
  if (scan.plain[at - 1] === 'X' && holdsGoods(scan, at - 1)) return;
  const holes = /hole|loch|bohrung/.test(scan.tokens[at]?.text ?? '') && scan.tokens[at]?.line !== 0;
  const ofBar = drafts.some(
    (item) => isBar(item.kind) && item.places.some((place) => scan.clause[place.from] === scan.clause[at]),
  );
  if (holes && !ofBar) {
    attachHoles(scan, drafts, at, known);
    return;
  }
  const taken = barThatTakes(scan, drafts, at);
  for (const item of taken) item.fits ??= known;
  if (taken.length > 0) return;
  const own = nounOf(scan, at) ?? barBefore(scan, drafts, at);
  const apart = own === null ? toldApartBy(scan, drafts, at) : [];
  for (const item of apart) item.fits ??= known;
  if (apart.length > 0) return;
  // "all fit an Olympic bar" speaks of the plates.
  const bar = own !== null && isBar(scan.tokens[own]?.term?.kind ?? 'other') && !isAside(scan, own);
  const fitting = (kind: Kind): boolean => (bar ? isBar(kind) : isPlate(kind) || isBar(kind));
  const beside = drafts.filter(
    (item) => fitting(item.kind) && item.places.some((place) => scan.clause[place.from] === scan.clause[at]),
  );
  const near = own === null ? sinceRival(scan, beside, at, value) : beside;
  const held = own === null ? [] : near.filter((item) => item.places.some((place) => own >= place.from && own <= place.to));
  const holding = held.length > 0 || !bar ? held : drafts.filter((item) => item.kindAt === own && isBar(item.kind));
  if (holding.length > 0 && (bar || near.length > 1)) for (const item of holding) item.fits ??= known;
  else for (const item of near) if (!bar || near.length === 1) item.fits ??= known;
  if (bar) return;
  // "Olympic plates" says nothing of the bars, but in a title it says what the lot is; so do "Olympic weights".
  const noun = own === null ? undefined : scan.tokens[own];
  const plates = isPlate(noun?.term?.kind ?? 'other') && (noun?.line ?? 0) > 0 && !/weight|gewicht/.test(noun?.text ?? '');
  for (const item of drafts) if ((isPlate(item.kind) || (isBar(item.kind) && !plates)) && !item.fits) item.spread.push(known);
}

/** "The big hole kind": plates have holes, and the bars beside them none. */
function attachHoles(scan: Scan, drafts: readonly Draft[], at: number, known: NonNullable<Draft['fits']>): void {
  const plates = drafts.filter(({ kind }) => isPlate(kind));
  const beside = plates.filter((item) => item.places.some((place) => scan.clause[place.from] === scan.clause[at]));
  if (beside.length === 0 || plates.length === beside.length) for (const item of plates) item.spread.push(known);
  for (const item of beside) item.fits ??= known;
}

/** Whether what stands before in the clause is a tree or a stand. */
function holdsGoods(scan: Scan, at: number): boolean {
  for (let i = at - 1; i >= 0 && scan.clause[i] === scan.clause[at]; i -= 1)
    if (scan.plain[i] === 'k') return scan.tokens[i]?.term?.kind === 'storage' || holdsGoods(scan, i);
  return false;
}

/** "4x45 olympic, 4x10 standard": beside a word of the other sleeve in its clause, one behind goods speaks of those since that word. */
function sinceRival(scan: Scan, beside: readonly Draft[], at: number, value: '50mm' | '25mm'): readonly Draft[] {
  const [from, to] = clauseAround(scan, at);
  let last = from - 1;
  let rival = false;
  for (let i = from; i <= to; i += 1) {
    const fits = scan.tokens[i]?.term?.fits;
    if (!fits || fits === value) continue;
    rival = true;
    if (i < at) last = i;
  }
  const since = rival ? beside.filter((item) => item.places.some((place) => place.from > last && place.to < at)) : [];
  return since.length > 0 ? since : beside;
}

/** "Technique bar, 25 mm grip, fits Olympic bumpers": plates that are no goods of the lot tell the sleeves of the bar before them. */
function barThatTakes(scan: Scan, drafts: readonly Draft[], at: number): Draft[] {
  const noun = nounOf(scan, at);
  if (
    noun === null ||
    !isPlate(scan.tokens[noun]?.term?.kind ?? 'other') ||
    !/[XA][a-z]?$/.test(scan.plain.slice(Math.max(0, at - 2), at))
  )
    return [];
  if (drafts.some((item) => isPlate(item.kind) && item.weight !== null)) return [];
  const bars = drafts.filter((item) => isBar(item.kind) && firstToken(item) < at);
  return saysWithin(scan, at - 4, at, 'all') ? bars : bars.slice(-1);
}

/** "Bar: 45 lb, olympic" as a line of a list, "curl bar (olympic sleeves)": the bar before the word, with no plates between. */
function barBefore(scan: Scan, drafts: readonly Draft[], at: number): number | null {
  let bracket = false;
  for (let i = at - 1; i >= 0 && scan.clause[i] === scan.clause[at]; i -= 1) {
    if (drafts.some((item) => isPlate(item.kind) && item.places.some((place) => place.to === i))) return null;
    if (scan.plain[i] === '(') bracket = true;
    if (scan.plain[i] !== 'k') continue;
    const token = scan.tokens[i];
    const listed =
      (token?.line ?? 0) > 0 && scan.tokens[Math.max(0, i - (scan.plain[i - 3] === 'j' ? 4 : 3))]?.line !== token?.line;
    const bar = isBar(token?.term?.kind ?? 'other') && scan.plain[i + 1] !== 't' && !isAside(scan, i);
    return bar && (bracket || listed) ? i : null;
  }
  return null;
}

/** The noun that an adjective belongs to: itself, or the next noun behind further adjectives. */
function nounOf(scan: Scan, at: number): number | null {
  for (let i = at; i < at + 5; i += 1) {
    if (scan.plain[i] === 'k' || scan.plain[i] === 't') return i;
    if (!'mC'.includes(scan.plain[i] ?? '_')) return null;
  }
  return null;
}

/** Goods that no word of fit spoke of take that of the lot, or of the heading above them when the ad names both. */
export function spreadFits(drafts: readonly Draft[]): void {
  const named = new Set(
    drafts.flatMap((item) => [...item.spread.map(({ value }) => value), ...(item.fits ? [item.fits.value] : [])]),
  );
  for (const item of drafts) {
    if (item.fits || item.spread.length === 0) continue;
    // Of two different words of fit the last one before the goods holds, as a heading does.
    const at = firstToken(item);
    const before = item.spread.findLast(({ from }) => from < at);
    const holding = named.size > 1 ? before : item.spread[0];
    if (holding) item.fits = holding;
  }
}

/** "Curl bar (standard 1 inch) with four 10 lb plates": plates that come with a one-inch bar, or with such handles, in its sentence go on it. */
export function fitByBar(scan: Scan, drafts: readonly Draft[]): void {
  for (const bar of drafts) {
    const handle = bar.kind === 'other' && scan.tokens[bar.kindAt]?.term?.sense === 'handle';
    if ((!isBar(bar.kind) && !handle) || bar.fits?.value !== '25mm') continue;
    const clause = scan.clause[firstToken(bar)];
    const joined = Array.from({ length: WITH }, (_, on) => bar.kindAt + 1 + on).some(
      (at) => scan.clause[at] === clause && says(scan, at, 'with'),
    );
    if (!joined) continue;
    for (const item of drafts)
      if (isPlate(item.kind) && !item.fits && scan.clause[firstToken(item)] === clause && firstToken(item) > firstToken(bar))
        item.fits = { ...bar.fits, rule: 'fits-with-bar', implied: true };
  }
}

const MOST_FITS = 300;
/** How far behind a bar the word stands that plates come with it. */
const WITH = 8;

/** Words between a verb and what was bought: "got a full new set". */
const BETWEEN = 3;

/** How far behind the word its goods are counted. */
const COUNTED = 4;

/**
 * "Moved to oly years ago", "bought an Olympic set": what the seller goes on with, where the goods themselves are of the other sleeve. "Got
 * Olympic plates 4x45" counts what is on offer.
 */
function isOfNewOnes(scan: Scan, at: number): boolean {
  for (let i = at + 1; i <= at + COUNTED && scan.clause[i] === scan.clause[at]; i += 1) if (scan.plain[i] === 'n') return false;
  for (let i = at; i >= at - BETWEEN && scan.clause[i - 1] === scan.clause[at]; i -= 1) {
    if (endsIn(scan, i, 'goes-over')) return true;
    if (!'amz'.includes(scan.plain[i - 1] ?? '_')) return false;
  }
  return false;
}

/** "Olympic", "standard" and the like: by the adjective's own noun, else by clause, else for the whole lot. */
export function attachFitWords(scan: Scan, drafts: readonly Draft[]): void {
  let left = MOST_FITS;
  const oneInch = scan.tokens.some(({ term }) => term?.fits === '25mm');
  scan.tokens.forEach(({ term }, at) => {
    if (!term?.fits || left === 0) return;
    left -= 1;
    if (oneInch && term.fits === '50mm' && isOfNewOnes(scan, at)) return;
    const denied = /N[a-zX]{0,2}$/.test(scan.plain.slice(Math.max(0, at - 3), at)) && scan.clause[at - 1] === scan.clause[at];
    if (!denied) attachFits(scan, drafts, at, term.fits);
  });
}

/** Sleeve by measure: holes and bars of 48 mm and more are for 50 mm sleeves, those of 24 to 32 mm for one-inch ones. */
export function settleFits(drafts: readonly Draft[]): void {
  for (const item of drafts) {
    const bore =
      item.measures.get('boreMm') ?? item.measures.get('sleeveMm') ?? item.measures.get('fits50') ?? item.measures.get('fits25');
    if (!bore) continue;
    const value = bore.value >= 45 ? '50mm' : bore.value <= 33 ? '25mm' : null;
    if (value) item.fits = { value, rule: bore.rule, from: bore.from, to: bore.to };
  }
}
