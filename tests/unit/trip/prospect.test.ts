import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/evaluate.ts';
import type { Prospect } from '../../../src/listing/evaluation.ts';
import { appraise } from '../../../src/price/index.ts';
import { plateWeights } from '../../../src/price/usable.ts';
import { decide } from '../../../src/trip/call.ts';
import { unknownsOf } from '../../../src/trip/unknowns.ts';
import { english } from '../../tools/evaluate/strings.ts';
import { fact, item, lb, plates, reading, settings } from '../making/readings.ts';

const say = english();
const LOT = [plates('plate-1', 4, lb(45)), plates('plate-2', 2, lb(25))];
const SMALL = [plates('plate-1', 8, lb(10), {})];
const near = (value: number) => settings({ distance: { value, unit: 'mi' } });

describe('setting out', () => {
  it('saves what the goods are worth less the price, where nothing is open', () => {
    // 230 lb at $1.00 at most, $150 asked; 20 miles cost 20 × 2 × ($0.205 + $10/35).
    const { prospect, trip, worth } = judge(reading(LOT, 150), near(20));
    expect(prospect).toMatchObject({ saving: { minor: 8000 }, afterDrive: { minor: 8000 - 1963 }, refusal: 0 });
    expect(prospect?.knowingAll.minor).toBe(0);
    expect(prospect?.breakEvenPrice).toEqual(worth.walkAway);
    expect(prospect?.breakEvenDistance).toEqual(trip?.breakEven);
  });

  it('counts the chance of going for nothing, and the way back at the door', () => {
    const ad = reading(SMALL, 40);
    const { prospect } = judge(ad, near(5));
    const [bore] = unknownsOf(ad, plateWeights(ad, settings()), settings());
    expect(prospect?.refusal).toBeCloseTo(bore?.chance ?? Number.NaN, 9);
    // Worth $80 with the right holes, nothing with the wrong ones.
    expect(prospect?.saving.minor).toBeCloseTo((1 - (bore?.chance ?? 0)) * 4000, 0);
    expect(prospect?.knowingAll.minor).toBeGreaterThan(0);
  });

  it('without a distance tells the saving before the drive, and how far it carries', () => {
    const { prospect, trip, call } = judge(reading(LOT, 150), settings());
    expect(trip).toBeNull();
    expect(prospect).toMatchObject({ saving: { minor: 8000 }, afterDrive: null, breakEvenPrice: null });
    expect(say(call.says)).toBe(`Worth the drive up to ${prospect?.breakEvenDistance?.value} mi`);
  });

  it('is not told of what has no price, or no weight', () => {
    expect(judge(reading(LOT, null), near(20)).prospect).toBeNull();
    expect(judge(reading([...LOT, item('plate-9', 'plate')], 100), near(20)).prospect).toBeNull();
    expect(judge(reading([], 20, { aboutThisTrade: false }), near(20)).prospect).toBeNull();
  });
});

describe('the call and the chances do not contradict each other', () => {
  it('what is too dear on paper is asked about when it pays on average, and left when it does not', () => {
    // A bar that turns out straight and 28.5 mm thick is worth more than one of which nothing is said.
    const firm = reading([item('bar-1', 'bar', { count: 1, fits: '50mm' })], 250, {}, { firm: fact(true) });
    const here = judge(firm, near(2));
    expect(here.worth.walkAway?.minor).toBeLessThan(0.95 * 25_000);
    expect(here.prospect?.afterDrive?.minor).toBeGreaterThan(0);
    expect(here.call.kind).toBe('ask');
    expect(say(here.call.because[0] ?? { key: 'none' })).toMatch(/on average, after the drive, since you can refuse at the door/);
    const far = judge(firm, near(60));
    expect(far.prospect?.afterDrive?.minor).toBeLessThan(0);
    expect(far.call.kind).toBe('leave');
  });

  it('what is right on paper, but whose holes may be wrong and so does not quite pay, is talked down', () => {
    // A pair of 45s without a word of their holes: wrong ones are rare, but so is the saving.
    const pair = [plates('plate-1', 2, lb(45), {})];
    const { prospect, worth, call } = judge(reading(pair, 70), near(20));
    expect(worth.walkAway?.minor).toBe(7000);
    expect(prospect?.afterDrive?.minor).toBeLessThan(0);
    expect(call.kind).toBe('haggle');
    expect(prospect?.breakEvenPrice?.minor).toBeLessThan(7000);
    expect(judge(reading(pair, (prospect?.breakEvenPrice?.minor ?? 0) / 100), near(20)).call.kind).toBe('go');
  });

  it('whatever the chances: talked down to where it pays, or left', () => {
    const ad = reading(LOT, 150);
    const where = near(20);
    const appraisal = appraise(ad, plateWeights(ad, where), [], where, null, []);
    const { trip, prospect } = judge(ad, where);
    const call = (changes: Partial<Prospect>) => {
      if (prospect === null) throw new Error('no prospect');
      return decide({
        reading: ad,
        flags: [],
        appraisal,
        trip,
        prospect: { ...prospect, ...changes },
        decisive: [],
        settings: where,
      });
    };
    const usd = (minor: number) => ({ minor, currency: 'USD' });
    expect(call({}).kind).toBe('go');
    expect(say(call({ afterDrive: usd(-300), breakEvenPrice: usd(14_500) }).says)).toBe('Worth it at $145 or less');
    expect(call({ afterDrive: usd(-300), breakEvenPrice: null }).kind).toBe('leave');
  });
});
