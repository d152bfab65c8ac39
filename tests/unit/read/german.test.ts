/** Notations of German ads, each with the rule that read it. The ads are ours; how such ads are written is common practice, no source. */
import { describe, expect, it } from 'vitest';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import type { Fact, Item, Reading } from '../../../src/listing/reading.ts';
import { read } from '../../../src/read/index.ts';
import { inMajor, type Money } from '../../../src/units/money.ts';

/** Reads a line as part of a German page, so that the shortest notations are German too. */
const german = (text: string): Reading => read({ ...listingFromText(text, 'selection'), language: 'de' });

const ruleOf = (fact: Fact<unknown> | null): string => (fact ? `<${fact.rule}>` : '');
const shown = ({ kind, count, unitWeight }: Item): string =>
  `${count?.value ?? '?'} ${kind.value} ${unitWeight ? `${unitWeight.value.value} ${unitWeight.value.unit}` : '?'} ${ruleOf(unitWeight ?? count)}`;
const items = (text: string): string[] => german(text).items.map(shown);
const first = (text: string): Item | undefined => german(text).items[0];

const moneyOf = (fact: Fact<Money> | null): string =>
  fact ? `${inMajor(fact.value)} ${fact.value.currency} ${ruleOf(fact)}` : '-';
const asked = (text: string): string => {
  const { asking } = german(text);
  return `${asking.basis} ${moneyOf(asking.amount)}${asking.unitAmount ? `, ${moneyOf(asking.unitAmount)}` : ''}`;
};

describe('counts and weights', () => {
  it.each<[string, string[]]>([
    ['4x20kg Hantelscheiben', ['4 plate 20 kg <count-times-weight>']],
    ['2 x 2,5 kg Scheiben', ['2 plate 2.5 kg <count-times-weight>']],
    ['4 mal 25 kg Gewichtsscheiben', ['4 plate 25 kg <count-times-weight>']],
    ['Hantelscheiben 10 kg x 4', ['4 plate 10 kg <weight-times-count>']],
    ['4 Stück à 5 kg Gusseisenscheiben', ['4 plate 5 kg <count-weight>']],
    ['Hantelscheiben: 2 Stk. 10 kg, 4 Stk. 5 kg', ['2 plate 10 kg <count-weight>', '4 plate 5 kg <count-weight>']],
    ['Hantelscheiben: 10kg 4 Stück, 5kg 2 Stück', ['4 plate 10 kg <weight-pieces>', '2 plate 5 kg <weight-pieces>']],
    ['6 Hantelscheiben á 10 kg', ['6 plate 10 kg <count-noun-weight>']],
    ['zwei Kurzhanteln mit je 25 kg', ['2 dumbbell 25 kg <count-noun-weight>']],
    ['2 Kurzhanteln mit 10 kg', ['2 dumbbell 10 kg <count-noun-weight>']],
    ['Ein Dutzend Gewichtsscheiben zu je 5 kg', ['12 plate 5 kg <count-noun-weight>']],
    ['eine 20er Hantelscheibe', ['1 plate 20 kg <a-weight>']],
    ['20-kg-Langhantelstange', ['1 bar 20 kg <one-weight>']],
    ['Langhantel 220 cm 20 kg', ['1 bar 20 kg <bar-weight>']],
    ['20kg Hantelscheibe (2 Stück)', ['2 plate 20 kg <count-behind-in-brackets>']],
    ['8 Hantelscheiben aus Guss', ['8 plate ? <noun>']],
    ['4 x 45 lbs (20,4 kg) Hantelscheiben', ['4 plate 45 lb <count-times-weight>']],
  ])('%s', (text, want) => expect(items(text)).toEqual(want));

  it.each<[string, string[]]>([
    ['1 Paar 20 kg Hantelscheiben', ['2 plate 20 kg <pair-of>']],
    ['2 Paar à 10 kg Hantelscheiben', ['4 plate 10 kg <pair-of>']],
    ['Bumper Plates 10 kg Paar', ['2 bumper 10 kg <weight-pair>']],
    ['Ein Paar 15 kg Bumperplates', ['2 bumper 15 kg <pair-of>']],
    ['je 2 x 5kg, 10kg Hantelscheiben', ['2 plate 5 kg <each-of-list>', '2 plate 10 kg <each-of-list>']],
    ['je 2 Stück 0,5 / 1 kg Scheiben', ['2 micro 0.5 kg <each-of-list>', '2 micro 1 kg <each-of-list>']],
    ['Hantelscheiben 10kg und 5kg, je zwei', ['2 plate 10 kg <list-each>', '2 plate 5 kg <list-each>']],
    ['pro Seite 2 x 20 kg Hantelscheiben', ['4 plate 20 kg <count-times-weight>']],
  ])('%s', (text, want) => expect(items(text)).toEqual(want));

  it('tells "ein Paar", two, from "ein paar", some', () => {
    expect(items('Ein Paar Hantelscheiben')).toEqual(['2 plate ? <noun>']);
    expect(items('Ein paar Hantelscheiben')).toEqual(['? plate ? ']);
    expect(items('EIN PAAR HANTELSCHEIBEN')).toEqual(['2 plate ? <noun>']);
  });

  it('ends a notation where a sentence ends behind its unit', () => {
    expect(items('Hantelscheiben 4x1,25 kg. Stange verbogen')).toEqual([
      '4 plate 1.25 kg <count-times-weight>',
      '1 bar ? <noun>',
    ]);
  });

  it('parts a list of whole numbers at its commas, and decimals nowhere', () => {
    expect(items('Hantelscheiben 25,20,15 kg').map((item) => item.slice(0, 12))).toEqual([
      '? plate 25 k',
      '? plate 20 k',
      '? plate 15 k',
    ]);
    expect(items('Hantelscheiben 2x1,25 kg')).toEqual(['2 plate 1.25 kg <count-times-weight>']);
  });

  it('takes plates for kilograms, and for pounds only when told', () => {
    expect(items('Kurzhanteln 2x7,5 2x10')).toEqual([
      '2 dumbbell 7.5 kg <count-times-weight>',
      '2 dumbbell 10 kg <count-times-weight>',
    ]);
  });
});

describe('prices', () => {
  it.each([
    ['Langhantel 120 €', 'lot 120 EUR <price-sign-behind>'],
    ['Langhantel € 120,-', 'lot 120 EUR <price-sign-first>'],
    ['Langhantel 120,-- €', 'lot 120 EUR <price-sign-behind>'],
    ['Langhantel 120,- VB', 'lot 120 EUR <price-no-cents>'],
    ["Langhantel Fr. 1'150.–", 'lot 1150 CHF <price-sign-first>'],
    ['Power Rack 1.200,50 € VHB', 'lot 1200.5 EUR <price-sign-behind>'],
    ['Power Rack 1.200 Euro', 'lot 1200 EUR <price-sign-behind>'],
    ['Langhantel VB 120', 'lot 120 EUR <price-told>'],
    ['Langhantel, Festpreis: 90', 'lot 90 EUR <price-told>'],
    ['2x20kg Scheiben und Langhantel, Gesamtpreis 160', 'lot 160 EUR <price-told>'],
    ['4 Hantelscheiben à 10 kg. Stück 15 €', 'each 60 EUR <price-sign-behind>, 15 EUR <price-sign-behind>'],
    ['4x 20kg Hantelscheiben, Stückpreis 25€', 'each 100 EUR <price-sign-behind>, 25 EUR <price-sign-behind>'],
    ['4x 20kg Hantelscheiben, 25 € pro Stück', 'each 100 EUR <price-sign-behind>, 25 EUR <price-sign-behind>'],
    ['4x 20kg Hantelscheiben je 25 €', 'each 100 EUR <price-sign-behind>, 25 EUR <price-sign-behind>'],
    ['3 Paar 20kg Scheiben. Das Paar 60 €', 'pair 180 EUR <price-sign-behind>, 60 EUR <price-sign-behind>'],
    ['4x20kg Hantelscheiben 1,50 €/kg', 'per-kilogram 120 EUR <price-sign-behind>, 1.5 EUR <price-sign-behind>'],
    ['4x20kg Hantelscheiben, das Kilo für 1,50 Euro', 'per-kilogram 120 EUR <price-sign-behind>, 1.5 EUR <price-sign-behind>'],
    ['4x20kg Hantelscheiben, Kilopreis 1,50 €', 'per-kilogram 120 EUR <price-sign-behind>, 1.5 EUR <price-sign-behind>'],
    ['Langhantel zwischen 40 und 50 €', 'range 40 EUR <price-sign-behind>'],
    ['Langhantel 40 bis 50 €', 'range 40 EUR <price-sign-behind>'],
    ['Hantelbank 80€, Langhantel 50€. Alles zusammen 110€', 'lot 110 EUR <price-sign-behind>'],
    ['Kettlebell 16 kg, 1 € VB', 'none -'],
  ])('%s', (text, want) => expect(asked(text)).toBe(want));

  it.each([
    ['Langhantel NP 199 €, jetzt 90 €', 199, 90],
    ['Langhantel 90 € statt 199 €', 199, 90],
    ['Langhantel. Neupreis lag bei rund 199 €. 90 € VB', 199, 90],
    ['Langhantel für 199 € gekauft, jetzt 90 €', null, 90],
  ])('keeps the former price of "%s" out', (text, former, amount) => {
    const { asking } = german(text);
    if (former !== null) expect(asking.former.map(({ value }) => inMajor(value))).toEqual([former]);
    expect(asking.amount && inMajor(asking.amount.value)).toBe(amount);
  });

  it('keeps delivery and deposit out', () => {
    const delivery = german('Langhantel 90 €. Versand möglich, 12 €');
    expect(delivery.asking.delivery && inMajor(delivery.asking.delivery.value)).toBe(12);
    expect(delivery.asking.amount && inMajor(delivery.asking.amount.value)).toBe(90);
    expect(asked('Mikroscheiben 40 € inkl. Versand')).toBe('lot 40 EUR <price-sign-behind>');
    expect(asked('Langhantel 90 €. Anzahlung 20 €')).toBe('lot 90 EUR <price-sign-behind>');
  });

  it.each([
    ['Langhantel 90 € VB', null, 'open-to-offers'],
    ['Langhantel 90 € VHS', null, 'open-to-offers'],
    ['Langhantel 90 €, Preis ist fest', 'firm', null],
    ['Langhantel 90 €, nicht verhandelbar', 'firm', null],
    ['Langhantel 90 € VB, bitte kein "was ist letzte Preis"', null, 'open-to-offers'],
  ])('terms of "%s"', (text, firm, open) => {
    const { asking } = german(text);
    expect([asking.firm?.rule ?? null, asking.openToOffers?.rule ?? null]).toEqual([firm, open]);
  });
});

describe('measures and conditions', () => {
  it.each([
    ['Hantelscheiben 4x20kg, 50er Bohrung', 'boreMm', 50, 'nicknamed-size'],
    ['Hantelscheiben 4x10kg, Bohrung 31 mm', 'boreMm', 31, 'bore'],
    ['Hantelscheiben 4x10kg, Innendurchmesser 30/31mm', 'boreMm', 30, 'bore'],
    ['Hantelscheiben 4x10kg, Durchmesser 30 mm', 'boreMm', 30, 'bore'],
    ['Langhantelstange, Griffdurchmesser 28 mm', 'shaftMm', 28, 'shaft'],
    ['Langhantelstange 1,60m lang', 'lengthMm', 1600, 'bar-length'],
    ['Langhantel lang (2 Meter 20)', 'lengthMm', 2200, 'metres-and-centimetres'],
  ] as const)('%s', (text, field, value, rule) => {
    const fact = first(text)?.[field];
    expect([fact?.value, fact?.rule]).toEqual([value, rule]);
  });

  it.each([
    ['Hantelscheiben 2x25kg, 50mm Aufnahme', '50mm', 'sleeve-size'],
    ['Hantelscheiben 2x25kg, 2x10kg, 50 mm', '50mm', 'bare-size'],
    ['12 Gewichte je 5 kg, passend auf 30/31 mm Stangen', '25mm', 'for-bars-of'],
    ['Langhantelstange 180 cm, 30 mm', '25mm', 'thirty-millimetre-bar'],
    ['Olympia Hantelscheiben 2x25kg', '50mm', 'make'],
  ])('%s', (text, fits, rule) => {
    const fact = first(text)?.fits;
    expect([fact?.value, fact?.rule]).toEqual([fits, rule]);
  });

  it.each([
    ['Langhantel mit leichtem Flugrost', ['rust-light']],
    ['Vermackte Hantelscheiben 2 x 10 kg, keine Risse', ['chipped']],
    ['Langhantel, rostfrei', ['no-rust']],
    ['Langhantel, kein Rost, nicht verbogen', ['no-rust', 'straight']],
    ['Langhantel ist leicht verbogen', ['bent']],
    ['Langhantel, kerzengerade, Hülsen drehen sich frei', ['straight', 'spins']],
    ['Langhantel, eine Hülse dreht sich nicht mehr', ['seized-sleeves']],
    ['Hantelscheibe 10 kg, gesprungen', ['cracked']],
    ['Hantelbank, wackelt nicht, ohne Risse', []],
    ['Hantelbank, Polster eingerissen', ['torn']],
    ['Langhantel neuwertig', ['like-new']],
    ['Hantelscheibe 10 kg, neu lackiert', ['repainted']],
  ])('%s', (text, want) => expect(first(text)?.conditions.map(({ value }) => value)).toEqual(want));
});

describe('what is on offer', () => {
  it('leaves sold goods out, and prices those named again', () => {
    const reading = german('Hantelscheiben 4x20kg, 4x10kg. 20er sind verkauft. Die 10er je 15€.');
    expect(reading.items.map(shown)).toEqual(['4 plate 10 kg <count-times-weight>']);
    expect(reading.asking.amount && inMajor(reading.asking.amount.value)).toBe(60);
  });

  it('does not take "wird verkauft" for sold', () => {
    expect(items('Verkauft wird eine Langhantel')).toHaveLength(1);
    expect(items('Hantelbank, wird nur zusammen verkauft')).toHaveLength(1);
  });

  it('leaves goods out that are not included', () => {
    expect(items('Power Rack. Langhantelstange und Gewichte nicht dabei!')).toEqual(['1 rack ? <noun>']);
    expect(items('Half Rack ohne Gewichte')).toEqual(['1 rack ? <noun>']);
  });

  it.each(['Suche Langhantel und Hantelscheiben', 'Gesucht: Power Rack', 'Kaufe Hantelscheiben 20 kg'])('%s is wanted', (text) =>
    expect(german(text).wanted).toBe(true),
  );

  it('does not take a search for a new owner for a wanted ad', () => {
    expect(german('Langhantel sucht neuen Besitzer, 50 €').wanted).toBe(false);
  });

  it('reads the size of a set as the weight of the lot', () => {
    const total = german('Langhantelset 80 kg, Stange und Verschlüsse dabei').statedTotal;
    expect([total?.value, total?.rule]).toEqual([{ value: 80, unit: 'kg' }, 'set-size']);
    expect(german('Langhantel mit 60 kg Gewichten').statedTotal?.rule).toBe('heavy-goods');
  });

  it.each([
    'Bremsscheiben 2 Stück, Guss, 280 mm, 15 kg',
    'Zwei Kochplatten Gusseisen, 180 mm, 12 €',
    'Schallplatten Sammlung, 200 Stück, 50 €',
    'Vogelkäfig mit 2 Stangen, 10 €',
    'Dachgepäckträger, 2 Stangen 120 cm, max. 75 kg',
    'Kleiderstange ausziehbar bis 2 m, 15 €',
  ])('%s is of another trade', (text) => expect(german(text).aboutThisTrade).toBe(false));

  it('free goods cost nothing', () => {
    const { asking } = german('Zu verschenken: 2 Hantelscheiben 15 kg');
    expect(asking.amount && inMajor(asking.amount.value)).toBe(0);
  });
});
