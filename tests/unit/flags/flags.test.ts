import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/evaluate.ts';
import { adRules, itemRules } from '../../../src/flags/index.ts';
import { CHANGEABLE } from '../../../src/flags/limits.ts';
import type { Flag } from '../../../src/listing/evaluation.ts';
import { OF_ONE_PIECE, type Reading } from '../../../src/listing/reading.ts';
import type { Settings } from '../../../src/listing/settings.ts';
import { money } from '../../../src/units/money.ts';
import { english } from '../../tools/evaluate/strings.ts';
import { fact, item, kg, lb, plates, reading, settings } from '../making/readings.ts';

interface Case {
  readonly up: Reading;
  readonly down: Reading;
  readonly weight: Flag['weight'];
  readonly settings?: Settings;
}

const bar = (values: Parameters<typeof item>[2] = {}, conditions: Parameters<typeof item>[3] = []) =>
  reading([item('bar-1', 'bar', { count: 1, ...values }, conditions)], 200);
const plate = (values: Parameters<typeof item>[2] = {}, conditions: Parameters<typeof item>[3] = []) =>
  reading([item('plate-1', 'plate', { count: 2, unitWeight: lb(45), ...values }, conditions)], 60);
const one = (
  kind: Parameters<typeof item>[1],
  values: Parameters<typeof item>[2] = {},
  conditions: Parameters<typeof item>[3] = [],
) => reading([item(`${kind}-1`, kind, { count: 1, ...values }, conditions)], 200);
const bench = (line: string) => ({
  ...reading([{ ...item('bench-1', 'bench'), evidence: [{ start: 0, end: 5 }] }], 50),
  text: line,
});

const frame = (text: string, conditions: Parameters<typeof item>[3] = []) => ({
  ...reading([{ ...item('rack-1', 'rack', { count: 1 }, conditions), evidence: [{ start: 0, end: 4 }] }], 300),
  text,
});

/** The ad says it of one piece among several. */
const ofOne = (ad: Reading): Reading => ({
  ...ad,
  items: ad.items.map((one) => ({ ...one, conditions: one.conditions.map((fact) => ({ ...fact, rule: OF_ONE_PIECE })) })),
});

/** For every flag one ad that raises it and the nearest one that doesn't. */
const CASES: Readonly<Record<string, Case>> = {
  'bore-oversized': { up: plate({ boreMm: 53.5 }), down: plate({ boreMm: 51.9 }), weight: 'caution' },
  'bore-undersized': { up: plate({ boreMm: 48 }), down: plate({ boreMm: 50 }), weight: 'deal-breaker' },
  'one-inch-plates': { up: plate({ fits: '25mm' }), down: plate({ fits: '50mm' }), weight: 'deal-breaker' },
  'two-inch-plates': {
    up: plate({ fits: '50mm' }),
    down: plate({ fits: '25mm' }),
    weight: 'deal-breaker',
    settings: settings({ sleeveMm: 25 }),
  },
  'odd-plate': { up: plate({ count: 3, fits: '50mm' }), down: plate({ fits: '50mm' }), weight: 'note' },
  cracked: { up: plate({}, ['cracked']), down: plate({}, ['chipped']), weight: 'deal-breaker' },
  'cracked-piece': { up: ofOne(plate({}, ['cracked'])), down: plate({}, ['cracked']), weight: 'caution' },
  'cement-filled': { up: plate({ material: 'vinyl' }), down: plate({ material: 'iron' }), weight: 'deal-breaker' },
  rust: { up: plate({}, ['rust-heavy']), down: plate({}, ['no-rust']), weight: 'caution' },
  'split-hub': { up: one('bumper', {}, ['split-hub']), down: one('bumper'), weight: 'deal-breaker' },
  'bumper-small': {
    up: one('bumper', { diameterMm: 400, unitWeight: kg(15) }),
    down: one('bumper', { diameterMm: 449, unitWeight: kg(15) }),
    weight: 'caution',
  },
  bent: { up: bar({}, ['bent']), down: bar({}, ['straight']), weight: 'deal-breaker' },
  'bow-doubtful': { up: bar({ bowMm: 4 }), down: bar({ bowMm: 2 }, ['straight']), weight: 'caution' },
  'straightness-unknown': { up: bar(), down: bar({}, ['straight']), weight: 'note' },
  'shaft-thick': { up: bar({ shaftMm: 32 }), down: bar({ shaftMm: 30 }), weight: 'deal-breaker' },
  'shaft-thin': { up: bar({ shaftMm: 25 }), down: bar({ shaftMm: 28 }), weight: 'note' },
  'one-inch-bar': { up: bar({ fits: '25mm' }), down: bar({ fits: '50mm' }), weight: 'deal-breaker' },
  'short-bar': { up: bar({ lengthMm: 1828.8 }), down: bar({ lengthMm: 2010 }), weight: 'caution' },
  'bar-facts-disagree': {
    up: bar({ unitWeight: kg(20), lengthMm: 1524 }),
    down: bar({ unitWeight: kg(20), lengthMm: 2200 }),
    weight: 'caution',
  },
  'bar-off-its-steel': {
    up: bar({ unitWeight: kg(35), lengthMm: 2200, shaftMm: 28 }),
    down: bar({ unitWeight: kg(20), lengthMm: 2200, shaftMm: 28 }),
    weight: 'caution',
  },
  'capacity-claim': { up: bar({ capacity: lb(1000) }), down: bar({ capacity: lb(300) }), weight: 'note' },
  'face-value-doubtful': { up: plate(), down: plate({ unitWeight: lb(10) }), weight: 'note' },
  'odd-bumper': {
    up: one('bumper', { count: 1, unitWeight: kg(10) }),
    down: one('bumper', { count: 2, unitWeight: kg(10) }),
    weight: 'note',
  },
  'micro-over-washers': {
    up: one('micro', { count: 2, unitWeight: lb(1.25), totalWeight: lb(2.5), ownPrice: money(25, 'USD') }),
    down: one('micro', { count: 2, unitWeight: lb(1.25), totalWeight: lb(2.5), ownPrice: money(8, 'USD') }),
    weight: 'note',
  },
  'rack-pins-unsaid': { up: frame('Power rack'), down: frame('Power rack with pins and j-hooks'), weight: 'note' },
  'rack-no-floor': { up: frame('Rack, wall mounted'), down: frame('Rack, bolts included'), weight: 'caution' },
  'rack-too-tall': {
    up: one('rack', { heightMm: 2400 }),
    down: one('rack', { heightMm: 2100 }),
    weight: 'deal-breaker',
    settings: settings({ ceilingMm: 2300 }),
  },
  'bench-width': { up: one('bench', { widthMm: 250 }), down: one('bench', { widthMm: 304.8 }), weight: 'note' },
  'bench-height': { up: one('bench', { heightMm: 508 }), down: one('bench', { heightMm: 431.8 }), weight: 'note' },
  'frozen-sleeves': { up: bar({}, ['seized-sleeves']), down: bar({}, ['spins']), weight: 'caution' },
  'low-capacity': { up: bar({ capacity: lb(300) }), down: bar({ capacity: lb(1000) }), weight: 'caution' },
  'bar-too-cheap': { up: bar({ ownPrice: money(40, 'USD') }), down: bar({ ownPrice: money(250, 'USD') }), weight: 'caution' },
  'tensile-claim': { up: bar({ tensilePsi: 190_000 }), down: bar(), weight: 'note' },
  'single-stands': { up: one('stands'), down: one('rack'), weight: 'caution' },
  'rack-pins-missing': {
    up: frame('Rack. The hooks were lost.'),
    down: frame('Rack with pins and hooks. The bolts were lost.'),
    weight: 'caution',
  },
  'cracked-frame': {
    up: frame('Rack. One weld is cracked.', ['cracked']),
    down: frame('Rack', ['welded']),
    weight: 'deal-breaker',
  },
  'bent-frame': { up: one('stands', {}, ['bent']), down: one('stands', {}, ['straight']), weight: 'deal-breaker' },
  'cracked-bar': { up: bar({}, ['cracked']), down: bar({}, ['chipped']), weight: 'deal-breaker' },
  'cracked-weight': { up: one('kettlebell', {}, ['cracked']), down: one('kettlebell', {}, ['chipped']), weight: 'deal-breaker' },
  'loose-head': { up: one('dumbbell', {}, ['wobbly']), down: one('dumbbell', {}, ['chipped']), weight: 'caution' },
  'broken-collars': { up: one('collars', {}, ['cracked']), down: one('collars', {}, ['new']), weight: 'deal-breaker' },
  'bent-handle': { up: one('dumbbell', {}, ['bent']), down: one('dumbbell', {}, ['rust']), weight: 'deal-breaker' },
  'bar-parts-missing': { up: bar({}, ['missing-parts']), down: bar({}, ['spins']), weight: 'caution' },
  'storage-wobbly': { up: one('storage', {}, ['wobbly']), down: one('storage', {}, ['rust']), weight: 'caution' },
  'rack-parts-missing': { up: one('rack', {}, ['missing-parts']), down: one('rack'), weight: 'caution' },
  'rack-wobbly': { up: one('rack', {}, ['wobbly']), down: one('rack'), weight: 'caution' },
  'rack-low-capacity': { up: one('rack', { capacity: lb(300) }), down: one('rack', { capacity: lb(700) }), weight: 'caution' },
  'home-made': { up: one('rack', {}, ['home-made']), down: one('rack'), weight: 'caution' },
  welded: { up: one('rack', {}, ['welded']), down: one('rack'), weight: 'note' },
  bolted: { up: one('rack', {}, ['bolted']), down: one('rack'), weight: 'note' },
  'bench-wobbly': { up: one('bench', {}, ['wobbly']), down: one('bench'), weight: 'caution' },
  'bench-low-capacity': { up: one('bench', { capacity: lb(300) }), down: one('bench', { capacity: kg(300) }), weight: 'caution' },
  'bench-short': { up: one('bench', { lengthMm: 1100 }), down: one('bench', { lengthMm: 1219.2 }), weight: 'note' },
  'bench-with-uprights': { up: bench('Bench with uprights\nplates'), down: bench('Bench\nrack with uprights'), weight: 'note' },
  wanted: { up: reading([], null, { wanted: true }), down: reading([], null), weight: 'deal-breaker' },
  'placeholder-price': { up: reading([], 1, {}, { placeholder: true }), down: reading([], 1), weight: 'note' },
  'no-weight-stated': {
    up: reading([item('plate-1', 'plate', { count: 4 })], 60),
    down: reading([item('plate-1', 'plate', { count: 4 })], 60, { statedTotal: fact(lb(100)) }),
    weight: 'caution',
  },
  'no-test': {
    up: reading([], 60, { terms: [fact('no-test')] }),
    down: reading([], 60, { terms: [fact('stock-photo')] }),
    weight: 'caution',
  },
  'pay-ahead': {
    up: reading([], 60, { terms: [fact('paid-ahead')] }),
    down: reading([], 60, { terms: [fact('no-test')] }),
    weight: 'caution',
  },
  'stock-wording': {
    up: reading([], 60, { terms: [fact('stock-photo')] }),
    down: reading([], 60, { terms: [fact('paid-ahead')] }),
    weight: 'caution',
  },
};

const say = english();
const raised = (ad: Reading, id: string, given = settings()) => judge(ad, given).flags.find((flag) => flag.id === id);

describe('flags', () => {
  it('have a case each', () => {
    expect(Object.keys(CASES).sort()).toEqual([...itemRules, ...adRules].map((rule) => rule.id).sort());
  });

  for (const [id, { up, down, weight, settings: given }] of Object.entries(CASES)) {
    it(`${id} goes up`, () => {
      const flag = raised(up, id, given);
      expect(flag?.weight).toBe(weight);
      for (const sentence of [flag?.says, flag?.found, flag?.limit, flag?.source]) {
        if (sentence == null) continue;
        expect(say(sentence)).not.toMatch(/[[{}\]]/);
        expect(say(sentence).length).toBeGreaterThan(3);
      }
    });
    it(`${id} stays down`, () => {
      expect(raised(down, id, given)).toBeUndefined();
    });
  }

  it('come deal-breakers first', () => {
    const ad = reading([item('bar-1', 'bar', { shaftMm: 32 }), plates('plate-1', 3, lb(45))], 100);
    const order = { 'deal-breaker': 0, caution: 1, note: 2 };
    const weights = judge(ad, settings()).flags.map((flag) => order[flag.weight]);
    expect(weights).toEqual([...weights].sort());
    expect(weights[0]).toBe(0);
  });

  // Common practice, no source: a good bar is about $300, far under that is luck or junk.
  it('hold the price of one bar against that of a good one, of several too', () => {
    const bars = (count: number, price: number) =>
      raised(reading([item('bar-1', 'bar', { count, ownPrice: money(price, 'USD') })], price), 'bar-too-cheap');
    expect(bars(2, 150)?.found?.params).toEqual({ price: { money: money(75, 'USD') } });
    expect(bars(2, 400)).toBeUndefined();
    expect(bars(1, 150)).toBeUndefined();
  });

  // Common practice, no source: the other bumpers are not loose by that.
  it('rule out no bumpers for the loose hub of one of them', () => {
    const four = reading([item('bumper-1', 'bumper', { count: 4, unitWeight: lb(45) }, ['split-hub'])], 200);
    expect(raised(ofOne(four), 'split-hub')).toMatchObject({ weight: 'caution', says: { key: 'flag_split_hub_piece' } });
    expect(judge(ofOne(four), settings()).worth.usable.likely).toBe(90);
    expect(judge(four, settings()).worth.perUsablePound).toBeNull();
  });

  it('say nothing of an ad that is not about this trade', () => {
    expect(judge({ ...plate({}, ['cracked']), aboutThisTrade: false }, settings()).flags).toEqual([]);
  });
});

describe('limits of the buyer’s own', () => {
  /** An ad that keeps the flag down by the table's limit and raises it by the buyer's, or the other way round. */
  const OWN: Readonly<Record<(typeof CHANGEABLE)[number], readonly [flag: string, ad: Reading, own: number]>> = {
    boreClearance: ['bore-oversized', plate({ boreMm: 51.9 }), 1.5],
    boreClearanceOneInch: ['bore-oversized', plate({ boreMm: 28.5 }), 3],
    shaftThick: ['shaft-thick', bar({ shaftMm: 30.5 }), 30],
    shaftThin: ['shaft-thin', bar({ shaftMm: 27 }), 27.5],
    barTooShort: ['short-bar', bar({ lengthMm: 1800 }), 1900],
    barCapacity: ['low-capacity', bar({ capacity: lb(700) }), 800],
    rackCapacity: ['rack-low-capacity', one('rack', { capacity: lb(700) }), 800],
    benchCapacity: ['bench-low-capacity', one('bench', { capacity: lb(700) }), 800],
    barTooCheap: ['bar-too-cheap', bar({ ownPrice: money(150, 'USD') }), 0.9],
    ceilingRoom: ['rack-too-tall', one('rack', { heightMm: 2150 }), 200],
    castHeavy: ['face-value-doubtful', plate({ unitWeight: lb(25) }), 20],
    washerPound: [
      'micro-over-washers',
      one('micro', { count: 2, unitWeight: lb(1.25), totalWeight: lb(2.5), ownPrice: money(8, 'USD') }),
      2,
    ],
  };

  it.each(CHANGEABLE)('%s holds in place of the table’s, and is said to be the buyer’s', (name) => {
    const [id, ad, own] = OWN[name];
    const base = settings({ ceilingMm: 2300, sleeveMm: name === 'boreClearanceOneInch' ? 25 : 50 });
    const before = raised(ad, id, base);
    const after = raised(ad, id, { ...base, limits: { [name]: own } });
    expect(before?.weight).not.toBe(after?.weight);
    expect(before?.source.key).not.toBe('source_own');
    expect(after?.source.key).toBe('source_own');
    expect(say(after?.source ?? { key: '' })).toMatch(/your/i);
  });

  it('one that is a published rule stands as it is', () => {
    const ad = one('bench', { widthMm: 250 });
    expect(raised(ad, 'bench-width', settings({ limits: { benchNarrow: 200 } }))?.source.key).toBe('source_ipf');
  });

  it('what is too tall is measured against the ceiling, and only holes against sleeves', () => {
    const tall = raised(one('rack', { heightMm: 2400 }), 'rack-too-tall', settings({ ceilingMm: 2300 }));
    expect(say(tall?.source ?? { key: '' })).toMatch(/ceiling/);
    const narrow = raised(plate({ boreMm: 48 }), 'bore-undersized', settings({}));
    expect(say(narrow?.source ?? { key: '' })).toMatch(/hole against sleeve/);
  });

  it('a wider limit for loose plates makes them worth more', () => {
    const worth = (boreClearance?: number) =>
      judge(plate({ boreMm: 53.5 }), settings({ limits: boreClearance === undefined ? {} : { boreClearance } })).worth.goingWorth
        ?.likely ?? 0;
    expect(worth()).toBeGreaterThan(0);
    expect(worth(4)).toBeGreaterThan(worth());
  });
});

describe('degrees', () => {
  it('tell a short bar that is no use from one that only misses the rack', () => {
    expect(raised(bar({ lengthMm: 1524 }), 'short-bar')?.weight).toBe('deal-breaker');
    expect(raised(bar({ lengthMm: 1828.8 }), 'short-bar')?.weight).toBe('caution');
  });

  it('rate rust by what it is on', () => {
    expect(raised(plate({}, ['rust']), 'rust')?.weight).toBe('note');
    expect(raised(bar({}, ['rust']), 'rust')?.weight).toBe('caution');
    expect(raised(bar({}, ['rust-light']), 'rust')?.weight).toBe('note');
  });

  it('call a hole useless when it is far too wide', () => {
    expect(raised(plate({ boreMm: 60 }), 'bore-oversized')?.weight).toBe('deal-breaker');
    expect(raised(plate({ boreMm: 60 }), 'bore-oversized')?.says.key).toBe('flag_bore_oversized_useless');
  });

  it('leave a 1-inch bar to the buyer who owns one', () => {
    expect(raised(bar({ fits: '25mm' }), 'one-inch-bar', settings({ sleeveMm: 25 }))?.weight).toBe('note');
  });
});
