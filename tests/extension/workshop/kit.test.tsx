import 'fake-indexeddb/auto';
import { act } from 'preact/test-utils';
import { describe, expect, it, vi } from 'vitest';
import type { Find } from '../../../extension/store/index.ts';
import { pounds } from '../../../src/units/mass.ts';
import { ad, PLATES, value } from '../store/making.ts';
import { clickOn, go, openWorkshop, says, setTo, shown } from './open.tsx';

type Opened = Awaited<ReturnType<typeof openWorkshop>>;
const field = (path: string) => shown<HTMLInputElement>(`[data-path="${path}"]`);
const HEAVY = '[data-need="default/plate/45lb"]';
const lacking = (count: number) => shown(`${HEAVY}[data-lacking="${count}"]`);

async function setUp(ads: Parameters<typeof openWorkshop>[0] = []): Promise<Opened> {
  const made = await openWorkshop(ads, '#kit');
  await clickOn(await shown('[data-set-up]'));
  await shown(HEAVY);
  return made;
}

async function addOwned(kind: string, weight: string | null, pieces: string, paid: string | null = null) {
  const details = (await field('new.kind')).closest('details');
  if (details) details.open = true;
  await setTo(await field('new.kind'), kind);
  if (weight) await setTo(await field('new.weight'), weight);
  await setTo(await field('new.pieces'), pieces);
  if (paid) await setTo(await field('new.paid'), paid);
  await clickOn(await shown('[data-done=new]'));
}

/** Waits until something is gone. */
async function gone(selector: string) {
  for (let tries = 0; tries < 300 && document.querySelector(selector); tries += 1) {
    await act(() => new Promise((resolve) => setTimeout(resolve, 10)));
  }
  expect(document.querySelector(selector)).toBeNull();
}

/** The setting once it fits: it follows a moment later. */
const needOnce = ({ store }: Opened, fits: (need: readonly { pieces: number }[] | null) => boolean) =>
  vi.waitFor(async () => expect(value(await store.settings.load(1)).settings.need).toSatisfy(fits));

describe('needs and owned', () => {
  it('a kit that nobody set up sets no limit, also with something owned', async () => {
    const made = await openWorkshop([], '#kit');
    await shown('[data-set-up]');
    await addOwned('plate', '45', '2');
    await shown('[data-owned]');
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(value(await made.store.settings.load(1)).settings).toMatchObject({ need: null, kit: null });
  });

  it('is set up by one press, follows the figures, and keeps what the buyer set', async () => {
    const made = await setUp();
    // 315 × 1.1 = 346.5, less 45 and 105: 196.5 / 90, so three pairs.
    await lacking(6);
    await needOnce(made, (need) => need?.[0]?.pieces === 6);
    await setTo(await field('best'), '405');
    await lacking(8);
    await setTo(await field('default/plate/45lb.pieces'), '10');
    await lacking(10);
    await setTo(await field('best'), '225');
    await needOnce(made, (need) => need?.[0]?.pieces === 10);
    await clickOn(await shown('[data-reset]'));
    await lacking(4);
    expect(document.body.textContent).not.toMatch(/\[\w+_\w+\]|\{\w+\}/);
  });

  it('is set up while a figure is typed digit by digit, which keeps its field', async () => {
    const made = await openWorkshop([], '#kit');
    const best = await field('best');
    best.focus();
    await setTo(best, '27');
    // The first good value makes a kit of it, while the next digit is still to come.
    await vi.waitFor(async () => expect(value(await made.store.kit.needs.all())).not.toEqual([]));
    await act(() => new Promise((resolve) => setTimeout(resolve, 50)));
    expect(document.activeElement).toBe(best);
    await setTo(best, '275');
    await clickOn(await shown('[data-set-up]'));
    await shown(HEAVY);
    expect((await field('best')).value).toBe('275');
  });

  it('what is owned is no longer lacking; removed and undone', async () => {
    const made = await setUp();
    await addOwned('plate', '45', '4', '150');
    await lacking(2);
    await shown('[data-owned]', says('Paid $150'));
    await needOnce(made, (need) => need?.[0]?.pieces === 2);
    await clickOn(await shown('[data-owned] [data-remove]'));
    await lacking(6);
    await clickOn(await shown('[data-undo]'));
    await lacking(2);
    await clickOn(await shown('[data-owned] [data-edit]'));
    await setTo(await field('edit.pieces'), '8');
    await clickOn(await shown('[data-done=edit]'));
    await lacking(0);
    await shown('[data-surplus]', says('2 × Plates, 45 lb'));
  });

  it('a plate without a weight is asked about, a need is added, taken off and brought back', async () => {
    await setUp();
    await clickOn(await shown('[data-add-need]'));
    await shown('[role=alert]', says('Say what one weighs'));
    await setTo(await field('new-need.weight'), '35');
    await clickOn(await shown('[data-add-need]'));
    await shown('[data-need]', says('Plates, 35 lb'));
    await setTo(await field('new-need.weight'), '45');
    await clickOn(await shown('[data-add-need]'));
    // Two more of the six, and no second line of that name.
    await lacking(8);
    expect([...document.querySelectorAll('[data-need]')].filter(says('Plates, 45 lb'))).toHaveLength(1);
    await clickOn(await shown('[data-remove="default/bench"]'));
    await shown('[data-undo]');
    await gone('[data-need="default/bench"]');
    await clickOn(await shown('[data-undo]'));
    await shown('[data-need="default/bench"]');
  });

  it('says in words when the money does not do, and when nothing is lacking', async () => {
    const made = await setUp();
    await setTo(await field('budget'), '100');
    await shown('[data-fit=short]', says(/short by \$[\d,]+ at the going rate/));
    await setTo(await field('budget'), '20000');
    await shown('[data-fit=fits]');
    for (const need of value(await made.store.kit.needs.all())) {
      const thing = { weighed: [], boreMm: null, shaftMm: null, sleeveMm: null, lengthMm: null, note: '', own: undefined };
      const { kind, pieces, weight } = need;
      value(await made.store.kit.owned.put({ ...thing, id: need.id, kind, pieces, weight }, 5));
    }
    await shown('[data-headline]', says('Your kit is complete'));
    await needOnce(made, (need) => need?.length === 0);
  });

  it('says that the drive is in neither what was spent nor what is left', async () => {
    await setUp();
    await shown('[data-money-drive]', (one) => says('driving is not in it')(one) && !says('what is left')(one));
    await setTo(await field('budget'), '900');
    await shown('[data-money-drive]', says('against what is left'));
  });

  it('counts what was paid for a find once', async () => {
    const made = await setUp([ad(PLATES)]);
    const find = made.finds[0];
    const { ownedFrom } = await import('../../../extension/workshop/bought.ts');
    const goods = find ? ownedFrom(find, ad(PLATES).evaluation) : [];
    value(await made.store.finds.buy(find?.id ?? '', { minor: 14_000, currency: 'USD' }, goods, 9e11));
    await lacking(2);
    await shown('[data-money=spent]', says('$140'));
    await shown('[data-owned]', says('paid $140 in all'));
  });

  it('goes back to the default list, and from there to the buyer’s own', async () => {
    const made = await setUp();
    await setTo(await field('default/plate/45lb.pieces'), '10');
    await lacking(10);
    await clickOn(await shown('[data-remove="default/bench"]'));
    await gone('[data-need="default/bench"]');
    const own = value(await made.store.kit.needs.all()).map(({ changedAt: _, ...need }) => need);
    await clickOn(await shown('[data-reset]'));
    await lacking(6);
    await shown('[data-need="default/bench"]');
    await clickOn(await shown('.kit-removed [data-undo]'));
    await lacking(10);
    await gone('[data-need="default/bench"]');
    expect(value(await made.store.kit.needs.all()).map(({ changedAt: _, ...need }) => need)).toEqual(own);
  });

  it('forgets the kit, and gives it back as it was', async () => {
    const made = await setUp();
    await setTo(await field('budget'), '900');
    await setTo(await field('default/plate/45lb.pieces'), '10');
    await lacking(10);
    await needOnce(made, (need) => need?.[0]?.pieces === 10);
    await clickOn(await shown('[data-forget]'));
    await shown('[data-set-up]');
    const back = await shown('.kit-removed [data-undo]');
    expect(document.activeElement).toBe(back);
    await clickOn(back);
    await lacking(10);
    expect((await field('budget')).value).toBe('900');
    await needOnce(made, (need) => need?.[0]?.pieces === 10);
  });

  it('forgets the kit: no limit again, what is owned stays', async () => {
    const made = await setUp();
    await addOwned('bar', null, '1');
    await shown('[data-owned]');
    await clickOn(await shown('[data-forget]'));
    await shown('[data-set-up]');
    await needOnce(made, (need) => need === null);
    await vi.waitFor(async () => expect(value(await made.store.kit.needs.all())).toEqual([]));
    await shown('[data-owned]');
  });
});

describe('loads', () => {
  it('says what to do without plates; then every load, the gap, the odd plate, and each side of a target', async () => {
    await setUp();
    await go('#kit/loads');
    await shown('[data-headline]', says('No plates yet'));
    await go('#kit');
    await addOwned('plate', '45', '5');
    await shown('[data-owned]');
    await go('#kit/loads');
    // 45, 135, 225 up to 315: the widest step is 90 lb.
    await shown('[data-headline]', says('3 different loads up to 315 lb'));
    await shown('[data-gap]', says('Widest gap: 90 lb, from 45 lb to 135 lb'));
    await shown('[data-odd]', says('One plate has no mate'));
    await setTo(await field('target'), '225');
    await shown('[data-load=exact]', says('225 lb: on each side 2 × 45 lb'));
    await setTo(await field('target'), '230');
    await shown('[data-load=under]', says('225 lb'));
    await setTo(await field('collars'), '5');
    await setTo(await field('target'), '230');
    await shown('[data-load=exact]', says('230 lb'));
    expect(document.querySelectorAll('[data-total]')).toHaveLength(3);
  });

  it('says which kept find would help, also one kept before anybody asked what it offers', async () => {
    const { store, finds } = await setUp([ad(PLATES, null, 'Heavy'), ad('2 x 10 lb olympic plates, $20', null, 'Small')]);
    for (const { id } of finds) value(await store.finds.putOffers(new Map([[id, []]])));
    await go('#kit/loads');
    await clickOn(await shown('[data-additions]'));
    await shown('[role=status]', says('None of your finds adds a load'));
    expect(value(await store.finds.withoutOffers())).toEqual([]);
    await go('#kit');
    value(await store.finds.putOffers(new Map([[finds[0]?.id ?? '', [{ kind: 'plate', weight: pounds(45), pieces: 4 }]]])));
    await go('#kit/loads');
    await clickOn(await shown('[data-additions]'));
    await shown('[data-addition]', says(/Heavy.*2 new loads.*Widest gap/s));
  });

  /** Finds of unlike plates, so that each is reckoned for itself. */
  const lots = (count: number) =>
    Array.from({ length: count }, (_, at) => ad(`2 x ${at + 5} lb olympic plates, $20`, null, `Lot ${at}`));
  const added = () => document.querySelectorAll('[data-addition]').length;

  it('says it of all that help, the best first, and of one on its own page', async () => {
    const { finds } = await setUp(lots(8));
    await addOwned('plate', '45', '4');
    await shown('[data-owned]');
    await go('#kit/loads');
    await clickOn(await shown('[data-additions]'));
    await clickOn(await shown<HTMLElement>('[data-more]', says('Show 3 more, of 3 that are left')));
    expect(added()).toBe(8);
    expect(document.querySelector('[data-more]')).toBeNull();
    expect(document.querySelector('[data-so-far]')).toBeNull();
    const first = document.querySelector('[data-addition]');
    await go(`#finds/${first?.getAttribute('data-addition')}`);
    const said = await shown('[data-adds]');
    expect(said.textContent).toContain(`you could make ${first?.querySelector('span')?.textContent} that you can’t make now`);
    expect(finds).toHaveLength(8);
    // Corrected, it adds nothing: one plate alone goes on neither side.
    await setTo(await field('plate-1.count'), '1');
    await shown('[data-adds="0"]', says('add no load'));
  });

  it('is ended by one press, and what was found stays', async () => {
    const { store, finds } = await setUp(lots(1));
    // So many that it takes seconds, for each slice is one find long.
    const [one] = finds;
    const rows = Array.from({ length: 3000 }, (_, at) => ({
      ...(one as Find),
      id: `lot-${at}`,
      summary: { ...(one as Find).summary, offers: [{ kind: 'plate' as const, weight: pounds(2 + at / 100), pieces: 2 }] },
    }));
    await go('#kit/loads');
    await shown('[data-additions]');
    vi.spyOn(store.finds, 'list').mockResolvedValue({ ok: true, value: { rows, total: rows.length } });
    const real = Date.now;
    let calls = 0;
    vi.spyOn(Date, 'now').mockImplementation(() => {
      calls += 1;
      return real() + calls * 20;
    });
    await clickOn(await shown('[data-additions]'));
    await shown('[data-so-far]', says(/[1-9]\d* of 3,?000 finds so far/));
    await clickOn(await shown('[data-stop]'));
    const said = (await shown('[data-so-far]')).textContent;
    expect(added()).toBeGreaterThan(0);
    await act(() => new Promise((resolve) => setTimeout(resolve, 200)));
    expect(document.querySelector('[data-so-far]')?.textContent).toBe(said);
    vi.restoreAllMocks();
    expect(document.querySelector('[data-stop]')).toBeNull();
  });
});

describe('platform', () => {
  it('says whether it comes out flush, what to buy, how it is cut, and that two turn it', async () => {
    const made = await setUp();
    await go('#kit/platform');
    await setTo(await field('rackFloorMm'), '2 1/4 in');
    await shown('[data-flush]', says(/flush|shim/));
    await shown('[data-shopping]', says('wood screws'));
    await shown('[data-sheet] svg');
    await shown('[data-two]', says('Two people'));
    await setTo(await field('rackFloorMm'), '12');
    await shown('[data-flush=false]', says(/too high: raise the rack by as much, with a full sheet under all of it/));
    await setTo(await field('rackFloorMm'), '30');
    await shown('[data-loose]', says('Nothing joins these sheets'));
    await setTo(await field('rackFloorMm'), '150');
    await shown('[data-flush=false]', says(/Stays .* too low: four layers of wood and a mat are 95 mm/));
    expect(document.querySelector('[data-loose], [data-room]')).toBeNull();
    await setTo(await field('widthMm'), '4000');
    await shown('[data-room]', says('no further than 8 × 8 ft'));
    await setTo(await field('widthMm'), '2400');
    await setTo(await field('rackFloorMm'), '12');
    const kept = async () => value(await made.store.settings.load(1)).settings.kit?.platform?.rackFloorMm;
    await vi.waitFor(async () => expect(await kept()).toBe(12));
    expect(document.body.textContent).not.toMatch(/\[\w+_\w+\]|\{\w+\}/);
  });
});

describe('finds that fill the kit', () => {
  const BENCH = 'Flat bench, sturdy, $60';

  it('are listed by a tick, and side by side say what they fill', async () => {
    const { finds } = await setUp([ad(PLATES, null, 'Plates'), ad(BENCH, null, 'Bench'), ad('Couch, comfy, $60', null, 'Couch')]);
    await clickOn(await shown('[data-remove="default/bench"]'));
    await gone('[data-need="default/bench"]');
    await go('#finds');
    await shown('p.quiet', says('3 finds'));
    await clickOn(await field('fills-kit'));
    await shown('p.quiet', says('1 find'));
    await shown('[data-find]', says('Plates'));
    await go(`#side-by-side/${finds[0]?.id},${finds[1]?.id}`);
    const row = await shown('[data-row=fills]');
    expect([...row.querySelectorAll('td')].map(({ textContent }) => textContent)).toEqual(['4 of 6 × Plates, 45 lb', 'nothing']);
  });

  it('without a kit the list says where to set one up', async () => {
    await openWorkshop([ad(PLATES)], '#finds');
    await shown('[data-find]');
    await clickOn(await field('fills-kit'));
    await shown('[data-no-needs]', says('No kit is set up yet'));
  });
});

it('everything has a label', async () => {
  await setUp();
  for (const hash of ['#kit', '#kit/loads', '#kit/platform']) {
    await go(hash);
    await shown('.kit input');
    for (const one of document.querySelectorAll<HTMLInputElement>('main input, main select'))
      expect((one.labels?.[0]?.textContent ?? '').trim()).not.toBe('');
  }
});
