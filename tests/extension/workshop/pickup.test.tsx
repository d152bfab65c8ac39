import 'fake-indexeddb/auto';
import { act } from 'preact/test-utils';
import { describe, expect, it, vi } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { STEP_IDS } from '../../../src/pickup/steps.ts';
import { ad, value } from '../store/making.ts';
import { clickOn, go, openWorkshop, press, says, setTo, shown } from './open.tsx';

const LOT = ad(
  '4 x 45 lb olympic plates, cast iron, and an olympic bar, 7 ft, straight, a power rack and a flat bench, $400 for all, in Elmwick',
  null,
  'Garage lot',
);
const PLATES = ad('4 x 45 lb olympic plates, cast iron, $150 for all', null, 'Iron plates');

async function sheet(one = LOT) {
  const made = await openWorkshop([one]);
  const id = made.finds[0]?.id ?? '';
  value(await made.store.finds.setStatus(id, 'going', made.host.now()));
  await go(`#pickup/${id}`);
  await shown('.pickup');
  return { ...made, id };
}

const field = (path: string) => shown<HTMLInputElement>(`[data-path="${path}"]`);
const call = () => document.querySelector('.price-now')?.textContent ?? '';
/** Waits until what was said has reached the disk. */
const stored = async ({ store, id }: Awaited<ReturnType<typeof sheet>>, fits: (edits: string) => boolean) => {
  for (let tries = 0; tries < 200; tries += 1) {
    const kept = value(await store.finds.get(id));
    if (fits(JSON.stringify(kept.edits))) return kept;
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
  throw new Error('never stored');
};

describe('which pickup', () => {
  it('lists what the buyer is going for, and says where to say so', async () => {
    const { store, finds } = await openWorkshop([LOT, PLATES], '#pickup');
    await shown('main p', says('No find has the status “going”'));
    await store.finds.setStatus(finds[1]?.id ?? '', 'going', 1);
    const link = await shown<HTMLAnchorElement>('[data-pickup]', says('Iron plates'));
    expect(link.hash).toBe(`#pickup/${finds[1]?.id}`);
    expect(document.querySelectorAll('[data-pickup]')).toHaveLength(1);
  });

  it('an id that leads nowhere says so', async () => {
    await openWorkshop([LOT], '#pickup/nowhere');
    await shown('[role=alert]');
  });
});

describe('the sheet', () => {
  it('brings, asks and checks in order, with a named picture for each measurement', async () => {
    await sheet();
    expect([...document.querySelectorAll('[data-step]')].map((step) => step.getAttribute('data-step'))).toEqual(
      STEP_IDS.filter((id) => id !== 'collars' && id !== 'hooks'),
    );
    expect(document.querySelector('[data-tool=string]')).not.toBeNull();
    for (const picture of document.querySelectorAll('svg.picture')) {
      expect(picture.getAttribute('role')).toBe('img');
      const name = document.getElementById(picture.getAttribute('aria-labelledby') ?? '');
      expect(name?.textContent?.length).toBeGreaterThan(20);
    }
    expect(document.querySelectorAll('svg.picture').length).toBeGreaterThanOrEqual(9);
    expect(document.querySelector('.loading')?.textContent).toMatch(/Strap everything down.*vehicle may carry/);
    expect(document.body.textContent).not.toMatch(/\[\w+_\w+\]|\{\w+\}/);
  });

  it('every field has a label, every section a heading that is there', async () => {
    await sheet();
    const fields = [...document.querySelectorAll<HTMLInputElement>('main input, main select, main textarea')];
    expect(fields.length).toBeGreaterThan(20);
    for (const one of fields) expect((one.labels?.[0]?.textContent ?? '').trim()).not.toBe('');
    const ids = [...document.querySelectorAll('[id]')].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const one of document.querySelectorAll('[aria-labelledby]'))
      expect(document.getElementById(one.getAttribute('aria-labelledby') ?? '')).not.toBeNull();
  });

  it('a hole in inches turns the call, and flows into the find as measured', async () => {
    const made = await sheet(PLATES);
    const before = call();
    await setTo(await field('plate-1.boreMm'), '1 1/16 in');
    await shown('.price-now', ({ textContent }) => textContent !== before);
    expect(call()).toContain('Leave it');
    const kept = await stored(made, (edits) => edits.includes('boreMm'));
    expect(kept.edits.changes).toEqual([
      { by: 'hand', correction: { path: 'plate-1.boreMm', value: 26.99, unit: 'mm', basis: 'measured' } },
    ]);
    await shown('.leave blockquote', says('The plates do not fit my bar'));
    // Emptied again, it is as the ad has it.
    await setTo(await field('plate-1.boreMm'), '');
    await shown('.price-now', ({ textContent }) => textContent === before);
  });

  it('counts and weighs in either unit', async () => {
    const made = await sheet(PLATES);
    await setTo(await field('plate-1.count'), '2');
    await setTo(await field('plate-1.weighed'), '46.2, 20.5 kg');
    const kept = await stored(made, (edits) => edits.includes('weighed'));
    expect(kept.find.summary.usable.likely).toBeCloseTo(46.2 + 45.19, 0);
    await setTo(await field('plate-1.weighed'), '46.2, 450');
    (await field('plate-1.weighed')).dispatchEvent(new FocusEvent('blur'));
    await shown('[role=alert]', says('Weights near the face value'));
    expect(value(await made.store.finds.get(made.id)).find.summary.usable.likely).toBeCloseTo(46.2 + 45.19, 0);
  });

  it('a bar measured by wobble is straight, doubtful or bent, and back again', async () => {
    const made = await sheet();
    const conditions = async (fits: (edits: string) => boolean) => (await stored(made, fits)).edits.changes;
    await setTo(await field('bar-1.readingMm'), '12');
    await shown('[data-verdict=bent]', says('Out of true by 6 mm'));
    await shown('.leave blockquote', says('The bar is not straight any more'));
    expect(await conditions((edits) => edits.includes('bent'))).toHaveLength(2);
    await setTo(await field('bar-1.readingMm'), '8');
    await shown('[data-verdict=doubtful]');
    await shown('.leave blockquote', says('The bar is not quite straight'));
    await setTo(await field('bar-1.readingMm'), '1/8 in');
    await shown('[data-verdict=usable]');
    const last = await conditions((edits) => edits.includes('"path":"bar-1.condition.straight","value":true'));
    expect(last).toEqual([
      { by: 'hand', correction: { path: 'bar-1.condition.straight', value: true, basis: 'measured' } },
      { by: 'hand', correction: { path: 'bar-1.bowMm', value: 1.6, unit: 'mm', basis: 'measured' } },
    ]);
    expect(document.querySelector('.leave blockquote')?.textContent ?? '').not.toContain('not straight');
  });

  it('what was measured of a bar is there again when the sheet is opened anew', async () => {
    const made = await sheet();
    await setTo(await field('bar-1.readingMm'), '8');
    await stored(made, (edits) => edits.includes('bowMm'));
    await go('#pickup');
    await shown('[data-pickup]');
    await go(`#pickup/${made.id}`);
    await shown('[data-before=doubtful]', says(/4 mm \(0\.16 in\) out of true\. That is doubtful/));
  });

  it('a bar measured by string or by circle', async () => {
    await sheet();
    await setTo(await shown<HTMLSelectElement>('[data-path="bar-1.way"]'), 'string');
    await setTo(await field('bar-1.offsetMm'), '2');
    await shown('[data-verdict=usable]', says(/Out of true by 2 mm.*usable as a straight bar. $/));
    await setTo(await shown<HTMLSelectElement>('[data-path="bar-1.way"]'), 'stringAt');
    await setTo(await field('bar-1.offsetMm'), '2');
    await setTo(await field('bar-1.atMm'), '655');
    await shown('[data-verdict=doubtful]', says('Measure at the widest place'));
    await setTo(await field('bar-1.atMm'), '2000');
    await shown('.bar-check [role=alert]');
    await setTo(await shown<HTMLSelectElement>('[data-path="bar-1.way"]'), 'circle');
    await setTo(await field('bar-1.circleMm'), '1 in');
    await setTo(await field('bar-1.spanMm'), '1200');
    await setTo(await field('bar-1.overhangMm'), '500');
    // What is not measured is not guessed.
    await shown('.bar-check .quiet', says('All of these figures are needed'));
    expect(document.querySelector('[data-verdict]')).toBeNull();
    await setTo(await field('bar-1.bendMm'), '600');
    await shown('[data-verdict=bent]');
  });

  it('sleeves and faults', async () => {
    const made = await sheet();
    await clickOn(await field('bar-1.sleeves.seized-sleeves'));
    await stored(made, (edits) => edits.includes('seized-sleeves'));
    await clickOn(await field('bar-1.sleeves.spins'));
    await stored(made, (edits) => edits.includes('spins') && !edits.includes('seized'));
    await clickOn(await field('plate-1.condition.cracked'));
    await shown('.leave blockquote', says('There is a crack in it'));
    await clickOn(await field('plate-1.condition.cracked'));
    await stored(made, (edits) => !edits.includes('cracked'));
  });

  it('a cracked weld and missing pins turn the answer, and are told to the seller', async () => {
    await sheet(ad('A power rack with safety pins and hooks, $150', null, 'Rack'));
    const tick = (words: string) => shown('label', says(words));
    await tick('a crack or break in steel or a weld');
    await clickOn(await field('rack-1.condition.missing-catches'));
    await shown('.price-now', says('Ask about its pins and hooks first'));
    await shown('.leave blockquote', says('The safety pins or hooks are missing or damaged'));
    await clickOn(await field('rack-1.condition.missing-catches'));
    await shown('.price-now', says('Worth'));
    await clickOn(await field('rack-1.condition.cracked'));
    await shown('.price-now', says('Leave it'));
    await shown('.leave blockquote', says('There is a crack in the frame'));
  });

  it('what nobody has looked at yet does not pass for good', async () => {
    await sheet(ad('A power rack, $150', null, 'Rack'));
    await shown('.leave li', says('The ad names neither safety pins nor hooks'));
    await go('#pickup');
    await sheet(PLATES);
    await shown('.leave p', says('Nothing that you have found speaks against it'));
  });

  it('pins are looked at on a rack, hooks on stands and on a bench with uprights, neither on a plain bench', async () => {
    const steps = async (text: string) => {
      await sheet(ad(text, null, text));
      return ['pins', 'hooks'].filter((id) => document.querySelector(`[data-step=${id}]`) !== null);
    };
    expect(await steps('A flat bench, $40')).toEqual([]);
    expect(await steps('A bench with uprights, $40')).toEqual(['hooks']);
    expect(await steps('Squat stands, $40')).toEqual(['hooks']);
    expect(await steps('A power rack, $40')).toEqual(['pins']);
  });

  it('says the most at the door only where a drive is counted', async () => {
    const made = await sheet(PLATES);
    expect(call()).not.toContain('At the door');
    const near = ad('4 x 45 lb olympic plates, cast iron, $300 for all, 40 miles from you', null, 'Far plates');
    const { listing, edits } = near;
    const far = { listing, edits: { ...edits, distance: { value: 40, unit: 'mi' as const } }, evaluation: near.evaluation };
    const find = value(await made.store.finds.keep(far, 1));
    await go(`#pickup/${find.id}`);
    await shown('.price-now', says('At the door'));
  });

  it('reasons and the message are copied', async () => {
    const copied = vi.fn(async (_text: string) => undefined);
    vi.stubGlobal('navigator', { ...navigator, clipboard: { writeText: copied } });
    await sheet(PLATES);
    await setTo(await field('plate-1.boreMm'), '26');
    await clickOn(await shown('[data-copy=refusal]'));
    expect(copied.mock.calls.at(-1)?.[0]).toMatch(/^Thank you for showing me everything!/);
    vi.unstubAllGlobals();
  });
});

const APART = ad('4 x 45 lb olympic plates $120, olympic barbell 7 ft straight $150, flat bench $40', null, 'Each priced');
const steps = () => [...document.querySelectorAll('[data-step]')].map((step) => step.getAttribute('data-step'));

describe('a part of the ad', () => {
  it('from the buy list: the sheet is about it, only it is bought, at its price, and all of it taken back', async () => {
    const { store, finds } = await openWorkshop([APART]);
    const id = finds[0]?.id ?? '';
    await go(`#pickup/${id}?only=plate-1`);
    await shown('[data-taking="plate-1"]');
    expect(location.hash).toBe(`#pickup/${id}`);
    expect(steps()).toEqual(['count', 'bore', 'cracks', 'weigh']);
    const alone = evaluate(listingFromText('4 x 45 lb olympic plates $120'), DEFAULT_SETTINGS).worth.walkAway;
    expect(call()).toContain(`$${Math.round((alone?.minor ?? 0) / 100)}`);
    // What is measured goes into the ad, whose price stays what is asked for all of it.
    await setTo(await field('plate-1.weighed'), '46, 45');
    await stored({ store, id } as Awaited<ReturnType<typeof sheet>>, (edits) => edits.includes('weighed'));
    const kept = value(await store.finds.get(id));
    expect(kept.find.prices.map(({ minor }) => minor)).toEqual([31_000]);
    expect(kept.find.taking).toEqual(['plate-1']);
    await clickOn(await shown('[data-bought]'));
    expect((await field('paid')).value).toBe('120');
    (await shown<HTMLFormElement>('.bought form')).requestSubmit();
    await shown('.bought [role=status]', says('Bought for $120'));
    expect(value(await store.kit.owned.all()).map(({ kind }) => kind)).toEqual(['plate']);
    expect(value(await store.finds.get(id)).find.paid).toEqual({ minor: 12_000, currency: 'USD' });
    expect(document.querySelector('[data-taking]')).toBeNull();
    await clickOn(await shown('[data-take-back]'));
    await shown('[data-taking="plate-1"]');
    expect(value(await store.kit.owned.all())).toEqual([]);
  });

  it('is chosen on the sheet too, holds when it is opened anew, and can be all of it again', async () => {
    const { store, id } = await sheet(APART);
    expect(steps()).toContain('bench');
    await clickOn(await shown('[data-take="bar-1"]'));
    await clickOn(await shown('[data-take="bench-1"]'));
    await shown('[data-taking="bar-1 bench-1"]');
    expect(steps()).not.toContain('weigh');
    await clickOn(await shown('[data-bought]'));
    expect((await field('paid')).value).toBe('190');
    // The sum follows the choice while the form is open.
    await clickOn(await shown('[data-take="bench-1"]'));
    expect((await field('paid')).value).toBe('150');
    await go('#pickup');
    await go(`#finds/${id}`);
    await shown('[data-taking="bar-1"]');
    await clickOn(await shown('[data-bought]'));
    await shown('[data-for-kit]', says('Goes into your kit: Straight bar.'));
    await clickOn(await shown('[data-take="all"]'));
    await shown('[data-for-kit]', says(/Plates.*Flat bench|Plates.*Bench/));
    expect((await field('paid')).value).toBe('310');
    expect(value(await store.finds.get(id)).find.taking).toEqual([]);
  });

  it('the list means all of the ad: what was chosen before goes', async () => {
    const { store, finds } = await openWorkshop([APART]);
    const id = finds[0]?.id ?? '';
    value(await store.finds.update(id, { taking: ['bar-1'] }, 1));
    await go(`#pickup/${id}?only=`);
    await shown('[data-taking=""]');
    expect(steps()).toContain('bench');
  });

  it('nothing is asked where nothing has a price of its own', async () => {
    await sheet(LOT);
    expect(document.querySelector('[data-taking]')).toBeNull();
  });
});

describe('bought', () => {
  it('asks what was paid, fills the kit, and takes it back', async () => {
    const { store, id } = await sheet();
    await clickOn(await shown('[data-bought]'));
    expect(document.activeElement?.getAttribute('data-path')).toBe('paid');
    await setTo(await field('paid'), '$350');
    expect(document.querySelector('.bought')?.textContent).toContain('Plates, 45 lb');
    const form = await shown<HTMLFormElement>('.bought form');
    form.requestSubmit();
    await shown('.bought [role=status]', says('Bought for $350'));
    const { find } = value(await store.finds.get(id));
    expect([find.status, find.paid]).toEqual(['bought', { minor: 35_000, currency: 'USD' }]);
    const owned = value(await store.kit.owned.all());
    expect(owned.map(({ kind }) => kind).sort()).toEqual(['bar', 'bench', 'plate', 'rack']);
    expect(owned.find(({ kind }) => kind === 'plate')).toMatchObject({ pieces: 4, weight: { value: 45, unit: 'lb' } });
    await clickOn(await shown('[data-take-back]'));
    await shown('[data-bought]');
    expect(value(await store.kit.owned.all())).toEqual([]);
    const back = value(await store.finds.get(id)).find;
    expect([back.status, back.paid]).toEqual(['going', null]);
  });

  it('pressed twice it is bought once, and taken back to what it was before', async () => {
    const { store, finds } = await openWorkshop([PLATES], '');
    const id = finds[0]?.id ?? '';
    value(await store.finds.setStatus(id, 'asked', 1));
    await go(`#pickup/${id}`);
    await clickOn(await shown('[data-bought]'));
    const form = await shown<HTMLFormElement>('.bought form');
    await act(async () => {
      for (const _ of [1, 2]) form.requestSubmit();
    });
    await clickOn(await shown('[data-take-back]'));
    await shown('[data-bought]');
    expect(value(await store.finds.get(id)).find.status).toBe('asked');
  });

  it('Escape leaves the form, and nothing was bought', async () => {
    const { store, id } = await sheet(PLATES);
    await clickOn(await shown('[data-bought]'));
    await press(await field('paid'), 'Escape');
    await shown('[data-bought]');
    expect(document.activeElement?.hasAttribute('data-bought')).toBe(true);
    expect(value(await store.finds.get(id)).find.status).toBe('going');
  });

  it('the status of one find asks as well, and leaves it as it was until that is said', async () => {
    const { store, finds } = await openWorkshop([PLATES]);
    const id = finds[0]?.id ?? '';
    await go(`#finds/${id}`);
    await setTo(await shown<HTMLSelectElement>('[data-path=status]'), 'bought');
    const form = await shown<HTMLFormElement>('.bought form');
    expect((await shown<HTMLSelectElement>('[data-path=status]')).value).toBe('new');
    expect(value(await store.finds.get(id)).find.status).toBe('new');
    form.requestSubmit();
    await shown('.bought [role=status]', says('Bought for $150'));
    await shown<HTMLSelectElement>('[data-path=status]', ({ value: status }) => status === 'bought');
    await clickOn(await shown('[data-take-back]'));
    await shown<HTMLSelectElement>('[data-path=status]', ({ value: status }) => status === 'new');
  });
});
