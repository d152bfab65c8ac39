import { describe, expect, it } from 'vitest';
import { judge } from '../../src/evaluate.ts';
import { barWeightBounds } from '../../src/mechanics/steel.ts';
import { item, kg, plates, reading, settings } from '../unit/making/readings.ts';

const flagIds = (...items: Parameters<typeof reading>[0]): string[] =>
  judge(reading(items, 300), settings()).flags.map((flag) => flag.id);

const MEASURE = ['shaft-thick', 'short-bar', 'bar-facts-disagree', 'one-inch-bar', 'low-capacity'];

// IWF Technical and Competition Rules & Regulations 2025, 3.3.3.
const MEN = item('bar-1', 'bar', { count: 1, unitWeight: kg(20), lengthMm: 2200, shaftMm: 28, sleeveMm: 50, fits: '50mm' }, [
  'straight',
]);
const WOMEN = item('bar-1', 'bar', { count: 1, unitWeight: kg(15), lengthMm: 2010, shaftMm: 25, sleeveMm: 50, fits: '50mm' }, [
  'straight',
]);

describe('bars by the rules raise no flag on their measures', () => {
  it('IWF men: 20 kg, 2200 mm, 28 mm', () => {
    for (const id of [...MEASURE, 'shaft-thin']) expect(flagIds(MEN)).not.toContain(id);
  });

  it('IWF women: 15 kg, 2010 mm, 25 mm; its shaft is told as a note and no fault', () => {
    for (const id of MEASURE) expect(flagIds(WOMEN)).not.toContain(id);
    const thin = judge(reading([WOMEN], 300), settings()).flags.find((flag) => flag.id === 'shaft-thin');
    expect(thin?.weight).toBe('note');
  });

  // IPF Technical Rulebook 2026: shaft 28 to 29 mm, at most 2.2 m, sleeve 50 to 52 mm.
  for (const shaftMm of [28, 28.5, 29]) {
    for (const sleeveMm of [50, 52]) {
      it(`IPF: shaft ${shaftMm} mm, sleeve ${sleeveMm} mm`, () => {
        const bar = item('bar-1', 'bar', { count: 1, unitWeight: kg(20), lengthMm: 2200, shaftMm, sleeveMm }, ['straight']);
        for (const id of [...MEASURE, 'shaft-thin']) expect(flagIds(bar)).not.toContain(id);
      });
    }
  }

  it('lie within the weights that their own steel allows', () => {
    for (const [shaft, length, weight] of [
      [28, 2200, 20],
      [29, 2200, 20],
      [25, 2010, 15],
    ] as const) {
      const { low, high } = barWeightBounds(shaft, length);
      expect(weight).toBeGreaterThan(low);
      expect(weight).toBeLessThan(high);
    }
  });

  it('but a 20 kg bar of 5 ft and a 28 mm bar of 35 kg are told', () => {
    expect(flagIds(item('bar-1', 'bar', { count: 1, unitWeight: kg(20), lengthMm: 1524 }))).toContain('bar-facts-disagree');
    expect(flagIds(item('bar-1', 'bar', { count: 1, unitWeight: kg(35), lengthMm: 2200, shaftMm: 28 }))).toContain(
      'bar-off-its-steel',
    );
  });
});

describe('discs by the rules', () => {
  const bore = (boreMm: number, sleeveMm = 50) =>
    judge(reading([plates('plate-1', 2, kg(20), { boreMm })], 100), settings({ sleeveMm })).flags.find((flag) =>
      flag.id.startsWith('bore'),
    );

  it('IPF hole of 52 to 53 mm on a 50 mm sleeve: a note that tells both rule and practice', () => {
    for (const boreMm of [52, 52.5, 53]) {
      expect(bore(boreMm)?.weight).toBe('note');
      expect(bore(boreMm)?.source.key).toBe('source_ipf_and_practice');
    }
  });

  it('IPF disc on an IPF sleeve of 52 mm: nothing to say', () => {
    for (const boreMm of [52, 53]) expect(bore(boreMm, 52)).toBeUndefined();
  });

  // Common practice, no source: 52 mm and more is sloppy on a 50 mm sleeve.
  it('wider than the rule is a caution', () => {
    expect(bore(53.5)?.weight).toBe('caution');
    expect(bore(51.9)).toBeUndefined();
  });
});
