/** Finding places by what people write: invented towns in real states. What ships is checked in tests/outside/places.test.ts. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeGazetteer } from '../../../src/places/gazetteer.ts';
import { unpack } from '../../../src/places/unpack.ts';
import { list } from './list.ts';

const US = list(
  'US',
  [
    ['Quillby', 'IL', 40, -90, 90_000],
    ['Quillby', 'MO', 38, -93, 110_000],
    ['Quillby', 'OH', 40, -82, 3_000],
    ['Saint Orrin', 'MO', 38.6, -90.3, 300_000],
    ['Saint Orrin', 'OH', 41, -83, 2_000],
    ["Coeur d'Ombre", 'ID', 47.7, -116.8, 46_000],
    ['North Tarn', 'IL', 40.5, -89, 20_000],
    ['Tarn', 'IL', 40.6, -89, 150_000],
    ['Fort Brackish', 'TX', 32.7, -97.3, 800_000],
    ['Missouri Bend', 'IL', 39, -90.5, 1_500],
    ['Lone Ash', 'WY', 43, -108, 1_200],
  ],
  [
    [1_001, 41, -83],
    [62_701, 40.01, -90.02],
    [62_702, 40.05, -90.1],
  ],
);
const DE = list('DE', [
  ['Grünquell', '02', 48.1, 11.5, 60_000],
  ['Altfurt am Murr', '05', 50.1, 8.6, 600_000],
  ['Altfurt (Linse)', '11', 52.3, 14.5, 50_000],
  ['Neuwehr', '02', 49, 11, 4_000],
  ['Neuwehr', '02', 48.12, 11.52, 3_000],
  ['Straßholz', '13', 51, 13.7, 9_000],
]);
const us = makeGazetteer([US]);
const de = makeGazetteer([DE]);
const HOME = { lat: 40.1, lon: -89.8 };

const said = (gazetteer: typeof us, text: string, home: typeof HOME | null = null): string => {
  const found = gazetteer.find(text, home);
  if (!found.ok) return found.code;
  const { chosen, candidates, loose } = found;
  return `${chosen ? `${chosen.name} ${chosen.region}` : `ask ${candidates.length}`}${loose ? ' loosely' : ''}`;
};

describe('a place by name', () => {
  it.each([
    ['Quillby, IL', 'Quillby IL'],
    ['quillby il', 'Quillby IL'],
    ['QUILLBY, Missouri', 'Quillby MO'],
    ['Quillby, Ohio, USA', 'Quillby OH'],
    ['St. Orrin, OH', 'Saint Orrin OH'],
    ['St Orrin', 'Saint Orrin MO'],
    ['Ft. Brackish', 'Fort Brackish TX'],
    ['coeur d’ombre id', "Coeur d'Ombre ID"],
    ['Missouri Bend', 'Missouri Bend IL'],
    ['North Tarn', 'North Tarn IL'],
    ['near Tarn', 'Tarn IL loosely'],
    ['north Quillby, IL', 'Quillby IL loosely'],
    ['Tarn area', 'Tarn IL loosely'],
    ['just outside of Tarn, IL', 'Tarn IL loosely'],
    ['greater Tarn metro area', 'Tarn IL loosely'],
  ])('%s is %s', (text, place) => expect(said(us, text)).toBe(place));

  it.each([
    ['Grünquell', 'Grünquell Bayern'],
    ['Gruenquell', 'Grünquell Bayern'],
    ['grunquell, BY', 'Grünquell Bayern'],
    ['Strassholz Sachsen', 'Straßholz Sachsen'],
    ['Altfurt/Murr', 'Altfurt am Murr Hessen'],
    ['Altfurt a. M.', 'Altfurt am Murr Hessen'],
    ['Altfurt (Linse)', 'Altfurt (Linse) Brandenburg'],
    ['Raum Grünquell', 'Grünquell Bayern loosely'],
    ['80331 Grünquell', 'Grünquell Bayern'],
    ['D-80331 Grünquell', 'Grünquell Bayern'],
    ['Altfurt', 'ask 2'],
    ['Neuwehr, Bayern', 'ask 2'],
  ])('%s is %s', (text, place) => expect(said(de, text)).toBe(place));

  it('asks where a name alone can mean several, the likeliest first', () => {
    const found = us.find('Quillby');
    expect(found).toMatchObject({ ok: true, chosen: null });
    expect(found.ok && found.candidates.map(({ region }) => region)).toEqual(['MO', 'IL', 'OH']);
  });

  it('takes the one that is near home, when the others are far', () => expect(said(us, 'Quillby', HOME)).toBe('Quillby IL'));
  it('asks between two that are as near', () => expect(said(us, 'Quillby', { lat: 39, lon: -91.5 })).toBe('ask 3'));
  it('asks before it takes a lone small place far from home', () => {
    expect(said(us, 'Lone Ash', HOME)).toBe('ask 1');
    expect(said(us, 'Lone Ash, WY', HOME)).toBe('Lone Ash WY');
    expect(said(us, 'Lone Ash')).toBe('Lone Ash WY');
  });
  it('asks when the city is far and its small namesake is near', () =>
    expect(said(us, 'Saint Orrin', { lat: 40, lon: -81 })).toBe('ask 2'));
  it('asks when what stands behind the name says nothing to it', () =>
    expect(said(us, 'Tarn, Wicket County')).toBe('ask 1 loosely'));

  it('tells places of one name and region apart by what is around', () => {
    const found = de.find('Neuwehr');
    expect(found.ok && found.candidates.map(({ near }) => near)).toEqual([null, 'Grünquell, Bayern']);
  });
});

describe('a place by postcode', () => {
  it('is exact, whatever stands beside it', () => {
    for (const text of ['62701', '62701-1234', 'Quillby, IL 62701', 'IL 62701, USA']) {
      expect(us.find(text), text).toMatchObject({
        ok: true,
        chosen: { lat: 40.01, lon: -90.02, by: 'postcode', near: 'Quillby, IL' },
      });
    }
    expect(us.find('01001')).toMatchObject({ ok: true, chosen: { name: '01001' } });
  });

  it('that is in no list fails, but the name beside it counts', () => {
    expect(said(us, '62703')).toBe('unknown-postcode');
    expect(said(us, 'Tarn, IL 62703')).toBe('Tarn IL');
    expect(said(de, '80331')).toBe('no-postcodes');
    expect(said(makeGazetteer([list('GB', [['Oxbarrow', 'ENG', 52, -1, 9000]])]), 'SW1A 1AA')).toBe('no-postcodes');
  });
});

describe('what is no place', () => {
  it.each([
    ['', 'empty'],
    [' ,;- ', 'empty'],
    ['Nowhere at all', 'unknown'],
    ['x'.repeat(121), 'too-long'],
    ['__proto__', 'unknown'],
    ['constructor', 'unknown'],
  ])('%j: %s', (text, code) => expect(said(us, text)).toBe(code));

  it('never throws', () =>
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 130 }), (text) => {
        const found = us.find(text, HOME);
        us.suggest(text, HOME);
        return !found.ok || found.candidates.length > 0;
      }),
    ));
});

describe('places that a text goes on to', () => {
  it('come nearest and largest first, each once', () => {
    expect(us.suggest('qu', HOME).map(({ region }) => region)).toEqual(['IL', 'MO', 'OH']);
    expect(de.suggest('gru').map(({ name }) => name)).toEqual(['Grünquell']);
    expect(us.suggest('q')).toEqual([]);
    expect(us.suggest('s', HOME, 1)).toEqual([]);
    expect(us.suggest('saint', HOME, 1)).toHaveLength(1);
  });
});

describe('a packed list', () => {
  it('comes back as it was', () => {
    const rows = unpack(US);
    const at = rows.names.indexOf('Lone Ash');
    expect([rows.regions[at], rows.lat[at], rows.lon[at]]).toEqual(['WY', 43, -108]);
    expect((rows.people[at] ?? 0) / 1_200).toBeCloseTo(1, 0);
    expect([...rows.codes]).toEqual([1_001, 62_701, 62_702]);
  });
  it('that is damaged is refused', () => expect(() => unpack({ ...US, lat: US.lat.slice(3) })).toThrow(RangeError));
});
