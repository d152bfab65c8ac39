/**
 * "300 lb Olympic set" names a usual composition: a 45 lb bar with two each of 45, 35, 25, 10 and 2.5 lb and four of 5 lb
 * (common practice of the trade, no source; 45 + 255 = 300). It is marked implied, and a doubt asks whether the bar is counted.
 * Other sizes are sold in too many compositions to guess one: their weight stands as the lot's total.
 */
import { isPlate } from '../../listing/reading.ts';
import type { Total } from '../mention.ts';
import { BESIDE } from '../recognisers/totals.ts';
import type { Scan } from '../text/scan.ts';
import { type Draft, draft } from './draft.ts';

const USUAL: readonly (readonly [count: number, pounds: number])[] = [
  [2, 45],
  [2, 35],
  [2, 25],
  [2, 10],
  [4, 5],
  [2, 2.5],
];
const SET_POUNDS = 300;

/** A set named by its size with no plates told has plates all the same: without weights of their own, so that its total counts for something. */
export function withSetPlates(drafts: readonly Draft[], totals: readonly Total[]): Draft[] {
  const set = totals.find((total) => total.set || total.rule === BESIDE);
  if (!set || drafts.some((item) => isPlate(item.kind))) return [...drafts];
  return [...drafts, draft('plate', { rule: 'set-size', from: set.from, to: set.to }, { implied: set.set })];
}

/** The set's plates in place of the noun that stood for them. */
export function implySet(drafts: readonly Draft[], totals: readonly Total[]): Draft[] {
  const set = totals.find((total) => total.set && total.weight === SET_POUNDS && total.unit !== 'kg');
  const told = drafts.some((item) => !item.sold && isPlate(item.kind) && (item.weight !== null || item.total !== null));
  const oneInch = drafts.some((item) => item.fits?.value === '25mm');
  if (!set || told || oneInch) return [...drafts];
  const vague = drafts.find((item) => isPlate(item.kind) && !item.sold);
  const known = <T>(value: T) => ({ value, rule: 'usual-set', from: set.from, to: set.to, implied: true });
  const plates = USUAL.map(([count, pounds]) =>
    draft(
      'plate',
      { rule: 'usual-set', from: set.from, to: set.to },
      {
        count: known(count),
        weight: known(pounds),
        unit: 'lb',
        implied: true,
        fits: vague?.fits ?? { ...known('50mm' as const) },
        conditions: vague?.conditions ?? [],
        material: vague?.material ?? null,
        grade: vague?.grade ?? null,
        measures: vague?.measures ?? new Map(),
      },
    ),
  );
  const rest = drafts.filter((item) => item !== vague);
  return [...rest, ...plates];
}

/** "Weight set, bench and a long bar": plates that nobody counts or weighs, where the ad names none otherwise. */
export function withNamedSet(scan: Scan, drafts: readonly Draft[], totals: readonly Total[]): Draft[] {
  const named = scan.words.find(({ term }) => term?.sense === 'weights-set');
  const told = drafts.some(({ kind }) => isPlate(kind) || kind === 'dumbbell' || kind === 'kettlebell');
  const at = named ? scan.tokens.findIndex(({ start }) => start >= named.start) : -1;
  if (at < 0 || told || totals.some(({ set }) => set) || /N[a]?$/.test(scan.plain.slice(Math.max(0, at - 2), at)))
    return [...drafts];
  return [...drafts, draft('plate', { rule: 'named-set', from: at, to: at }, { kindAt: at })];
}
