/** A file of everything that can be exported, in which every text that a file may hold freely is markup as well. Built beside the browser. */
import 'fake-indexeddb/auto';
import { DEFAULT_SETTINGS } from '../../src/listing/settings.ts';
import { ad, freshStore, type Loose, value } from '../extension/store/making.ts';

/** Tells of itself wherever it is taken for markup: by what it makes, or by what the browser keeps it from. Short, for texts have limits. */
export const MARK = '<img src=x onerror=__hit=1>';
const CODE = 'javascript:__hit=1';

export interface HostileFile {
  readonly text: string;
  readonly find: string;
  readonly other: string;
  /** The places in which the mark stands, without numbers. */
  readonly places: readonly string[];
}

type Path = readonly (string | number)[];

function leaves(part: unknown, path: Path = []): Path[] {
  if (typeof part === 'string') return [path];
  if (part === null || typeof part !== 'object') return [];
  return Object.entries(part).flatMap(([key, inner]) => leaves(inner, [...path, Array.isArray(part) ? Number(key) : key]));
}

/** As of now, for what was removed long ago is deleted for good. */
const NOW = Date.now();

export async function hostileFile(): Promise<HostileFile> {
  const store = await freshStore();
  const plates = ad('4 x 45 lb olympic plates, cast iron, $150, pick up in Elmwick', 'https://ads.invalid/1', 'Olympic plates');
  const edits = { changes: [], distance: null, sellerAt: { name: 'Elmwick', lat: 40, lon: -75 } };
  const find = value(await store.finds.keep({ ...plates, edits }, NOW));
  const other = value(
    await store.finds.keep(ad('7 ft olympic bar, 2 x 25 lb plates, $90', 'https://ads.invalid/2', 'Bar'), NOW + 2000),
  );
  const gone = value(await store.finds.keep(ad('Flat bench $40', null, 'Bench'), NOW + 3000));
  await store.finds.remove(gone.id, NOW + 4000);
  await store.finds.setStatusOf([find.id], 'going', NOW + 5000);
  const own = { weighed: [], boreMm: null, shaftMm: null, sleeveMm: null, lengthMm: null, paid: null };
  await store.kit.owned.put({ id: 'bar', kind: 'bar', pieces: 1, weight: { value: 45, unit: 'lb' }, note: 'mine', ...own }, NOW);
  await store.kit.needs.put({ id: 'rack', kind: 'rack', pieces: 1, weight: null, note: 'wanted' }, NOW);
  const price = { minor: 9900, currency: 'USD' };
  const captured = {
    category: 'iron',
    title: 'New plates',
    address: 'https://shop.invalid/1',
    price,
    pounds: 45,
    shipping: null,
    at: 10,
  };
  await store.rates.captured.put({ id: 'price', ...captured } as Parameters<typeof store.rates.captured.put>[0], NOW);
  const cell = { low: 0.4, likely: 0.6, high: 0.9, source: 'heard', date: '2026-01-01' };
  await store.settings.save(
    { ...DEFAULT_SETTINGS, home: { name: 'Elmwick', lat: 40, lon: -75 }, rates: { iron: { used: cell } } },
    10,
  );
  const file: Loose = JSON.parse(value(await store.exportAll(NOW)));
  file.setAside = [{ id: 'aside', table: 'finds', key: 'a', value: { title: 'x' }, why: 'bad', at: NOW }];
  const places = new Set<string>();
  for (const path of leaves(file)) {
    const last = path.at(-1) as string;
    const holder = path.slice(0, -1).reduce((part, key) => part[key], file);
    const was = holder[last];
    // What names a record leads to its screen.
    if (last === 'id' || last === 'token') continue;
    holder[last] = last === 'address' ? CODE : `${was} ${MARK}`;
    if ((await store.previewImport(JSON.stringify(file))).ok) places.add(path.filter((key) => typeof key === 'string').join('.'));
    else holder[last] = was;
  }
  return { text: JSON.stringify(file), find: find.id, other: other.id, places: [...places] };
}
