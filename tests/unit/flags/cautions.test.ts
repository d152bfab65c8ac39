import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/evaluate.ts';
import { CAUTIONS } from '../../../src/flags/cautions.ts';
import type { Reading } from '../../../src/listing/reading.ts';
import { english } from '../../tools/evaluate/strings.ts';
import { fact, item, lb, plates, reading, settings } from '../making/readings.ts';

const say = english();
const kinds = (ad: Reading) => judge(ad, settings()).cautions.map(({ kind }) => kind);
const bar = (conditions: Parameters<typeof item>[3] = []) => reading([item('bar-1', 'bar', { count: 1 }, conditions)], 200);

/** For every caution one ad where it matters, and one where it does not. */
const CASES: Readonly<Record<(typeof CAUTIONS)[number], readonly [Reading, Reading]>> = {
  straighten: [bar(['bent']), bar(['straight'])],
  stands: [reading([item('stands-1', 'stands', { count: 2 })], 50), bar()],
  collars: [reading([plates('plate-1', 2, lb(45), { boreMm: 53.5 })], 50), reading([plates('plate-1', 2, lb(45))], 50)],
  pins: [reading([item('rack-1', 'rack', { count: 1 })], 50), bar()],
  'two-people': [reading([item('rack-1', 'rack', { count: 1 })], 50), bar()],
  lifting: [reading([plates('plate-1', 2, lb(45))], 50), reading([plates('plate-1', 2, lb(5))], 50)],
  money: [
    reading([plates('plate-1', 2, lb(5))], 50, { terms: [fact('stock-photo')] }),
    reading([plates('plate-1', 2, lb(5))], 50),
  ],
  meet: [reading([plates('plate-1', 2, lb(5))], 50), reading([], 50)],
  ratings: [reading([item('rack-1', 'rack', { count: 1, capacity: lb(1000) })], 50), bar()],
  'no-inspection': [bar(), reading([plates('plate-1', 2, lb(5))], 50)],
};

describe('cautions', () => {
  it.each(CAUTIONS)('%s where it matters, and only there', (kind) => {
    const [matters, elsewhere] = CASES[kind];
    expect(kinds(matters)).toContain(kind);
    expect(kinds(elsewhere)).not.toContain(kind);
  });

  it('one behind which a deal-breaker stands is bound', () => {
    const bound = (ad: Reading) => judge(ad, settings()).cautions.flatMap((one) => (one.bound ? [one.kind] : []));
    expect(bound(bar(['bent']))).toEqual(['straighten']);
    expect(bound(bar())).toEqual([]);
  });

  it('can be said', () => {
    for (const [ad] of Object.values(CASES))
      for (const { says } of judge(ad, settings()).cautions) expect(say(says)).not.toMatch(/[[{}\]]/);
  });
});
