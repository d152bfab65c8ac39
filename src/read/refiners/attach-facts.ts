/** Attaches measures to the drafts they speak of: same clause first, then the line, then the ad as a whole. Words of fit: attach-fits.ts. */
import { isPlate, type Kind } from '../../listing/reading.ts';
import type { Fact, Measure } from '../mention.ts';
import { isPronoun } from '../recognisers/pronouns.ts';
import type { Scan } from '../text/scan.ts';
import { type Draft, firstToken } from './draft.ts';
import { calledAlike, subjectOf } from './subject.ts';

const BARS: readonly Kind[] = ['bar', 'curl-bar', 'hex-bar'];
export const isBar = (kind: Kind): boolean => BARS.includes(kind);

/** Kinds that a measure can speak of, likeliest first. */
const MEASURED: Readonly<Record<Measure, (kind: Kind) => boolean>> = {
  boreMm: (kind) => isPlate(kind) || kind === 'collars',
  shaftMm: isBar,
  sleeveMm: isBar,
  lengthMm: (kind) => isBar(kind),
  diameterMm: isPlate,
  widthMm: (kind) => kind === 'bench',
  otherMm: () => false,
  heightMm: (kind) => ['rack', 'stands', 'bench'].includes(kind),
  fits25: (kind) => isPlate(kind) || isBar(kind),
  fits50: (kind) => isPlate(kind) || isBar(kind),
  tensilePsi: isBar,
  capacity: (kind) => isBar(kind) || ['rack', 'bench', 'stands', 'storage'].includes(kind),
};

/** The last noun before a place in its clause, else the place. */
function nounBefore(scan: Scan, at: number): number {
  for (let i = at - 1; i >= Math.max(0, at - 12) && scan.clause[i] === scan.clause[at]; i -= 1)
    if (scan.plain[i] === 'k') return i;
  return at;
}

/** "4x45 have the 2 inch hole, 4x10 the 1 inch hole": of several bores in a clause each speaks of the plates between it and the one before. */
function toldApart(scan: Scan, near: readonly Draft[], fact: Fact, others: readonly Fact[]): readonly Draft[] {
  const beside = others.filter((other) => other !== fact && scan.clause[other.from] === scan.clause[fact.from]);
  if (beside.length === 0 || near.length < 2) return near;
  const last = Math.max(-1, ...beside.filter(({ to }) => to < fact.from).map(({ to }) => to));
  const next = Math.min(scan.tokens.length, ...beside.filter(({ from }) => from > fact.to).map(({ from }) => from));
  const between = (from: number, to: number): Draft[] =>
    near.filter((item) => item.places.some((place) => place.from > from && place.to < to));
  const before = between(last, fact.from);
  const behind = between(fact.to, next);
  return before.length > 0 ? before : behind.length > 0 ? behind : near;
}

/** A bore speaks of the plates of its clause; one that stands apart says what the lot, or what follows the heading, is made for. */
function spreadBore(scan: Scan, drafts: readonly Draft[], fact: Fact, only: boolean, others: readonly Fact[]): void {
  const plates = drafts.filter((item) => isPlate(item.kind));
  const weighed = plates.filter(({ weight }) => weight !== null);
  // "Plates with the 2 inch hole: 45s, two; 25s, four" is a heading over them.
  const heading = only && scan.plain[fact.to + 1] === ':';
  const inClause = heading
    ? plates.filter((item) => firstToken(item) > fact.to)
    : plates.filter(
        (item) => item.weight !== null && item.places.some((place) => scan.clause[place.from] === scan.clause[fact.from]),
      );
  const near = toldApart(scan, inClause, fact, others);
  const value = fact.value >= 45 ? '50mm' : fact.value <= 33 ? '25mm' : null;
  const lot =
    only && near.length === 0 ? calledAlike(scan, weighed.length > 0 ? weighed : plates, nounBefore(scan, fact.from)) : [];
  const targets = near.length > 0 ? near : lot;
  for (const item of targets) if (!item.measures.has('boreMm')) item.measures.set('boreMm', fact);
  if (near.length === 0 && value)
    for (const item of lot.length > 0 ? lot : plates) item.spread.push({ value, rule: 'bore', from: fact.from, to: fact.to });
}

/** The ad speaks of Olympic goods beside those with small holes; the other way round "standard" is too loose a word. */
const namesOtherFit = (scan: Scan, fact: Fact): boolean =>
  fact.value <= 33 && scan.tokens.some(({ term }) => term?.fits === '50mm' && term.code === 'm');

const BAR_MEASURES: readonly Measure[] = ['shaftMm', 'sleeveMm', 'lengthMm', 'tensilePsi'];

/** "Straight one is 60 inches and the curl is 47": bars by the word that tells them apart. */
function calledBefore(scan: Scan, bars: readonly Draft[], at: number): Draft[] {
  for (let i = at - 1; i >= Math.max(0, at - 5) && scan.clause[i] === scan.clause[at]; i -= 1) {
    const term = scan.tokens[i]?.term;
    if (scan.plain[i] === 'k' || ',;'.includes(scan.plain[i] ?? ';')) return [];
    const kind = term?.condition === 'straight' && bars.some((bar) => bar.kind !== 'bar') ? 'bar' : term?.part;
    if (kind === 'bar' && term?.condition !== 'straight') continue;
    const called = bars.filter((bar) => bar.kind === kind);
    if (called.length > 0) return called;
  }
  return [];
}

/** "Two bars: one olympic 7 ft 45 lb, one standard 5 ft 15 lb": the one whose weight stands in the part of the same pronoun. */
function inPartOf(scan: Scan, bars: readonly Draft[], at: number): Draft[] {
  let start = at;
  while (start >= 0 && at - start < 12 && !isPronoun(scan, start)) {
    if (scan.plain[start] === 'k' || scan.clause[start] !== scan.clause[at]) return [];
    start -= 1;
  }
  if (start < 0 || !isPronoun(scan, start)) return [];
  let end = at + 1;
  while (end - at < 16 && scan.clause[end] === scan.clause[at] && !isPronoun(scan, end)) end += 1;
  const mine = bars.filter((item) => isBar(item.kind) && item.places.some(({ from }) => from > start && from < end));
  return mine.length === 1 ? mine : [];
}

/** Of bars that pronouns tell apart ("one is 7 ft, the other 5 ft") the one whose pronoun stands last before a place, in its clause or the one before. */
export function toldApartBy(scan: Scan, bars: readonly Draft[], at: number): Draft[] {
  let last: Draft | null = null;
  let since = -1;
  for (const item of bars)
    for (const { rule, from } of item.label === undefined ? [] : item.places)
      if (rule === 'told-apart' && from < at && from > since && (scan.clause[at] ?? 0) - (scan.clause[from] ?? 0) <= 1) {
        last = item;
        since = from;
      }
  if (last !== null) return scan.plain.slice(since, at).includes('k') ? [] : [last];
  return inPartOf(scan, bars, at);
}

/** Bars that a measure speaks of: the noun right behind it, else the last noun before it; the only bar when no noun is near. */
function barsOf(scan: Scan, drafts: readonly Draft[], fact: Fact): Draft[] {
  const bars = drafts.filter((item) => isBar(item.kind) || (item.kind === 'bench' && fact.rule === 'length'));
  const holding = (at: number): Draft[] =>
    bars.filter((item) => item.places.some((place) => at >= place.from && at <= place.to) || item.kindAt === at);
  // A bar of a list that its heading names is told by its line alone.
  const listed = bars.filter((item) =>
    item.places.some(({ rule, from }) => rule === 'headed-line' && scan.clause[from] === scan.clause[fact.from]),
  );
  if (listed.length > 0) return listed;
  for (let i = fact.to + 1; i <= fact.to + 4 && scan.clause[i] === scan.clause[fact.from]; i += 1) {
    if (scan.plain[i] === 'k') return holding(i);
    if (',.()c'.includes(scan.plain[i] ?? 'l')) break;
  }
  // "None are bent, all have 2 inch sleeves".
  if (/^(?:whole|definite)$/.test(scan.tokens[fact.from - 2]?.term?.sense ?? '') && scan.plain[fact.from - 1] === '%')
    return bars;
  const apart = toldApartBy(scan, bars, fact.from);
  if (apart.length > 0) return apart;
  const called = calledBefore(scan, bars, fact.from);
  if (called.length > 0) return called;
  for (let i = fact.from - 1; i >= 0 && fact.from - i < 40; i -= 1) {
    // Bars told by who lifts them have no noun of their own.
    const nameless = scan.senses.has('lifter') ? bars.filter((item) => item.places.some(({ to }) => to === i)) : [];
    if (nameless.length > 0) return nameless;
    if (scan.plain[i] !== 'k') continue;
    const found = holding(i);
    if (found.length > 0) return found;
    if (scan.clause[i] === scan.clause[fact.from]) return [];
    break;
  }
  const [only] = bars.filter((item) => isBar(item.kind));
  return only && bars.length === 1 ? [only] : [];
}

/** A sleeve size said of some goods holds for the rest as far as no other is named; one said of a bar alone for bars. */
function spreadSize(drafts: readonly Draft[], fact: Fact, told: readonly Draft[]): void {
  if (fact.measure !== 'fits50' && fact.measure !== 'fits25') return;
  if (fact.rule.startsWith('bar-') || fact.rule === 'thirty-millimetre-bar' || !told.some((item) => isPlate(item.kind))) return;
  const value = fact.measure === 'fits50' ? '50mm' : '25mm';
  for (const item of drafts)
    if (isPlate(item.kind) && !told.includes(item)) item.spread.push({ value, rule: fact.rule, from: fact.from, to: fact.to });
}

/** "2 inch thick … 1.9 inch OD": the same size, told to a part of the inch. */
const isFiner = ({ measure, value }: Fact, known: Fact): boolean =>
  measure === 'shaftMm' && known.value % 25.4 === 0 && value % 25.4 !== 0 && Math.abs(value / known.value - 1) < 0.1;

export function attachMeasures(scan: Scan, drafts: readonly Draft[], facts: readonly Fact[]): void {
  const holes = facts.filter(({ measure }) => measure === 'boreMm');
  const bores = new Set(holes.map(({ value }) => value));
  for (const fact of facts) {
    if (fact.measure === 'boreMm') {
      spreadBore(scan, drafts, fact, bores.size === 1 && !namesOtherFit(scan, fact), bores.size > 1 ? holes : []);
      continue;
    }
    const fitting = MEASURED[fact.measure];
    const list = BAR_MEASURES.includes(fact.measure) ? barsOf(scan, drafts, fact) : subjectOf(scan, drafts, fact.from, fitting);
    for (const item of list) {
      const known = item.measures.get(fact.measure);
      if (!known || isFiner(fact, known)) item.measures.set(fact.measure, fact);
    }
    spreadSize(drafts, fact, list);
  }
  for (const item of drafts)
    for (const [measure, fact] of item.measures) if (isOfOtherList(scan, item, fact)) item.measures.delete(measure);
}

/** "Bumpers (50 mm hole)" over a list says nothing of the plates that a line "small iron" heads below it. */
function isOfOtherList(scan: Scan, item: Draft, fact: Fact): boolean {
  if (item.material?.rule !== 'heading' || fact.from > item.material.from) return false;
  const line = scan.tokens[fact.from]?.line;
  for (let i = fact.from - 1; i >= 0 && scan.tokens[i]?.line === line; i -= 1)
    if (scan.tokens[i]?.term?.kind === 'bumper') return line !== 0;
  return false;
}
