import 'fake-indexeddb/auto';
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { describe, expect, it, vi } from 'vitest';
import { ownedFrom } from '../../../extension/workshop/bought.ts';
import { purgeOld } from '../../../extension/workshop/finds/purge.ts';
import { movedBy, scrolledTo, stretchAt, UNMEASURED } from '../../../extension/workshop/finds/window.ts';
import { Workshop } from '../../../extension/workshop/workshop.tsx';
import { ad, value } from '../store/making.ts';
import { clickOn, go, NOW, openWorkshop, press, says, setTo, shown } from './open.tsx';

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
    await shown('p.quiet', says('2 finds'));
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
    await shown('p.quiet', says('1 find'));
    expect(titles()).toEqual(['Iron plates']);
    await setTo(await shown<HTMLInputElement>('[data-path=words]'), '');
    await row('Dear plates');
    await setTo(await shown<HTMLSelectElement>('[data-path=call]'), 'leave');
    await shown('p.quiet', says('1 find'));
    expect(titles()).toEqual(['Dear plates']);
    await setTo(await shown<HTMLSelectElement>('[data-path=kind]'), 'bar');
    await shown('main p', says('No finds match'));
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
    await shown('.bulk', says('2 selected'));
    expect((await shown<HTMLAnchorElement>('.bulk a')).hash).toMatch(/^#side-by-side\/[\w-]+,[\w-]+$/);
  });

  it('sets the status of many, removes them, and brings them back', async () => {
    const { store, finds } = await openWorkshop([DEAR, CHEAP, BAR]);
    await choose('Dear plates');
    await choose('Iron plates');
    await setTo(await shown<HTMLSelectElement>('[data-path=set-status]'), 'asked');
    await shown('[data-find]', says(/Iron plates.*asked$/));
    await clickOn(await shown('[data-remove]'));
    await shown('p.quiet', says('1 find'));
    expect(titles()).toEqual(['Straight bar']);
    await clickOn(await shown('[data-undo]'));
    await shown('p.quiet', says('3 finds'));
    const kept = value(await store.finds.get(finds[0]?.id ?? ''));
    expect(kept.find.status).toBe('asked');
  });

  it('what a filter hides is no longer chosen, and not removed', async () => {
    const { store } = await openWorkshop([DEAR, CHEAP, BAR]);
    await row('Dear plates');
    await clickOn(await shown('[data-all]'));
    await shown('.bulk', says('3 selected'));
    await setTo(await shown<HTMLInputElement>('[data-path=words]'), 'elmw');
    await shown('.bulk', says('1 selected'));
    await setTo(await shown<HTMLInputElement>('[data-path=words]'), '');
    await row('Dear plates');
    await shown('.bulk', says('1 selected'));
    await clickOn(await shown('[data-remove]'));
    await shown('[role=status]', says('2 finds'));
    expect(value(await store.finds.removals()).map(({ find }) => find.title)).toEqual(['Iron plates']);
  });

  it('many are one write', async () => {
    const { store } = await openWorkshop([DEAR, CHEAP, BAR]);
    const many = vi.spyOn(store.finds, 'setStatusOf');
    const removed = vi.spyOn(store.finds, 'removeMany');
    await row('Dear plates');
    await clickOn(await shown('[data-all]'));
    await setTo(await shown<HTMLSelectElement>('[data-path=set-status]'), 'gone');
    await shown('.bulk', says('3 finds are now “gone”'));
    await clickOn(await shown('[data-remove]'));
    await shown('.bulk', says('3 finds removed'));
    expect([many.mock.calls.length, removed.mock.calls.length]).toEqual([1, 1]);
  });

  it('chooses all that match, also those not drawn', async () => {
    await openWorkshop(
      Array.from({ length: 60 }, (_, index) => ({ ...CHEAP, listing: { ...CHEAP.listing, title: `Lot ${index}` } })),
    );
    await row('Lot 59');
    await clickOn(await shown('[data-all]'));
    await shown('.bulk', says('60 selected'));
  });

  it('hostile titles stay text', async () => {
    await openWorkshop([ad('4 x 45 lb plates $100', 'javascript:alert(1)', '<img src=x onerror=alert(1)>')]);
    await row('<img src=x');
    expect(document.querySelector('main img')).toBeNull();
  });
});

describe('what was bought', () => {
  const PAID = { minor: 12_000, currency: 'USD' };
  async function bought() {
    const made = await openWorkshop([DEAR, CHEAP]);
    const [, find] = made.finds;
    if (!find) throw new Error('no find');
    value(await made.store.finds.buy(find.id, PAID, ownedFrom(find, CHEAP.evaluation), NOW + 1e6));
    const stands = async () => {
      const owned = value(await made.store.kit.owned.all()).length;
      const { status, paid } = value(await made.store.finds.get(find.id)).find;
      return [owned, status, paid?.minor ?? null];
    };
    return { ...made, id: find.id, stands };
  }

  it('is no status for many at once', async () => {
    await bought();
    await choose('Dear plates');
    const options = [...(await shown<HTMLSelectElement>('[data-path=set-status]')).options].map(({ value }) => value);
    expect(options).toEqual(['', 'new', 'asked', 'going', 'gone']);
  });

  it('leaves the kit with another status for many, is told, and comes back', async () => {
    const { stands } = await bought();
    await choose('Iron plates');
    await choose('Dear plates');
    await setTo(await shown<HTMLSelectElement>('[data-path=set-status]'), 'gone');
    await shown('.bulk', says('1 of them had been bought'));
    expect(await stands()).toEqual([0, 'gone', null]);
    await clickOn(await shown('.bulk [data-undo]'));
    await shown('[data-find]', says(/Iron plates.*bought$/));
    expect(await stands()).toEqual([1, 'bought', 12_000]);
  });

  it('leaves the kit with another status of its own, is told, and comes back', async () => {
    const { store, id, stands } = await bought();
    await go(`#finds/${id}`);
    await shown('[data-stage=settled]');
    await setTo(await shown<HTMLSelectElement>('[data-path=status]'), 'gone');
    await shown('.one-find [role=status]', says('No longer bought'));
    expect(await stands()).toEqual([0, 'gone', null]);
    await clickOn(await shown('.one-find [data-undo]'));
    await shown('[data-stage=settled]', says('Bought for $120'));
    expect(await stands()).toEqual([1, 'bought', 12_000]);
    await setTo(await shown<HTMLSelectElement>('[data-path=status]'), 'gone');
    await shown('.one-find .kit-removed');
    value(await store.finds.buy(id, PAID, [], NOW + 2e6));
    await shown('[data-stage=settled]');
    await shown('.one-find', (one) => one.querySelector('.kit-removed') === null);
  });

  it('is asked about before it is removed, and comes back with its goods', async () => {
    const { stands, id } = await bought();
    await choose('Iron plates');
    (await shown('[data-remove]')).focus();
    await clickOn(await shown('[data-remove]'));
    await shown('.bulk .sure', says('1 of them was bought'));
    await clickOn(await shown('[data-not-sure]'));
    expect(document.querySelector('.bulk .sure')).toBeNull();
    expect(document.activeElement?.matches('[data-remove]')).toBe(true);
    expect(await stands()).toEqual([1, 'bought', 12_000]);
    await clickOn(await shown('[data-remove]'));
    await clickOn(await shown('[data-sure]'));
    await shown('.bulk', says('1 find removed'));
    await go('#finds/removed');
    await shown(`[data-removal="${id}"]`, says('with 1 thing of your kit'));
    await clickOn(await shown(`[data-removal="${id}"] [data-undo]`));
    await shown('main p', says('Among your finds again: Iron plates'));
    expect(await stands()).toEqual([1, 'bought', 12_000]);
  });
});

describe('what was removed', () => {
  it('is listed, the latest first, comes back, and is deleted after 30 days', async () => {
    const { store, finds, host } = await openWorkshop([DEAR, CHEAP, BAR]);
    const [dear, cheap] = finds.map(({ id }) => id);
    expect(document.querySelector('[data-removed-link]')).toBeNull();
    value(await store.finds.remove(dear ?? '', host.now()));
    value(await store.finds.remove(cheap ?? '', host.now() + 1));
    await shown('[data-removed-link]', says('2 removed finds'));
    await go('#finds/removed');
    await shown(`[data-removal="${cheap}"]`);
    expect([...document.querySelectorAll<HTMLElement>('[data-removal]')].map(({ dataset }) => dataset.removal)).toEqual([
      cheap,
      dear,
    ]);
    await clickOn(await shown(`[data-removal="${dear}"] [data-undo]`));
    await shown('main p', says('Among your finds again: Dear plates'));
    expect(document.activeElement?.tagName).toBe('H2');
    expect(value(await store.finds.get(dear ?? '')).find.title).toBe('Dear plates');
    const DAY = 86_400_000;
    await purgeOld(store, host.now() + 29 * DAY);
    expect(value(await store.finds.removals())).toHaveLength(1);
    await purgeOld(store, host.now() + 31 * DAY);
    await shown('main p', says('Nothing is removed'));
  });

  it('is deleted for good when the buyer says so, one or all, and only once he is sure', async () => {
    const { store, finds, host } = await openWorkshop([DEAR, CHEAP, BAR]);
    const [dear = '', cheap = '', bar = ''] = finds.map(({ id }) => id);
    for (const [at, id] of [dear, cheap].entries()) value(await store.finds.remove(id, host.now() + at));
    await go('#finds/removed');
    const purge = await shown(`[data-removal="${dear}"] [data-purge]`);
    purge.focus();
    await clickOn(purge);
    expect((await shown('.sure')).textContent).toContain('Dear plates: the ad, what you said of it and your notes are deleted');
    await clickOn(await shown('[data-not-sure]'));
    expect(document.activeElement).toBe(purge);
    expect(value(await store.finds.removals())).toHaveLength(2);
    await clickOn(purge);
    await clickOn(await shown('[data-sure]'));
    await shown('main [role=status]', says('1 find is deleted for good.'));
    expect(document.activeElement?.tagName).toBe('H2');
    expect(value(await store.finds.removals()).map(({ find }) => find.id)).toEqual([cheap]);
    // Of a single one it would be the same button twice.
    expect(document.querySelector('[data-purge-all]')).toBeNull();

    value(await store.finds.remove(bar, host.now() + 2));
    await clickOn(await shown<HTMLElement>('[data-purge-all]', says('Delete all 2 for good')));
    const { token } = value(await store.finds.remove(value(await store.finds.keep(BAR, host.now())).id, host.now() + 9));
    await shown('[data-purge-all]', says('Delete all 3 for good'));
    expect((await shown('.sure')).textContent).toContain('2 ads, what you said');
    await clickOn(await shown('[data-sure]'));
    await shown('main [role=status]', says('2 finds are deleted for good.'));
    // Another window removed it after the question.
    expect(value(await store.finds.removals()).map((left) => left.token)).toEqual([token]);
  });

  it('goes for good when a screen is opened later', async () => {
    const made = await openWorkshop([DEAR]);
    await row('Dear plates');
    value(await made.store.finds.remove(made.finds[0]?.id ?? '', NOW - 40 * 86_400_000));
    // A find is never removed before it was changed last.
    expect(value(await made.store.finds.removals())).toHaveLength(1);
    const later = { ...made.host, now: () => NOW + 40 * 86_400_000 };
    document.body.replaceChildren(document.createElement('div'));
    await act(async () => render(<Workshop host={later} />, document.body.firstElementChild as Element));
    await vi.waitFor(async () => expect(value(await made.store.finds.removals())).toEqual([]));
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

  it('says since when it stands by its own word, counted from when it was read', async () => {
    const { finds } = await openWorkshop([ad('4 x 45 lb olympic plates, $150\nListed 3 weeks ago', null, 'Old plates')]);
    await go(`#finds/${finds[0]?.id}`);
    // Kept three days ago.
    await shown('.history [data-posted]', says('“Listed 3 weeks ago”: about 24 days on the market'));
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

describe.each([UNMEASURED, 2 * UNMEASURED])('rows in sight, of %i px', (ROW) => {
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

it('a find that can not be opened says so, and what to do', async () => {
  const logged = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  const core = () => Promise.reject(new Error('the file is gone'));
  const { finds } = await openWorkshop([CHEAP], '', { core });
  await go(`#finds/${finds[0]?.id}`);
  await shown('[role=alert]', says('This screen could not be opened. Load the page again; what you kept is safe.'));
  expect(logged).toHaveBeenCalled();
  logged.mockRestore();
});
