import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import type { Correction } from '../../../src/listing/reading.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';
import { MESSAGE_PARTS, MOST_QUESTIONS, sellerMessage, written } from '../../../src/message/compose.ts';
import { ENGLISH } from '../../../src/message/english.ts';
import { GERMAN, sellerSpeaker } from '../../../src/message/german.ts';
import { refusalMessage, refusals, stillOpen } from '../../../src/message/refusal.ts';
import { message } from '../../../src/words/message.ts';
import { speaker } from '../../../src/words/say.ts';
import { readStrings } from '../../tools/evaluate/strings.ts';

const english = speaker(readStrings(), 'en-US');
const german = sellerSpeaker('de', english);
const RATE = { low: 0.5, likely: 1, high: 1.5, source: 'own', date: '' };
const judge = (text: string, over: Partial<Settings> = {}) =>
  evaluate(listingFromText(text), { ...DEFAULT_SETTINGS, distance: { value: 20, unit: 'mi' }, ...over });
const messageOf = (text: string, over: Partial<Settings> = {}) => written(english, sellerMessage(judge(text, over), 'Iron'));

describe('the message to the seller', () => {
  it('asks in order of worth, offers with a reason, and says when to come', () => {
    const text = 'Weights and bar. 4 x 45 lb plates and a 7 ft straight-ish barbell, $400';
    const evaluation = judge(text);
    const asked = evaluation.questions.map(({ says }) => english(says));
    expect(asked.length).toBeGreaterThan(1);
    const paragraphs = written(english, sellerMessage(evaluation, 'Weights and bar')).split('\n\n');
    expect(paragraphs[1]).toContain('“Weights and bar”');
    expect(paragraphs[2]?.split('\n').slice(1)).toEqual(asked.slice(0, MOST_QUESTIONS).map((one) => `- ${one}`));
    expect(paragraphs[3]).toMatch(/I could offer \$\d+: it is a drive of 20 mi each way/);
    expect(paragraphs[4]).toContain('When would suit you');
  });

  it('leaves out what is not wanted', () => {
    const evaluation = judge('4 x 45 lb olympic plates $400');
    for (const part of MESSAGE_PARTS) {
      const without = MESSAGE_PARTS.filter((one) => one !== part);
      expect(sellerMessage(evaluation, '', without).length).toBeLessThanOrEqual(sellerMessage(evaluation, '').length);
    }
    expect(written(english, sellerMessage(evaluation, '', []))).not.toMatch(/\$|When would/);
  });

  it('never names the walk-away price, nor an offer above the price', () => {
    for (const price of [60, 120, 170, 250, 400]) {
      const text = `4 x 45 lb olympic plates, cast iron, $${price} for all`;
      const { worth } = judge(text);
      const most = english.money(worth.walkAway ?? { minor: 0, currency: 'USD' });
      const said = messageOf(text);
      if (worth.walkAway?.minor !== worth.openingOffer?.minor && worth.walkAway?.minor !== price * 100)
        expect(said).not.toContain(most);
      for (const [, figure] of said.matchAll(/\$(\d+)/g)) expect(Number(figure)).toBeLessThanOrEqual(price);
    }
  });

  it('says that a good price is fine, and does not haggle over a firm one', () => {
    expect(messageOf('4 x 45 lb olympic plates, $40 for all')).toContain('$40 is fine with me');
    expect(messageOf('4 x 45 lb olympic plates, $900 firm')).not.toContain('offer');
    expect(messageOf('4 x 45 lb olympic plates, make me an offer')).not.toContain('I could offer');
  });

  it('offers nothing in another currency than the ad’s', () => {
    const euro = (over: Partial<Settings>) => messageOf('4 x 45 lb olympic plates, 400 €', over);
    expect(euro({ currency: 'EUR', rates: { iron: { used: RATE, new: RATE } } })).toContain('offer');
    // What the buyer's dollars are worth in it is known, but the seller thinks in euro.
    expect(euro({ exchange: { EUR: 1.1 } })).not.toContain('offer');
  });

  it('says what such plates are offered for only where finds taught it', () => {
    const near: Partial<Settings> = { distance: { value: 2, unit: 'mi' } };
    const iron = {
      low: 0.8,
      likely: 1,
      high: 1.3,
      source: 'learned',
      date: '2026-11',
      finds: 6,
      effective: 5,
      currency: 'USD',
    } as const;
    const plates = '4 x 45 lb olympic plates, cast iron, $400';
    expect(messageOf(plates, { ...near, learned: { iron } })).toMatch(/plates like these offered for about \$\d/);
    expect(messageOf(plates, near)).toMatch(/: I pay cash and take everything at once\./);
    expect(messageOf(plates, { ...near, rates: { iron: { used: RATE, new: RATE } } })).not.toContain('offered for about');
    // One kind was learned and the other was not: the mixed figure is no knowledge.
    const mixed = `${plates.replace('$400', '')} and 2 x 45 lb bumper plates, $700`;
    expect(messageOf(mixed, { ...near, learned: { iron } })).not.toContain('offered for about');
  });

  it('speaks of one piece as one', () => {
    const one = messageOf('Flat bench, sturdy, $300', { distance: { value: 2, unit: 'mi' } });
    expect(one).toContain('Is it still available?');
    expect(one).toContain('I pay cash and take it with me right away.');
    expect(one).not.toMatch(/all still|everything at once/);
    expect(messageOf('Flat bench, sturdy, make me an offer')).toContain('What are you asking for it?');
    for (const many of ['2 flat benches, $300', 'Flat bench and a squat rack, $900', '4 x 45 lb plates, $400'])
      expect(messageOf(many)).toContain('Is everything still available?');
    expect(messageOf('4 x 45 lb olympic plates, make me an offer')).toContain('What are you asking for everything?');
  });

  it('stays short', () => {
    for (const text of ['plates and bars', '4 x 45 lb plates, 2 bars, 2 bars, 25s, 10s, 5s $500'])
      expect(messageOf(text).length).toBeLessThan(1200);
  });

  it('keeps a hostile title to its place', () => {
    const said = written(english, sellerMessage(judge('4 x 45 lb plates $100'), '{open}\n\n<b>$&'));
    expect(said).toContain('“{open} <b>$&”');
  });
});

describe('refusing', () => {
  it('gives each reason once, in kind words, with what it is worth', () => {
    const evaluation = judge('4 x 45 lb olympic plates with cracks, cracked, and a bent olympic bar, $900');
    const keys = refusals(evaluation).map(({ key }) => key);
    expect(keys).toContain('message_refuse_bent');
    expect(new Set(keys).size).toBe(keys.length);
    expect(written(english, refusalMessage(evaluation) ?? [])).toMatch(/^Thank you .*\n\nSo I would/s);
  });

  it('offers for what is left of a lot, and says “otherwise” only behind an offer', () => {
    const lot = judge('4 x 45 lb olympic plates, hole 50.6 mm, and a bent olympic bar, $300 for both');
    const said = written(english, refusalMessage(lot) ?? []);
    expect(said).toMatch(
      /The bar is not straight any more.* For the rest I could pay \$\d+ and take it with me now\.\n\nOtherwise/,
    );
    expect(written(english, refusalMessage(judge('4 x 45 lb olympic plates, hole 50.6 mm, $300')) ?? [])).toMatch(
      /As it is, I could pay \$\d+.*\n\nOtherwise/,
    );
    expect(written(english, refusalMessage(judge('Bent olympic bar, $20')) ?? [])).toMatch(/\n\nSo I would rather leave it/);
  });

  it('knows cautions as well, and what was measured', () => {
    const keys = (text: string, ...corrections: Correction[]) =>
      refusals(evaluate(listingFromText(text), DEFAULT_SETTINGS, corrections)).map(({ key }) => key);
    expect(keys('Squat stands, a pair, $20')).toEqual(['message_refuse_stands']);
    expect(keys('Power rack with pins and hooks, wobbles, $100')).toEqual(['message_refuse_wobbly']);
    expect(keys('Olympic bar, 7 ft, 28 mm, straight, sleeves are seized, $120')).toContain('message_refuse_sleeves');
    // A height out of the ad is nothing that was found.
    const bench = 'Flat bench, 20 inches high, $20';
    expect(keys(bench)).toEqual([]);
    expect(keys(bench, { path: 'bench-1.heightMm', value: 508, unit: 'mm', basis: 'measured' })).toEqual([
      'message_refuse_bench_size',
    ]);
  });

  it('what gives no reason is still open', () => {
    expect(stillOpen(judge('Power rack, $100').flags).map(({ id }) => id)).toContain('rack-pins-unsaid');
    expect(stillOpen(judge('4 x 45 lb olympic plates, hole 50.6 mm, $90').flags)).toEqual([]);
  });

  it('has nothing to say against a good lot', () => {
    expect(refusalMessage(judge('4 x 45 lb olympic plates, hole 50.6 mm, $90'))).toBeNull();
  });
});

describe('German', () => {
  const own = JSON.parse(readFileSync('extension/_locales/en/message.json', 'utf8')) as Record<string, { message: string }>;
  const strings = readStrings();
  /** Said to the buyer, not to the seller. */
  const SCREEN = /^message_(?:heading|with|part_\w+|language\w*|text|copy\w*|afresh|nothing_sent)$/;
  const wanted = [
    ...Object.keys(own).filter((key) => !SCREEN.test(key)),
    ...Object.keys(strings).filter((key) => key.startsWith('question_')),
  ];

  it('has every sentence, and no other', () => expect(Object.keys(GERMAN).sort()).toEqual(wanted.sort()));

  it('has the same places', () => {
    const places = (text: string | undefined) => [...(text ?? '').matchAll(/\{\w+\}/g)].map(String).sort();
    for (const key of wanted.filter((key) => !key.startsWith('message_ask')))
      expect([key, places(GERMAN[key])]).toEqual([key, places(strings[key])]);
  });

  it('and English, for readers of another language, are the strings of both languages', () => {
    const folder = (language: string) => readStrings(new URL(`../../../extension/_locales/${language}/`, import.meta.url));
    for (const [table, language] of [
      [GERMAN, 'de'],
      [ENGLISH, 'en'],
    ] as const) {
      const all = folder(language);
      expect(table).toEqual(Object.fromEntries(wanted.map((key) => [key, all[key]])));
    }
    const reader = speaker(folder('de'), 'de');
    expect(sellerSpeaker('de', reader)).toBe(reader);
    expect(sellerSpeaker('en', reader)(message('message_greeting'))).toBe('Hello,');
  });

  it('speaks to the seller of a German ad', () => {
    const evaluation = judge('Verkaufe 4 Hantelscheiben 20 kg Guss, 50 mm, und eine Langhantelstange, 300 €', {
      currency: 'EUR',
      unit: 'kg',
    });
    const said = written(german, sellerMessage(evaluation, 'Hantelscheiben'));
    expect(said).toContain('„Hantelscheiben“');
    expect(said).not.toContain('[');
    expect(said).toMatch(/^Guten Tag/);
  });
});
