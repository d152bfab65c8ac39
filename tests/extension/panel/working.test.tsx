/** "How was this worked out?": its parts, and every assumption in it changed, refused, and put back. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { today } from '../../../extension/components/today.ts';
import { evaluate } from '../../../src/evaluate.ts';
import type { Evaluation, Step } from '../../../src/listing/evaluation.ts';
import { DEFAULT_SETTINGS, type Settings, settingsSchema } from '../../../src/listing/settings.ts';
import { evaluation, trip } from './fixtures/evaluation.ts';
import { choose, click, fetched, find, leave, mount, ready, text, type } from './fixtures/mount.tsx';

const AD = { title: '', text: 'Olympic plates:\n4 x 45 lb\n2 x 25 lb\nBar, 7 ft, 45 lb\n$180 for everything' };
const lines = () => [...document.querySelectorAll<HTMLElement>('.step')].map((line) => line.dataset.step);
const lastSaved = (panel: ReturnType<typeof mount>) =>
  (panel.host.saveSettings.mock.lastCall as unknown as [Settings] | undefined)?.[0];
const usedIron = '[data-step="used-rate:iron"]';

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: new Date(2026, 4, 31, 23, 30) });
});
afterEach(() => {
  vi.useRealTimers();
});

describe('the calculation', () => {
  test('is closed until it is asked for', () => {
    mount(ready(AD), evaluate);
    expect(find<HTMLDetailsElement>('.working').open).toBe(false);
  });

  test('stands in its parts, each with its lines', async () => {
    mount(ready(AD), evaluate);
    await type('[data-distance]', '20');
    const groups = [...document.querySelectorAll<HTMLElement>('[data-group]')].map((part) => [
      part.dataset.group,
      [...part.querySelectorAll<HTMLElement>('.step')].map((line) => line.dataset.step),
    ]);
    expect(groups).toEqual([
      ['weight', ['offered', 'true-weight', 'sleeve', 'usable']],
      ['price', ['price']],
      ['drive', ['per-mile', 'hour', 'speed', 'distance', 'driving', 'time', 'trip']],
      ['cost', ['all-in', 'plates-share', 'per-usable']],
      [
        'rates',
        [
          'sales-tax',
          'used-rate:iron',
          'new-price:iron',
          'new-shipping:iron',
          'new-rate:iron',
          'used-rate:bar',
          'new-price:bar',
          'new-shipping:bar',
          'new-rate:bar',
          'parcel-handling:bar',
        ],
      ],
      ['worth', ['going-worth', 'new-worth', 'saving']],
      ['most', ['margin', 'ceiling', 'walk-away']],
    ]);
    // 40 miles at 20.5 cents, and at 35 mph with $10 an hour: $19.63.
    expect(text('[data-step="all-in"]')).toContain('$200 ($198 to $204)= price + drive: $180 + $19.63');
    expect(text('[data-step="distance"]')).toBe('Distance, one way 20 mityped by you');
    expect(text('[data-step="per-mile"]')).toContain('$0.205 a mileassumed: IRS 2026, running cost only');
  });

  test('takes lines that it has never heard of, with the part they name or else that of the line before', () => {
    const step = (id: string, more: Partial<Step> = {}): Step => ({
      id,
      label: { key: 'test_step' },
      result: { low: 1, likely: 1, high: 1 },
      unit: 'lb',
      basis: 'assumed',
      source: null,
      ...more,
    });
    mount(ready(), (): Evaluation => {
      const base = evaluation();
      const steps = [step('first'), step('hired', { group: 'drive' }), step('more'), step('sleeve', { group: 'weight' })];
      return { ...base, worth: { ...base.worth, steps } };
    });
    expect(lines()).toEqual(['first', 'sleeve', 'hired', 'more']);
  });
});

describe('an assumption', () => {
  test("of the rates table is changed low, likely and high, is then the buyer's own with its day, and is put back", async () => {
    const panel = mount(ready(AD), evaluate);
    const before = text('.call-line');
    await click('[data-change="rates.iron.used"]');
    expect(find('[data-change="rates.iron.used"]').getAttribute('aria-expanded')).toBe('true');
    await type('[data-path="working.rates.iron.used.low"]', '0.2');
    await type('[data-path="working.rates.iron.used.likely"]', '0.3');
    await type('[data-path="working.rates.iron.used.high"]', '0.4');
    expect(lastSaved(panel)?.rates).toEqual({
      iron: { used: { low: 0.2, likely: 0.3, high: 0.4, source: 'own', date: '2026-05-31' } },
    });
    expect(settingsSchema.safeParse(lastSaved(panel)).success).toBe(true);
    expect(text(usedIron)).toContain('$0.30 ($0.20 to $0.40) a poundYour own figure (May 31, 2026)');
    expect(text('.call-line')).not.toBe(before);
    await click('[data-put-back="rates.iron.used"]');
    expect(lastSaved(panel)?.rates).toEqual({});
    expect(text('.call-line')).toBe(before);
    expect(document.querySelector('[data-put-back]')).toBeNull();
    expect(document.activeElement?.getAttribute('data-change')).toBe('rates.iron.used');
  });

  test('out of order is not counted, is said so, and nothing of it is lost until it is in order', async () => {
    const panel = mount(ready(AD), evaluate);
    await click('[data-change="rates.iron.used"]');
    await type('[data-path="working.rates.iron.used.low"]', '2');
    await leave('[data-path="working.rates.iron.used.low"]');
    expect(panel.host.saveSettings).not.toHaveBeenCalled();
    expect(text('[data-fields] .complaint')).toContain('low may not be above likely');
    expect(find<HTMLInputElement>('[data-path="working.rates.iron.used.low"]').value).toBe('2');
    await type('[data-path="working.rates.iron.used.high"]', '4');
    await type('[data-path="working.rates.iron.used.likely"]', '3');
    expect(document.querySelector('[data-fields] .complaint')).toBeNull();
    expect(lastSaved(panel)?.rates.iron?.used).toMatchObject({ low: 2, likely: 3, high: 4 });
  });

  test.each([
    ['salesTax', '8.25 %', { salesTax: 0.0825 }],
    ['margin', '20', { margin: 0.2 }],
    ['perMile', '0.7', { perMile: 0.7 }],
    ['hourWorth', '25', { hourWorth: 25 }],
    ['speedMph', '50', { speedMph: 50 }],
    ['sleeveMm', '49.5', { sleeveMm: 49.5 }],
  ] as const)('%s is one figure', async (path, typed, saved) => {
    const panel = mount(ready(AD), evaluate);
    await click(`[data-change="${path}"]`);
    await type(`[data-path="working.${path}"]`, typed);
    expect(lastSaved(panel)).toMatchObject(saved);
    expect(text('.step[data-own] .step-basis')).toContain('your own');
    await click(`[data-put-back="${path}"]`);
    expect(lastSaved(panel)).toEqual(DEFAULT_SETTINGS);
    expect(document.querySelector('.step[data-own]')).toBeNull();
  });

  test.each([
    ['sleeveMm', '90', 'from 20 to 60 mm'],
    ['margin', '95', 'margin up to 90'],
    ['speedMph', '0', 'makes sense here'],
    ['perMile', 'cheap', 'makes sense here'],
  ])('%s of "%s" is refused with the reason, and stays in the field', async (path, typed, why) => {
    const panel = mount(ready(AD), evaluate);
    await click(`[data-change="${path}"]`);
    await type(`[data-path="working.${path}"]`, typed);
    await leave(`[data-path="working.${path}"]`);
    expect(text('[data-fields] .complaint')).toContain(why);
    expect(find<HTMLInputElement>(`[data-path="working.${path}"]`).value).toBe(typed);
    expect(panel.host.saveSettings).not.toHaveBeenCalled();
  });

  test('is shown and typed in kilograms and kilometres by who thinks in them', async () => {
    const panel = mount(ready(AD), evaluate);
    await click('.working summary');
    await choose('[data-path="distance.unit"]', 'km');
    await click('[data-change="perMile"]');
    expect(text('[data-step="per-mile"]')).toContain('$0.1274 a kilometer');
    await type('[data-path="working.perMile"]', '0.5');
    expect(lastSaved(panel)?.perMile).toBeCloseTo(0.804672, 9);
    await click('[data-change="speedMph"]');
    expect(find<HTMLInputElement>('[data-path="working.speedMph"]').value).toBe('56.33');
  });
});

describe('the charts', () => {
  const rowsOf = (selector: string) =>
    [...document.querySelectorAll(`${selector} tbody tr`)].map((row) => [...row.children].map((cell) => cell.textContent));
  const byDistance = [0, 20, 40].map((miles) => ({
    distance: { value: miles, unit: 'mi' as const },
    saving: { low: 3000 - 120 * miles, likely: 3000 - 100 * miles, high: 3000 - 90 * miles },
  }));
  const prospect = {
    saving: { minor: 3000, currency: 'USD' },
    afterDrive: { minor: 2000, currency: 'USD' },
    refusal: 0,
    knowingAll: { minor: 0, currency: 'USD' },
    breakEvenPrice: null,
    breakEvenDistance: { value: 30, unit: 'mi' as const },
    byDistance,
  };
  const steps = (['drive', 'cost'] as const).map((group) => ({ ...evaluation().worth.steps[0], id: group, group }) as Step);
  const show = async (over: Partial<Evaluation>, drawn?: string) => {
    mount(ready(), (): Evaluation => {
      const base = evaluation(over);
      return { ...base, worth: { ...base.worth, steps } };
    });
    if (drawn) await fetched(drawn);
  };

  test('saving against distance: to scale, with the break-even and the seller marked, and the same in a table', async () => {
    const chart = '[data-group="drive"] .chart';
    await show({ prospect, trip: trip({ distance: { value: 16.09344, unit: 'km' } }) }, chart);
    // 10 and 30 of 40 miles; from $30 down to -$18 at the worst, so that $20 stands 38/48 up.
    expect(find(`${chart} [data-mark="own"] line`).getAttribute('x1')).toBe('25.000%');
    expect(find(`${chart} [data-mark="gone"] line`).getAttribute('x1')).toBe('75.000%');
    expect(find(`${chart} .chart-line`).getAttribute('points')).toBe('0.00,0.00 50.00,41.67 100.00,83.33');
    expect(rowsOf(chart)).toEqual([
      ['0 mi', '$30', '$30', '$30'],
      ['This seller, 10 mi', '$18', '$20', '$21'],
      ['20 mi', '$6', '$10', '$12'],
      ['Nothing left from 30 mi on', '-$6', '$0', '$3'],
      ['40 mi', '-$18', '-$10', '-$6'],
    ]);
  });

  test('no distance known: no seller; nothing to save: no chart', async () => {
    await show({ prospect }, '[data-mark="gone"]');
    expect(document.querySelector('[data-mark="own"]')).toBeNull();
    await show({ prospect: { ...prospect, breakEvenDistance: { value: 90, unit: 'mi' } } }, '[data-group="drive"] .chart');
    expect(document.querySelector('[data-mark="gone"]')).toBeNull();
    expect(text('[data-group="drive"] figcaption')).toContain('Nothing is left only from 90 mi on');
    await show({ prospect: { ...prospect, byDistance: [] } });
    expect(document.querySelector('[data-group="drive"] .chart')).toBeNull();
  });

  test('where the all-in goes: price by item and drive, in parts that fill the bar, and in words', async () => {
    await show({ trip: trip() }, '[data-group="cost"] [data-part]');
    const parts = [...document.querySelectorAll('[data-group="cost"] [data-part]')];
    // $175, $5 and $12 of $192.
    expect(parts.map((part) => [part.getAttribute('x'), part.getAttribute('width')])).toEqual([
      ['0.000%', '91.146%'],
      ['91.146%', '2.604%'],
      ['93.750%', '6.250%'],
    ]);
    expect(new Set(parts.map((part) => part.getAttribute('fill'))).size).toBe(3);
    expect([...document.querySelectorAll('.chart-key li')].map((line) => line.textContent)).toEqual([
      'Plates, 45 lb $175 91%',
      'Straight bar $5.00 3%',
      'Drive $12.00 6%',
    ]);
  });

  test('a chart with nothing to compare is not drawn: what a sound one costs stands there instead', () => {
    mount(ready({ title: '', text: 'Olympic bar 7 ft, shaft 32 mm. $45 firm' }), evaluate);
    expect(find('[data-call]').dataset.call).toBe('leave');
    expect(document.querySelectorAll('.chart')).toHaveLength(0);
    // $300 with 7 % tax, $20 to send, $15 for a long parcel; $42.80, $8 and $7 below, $53.50, $15 and $15 above, in quadrature.
    expect(text('[data-sound]')).toBe('A sound one costs about $160 ($80 to $300) used, $356 ($312 to $414) new and delivered.');
  });
});

test("today is the day of the buyer's own clock", () => expect(today(new Date(2026, 0, 5, 0, 10))).toBe('2026-01-05'));

describe('a going rate that was learned', () => {
  const learned = {
    iron: { low: 0.4, likely: 0.5, high: 0.6, source: 'learned', date: '2026-05', finds: 7, effective: 6, currency: 'USD' },
  };

  test('is told beside the cost, without unfolding anything', () => {
    mount(ready(AD), (ad, given, made) => evaluate(ad, settingsSchema.parse({ ...given, learned }), made));
    expect(text('.cost [data-learned="used-rate:iron"]')).toMatch(/Going rate, .*: Learned from 7 of your finds/);
  });

  test('is not told where there is none', () => {
    mount(ready(AD), evaluate);
    expect(document.querySelector('[data-learned]')).toBeNull();
  });
});
