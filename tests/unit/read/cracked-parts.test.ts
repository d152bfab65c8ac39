/** Cracks and bends of what must hold, through the reader and the flags to the call. */
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';

const GRAVE = /^(?:cracked|bent|broken|rack-pins-missing|split-hub)/;
/** Grave flags of an ad: kind, flag, and its sentence where it is another than the flag's own. */
const told = (text: string): string[] => {
  const { flags, reading } = evaluate(listingFromText(text), DEFAULT_SETTINGS);
  return flags
    .filter(({ id }) => GRAVE.test(id))
    .map(({ id, item, weight }) => `${reading.items.find((one) => one.id === item)?.kind.value} ${id} ${weight}`);
};

describe('a crack or a bend is told of what it is in', () => {
  it.each([
    ['Power rack, one weld is cracked, $150', 'rack cracked-frame deal-breaker'],
    ['Power rack, frame cracked, $150', 'rack cracked-frame deal-breaker'],
    ['Power rack with pins and hooks, both uprights are bent, $150', 'rack bent-frame deal-breaker'],
    ['Power rack. One of the uprights is bent. $150', 'rack bent-frame deal-breaker'],
    ['Power rack with a bend in one upright, $150', 'rack bent-frame deal-breaker'],
    ['Squat stands, one is cracked at the base, $60', 'stands cracked-frame deal-breaker'],
    ['Flat bench, the frame is cracked, $40', 'bench cracked-frame deal-breaker'],
    ['Flat bench, cracked weld, $40', 'bench cracked-frame deal-breaker'],
    ['Flat bench, broken, $10', 'bench cracked-frame deal-breaker'],
    ['Flat bench, frame is bent, $40', 'bench bent-frame deal-breaker'],
    ['Weight tree, cracked weld, $20', 'storage cracked-frame deal-breaker'],
    ['Weight tree, one peg is bent, $20', 'storage bent-frame caution'],
    ['Olympic bar 7 ft, straight, shaft cracked, $50', 'bar cracked-bar deal-breaker'],
    ['Olympic bar 7 ft, the sleeve has a crack, $50', 'bar cracked-bar deal-breaker'],
    ['EZ curl bar, cracked weld, $20', 'curl-bar cracked-bar deal-breaker'],
    ['Olympic bar 7 ft, straight, cracked end cap, $100', 'bar cracked-bar caution'],
    ['Olympic bar 7 ft, straight, hairline cracks in the chrome, $100', 'bar cracked-bar caution'],
    ['Squat rack, a weld broke, $50', 'rack cracked-frame deal-breaker'],
    ['Olympic bar 7 ft, straight, and broken spring collars, $100', 'collars broken-collars deal-breaker'],
    ['Hex bar, bent, $50', 'hex-bar bent deal-breaker'],
    ['Kettlebell 24 kg, handle cracked, $30', 'kettlebell cracked-weight deal-breaker'],
    ['Pair of 50 lb dumbbells, one handle is cracked, $60', 'dumbbell cracked-weight caution'],
    ['Pair of 50 lb dumbbells, the tray is cracked, $60', 'dumbbell cracked-weight caution'],
    ['Power rack, one safety pin is bent, $150', 'rack rack-pins-missing caution'],
    ['Power rack, one j-hook is cracked, $150', 'rack rack-pins-missing caution'],
    ['Power rack, the j-hook has a cracked weld, $150', 'rack cracked-frame deal-breaker'],
    ['Power rack, plastic caps broken, $150', 'rack cracked-frame caution'],
    ['Verkaufe Power Rack, ein Holm ist verbogen, 150 €', 'rack bent-frame deal-breaker'],
    ['Verkaufe eine Langhantelstange mit Riss im Schaft, 50 €', 'bar cracked-bar deal-breaker'],
    ['Verkaufe eine Hantelbank, der Rahmen ist gerissen, 40 €', 'bench cracked-frame deal-breaker'],
  ])('%s', (text, flag) => expect(told(text)).toEqual([flag]));

  it.each([
    'Power rack, no cracked welds, $150',
    'Power rack, welds are good, nothing bent, no cracks, $150',
    'Power rack. It has been broken down for transport. $200',
    'Flat bench, vinyl cracked, $40',
    'Bench, frame is solid but the pad is cracked, $40',
    'Flat bench, cracked, $40',
    "Flat bench $40. Bar is bent so I'm chucking it, not included.",
    'Power rack $150, and a barbell with no bend',
  ])('none of it: %s', (text) => expect(told(text)).toEqual([]));

  it('of a bar beside plates the iron is cracked, unless the bar is named', () => {
    expect(told('Olympic bar and a pair of 45s, they are cracked. $80')).toEqual(['plate cracked deal-breaker']);
    expect(told('Olympic bar with a cracked sleeve and a pair of 45s. $80')).toEqual(['bar cracked-bar deal-breaker']);
  });

  it('of one bench the pad, of another the frame', () => {
    const { reading } = evaluate(listingFromText('Bench with cracked pad, the frame is fine, $40'), DEFAULT_SETTINGS);
    expect(reading.items[0]?.conditions.map(({ value }) => value)).toEqual(['torn']);
  });
});

it('one cracked of two leaves the worth of the other', () => {
  const worth = (text: string) => evaluate(listingFromText(text), DEFAULT_SETTINGS).worth.goingWorth?.likely ?? 0;
  const two = worth('Pair of 50 lb dumbbells, $60');
  expect(two).toBeGreaterThan(0);
  expect(worth('Pair of 50 lb dumbbells, one handle is cracked, $60')).toBeCloseTo(two / 2, 6);
});

describe('what catches the bar is asked for before the drive', () => {
  const callOf = (text: string) => evaluate(listingFromText(text), DEFAULT_SETTINGS).call;
  it('where it is known to be missing', () => {
    const { kind, says, because } = callOf('Power rack, the safety pins are missing, $150');
    expect([kind, says.key]).toEqual(['ask', 'call_ask_catches']);
    expect(because[0]?.key).toBe('flag_rack_pins_missing_says');
  });
  it('not where it is there, nor where the rack is not wanted', () => {
    expect(callOf('Power rack with safety pins and hooks, $150').kind).toBe('go');
    const lot = '4 x 45 lb olympic plates, hole 50.6 mm, and a power rack, the safety pins are missing. $100 for all';
    const corrections = [{ path: 'rack-1.plan', value: 'nothing' }];
    expect(evaluate(listingFromText(lot), DEFAULT_SETTINGS).call.says.key).toBe('call_ask_catches');
    expect(evaluate(listingFromText(lot), DEFAULT_SETTINGS, corrections).call.kind).toBe('go');
  });
});
