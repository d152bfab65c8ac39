import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { movedBy, ROW_REM, scrolledTo, stretchAt } from '../../../extension/workshop/finds/window.ts';
import { ad, value } from '../store/making.ts';
import { clickOn, NOW, openWorkshop, press, says, setTo, shown } from './open.tsx';

const CHEAP = ad('4 x 45 lb olympic plates, cast iron, $120 for all, pick up in Elmwick', null, 'Iron plates');
const DEAR = ad('4 x 45 lb olympic plates, cast iron, $400 for all', null, 'Dear plates');
const BAR = ad('Olympic bar, 7 ft, 28.5 mm shaft, straight, $180', 'https://ads.example/bar', 'Straight bar');
const titles = () => [...document.querySelectorAll('[data-find] a')].map(({ textContent }) => textContent);
const row = (title: string) => shown('[data-find]', says(title));
const choose = async (title: string) => clickOn((await row(title)).querySelector('input') as HTMLInputElement);

describe('the list of finds', () => {
  it('says what to do while there are none', async () => {
    await openWorkshop([]);
    await shown('main p', says('Nothing kept yet'));
  });

  it('shows the latest first, with call, price and usable weight', async () => {
    await openWorkshop([CHEAP, BAR]);
    const iron = await row('Iron plates');
    expect(titles()).toEqual(['Straight bar', 'Iron plates']);
    expect(iron.textContent).toMatch(/Worth the drive.*a usable pound.*asked \$120.*180 lb usable/);
    expect(iron.getAttribute('aria-setsize')).toBe('2');
    expect(document.querySelector('[role=status]')?.textContent).toBe('2 finds');
  });

  it('weighs in the buyer’s unit', async () => {
    const { store } = await openWorkshop([CHEAP]);
    await shown('[data-find]', says('180 lb usable'));
    value(await store.settings.change(() => ({ unit: 'kg' }), NOW));
    await shown('[data-find]', says('82 kg usable'));
  });

  it('orders, searches and filters', async () => {
    await openWorkshop([DEAR, CHEAP, BAR]);
    await row('Dear plates');
    await setTo(await shown<HTMLSelectElement>('[data-path=order]'), 'per-usable');
    await shown('[data-find]:first-child', says('Iron plates'));
    // What is not sold by weight has no such figure and comes last.
    expect(titles()).toEqual(['Iron plates', 'Dear plates', 'Straight bar']);
    await setTo(await shown<HTMLInputElement>('[data-path=words]'), 'elmw');
    await shown('[role=status]', says('1 find'));
    expect(titles()).toEqual(['Iron plates']);
    await setTo(await shown<HTMLInputElement>('[data-path=words]'), '');
    await row('Dear plates');
    await setTo(await shown<HTMLSelectElement>('[data-path=call]'), 'leave');
    await shown('[role=status]', says('1 find'));
    expect(titles()).toEqual(['Dear plates']);
    await setTo(await shown<HTMLSelectElement>('[data-path=kind]'), 'bar');
    await shown('main p', says('No find is like that'));
  });

  it('is worked by the keyboard alone', async () => {
    await openWorkshop([DEAR, CHEAP, BAR]);
    const first = (await row('Straight bar')).querySelector('a') as HTMLAnchorElement;
    expect([...document.querySelectorAll('[data-find] a')].map((link) => (link as HTMLElement).tabIndex)).toEqual([0, -1, -1]);
    first.focus();
    await press(first, 'ArrowDown');
    expect(document.activeElement?.textContent).toBe('Iron plates');
    await press(document.activeElement as Element, ' ');
    await press(document.activeElement as Element, 'End');
    expect(document.activeElement?.textContent).toBe('Dear plates');
    await press(document.activeElement as Element, ' ');
    await shown('.bulk', says('2 chosen'));
    expect((await shown<HTMLAnchorElement>('.bulk a')).hash).toMatch(/^#side-by-side\/[\w-]+,[\w-]+$/);
  });

  it('sets the status of many, removes them, and brings them back', async () => {
    const { store, finds } = await openWorkshop([DEAR, CHEAP, BAR]);
    await choose('Dear plates');
    await choose('Iron plates');
    await setTo(await shown<HTMLSelectElement>('[data-path=set-status]'), 'asked');
    await shown('[data-find]', says(/Iron plates.*asked$/));
    await clickOn(await shown('[data-remove]'));
    await shown('[role=status]', says('1 find'));
    expect(titles()).toEqual(['Straight bar']);
    await clickOn(await shown('[data-undo]'));
    await shown('[role=status]', says('3 finds'));
    const kept = value(await store.finds.get(finds[0]?.id ?? ''));
    expect(kept.find.status).toBe('asked');
  });

  it('chooses all that match, also those not drawn', async () => {
    await openWorkshop(
      Array.from({ length: 60 }, (_, index) => ({ ...CHEAP, listing: { ...CHEAP.listing, title: `Lot ${index}` } })),
    );
    await row('Lot 59');
    await clickOn(await shown('[data-all]'));
    await shown('.bulk', says('60 chosen'));
  });

  it('hostile titles stay text', async () => {
    await openWorkshop([ad('4 x 45 lb plates $100', 'javascript:alert(1)', '<img src=x onerror=alert(1)>')]);
    await row('<img src=x');
    expect(document.querySelector('main img')).toBeNull();
  });
});

describe('one find', () => {
  it('gives the answer, and stores what is said about it', async () => {
    const { store, finds } = await openWorkshop([CHEAP]);
    const id = finds[0]?.id ?? '';
    await clickOn((await row('Iron plates')).querySelector('a') as HTMLAnchorElement);
    location.hash = `#finds/${id}`;
    dispatchEvent(new Event('hashchange'));
    await shown('.call h1', says('Worth the drive'));
    await shown('.history', says('Known for 3 days'));
    await setTo(await shown<HTMLInputElement>('[data-path="plate-1.count"]'), '2');
    await shown('.usable', says('90'));
    await setTo(await shown<HTMLTextAreaElement>('[data-path=notes]'), 'ring after six');
    (await shown<HTMLTextAreaElement>('[data-path=notes]')).dispatchEvent(new FocusEvent('blur'));
    await setTo(await shown<HTMLSelectElement>('[data-path=status]'), 'going');
    for (let tries = 0; tries < 100; tries += 1) {
      const { find, edits } = value(await store.finds.get(id));
      if (find.notes !== '' && find.status === 'going' && edits.changes.length > 0) {
        expect(find.notes).toBe('ring after six');
        expect(find.summary.usable.likely).toBeLessThan(120);
        expect(edits.changes).toHaveLength(1);
        return;
      }
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    throw new Error('never stored');
  });

  it('an address that leads nowhere says so', async () => {
    await openWorkshop([CHEAP], '#finds/gone');
    await shown('[role=alert]');
  });

  it('only addresses of pages become links', async () => {
    const hostile = { ...CHEAP, listing: { ...CHEAP.listing, address: 'javascript:alert(1)' } };
    const { finds } = await openWorkshop([hostile]);
    location.hash = `#finds/${finds[0]?.id}`;
    dispatchEvent(new Event('hashchange'));
    await shown('.call h1');
    expect([...document.querySelectorAll('a')].filter(({ protocol }) => protocol === 'javascript:')).toEqual([]);
  });
});

describe.each([16, 32])('rows in sight, at %i px to the rem', (rem) => {
  const ROW = ROW_REM * rem;
  it('ten thousand rows draw little more than what is in sight', () => {
    for (let top = 0; top < 10_000 * ROW; top += 777) {
      const { from, count } = stretchAt(top, 800, ROW);
      expect(count).toBeLessThanOrEqual(60);
      expect(from * ROW).toBeLessThanOrEqual(top);
      expect((from + count) * ROW).toBeGreaterThanOrEqual(top + 800);
    }
  });

  it('a row is scrolled into sight, no further', () => {
    expect(scrolledTo(0, 500, 300, ROW)).toBe(0);
    expect(scrolledTo(100, 0, 300, ROW)).toBe(101 * ROW - 300);
    expect(scrolledTo(2, 0, 5 * ROW, ROW)).toBe(0);
  });

  it('keys stay within the list', () => {
    expect(movedBy('ArrowUp', 0, 5, 3)).toBe(0);
    expect(movedBy('PageDown', 3, 5, 3)).toBe(4);
    expect(movedBy('End', 0, 5, 3)).toBe(4);
    expect(movedBy('a', 0, 5, 3)).toBeNull();
  });
});
