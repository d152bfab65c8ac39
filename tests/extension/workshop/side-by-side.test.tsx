import 'fake-indexeddb/auto';
import { expect, it } from 'vitest';
import { ad, value } from '../store/making.ts';
import { go, NOW, openWorkshop, says, shown } from './open.tsx';

const CHEAP = ad('4 x 45 lb olympic plates and 2 x 25 lb, cast iron, $120 for all', null, 'Iron plates');
const DEAR = ad('4 x 45 lb olympic plates, cast iron, $400 for all', null, 'Dear plates');
const VAGUE = ad('olympic plates, make an offer', null, 'Some plates');
const cells = (row: string) => [...document.querySelectorAll(`[data-row="${row}"] td`)].map(({ textContent }) => textContent);

async function side(...ads: Parameters<typeof openWorkshop>[0]) {
  const { finds } = await openWorkshop(ads);
  await go(`#side-by-side/${finds.map(({ id }) => id).join(',')}`);
  await shown('.compare');
}

it('says which wins, by how much, how sure, and the price that makes the loser equal', async () => {
  await side(DEAR, CHEAP);
  const verdict = document.querySelector('.verdict')?.textContent ?? '';
  // $400 / 180 lb against $120 / 230 lb: 76 % less; $400 would have to be 180 × 120 / 230 = $93.
  expect(verdict).toMatch(/“Iron plates” is the better buy: a usable pound costs 77% less than with “Dear plates”/);
  expect(verdict).toContain('The chance that this order holds is over 99%.');
  expect(verdict).toMatch(/“Dear plates” would be as good at \$93 \(asked \$400\)/);
  expect(document.querySelector('[data-best]')?.textContent).toContain('Iron plates');
});

it('puts the same goods in the same row', async () => {
  await side(DEAR, CHEAP);
  expect([...document.querySelectorAll('.compare tbody th')].map(({ textContent }) => textContent)).toEqual(
    expect.arrayContaining(['Plates, 45 lb', 'Plates, 25 lb']),
  );
  expect(cells('asked')).toEqual(['$400', '$120']);
  expect(cells('usable')).toEqual(['180 lb', '230 lb']);
  const rows = [...document.querySelectorAll('.compare tbody tr')].filter(says('25 lb'));
  expect([...(rows[0]?.querySelectorAll('td') ?? [])].map(({ textContent }) => textContent)).toEqual(['none', '2']);
});

it('reckons an ad without a distance at the usual one beside one that has it, and says so', async () => {
  const far = {
    ...DEAR,
    listing: { ...DEAR.listing, title: 'Far plates' },
    edits: { changes: [], distance: { value: 60, unit: 'mi' as const } },
  };
  await side(far, CHEAP);
  const assumed = [...document.querySelectorAll('[data-assumed]')].map(({ textContent }) => textContent);
  expect(assumed).toEqual([expect.stringContaining('how far “Iron plates” is: 20 mi one way is assumed here')]);
  expect(cells('drive')[0]).toMatch(/^60 mi: \$/);
  expect(cells('drive')[1]).toMatch(/^20 mi, assumed: \$/);
  await side(DEAR, CHEAP);
  expect(document.querySelector('[data-assumed]')).toBeNull();
  expect(cells('drive')).toEqual(['not known', 'not known']);
});

it('weighs in the buyer’s unit', async () => {
  const { store, finds } = await openWorkshop([DEAR, CHEAP]);
  value(await store.settings.change(() => ({ unit: 'kg' }), NOW));
  await go(`#side-by-side/${finds.map(({ id }) => id).join(',')}`);
  await shown('[data-row="usable"]', says('82 kg'));
  expect(cells('usable')).toEqual(['82 kg', '104 kg']);
});

it('makes no figure up for an ad that says too little', async () => {
  await side(VAGUE, CHEAP);
  expect(document.querySelector('.verdict')?.textContent).toContain('do not say enough');
  expect(cells('per_pound')[0]).toBe('not known');
});

it('tells how, when fewer than two are named, and what is gone', async () => {
  const { finds } = await openWorkshop([CHEAP], '#side-by-side/');
  await shown('main p', says('Select two to five'));
  await go(`#side-by-side/${finds[0]?.id},gone`);
  await shown('[role=alert]');
  await shown('.compare', says('Iron plates'));
});

it('lists notes too, so that “none” means none', async () => {
  await side(ad('Olympic barbell, 28 mm shaft, a little surface rust, $150', null, 'Rusty bar'), CHEAP);
  expect(cells('flags')[0]).toMatch(/Note: /);
});

it('for paper tells each flag and question once, with the letters of its lots', async () => {
  await side(VAGUE, DEAR, CHEAP);
  const told = (part: string) =>
    [...document.querySelectorAll(`[data-remarks=${part}] li`)].map(({ textContent }) => textContent);
  const cast = told('flags').filter((line) => line?.includes('Cast plates seldom weigh'));
  expect(cast).toEqual([expect.stringMatching(/^B, C Note: Cast plates/)]);
  expect(told('questions').some((line) => line?.startsWith('A '))).toBe(true);
  expect([...document.querySelectorAll('.compare thead .on-paper')].map(({ textContent }) => textContent)).toEqual([
    'A: ',
    'B: ',
    'C: ',
  ]);
  // Whatever the table says of them is there.
  for (const part of ['flags', 'questions'])
    for (const line of document.querySelectorAll(`[data-row=${part}] li`))
      expect(told(part).some((one) => one?.endsWith(line.textContent ?? ''))).toBe(true);
});
