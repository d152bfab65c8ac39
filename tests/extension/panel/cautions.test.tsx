import { describe, expect, test } from 'vitest';
import type { Settings } from '../../../src/listing/settings.ts';
import { evaluation } from './fixtures/evaluation.ts';
import { click, find, leave, mount, ready, text, type } from './fixtures/mount.tsx';

const COLLARS = { kind: 'collars', says: { key: 'caution_collars' }, bound: false } as const;
const STRAIGHTEN = { kind: 'straighten', says: { key: 'caution_straighten' }, bound: true } as const;
const ESTIMATE = {
  item: 'bar-1',
  assumed: false,
  says: [{ key: 'bar_stiffness', params: { percent: { percent: 100 } } }],
  caution: { key: 'bar_estimate', params: { shaft: { mm: 28 } } },
};
const open = () => mount(ready(), () => evaluation({ cautions: [STRAIGHTEN, COLLARS], estimates: [ESTIMATE] }));
const saved = ({ host }: ReturnType<typeof mount>): Settings => host.saveSettings.mock.calls.at(-1)?.at(0) as unknown as Settings;
const kinds = () => [...document.querySelectorAll<HTMLElement>('[data-caution]')].map(({ dataset }) => dataset.caution);

describe('cautions in the panel', () => {
  test('one that was read is put away and stays away, and can be had again', async () => {
    const panel = open();
    expect(kinds()).toEqual(['straighten', 'collars']);
    await click('[data-caution=collars] button');
    expect(kinds()).toEqual(['straighten']);
    expect(saved(panel).hiddenCautions).toEqual(['collars']);
    await click('[data-show-cautions]');
    expect(kinds()).toEqual(['straighten', 'collars']);
  });

  test('one that a deal-breaker stands behind can not be put away', () => {
    open();
    expect(document.querySelector('[data-caution=straighten] button')).toBeNull();
  });

  test('what a bar would do under load is folded away, and its load is the buyer’s', async () => {
    const panel = open();
    expect(find<HTMLDetailsElement>('.load').open).toBe(false);
    expect(text('[data-estimate]')).toContain('100% as stiff');
    await type('[data-path=loadLb]', '405');
    await leave('[data-path=loadLb]');
    expect(saved(panel).loadLb).toBe(405);
  });
});
