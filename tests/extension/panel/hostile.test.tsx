import axe from 'axe-core';
import { describe, expect, test } from 'vitest';
import { withoutOrders } from '../../../src/words/say.ts';
import { evaluation, fact, item, reading } from './fixtures/evaluation.ts';
import { find, mount, ready, text } from './fixtures/mount.tsx';

const HOSTILE = [
  '<img src=x onerror="window.pwned=1">',
  '<script>window.pwned=1</script>',
  '"><svg onload=window.pwned=1>',
  '{price} $1 $& $$ %s',
  '\u202Eesrever\u0000\uFFFF',
  'x'.repeat(5000),
];

describe('hostile strings', () => {
  test.each(HOSTILE)('%# render as text and nothing else', (words) => {
    mount(ready({ title: words, text: words, address: `javascript:${words}` }), () => {
      const base = evaluation();
      const says = { key: 'test_says', params: { id: words } };
      return {
        ...base,
        reading: reading({
          items: [item(`plate"]${words}`, 'plate')],
          place: fact(words),
          doubts: [{ id: words, about: words, why: says, choices: [{ says, corrections: [] }], evidence: [] }],
        }),
        flags: base.flags.map((flag) => ({ ...flag, says, found: says, item: words })),
        call: { kind: 'leave', says, because: [says] },
      };
    });
    // But for what would order our own words anew.
    expect(text('h1')).toContain(withoutOrders(words).replace(/\s+/g, ' '));
    expect(document.querySelectorAll('main img, main script, main svg[onload], main [onerror], main a')).toHaveLength(0);
    expect('pwned' in window).toBe(false);
  });

  test('an unknown currency, a count of millions and a missing string do not break the panel', () => {
    mount(ready(), () => {
      const base = evaluation();
      return {
        ...base,
        reading: reading({ items: [item('plate-1', 'plate', { count: fact(5_000_000) })] }),
        worth: { ...base.worth, allIn: null, perUsablePound: { low: 0, likely: 0, high: 0, currency: 'XXX', per: 'lb' } },
        call: { kind: 'ask', says: { key: 'no_such_string' }, because: [] },
      };
    });
    expect(text('h1')).toBe('[no_such_string]');
    expect(find('.chart')).toBeTruthy();
  });
});

describe('axe-core finds nothing to complain about (jsdom: no layout, so no contrast)', () => {
  const check = async () => {
    const { violations } = await axe.run(document.body, {
      rules: { 'color-contrast': { enabled: false }, region: { enabled: false } },
    });
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`);
  };

  test('answer', async () => {
    mount(ready());
    for (const details of document.querySelectorAll('details')) details.open = true;
    expect(await check()).toEqual([]);
  }, 60_000);

  test('empty', async () => {
    mount(null);
    expect(await check()).toEqual([]);
  });

  test('and would: a choice without a label is found', async () => {
    mount(ready());
    find('label:has(+ select)').remove();
    expect(await check()).not.toEqual([]);
  });
});
