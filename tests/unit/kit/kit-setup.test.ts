/** The list of needs under the buyer's hand, a kit in both units, and what it comes to in money. Figures are worked out by hand. */
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { additionsTo, byUse } from '../../../src/kit/additions.ts';
import { asCounted, fillers } from '../../../src/kit/both-sets.ts';
import { exactWeight } from '../../../src/kit/exact-weight.ts';
import { filledBy } from '../../../src/kit/filled-by.ts';
import { offersOf } from '../../../src/kit/fills.ts';
import { loadsOf } from '../../../src/kit/loads.ts';
import { defaultNeeds, listChange, needList, type StoredNeed } from '../../../src/kit/need-list.ts';
import { oddPlates } from '../../../src/kit/odd-plates.ts';
import { kitStatus } from '../../../src/kit/status.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS, type KitFigures, settingsSchema } from '../../../src/listing/settings.ts';
import { kilograms, pounds } from '../../../src/units/mass.ts';

const FIGURES: KitFigures = {
  best: pounds(405),
  jump: pounds(5),
  olympicLifts: false,
  plates: 'lb',
  budget: null,
  collars: null,
  sleeveLengthMm: null,
  platform: null,
};
const SETTINGS = { ...DEFAULT_SETTINGS, kit: FIGURES };

/** The store after a change, as a map would hold it. */
function written(stored: readonly StoredNeed[], figures: KitFigures, reset = false): StoredNeed[] {
  const { put, remove } = listChange(stored, figures, reset);
  const rows = new Map(stored.map((one) => [one.id, one]));
  for (const id of remove) rows.delete(id);
  for (const one of put) rows.set(one.id, one);
  return [...rows.values()];
}
const piecesOf = (stored: readonly StoredNeed[], id: string) => stored.find((one) => one.id === id)?.pieces;
const HEAVY = 'default/plate/45lb';

describe('the list of needs', () => {
  it('follows the figures, and writes nothing where it does', () => {
    const first = written([], FIGURES);
    expect(needList(first, FIGURES)).toEqual(defaultNeeds(FIGURES));
    expect(listChange(first, FIGURES)).toEqual({ put: [], remove: [] });
    // 405 × 1.1 = 445.5, less the bar's 45 and the light pairs' 105: 295.5 / 90, so four pairs; 225 needs two.
    expect(piecesOf(first, HEAVY)).toBe(8);
    expect(piecesOf(written(first, { ...FIGURES, best: pounds(225) }), HEAVY)).toBe(4);
  });

  it('keeps what the buyer set, added and took off; a reset forgets it', () => {
    const added: StoredNeed = { id: 'x', kind: 'hex-bar', pieces: 1, weight: null, own: true };
    const set: StoredNeed = { id: HEAVY, kind: 'plate', pieces: 20, weight: pounds(45), own: true };
    const off: StoredNeed = { id: 'default/bench', kind: 'bench', pieces: 0, weight: null, own: true };
    const edited = [...written([], FIGURES).filter(({ id }) => id !== HEAVY && id !== off.id), added, set, off];
    const followed = written(edited, { ...FIGURES, best: pounds(225), plates: 'mixed' });
    expect(followed).toEqual(expect.arrayContaining([added, set, off]));
    const list = needList(followed, { ...FIGURES, plates: 'mixed' });
    expect(list.map(({ kind }) => kind)).not.toContain('bench');
    expect(list.at(-1)).toMatchObject({ kind: 'hex-bar', because: 'own' });
    expect(list[0]).toMatchObject({ kind: 'bar', weight: kilograms(20) });
    expect(needList(written(followed, FIGURES, true), FIGURES)).toEqual(defaultNeeds(FIGURES));
  });
});

describe('a kit in both units', () => {
  const twenty = { kind: 'plate' as const, weight: kilograms(20), pieces: 3 };

  it('counts whole pairs in kilograms as the next plate in pounds', () => {
    expect(asCounted([twenty], { plates: 'mixed' })).toEqual([
      { ...twenty, weight: pounds(45), pieces: 2 },
      { ...twenty, pieces: 1 },
    ]);
    expect(asCounted([twenty], { plates: 'lb' })).toEqual([twenty]);
  });

  it('asks for them where a pair is lacking', () => {
    const open = [{ kind: 'plate' as const, weight: pounds(45), pieces: 2 }];
    expect(fillers(open, { plates: 'mixed' })).toHaveLength(2);
    expect(fillers([{ kind: 'plate', weight: pounds(45), pieces: 1 }], { plates: 'mixed' })).toHaveLength(1);
    expect(fillers(open, { plates: 'kg' })).toHaveLength(1);
  });
});

describe('where it stands', () => {
  const needs = needList(written([], FIGURES), FIGURES);
  const status = (budget: number | null, owned: Parameters<typeof kitStatus>[0]['owned'] = [], paid = 0) =>
    kitStatus({
      figures: { ...FIGURES, budget },
      needs,
      owned,
      paid: [{ minor: paid, currency: 'USD' }],
      settings: SETTINGS,
    });

  it('tells line by line, what is over, and the money', () => {
    const { lines, surplus, spent, left } = status(
      1000,
      [
        { kind: 'plate', weight: pounds(45), pieces: 10 },
        { kind: 'bar', weight: kilograms(20), pieces: 1 },
      ],
      25_000,
    );
    expect(lines.find(({ need }) => need.id === HEAVY)).toMatchObject({ owned: 8, lacking: 0 });
    expect(lines[0]).toMatchObject({ need: { kind: 'bar' }, owned: 1, lacking: 0 });
    expect(lines.at(-1)).toMatchObject({ need: { kind: 'platform' }, owned: 0, lacking: 1 });
    expect(surplus).toMatchObject([{ kind: 'plate', pieces: 2 }]);
    expect([spent, left]).toEqual([25_000, 75_000]);
  });

  it('says whether the rest fits: for sure, as a rule, or short by how much', () => {
    const { used, unpriced } = status(null).rest;
    expect(unpriced).toEqual([]);
    const at = (minor: number) => status(Math.round(minor) / 100);
    expect(at(used.high + 100)).toMatchObject({ fits: 'fits', shortBy: 0 });
    expect(at(used.likely + 100)).toMatchObject({ fits: 'tight', shortBy: 0 });
    expect(at(used.likely - 5000)).toMatchObject({ fits: 'short' });
    expect(Math.abs(at(used.likely - 5000).shortBy - 5000)).toBeLessThanOrEqual(1);
    expect(status(null)).toMatchObject({ fits: null, left: null });
  });

  it('leaves out what was paid in a currency without a rate', () => {
    const paid = [{ minor: 100, currency: 'EUR' }];
    const without = kitStatus({ figures: FIGURES, needs, owned: [], paid, settings: SETTINGS });
    expect(without).toMatchObject({ spent: 0, foreign: paid });
    const settings = settingsSchema.parse({ ...SETTINGS, exchange: { EUR: 1.2 } });
    expect(kitStatus({ figures: FIGURES, needs, owned: [], paid, settings })).toMatchObject({ spent: 120, foreign: [] });
  });
});

describe('what a lot brings', () => {
  const plates = [{ weight: pounds(45), pieces: 3, thicknessMm: null }];
  const bar = { weight: pounds(45), collars: pounds(0), sleeveMm: null };

  it('names plates without a mate', () => {
    expect(oddPlates(plates)).toEqual([pounds(45)]);
    expect(oddPlates([...plates, ...plates])).toEqual([]);
    expect(oddPlates([...plates, { weight: pounds(45), pieces: 1, thicknessMm: 30 }])).toHaveLength(2);
  });

  it('counts new loads and the gap left, and puts the smallest gap first', () => {
    const reckon = additionsTo(plates, loadsOf(plates, bar), bar, pounds(225));
    // A fourth 45: 225 can be made; a pair of 25s: 95 and 185; a 10 alone: nothing.
    const fourth = reckon({ id: 'a', plates: [{ weight: pounds(45), pieces: 1, thicknessMm: null }] });
    const pair = reckon({ id: 'b', plates: [{ weight: pounds(25), pieces: 2, thicknessMm: null }] });
    expect(fourth).toMatchObject({ id: 'a', added: 1 });
    expect(pair).toMatchObject({ id: 'b', added: 2 });
    expect(pair?.gap).toEqual({ from: exactWeight(pounds(45)), to: exactWeight(pounds(95)) });
    expect(reckon({ id: 'c', plates: [{ weight: pounds(10), pieces: 1, thicknessMm: null }] })).toBeNull();
    expect([fourth, pair].flatMap((one) => one ?? []).sort(byUse)[0]?.id).toBe('b');
  });

  it('fills needs up to what is lacking', () => {
    const listing = listingFromText('6 x 45 lb olympic plates, cast iron, and an olympic bar, 45 lb, $300 for all');
    const evaluation = evaluate(listing, DEFAULT_SETTINGS);
    expect(offersOf(evaluation)).toEqual([
      { kind: 'plate', weight: pounds(45), pieces: 6 },
      { kind: 'bar', weight: pounds(45), pieces: 1 },
    ]);
    const open = needList(written([], FIGURES), FIGURES).map((one) => (one.id === HEAVY ? { ...one, pieces: 4 } : one));
    expect(filledBy(evaluation, open, null).map(({ need, pieces }) => [need.kind, pieces])).toEqual([
      ['bar', 1],
      ['plate', 4],
    ]);
  });
});
