/** What a screen reader says while one types or something is worked out: the result, once, and not every step on the way. */
import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import { SETTLE_MS } from '../../../extension/components/announcer.tsx';
import { pounds } from '../../../src/units/mass.ts';
import { heard, wait } from '../heard.ts';
import { ad, PLATES, value } from '../store/making.ts';
import { clickOn, go, NOW, openWorkshop, setTo, shown } from './open.tsx';

beforeEach(() => sessionStorage.clear());

/** Types a text letter by letter, as fast as people do. */
const typed = (path: string, text: string) => async () => {
  const field = await shown<HTMLInputElement>(`[data-path="${path}"]`);
  for (let letters = 1; letters <= text.length; letters += 1) {
    await setTo(field, text.slice(0, letters));
    await wait(40);
  }
};
const BAR = 'Olympic barbell, 20 kg, 28.5 mm, straight, $120';

describe('while one types', () => {
  it('a search says how many there are', async () => {
    await openWorkshop([ad(PLATES), ad(BAR), ad('Bumper plates, 2 x 45 lb, $80'), ad('Barn find: 2 x 25 lb plates, $20')]);
    await shown('[data-find]');
    await wait(SETTLE_MS + 100);
    expect(await heard(typed('words', 'barbell'))).toEqual(['1 find']);
  });

  it('weighings say how many were read, and how far the sides are apart', async () => {
    expect(
      await heard(async () => {
        await openWorkshop([], '#weigh');
        await shown('.washer-answer');
      }),
    ).toEqual([]);
    const said = await heard(typed('weighings', '46.2 44.8 45.1 45.9'));
    expect(said).toHaveLength(2);
    expect(said.join(' ')).toMatch(/4 weighings read.*At worst the two sides differ by 0\.3 lb/);
  });

  it('washers say how many', async () => {
    await openWorkshop([], '#weigh');
    await shown('.washer-answer');
    expect(await heard(typed('washer-wanted', '0.75'))).toEqual([expect.stringMatching(/washers? on each side/)]);
  });

  it('a wanted total says what goes on', async () => {
    const { store } = await openWorkshop([], '#kit');
    const own = { weighed: [], boreMm: null, shaftMm: null, sleeveMm: null, lengthMm: null, note: '', paid: null };
    value(await store.kit.owned.put({ id: 'plates', kind: 'plate', weight: pounds(45), pieces: 4, ...own }, 1));
    await go('#kit/loads');
    await shown('[data-load]');
    expect(await heard(typed('target', '135'))).toEqual([expect.stringContaining('135 lb: on each side 1 × 45 lb')]);
  });
});

describe('while something is worked out', () => {
  it('the buy list says the end', async () => {
    const ads = Array.from({ length: 12 }, (_, at) => ad(`${PLATES} number ${at}`));
    const said = await heard(async () => {
      await openWorkshop(ads, '#buy-list');
      await shown('[data-stage=done]');
    });
    expect(said.filter((one) => !one.includes('Loading'))).toHaveLength(1);
  });
});

/** A group with a name is read when the focus comes into it; as an alert it would be read a second time. */
it('what is asked before a bought find is removed is read once, as the name of the group in which the focus stands', async () => {
  const { store, finds } = await openWorkshop([ad(PLATES)]);
  value(await store.finds.setStatus(finds[0]?.id ?? '', 'bought', NOW));
  await clickOn(await shown('[data-find] input'));
  const said = await heard(async () => {
    await clickOn(await shown('[data-remove]'));
    await shown('[data-sure]');
  });
  expect(said.filter((one) => one.includes('bought'))).toEqual([]);
  const group = document.activeElement?.closest('fieldset');
  expect(document.activeElement?.matches('[data-not-sure]')).toBe(true);
  expect(document.getElementById(group?.getAttribute('aria-labelledby') ?? '')?.textContent).toContain('1 of them was bought');
});
