/** Attaches measures, makes and conditions to the drafts they speak of: same clause first, then the line, then the ad as a whole. */
import { type Condition, isPlate, type Kind } from '../../listing/reading.ts';
import type { Fact, Finding, Measure } from '../mention.ts';
import type { Scan } from '../text/scan.ts';
import type { Draft } from './draft.ts';

const BARS: readonly Kind[] = ['bar', 'curl-bar', 'hex-bar'];
const isBar = (kind: Kind): boolean => BARS.includes(kind);

/** Kinds that a measure can speak of, likeliest first. */
const MEASURED: Readonly<Record<Measure, (kind: Kind) => boolean>> = {
  boreMm: (kind) => isPlate(kind) || kind === 'collars',
  shaftMm: isBar,
  sleeveMm: isBar,
  lengthMm: (kind) => isBar(kind),
  diameterMm: isPlate,
  widthMm: () => false,
  fits25: (kind) => isPlate(kind) || isBar(kind) || kind === 'collars',
  fits50: (kind) => isPlate(kind) || isBar(kind) || kind === 'collars',
  tensilePsi: isBar,
  capacity: (kind) => isBar(kind) || ['rack', 'bench', 'stands', 'storage'].includes(kind),
};

const IRON: readonly Kind[] = [
  'plate',
  'bumper',
  'micro',
  'dumbbell',
  'kettlebell',
  'bar',
  'curl-bar',
  'hex-bar',
  'collars',
  'rack',
  'bench',
  'stands',
  'storage',
];
const FRAMES: readonly Kind[] = ['rack', 'stands', 'bench', 'storage'];
const CONDITIONED: Partial<Record<Condition, readonly Kind[]>> = {
  bent: BARS,
  straight: BARS,
  'seized-sleeves': BARS,
  spins: BARS,
  wobbly: FRAMES,
  torn: ['bench', 'other'],
  welded: ['rack', 'stands', 'bench', 'plate'],
  bolted: ['rack', 'stands', 'bench'],
  'split-hub': ['bumper', 'plate'],
  odd: ['plate', 'bumper', 'micro', 'dumbbell'],
  mismatched: ['plate', 'bumper', 'micro', 'dumbbell'],
};

interface Target {
  readonly item: Draft;
  readonly distance: number;
  readonly near: boolean;
}

/** Drafts near a place: those of its clause, nearest first; a draft before the place is a little nearer than one behind it. */
function targets(scan: Scan, drafts: readonly Draft[], at: number, fitting: (kind: Kind) => boolean): Target[] {
  const found: Target[] = [];
  for (const item of drafts) {
    if (!fitting(item.kind)) continue;
    let best: Target | null = null;
    for (const place of item.places) {
      const near = scan.clause[place.from] === scan.clause[at] || scan.clause[place.to] === scan.clause[at];
      const gap = at < place.from ? place.from - at : at > place.to ? (at - place.to) * 0.9 : 0;
      if (!best || (near && !best.near) || (near === best.near && gap < best.distance)) best = { item, distance: gap, near };
    }
    if (best) found.push(best);
  }
  return found.sort((a, b) => Number(b.near) - Number(a.near) || a.distance - b.distance);
}

/** The drafts a word speaks of. In a clause with several of the kind, an adjective right before one speaks of that one, a remark behind a list of all. */
function chosen(scan: Scan, drafts: readonly Draft[], at: number, fitting: (kind: Kind) => boolean): Draft[] {
  const all = targets(scan, drafts, at, fitting);
  const near = all.filter((target) => target.near);
  if (near.length > 0) {
    const [first] = near;
    const inside = near.filter(({ distance }) => distance <= 2);
    if (inside.length > 0 && first) return inside.length > 1 && first.distance > 0 ? near.map(({ item }) => item) : [first.item];
    return near.map(({ item }) => item);
  }
  const lineOf = (index: number): number => scan.tokens[index]?.line ?? -1;
  const sameLine = all.filter(({ item }) => item.places.some((place) => lineOf(place.from) === lineOf(at)));
  return (sameLine.length > 0 ? sameLine : all).map(({ item }) => item);
}

export function attachMeasures(scan: Scan, drafts: readonly Draft[], facts: readonly Fact[]): void {
  for (const fact of facts) {
    const fitting = MEASURED[fact.measure];
    const list = chosen(scan, drafts, fact.from, fitting);
    for (const item of list) {
      const known = item.measures.get(fact.measure);
      const nominal = fact.measure === 'boreMm' && known && [25.4, 50.8].includes(known.value);
      if (!known || nominal) item.measures.set(fact.measure, fact);
    }
  }
}

/**
 * A word of fit speaks of its own noun ("Olympic bar"), of the goods of its clause, or of the whole lot. Bars take it from plates and lots,
 * plates only from plates and lots: an Olympic bar may be sold with other plates.
 */
function attachFits(scan: Scan, drafts: readonly Draft[], at: number, value: '50mm' | '25mm'): void {
  const known = { value, rule: scan.tokens[at]?.term?.sense === 'standard' ? 'loose-standard' : 'make', from: at, to: at };
  const own = nounOf(scan, at);
  const bar = own !== null && isBar(scan.tokens[own]?.term?.kind ?? 'other');
  const fitting = (kind: Kind): boolean => (bar ? isBar(kind) : isPlate(kind) || isBar(kind) || kind === 'collars');
  const near = drafts.filter(
    (item) => fitting(item.kind) && item.places.some((place) => scan.clause[place.from] === scan.clause[at]),
  );
  const holding =
    own === null ? undefined : near.find((item) => item.places.some((place) => own >= place.from && own <= place.to));
  if (holding && (bar || near.length > 1)) holding.fits ??= known;
  else for (const item of near) if (!bar || near.length === 1) item.fits ??= known;
  if (!bar) for (const item of drafts) if ((isPlate(item.kind) || isBar(item.kind)) && !item.fits) item.spread.push(known);
}

/** The noun that an adjective belongs to: itself, or the next noun behind further adjectives. */
function nounOf(scan: Scan, at: number): number | null {
  for (let i = at; i < at + 5; i += 1) {
    if (scan.plain[i] === 'k' || scan.plain[i] === 't') return i;
    if (!'mC'.includes(scan.plain[i] ?? '_')) return null;
  }
  return null;
}

/** Goods that no word of fit spoke of take that of the lot, when the ad names only one. */
export function spreadFits(drafts: readonly Draft[]): void {
  const named = new Set(
    drafts.flatMap((item) => [...item.spread.map(({ value }) => value), ...(item.fits ? [item.fits.value] : [])]),
  );
  const values = named.size > 1 ? [] : [...named];
  for (const item of drafts) {
    const [first] = item.spread;
    if (!item.fits && first && values.includes(first.value)) item.fits = first;
  }
}

/** "Olympic", "cast iron", "rubber coated" and the like: by the adjective's own noun, else by clause, else for the whole lot. */
export function attachMakes(scan: Scan, drafts: readonly Draft[]): void {
  scan.tokens.forEach((token, at) => {
    const term = token.term;
    if (!term || (!term.fits && !term.material && !term.grade)) return;
    if (/N[a-z]{0,1}$/.test(scan.plain.slice(Math.max(0, at - 2), at)) && scan.clause[at - 1] === scan.clause[at]) return;
    const place = { rule: 'make', from: at, to: at };
    if (term.fits) attachFits(scan, drafts, at, term.fits);
    const heavy = (kind: Kind): boolean =>
      IRON.includes(kind) && (term.material !== 'wood' || kind === 'bench' || kind === 'rack');
    const made = term.grade === 'calibrated' || term.grade === 'machined' ? isPlate : heavy;
    if (term.material || term.grade) {
      for (const item of chosen(scan, drafts, at, made)) {
        if (term.material) item.material ??= { value: term.material, ...place };
        if (term.grade) item.grade ??= { value: term.grade, ...place };
      }
    }
  });
}

export function attachConditions(scan: Scan, drafts: readonly Draft[], findings: readonly Finding[]): void {
  for (const finding of findings) {
    const kinds = CONDITIONED[finding.condition] ?? IRON;
    for (const item of chosen(scan, drafts, finding.from, (kind) => kinds.includes(kind))) {
      if (item.conditions.some(({ value }) => value === finding.condition)) continue;
      const { condition: value, rule, from, to, hearsay } = finding;
      item.conditions.push({ value, rule, from, to, ...(hearsay ? { hearsay } : {}) });
    }
  }
}

/** The worst word of rust stands; "bent" beats "straight" unless it was denied later; each said once. */
export function settleConditions(drafts: readonly Draft[]): void {
  const worse: readonly (readonly [Condition, readonly Condition[]])[] = [
    ['rust-heavy', ['rust', 'rust-light', 'no-rust']],
    ['rust-light', ['no-rust', 'rust']],
    ['rust', ['no-rust']],
    ['new', ['like-new']],
    ['seized-sleeves', ['spins']],
    ['bent', ['straight']],
  ];
  for (const item of drafts) {
    for (const [strong, weak] of worse) {
      if (item.conditions.some(({ value }) => value === strong))
        item.conditions = item.conditions.filter(({ value }) => !weak.includes(value));
    }
  }
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
