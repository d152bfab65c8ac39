import { describe, expect, it } from 'vitest';
import { message } from '../../../src/words/message.ts';
import { speaker } from '../../../src/words/say.ts';

const say = speaker(
  {
    plain: 'Take {n} plates',
    plain_one: 'Take one plate',
    all: '{a}, {b}, {c}, {d}, {e}, {f}',
    nested: 'So: {inner}',
    open: '{gone}',
  },
  'en-US',
);

describe('say', () => {
  it('fills places, and picks the form for one', () => {
    expect(say(message('plain', { n: 3 }))).toBe('Take 3 plates');
    expect(say(message('plain', { n: 1 }))).toBe('Take one plate');
  });

  it('writes money, rates, weights, lengths, angles and distances for the locale', () => {
    const usd = (minor: number) => ({ minor, currency: 'USD' });
    const params = {
      a: { money: usd(12_000) },
      b: { rate: usd(67), per: 'lb' as const },
      c: { weight: { value: 45, unit: 'lb' as const } },
      d: { mm: 50.8 },
      e: { degrees: 5.84 },
      f: { distance: { value: 42.4, unit: 'mi' as const } },
    };
    expect(say(message('all', params))).toBe('$120, $0.67/lb, 45 lb, 50.8 mm (2 in), 5.8°, 42 mi');
  });

  it('says a message within a message', () => {
    expect(say(message('nested', { inner: { message: message('plain', { n: 2 }) } }))).toBe('So: Take 2 plates');
  });

  it('shows what is missing rather than nothing', () => {
    expect(say(message('unheard'))).toBe('[unheard]');
    expect(say(message('open'))).toBe('{gone}');
  });

  it('puts hostile text in as it is, without taking its braces for places', () => {
    expect(say(message('nested', { inner: '{n} $& <b>' }))).toBe('So: {n} $& <b>');
  });
});
