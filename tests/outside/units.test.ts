import { describe, expect, it } from 'vitest';
import { feetToMillimetres, inchesToMillimetres, inMiles, MILE_IN_KILOMETRES } from '../../src/units/length.ts';
import { convert, inKilograms, inPounds } from '../../src/units/mass.ts';

// NIST Special Publication 811 (2008), Appendix B.8; international yard and pound agreement, 1959: exact by definition.
describe('units by definition', () => {
  it('pound: 0.45359237 kg', () => {
    expect(inKilograms({ value: 1, unit: 'lb' })).toBe(0.45359237);
    expect(inKilograms({ value: 45, unit: 'lb' })).toBeCloseTo(20.41165665, 10);
    expect(inPounds({ value: 20, unit: 'kg' })).toBeCloseTo(44.09245244, 7);
  });

  it('inch: 25.4 mm, foot: 304.8 mm', () => {
    expect(inchesToMillimetres(1)).toBe(25.4);
    expect(feetToMillimetres(7)).toBeCloseTo(2133.6, 9);
  });

  it('mile: 1.609344 km', () => {
    expect(MILE_IN_KILOMETRES).toBe(1.609344);
    expect(inMiles({ value: 3, unit: 'mi' })).toBe(3);
    expect(inMiles({ value: 1.609344, unit: 'km' })).toBe(1);
  });

  it('there and back is the same weight', () => {
    const there = convert({ value: 33, unit: 'lb' }, 'kg');
    expect(convert(there, 'lb').value).toBeCloseTo(33, 12);
  });
});
