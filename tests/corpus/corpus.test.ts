/** The whole corpus against its floors, and the scorer itself against readings that are known to be wrong. Labels are ours (README.md), no source. */
import { describe, expect, it } from 'vitest';
import { listingFromText } from '../../src/listing/page-listing.ts';
import { read } from '../../src/read/index.ts';
import { type Label, listingOf, loadCases } from './case.ts';
import { type Floors, measure, raised, readFloors, shortfalls } from './floors.ts';
import { judge } from './score.ts';
import type { Verdict } from './verdict.ts';

const ROOT = process.cwd();
const cases = loadCases(`${ROOT}/tests/corpus/ads`);

const ad = 'Four olympic iron plates 45 lb. $120 firm';
const label: Label = {
  asking: { amount: 120, currency: 'USD', basis: 'lot', firm: true },
  items: [{ kind: 'plate', count: 4, unitWeight: '45 lb', fits: '50mm', material: 'iron' }],
};
const verdictOn = (more: Label): Verdict => judge('one', read(listingFromText(ad)), { ...label, ...more });

describe('the corpus', () => {
  it('has the sizes that were asked for', () => {
    expect(cases.length).toBeGreaterThanOrEqual(300);
    expect(cases.filter((one) => one.label.aboutThisTrade === false || one.label.wanted).length).toBeGreaterThanOrEqual(40);
    expect(cases.filter((one) => one.label.lang === 'de').length).toBeGreaterThanOrEqual(30);
  });

  it('stays above its floors', async () => {
    const verdicts: Verdict[] = [];
    for (const one of cases) verdicts.push(judge(one.name, read(await listingOf(one)), one.label));
    expect(shortfalls(measure(verdicts), readFloors(ROOT))).toEqual([]);
  }, 120_000);
});

describe('the scorer', () => {
  it('finds nothing wrong with what the label says', () => {
    const { faults, fields } = verdictOn({});
    expect(faults).toEqual([]);
    expect(fields.get('items')).toEqual({ right: 1, wrong: 0, missed: 0 });
    expect(fields.get('asking.amount')).toEqual({ right: 1, wrong: 0, missed: 0 });
    expect(fields.get('plateWeight')).toEqual({ right: 1, wrong: 0, missed: 0 });
  });

  it.each<[string, Label]>([
    ['asking.amount', { asking: { ...label.asking, amount: 130 } }],
    ['asking.basis', { asking: { ...label.asking, basis: 'each' } }],
    ['items', { items: [{ kind: 'plate', count: 2, unitWeight: '45 lb' }] }],
    ['aboutThisTrade', { aboutThisTrade: false }],
    ['wanted', { wanted: true }],
  ])('calls a wrong %s confidently wrong, since no doubt was raised', (field, more) =>
    expect(verdictOn(more).confidentlyWrong).toContain(field),
  );

  it.each<[string, Label]>([
    ['asking.currency', { asking: { ...label.asking, currency: 'CAD' } }],
    ['asking.firm', { asking: { amount: 120, basis: 'lot' } }],
    ['item.fits', { items: [{ kind: 'plate', count: 4, unitWeight: '45 lb', fits: '25mm' }] }],
    ['item.material', { items: [{ kind: 'plate', count: 4, unitWeight: '45 lb', fits: '50mm' }] }],
    ['item.condition', { items: [{ kind: 'plate', count: 4, unitWeight: '45 lb', condition: ['rust'] }] }],
    ['plateWeight', { items: [{ kind: 'plate', count: 4, unitWeight: '44 lb' }] }],
    ['statedTotal', { statedTotal: '180 lb' }],
    ['language', { lang: 'de' }],
  ])('tells a wrong %s', (field, more) => expect(verdictOn(more).faults.join('\n')).toContain(`${field}: read`));

  it('holds a wrong value that the label itself is unsure of against nobody', () =>
    expect(verdictOn({ asking: { ...label.asking, amount: 130 }, doubtful: ['asking.amount'] }).confidentlyWrong).toEqual([]));
});

describe('the floors', () => {
  const fields = new Map([['items', { right: 90, wrong: 10, missed: 20 }]]);
  const measured = { ads: 100, fields, confidentlyWrong: 0.021 };
  const floors = (precision: number, recall: number, confidentlyWrong: number): Floors => ({
    fields: { items: { precision, recall } },
    confidentlyWrong,
  });

  it('tells each measure that is short of them, and a field that no ad has', () => {
    expect(shortfalls(measured, floors(0.9, 0.81, 0.03))).toEqual([]);
    expect(shortfalls(measured, floors(0.91, 0.81, 0.03))).toHaveLength(1);
    expect(shortfalls(measured, floors(0.91, 0.82, 0.02))).toHaveLength(3);
    expect(shortfalls({ ...measured, fields: new Map() }, floors(0, 0, 1))).toEqual(['items: no ad has it']);
  });

  it('are only ever raised', () => {
    expect(raised(measured, floors(0.5, 0.99, 0.01))).toEqual(floors(0.9, 0.99, 0.01));
    expect(raised(measured, { fields: {}, confidentlyWrong: 1 })).toEqual(floors(0.9, 0.81, 0.03));
  });
});
