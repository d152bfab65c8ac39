import { describe, expect, it } from 'vitest';
import { estimatesOf } from '../../../src/mechanics/estimates.ts';
import { english } from '../../tools/evaluate/strings.ts';
import { item, reading, settings } from '../making/readings.ts';

const say = english();
const of = (values: Parameters<typeof item>[2] = {}, conditions: Parameters<typeof item>[3] = [], given = settings()) =>
  estimatesOf(reading([item('bar-1', 'bar', { count: 1, ...values }, conditions)], 100), given);
const words = (...args: Parameters<typeof of>) => of(...args).map(({ says, caution }) => [...says, caution].map(say).join(' '));

describe('what a bar would do under load', () => {
  it('says sag, stress, stiffness and what a drop does, as an estimate', () => {
    const [said = ''] = words({ shaftMm: 28 });
    expect(said).toMatch(/With 315 lb the ends sink about .* mm/);
    expect(said).toMatch(/about 110 MPa/);
    expect(said).toMatch(/100% as stiff as a 28 mm shaft/);
    expect(said).toMatch(/Never drop a loaded bar/);
    expect(said).toMatch(/no inspection/);
    expect(said).not.toMatch(/[[{}\]]/);
  });

  it('an unknown shaft is reckoned as a common one, and said so', () => {
    expect(of({})[0]?.assumed).toBe(true);
    expect(words({})[0]).toMatch(/does not give the shaft: 28\.5 mm .*is assumed/);
  });

  it('more load or a thinner shaft bends it more', () => {
    const drop = (shaftMm: number, loadLb: number) => {
      const param = of({ shaftMm }, [], settings({ loadLb }))[0]?.says[0]?.params?.drop;
      return typeof param === 'object' && 'mm' in param ? param.mm : Number.NaN;
    };
    expect(drop(28, 405)).toBeGreaterThan(drop(28, 315));
    expect(drop(25, 315)).toBeGreaterThan(drop(28, 315));
    expect(drop(32, 315)).toBeLessThan(drop(28, 315));
  });

  it('nothing for a bent bar, and nothing for what is no shaft', () => {
    expect(of({ shaftMm: 28 }, ['bent'])).toEqual([]);
    expect(of({ shaftMm: 500 })).toEqual([]);
  });

  it('in kilograms for who thinks in them', () => {
    expect(words({ shaftMm: 28 }, [], settings({ unit: 'kg' }))[0]).toMatch(/With 143 kg/);
  });
});
