import 'fake-indexeddb/auto';
import { act } from 'preact/test-utils';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Store } from '../../../extension/store/index.ts';
import { parseDegrees } from '../../../extension/workshop/settings/degrees.ts';
import { CHANGEABLE } from '../../../src/flags/limits.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';
import { ad, freshStore, type Loose, PLATES, value } from '../store/making.ts';
import { clickOn, NOW, openWorkshop, says, setTo, shown } from './open.tsx';

const HOSTILE = '<img src=x onerror=alert(1)>';
const DAY = '2026-05-04';

beforeEach(() => {
  delete document.documentElement.dataset.theme;
});

async function openSettings(...ads: Parameters<typeof openWorkshop>[0]) {
  const opened = await openWorkshop(ads, '#settings');
  await shown('.settings');
  return opened;
}
const settingsIn = async (store: Store) => value(await store.settings.load(NOW)).settings;
async function stored(store: Store, fits: (settings: Settings) => boolean): Promise<Settings> {
  for (let tries = 0; tries < 200; tries += 1) {
    const settings = await settingsIn(store);
    if (fits(settings)) return settings;
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
  throw new Error(`never stored: ${JSON.stringify(await settingsIn(store))}`);
}
const field = (path: string) => shown<HTMLInputElement>(`[data-path="${path}"]`);
const choose = async (path: string, choice: string) => setTo(await shown<HTMLSelectElement>(`[data-path="${path}"]`), choice);

describe('settings', () => {
  it('each has a name, one line on what it does, and its default', async () => {
    await openSettings();
    const all = [...document.querySelectorAll('[data-setting]')];
    expect(all.length).toBeGreaterThan(30);
    for (const one of all) {
      const inputs = [...one.querySelectorAll<HTMLInputElement>('input, select')];
      for (const input of inputs) expect(input.labels?.[0]?.textContent).not.toBe('');
    }
    expect(document.body.textContent).not.toMatch(/\[settings_/);
    expect((await shown('[data-setting=margin]')).textContent).toContain('Default: 15%.');
    const described = (await field('margin')).getAttribute('aria-describedby') ?? '';
    expect(
      described
        .split(' ')
        .map((id) => document.getElementById(id)?.textContent)
        .join(' '),
    ).toContain('worth the trouble');
  });

  it('are stored as they are typed, refused when they make no sense, and put back', async () => {
    const { store } = await openSettings();
    await setTo(await field('margin'), '25 %');
    await stored(store, ({ margin }) => margin === 0.25);
    const margin = await field('margin');
    await setTo(margin, '2500');
    margin.dispatchEvent(new FocusEvent('blur'));
    await shown('[data-setting=margin] [role=alert]', says('from 0 to 90 (%)'));
    expect((await settingsIn(store)).margin).toBe(0.25);
    await clickOn(await shown('[data-put-back=margin]'));
    await stored(store, (now) => now.margin === DEFAULT_SETTINGS.margin);
    await shown('[data-setting=margin]', (one) => one.querySelector('[data-put-back]') === null);
  });

  it('are shown in the buyer’s units and kept in their own', async () => {
    const { store } = await openSettings();
    await choose('unit', 'kg');
    await shown('[data-setting=loadLb]', says('kg'));
    await setTo(await field('loadLb'), '100');
    await setTo(await field('speedMph'), '80');
    await setTo(await field('ceilingMm'), '7 ft 2 in');
    await setTo(await field('payloadLb'), '400');
    const { loadLb, speedMph, ceilingMm } = await stored(store, ({ payloadLb }) => payloadLb !== null);
    // A pound is 0.45359237 kg, a mile 1.609344 km, a foot 304.8 mm.
    expect(loadLb).toBeCloseTo(100 / 0.45359237, 9);
    expect(speedMph).toBeCloseTo(80 / 1.609344, 9);
    expect(ceilingMm).toBeCloseTo(7 * 304.8 + 2 * 25.4, 6);
    await setTo(await field('ceilingMm'), '');
    await stored(store, (now) => now.ceilingMm === null);
  });

  it('take a published cost of a mile', async () => {
    const { store } = await openSettings();
    await choose('published', 'irs-full-2026');
    await stored(store, ({ perMile }) => perMile === 0.725);
  });

  it('hold limits only where they differ', async () => {
    const { store } = await openSettings();
    expect(document.querySelectorAll('[data-setting^=limit_]')).toHaveLength(CHANGEABLE.length);
    await setTo(await field('limit_shaftThick'), '30');
    await setTo(await field('limit_barTooCheap'), '50');
    expect((await stored(store, ({ limits }) => Object.keys(limits).length === 2)).limits).toEqual({
      shaftThick: 30,
      barTooCheap: 0.5,
    });
    await clickOn(await shown('[data-put-back=limit_shaftThick]'));
    await stored(store, ({ limits }) => limits.shaftThick === undefined && limits.barTooCheap === 0.5);
  });

  it('convert by rates of exchange of the buyer’s own', async () => {
    const { store } = await openSettings();
    await choose('exchange.add', 'EUR');
    await setTo(await field('exchange.EUR'), '1.1');
    await stored(store, ({ exchange }) => exchange.EUR === 1.1);
    await setTo(await field('exchange.EUR'), '0');
    expect((await settingsIn(store)).exchange).toEqual({ EUR: 1.1 });
    await clickOn(await shown('[data-drop=EUR]'));
    await stored(store, ({ exchange }) => Object.keys(exchange).length === 0);
  });

  it('know home once both coordinates are there', async () => {
    const { store } = await openSettings();
    await setTo(await field('home.name'), HOSTILE);
    await setTo(await field('home.lat'), '48.2');
    expect((await settingsIn(store)).home).toBeNull();
    await setTo(await field('home.lon'), '77.5 W');
    expect((await stored(store, ({ home }) => home !== null)).home).toEqual({ name: HOSTILE, lat: 48.2, lon: -77.5 });
    expect(document.querySelector('main img')).toBeNull();
    await clickOn(await shown('[data-drop=home]'));
    await stored(store, ({ home }) => home === null);
  });

  it('set the look of the whole page', async () => {
    await openSettings();
    await choose('theme', 'dark');
    await shown('html[data-theme=dark]');
    await choose('theme', 'system');
    await shown('html:not([data-theme])');
  });

  it('show cautions again', async () => {
    const { store } = await openSettings();
    await store.settings.change(() => ({ hiddenCautions: ['meet', 'not-one-of-ours'] }), NOW);
    await clickOn(await shown('[data-show=meet]'));
    await stored(store, ({ hiddenCautions }) => !hiddenCautions.includes('meet'));
    await shown('[data-setting=hiddenCautions]', says('None is put away'));
  });

  it.each([
    ['48.2', 48.2],
    ['-77,5', -77.5],
    ['−77.5', -77.5],
    ['77.5° W', -77.5],
    ['12 s', -12],
    ['-3 W', null],
    ['north', null],
    ['', null],
  ])('degrees: %s', (text, degrees) => expect(parseDegrees(text)).toBe(degrees));
});

const give = async (text: string) => {
  const input = await field('import');
  Object.defineProperty(input, 'files', { configurable: true, value: [new File([text], 'a.json')] });
  Object.defineProperty(input, 'value', { configurable: true, value: '', writable: true });
  await act(async () => void input.dispatchEvent(new Event('change', { bubbles: true })));
};

/** A sound file with one find and settings, spoiled by a hand. */
async function fileWith(spoil: (file: Loose) => void = () => undefined): Promise<string> {
  const other = await freshStore();
  await other.finds.keep(ad(PLATES, null, HOSTILE), NOW);
  await other.settings.save({ ...DEFAULT_SETTINGS, margin: 0.3 }, NOW + 1);
  const file = JSON.parse(value(await other.exportAll(NOW)));
  spoil(file);
  return JSON.stringify(file);
}

describe('data', () => {
  it('goes out as one file, and the finds as a table', async () => {
    const { host } = await openSettings(ad(PLATES, null, '=HYPERLINK("x")'));
    await clickOn(await shown('[data-export]'));
    await clickOn(await shown('[data-export-csv]'));
    await vi.waitFor(() => expect(host.download).toHaveBeenCalledTimes(2));
    const files = new Map(vi.mocked(host.download).mock.calls.map(([name, type, file]) => [`${name} ${type}`, file]));
    const file = files.get(`ironsift-${DAY}.json application/json`) ?? '';
    const csv = files.get(`ironsift-finds-${DAY}.csv text/csv`);
    expect(JSON.parse(file)).toMatchObject({ format: 'ironsift', finds: [{}] });
    expect(csv).toContain(`'=HYPERLINK`);
  });

  it('comes in after a look at what is in it', async () => {
    const { store } = await openSettings();
    await give(await fileWith());
    const preview = await shown('[data-preview]');
    expect(preview.textContent).toMatch(/1 find.*settings.*2 are new here, 0 replace/);
    expect(JSON.parse(value(await store.exportAll(NOW))).finds).toEqual([]);
    await clickOn(await shown('[data-take]'));
    await shown('[data-import] [role=status]', says('Imported: 2 new'));
    expect((await settingsIn(store)).margin).toBe(0.3);
    expect(document.querySelector('main img')).toBeNull();
  });

  it('says that it is at it for as long as it takes, and takes it once', async () => {
    const { store } = await openSettings();
    const file = await fileWith();
    const [preview, take] = [store.previewImport, store.importAll];
    const held: (() => void)[] = [];
    const wait = () => new Promise<void>((resolve) => held.push(resolve));
    Object.assign(store, {
      previewImport: (text: string) => wait().then(() => preview(text)),
      importAll: (text: string) => wait().then(() => take(text)),
    });
    await give(file);
    await shown('[data-doing]', says('Looking through the file'));
    await vi.waitFor(() => expect(held).toHaveLength(1));
    held[0]?.();
    await clickOn(await shown('[data-take]'));
    expect(document.querySelectorAll('[data-doing]')).toHaveLength(1);
    expect(document.querySelector('[data-doing]')?.textContent).toContain('Importing');
    await clickOn(await shown('[data-take]'));
    expect(held).toHaveLength(2);
    held[1]?.();
    await shown('[data-import] [role=status]', says('Imported: 2 new'));
    expect(document.querySelector('[data-doing]')).toBeNull();
  });

  it('stays out when the buyer thinks better of it', async () => {
    const { store } = await openSettings();
    await give(await fileWith());
    await clickOn(await shown('[data-leave]'));
    expect(document.querySelector('[data-preview]')).toBeNull();
    expect((await settingsIn(store)).margin).toBe(DEFAULT_SETTINGS.margin);
  });

  it.each<[string, () => Promise<string> | string, RegExp]>([
    ['no JSON', () => '{"format": "ironsift"', /not/i],
    ['empty', () => '', /not/i],
    ['another program’s', () => '{"format": "else"}', /not/i],
    ['a list', () => '[]', /not/i],
    ['of a newer version', () => fileWith((file) => (file.version = 99)), /newer/i],
    ['with a bad record', () => fileWith((file) => (file.finds[0].find.prices[0].minor = HOSTILE)), /finds.*1.*prices.*1.*minor/],
    ['with bad settings', () => fileWith((file) => (file.settings.value.margin = 7)), /settings.*value.*margin/],
    ['with a hostile name in it', () => fileWith((file) => (file.owned = [{ [HOSTILE]: 1 }])), /owned.*1/],
  ])('of a file that is %s says what is wrong, and changes nothing', async (_what, file, words) => {
    const { store } = await openSettings();
    await give(await file());
    const alert = await shown('[data-import] [role=alert]');
    expect(alert.textContent).toMatch(words);
    expect(document.querySelector('main img')).toBeNull();
    expect(document.querySelector('[data-preview]')).toBeNull();
    expect(JSON.parse(value(await store.exportAll(NOW))).finds).toEqual([]);
  });

  it('that is damaged is set aside by a check, saved and dropped', async () => {
    const { store, host } = await openSettings();
    await shown('[data-setting=aside]', says('None.'));
    await clickOn(await shown('[data-check]'));
    await shown('[role=status]', says('Nothing is damaged'));
    const file = await fileWith((one) => {
      const record = { table: 'finds', value: { a: 1 }, why: 'pieces: Invalid input', at: NOW };
      one.setAside = [
        { ...record, id: 'x', key: HOSTILE },
        { ...record, id: 'y', key: 'k', table: 'constructor' },
        ...['removed', 'owned', 'needs', 'rates', 'captured', 'settings'].map((table) => ({
          ...record,
          id: table,
          key: table,
          table,
        })),
      ];
    });
    value(await store.importAll(file));
    await shown('[data-aside="x"]', says(`, find: ${HOSTILE}.`));
    await shown('[data-aside="y"]', says(', something else: k.'));
    expect(document.querySelector('.aside')?.textContent).not.toMatch(/something else: (?!k\.)|\[settings_/);
    // A library's words, for whoever repairs files: they stand in the saved one.
    expect(document.querySelector('.aside')?.textContent).not.toContain('Invalid input');
    expect(document.querySelector('main img')).toBeNull();
    await clickOn(await shown('[data-aside] [data-save]'));
    expect(vi.mocked(host.download).mock.calls[0]?.[2]).toContain('"a": 1');
    expect(vi.mocked(host.download).mock.calls[0]?.[2]).toContain('Invalid input');
    for (const { id } of value(await store.setAside.all())) if (id !== 'x') value(await store.setAside.drop(id));
    await shown('.aside', (list) => list.children.length === 1);
    // There is no way back, so it is asked first; "no" leaves it.
    (await shown('[data-aside] [data-drop]')).focus();
    await clickOn(await shown('[data-aside] [data-drop]'));
    await clickOn(await shown('[data-aside] [data-not-sure]'));
    expect(document.activeElement?.matches('[data-drop]')).toBe(true);
    expect(value(await store.setAside.all())).toHaveLength(1);
    await clickOn(await shown('[data-aside] [data-drop]'));
    await clickOn(await shown('[data-aside] [data-sure]'));
    await shown('[data-setting=aside]', says('None.'));
  });
});
