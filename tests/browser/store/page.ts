/** A page of the extension for tests alone: runs the store as it ships, on the browser's own IndexedDB. Bundled by extension-with-page.ts. */
import { Database } from '../../../extension/store/database.ts';
import { type AdToKeep, type Outcome, openStore, type Store } from '../../../extension/store/index.ts';
import { pageStore } from '../../../extension/store/page-store.ts';
import { saveFigures } from '../../../extension/workshop/kit/save.ts';
import { evaluate } from '../../../src/evaluate.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { after, EMPTY, type Model, nextStep, randomFrom, type Step, textOf } from './steps.ts';

declare global {
  interface Window {
    storeTest: typeof storeTest;
    /** Given by the test: a step was confirmed by the store. */
    confirmed(count: number): Promise<void>;
  }
}

const NO_EDITS = { changes: [], distance: null };

export function adOf(text: string, address: string | null = null): AdToKeep {
  const listing = { ...listingFromText(text), address };
  return { listing, edits: NO_EDITS, evaluation: evaluate(listing, DEFAULT_SETTINGS) };
}

async function must<T>(work: Promise<Outcome<T> | { readonly ok: false; readonly code: string }>): Promise<T> {
  const outcome = await work;
  if (!outcome.ok) throw new Error(`store: ${outcome.code}`);
  return outcome.value;
}

let opened: Promise<Store> | null = null;
const open = (): Promise<Store> => {
  opened ??= must(openStore());
  return opened;
};

/** Names that the store would draw by chance come from the step instead, so that the test knows them. */
let nextName = '';
const drawn = crypto.randomUUID.bind(crypto);
crypto.randomUUID = () => (nextName || drawn()) as ReturnType<typeof crypto.randomUUID>;

/** An export of nothing but so many new finds. */
async function fileOf(store: Store, ids: readonly string[], price: number, now: number): Promise<string> {
  const file = JSON.parse(await must(store.exportAll(now)));
  const ad = adOf(textOf('sample', price));
  nextName = 'sample';
  const sample = await must((await must(openStore({ name: 'sample' }))).finds.keep(ad, now));
  const finds = ids.map((id) => ({
    find: { ...sample, id },
    ad: { id, listing: { ...ad.listing, text: textOf(id, price) }, edits: NO_EDITS },
  }));
  return JSON.stringify({ ...file, finds, removed: [], needs: [], tombs: [], settings: null });
}

/** So many finds that are as unlike as ads are, brought in as a file; gives how long that took, in ms. */
async function fill(count: number): Promise<number> {
  const store = await open();
  const random = randomFrom(count);
  const word = (): string => Math.floor(random() ** 2 * 3000).toString(36);
  const text = (): string => Array.from({ length: 90 }, (_, at) => word() + (at % 9 === 8 ? '.' : '')).join(' ');
  const ids = Array.from({ length: count }, (_, at) => `many-${at}`);
  const file = JSON.parse(await fileOf(store, ids, 100, 1));
  for (const [at, { find, ad }] of file.finds.entries()) {
    ad.listing.text = `Iron plates 4 x 45 lb.\n${text()}`;
    find.title = `Plates ${word()}`;
    find.keptAt = at + 1;
    find.summary.perUsable.likely = Math.floor(random() * 300);
  }
  const whole = JSON.stringify(file);
  const started = performance.now();
  await must(store.importAll(whole));
  nextName = '';
  return performance.now() - started;
}

/** Middle time in ms of so many goes. */
async function timed(work: () => Promise<unknown>, goes = 15): Promise<number> {
  const times: number[] = [];
  for (let go = 0; go < goes; go += 1) {
    const started = performance.now();
    await work();
    times.push(performance.now() - started);
  }
  return times.sort((a, b) => a - b)[Math.floor(goes / 2)] ?? 0;
}

async function take(store: Store, step: Step, now: number): Promise<unknown> {
  const { finds } = store;
  switch (step.do) {
    case 'keep':
      nextName = step.id;
      return must(finds.keep(adOf(textOf(step.id, step.price)), now));
    case 'refresh':
      return must(finds.refresh(step.id, adOf(textOf(step.id, step.price)), now));
    case 'status':
      return must(finds.setStatus(step.id, step.status as never, now));
    case 'notes':
      return must(finds.update(step.id, { notes: step.notes }, now));
    case 'remove':
      nextName = step.token;
      return must(finds.remove(step.id, now));
    case 'undo':
      return must(finds.undo(step.token));
    case 'purge':
      return must(finds.purge(Number.MAX_SAFE_INTEGER));
    case 'need':
      return must(store.kit.needs.put({ id: step.id, kind: 'bar', pieces: step.pieces, weight: null, note: '' }, now));
    case 'settings':
      return must(store.settings.save({ ...DEFAULT_SETTINGS, margin: step.margin }, now));
    case 'import':
      return must(store.importAll(await fileOf(store, step.ids, step.price, now)));
  }
}

/** What the tables hold, read past the store; `odd` names what does not belong together. */
async function dump(): Promise<{ readonly model: Model; readonly odd: readonly string[]; readonly restored: boolean }> {
  const store = await open();
  // Marks that the second copy has not are made before the first look at them.
  await must(store.finds.again(listingFromText('')));
  const db = new Database();
  const [rows, ads, marks, removed, needs, settings, aside] = await Promise.all([
    db.finds.toArray(),
    db.ads.toArray(),
    db.marks.toCollection().primaryKeys(),
    db.removed.toArray(),
    db.needs.toArray(),
    db.settings.get('settings'),
    db.aside.toArray(),
  ]);
  db.close();
  const texts = new Map(ads.map(({ id, listing }) => [id, listing.text]));
  const keptOf = (find: (typeof rows)[number]['find'], text: string | undefined) => ({
    status: find.status,
    notes: find.notes,
    prices: find.prices.map(({ minor }) => minor),
    text: text ?? '',
  });
  const ids = rows.map(({ id }) => id).join();
  const odd = [
    ...([...texts.keys()].join() === ids ? [] : ['finds and their bulk differ']),
    ...(marks.join() === ids ? [] : ['finds and their marks differ']),
    ...aside.map(({ table, key, why }) => `set aside: ${table} ${key}: ${why}`),
  ];
  if ((await must(store.check())) > 0) odd.push('a damaged record');
  return {
    restored: store.restored,
    odd,
    model: {
      finds: Object.fromEntries(rows.map(({ id, find }) => [id, keptOf(find, texts.get(id))])),
      removed: Object.fromEntries(removed.map(({ id, token, find, ad }) => [id, { token, kept: keptOf(find, ad.listing.text) }])),
      needs: Object.fromEntries(needs.map(({ id, pieces }) => [id, pieces])),
      margin: settings?.value.margin ?? 0,
    },
  };
}

/** Takes steps until it is stopped or killed; each is told as soon as the store has confirmed it. */
async function run(seed: number, from: Model, most = Number.POSITIVE_INFINITY): Promise<void> {
  const store = await open();
  const random = randomFrom(seed);
  let model = from;
  for (let count = 1; count <= most; count += 1) {
    const step = nextStep(model, random, `${seed}-${count}`);
    await take(store, step, seed * 100_000 + count);
    model = after(model, step);
    await window.confirmed(count);
  }
}

const storeTest = { adOf, dump, EMPTY, fill, must, open, openStore, pageStore, run, saveFigures, timed };
window.storeTest = storeTest;
