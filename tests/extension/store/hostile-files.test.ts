// @vitest-environment node
/** Files to import that are hostile, damaged or of another kind: each is refused whole, says where it is wrong, and changes nothing; or is taken for what it is. */
import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import strings from '../../../extension/_locales/en/store.json' with { type: 'json' };
import { badFileMessage, type Store } from '../../../extension/store/index.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { speaker } from '../../../src/words/say.ts';
import { ad, freshStore, type Loose, PLATES, value } from './making.ts';

const words = Object.fromEntries(Object.entries(strings).map(([key, { message }]) => [key, message]));
const say = speaker(words, 'en-GB');
const ALL = { order: 'kept', descending: false, from: 0, count: 100 } as const;
const HARM = '<img src=x onerror="globalThis.pwned=1"><script>globalThis.pwned=1</script>{constructor.constructor("x")()}';

let file: Loose;
let target: Store;
let before: Loose;

beforeEach(async () => {
  const source = await freshStore();
  await source.finds.keep(ad(PLATES, 'https://ads.invalid/item/1234567'), 1000);
  const second = value(await source.finds.keep(ad('7 ft olympic bar $90'), 2000));
  await source.finds.remove(second.id, 3000);
  await source.kit.needs.put({ id: 'rack', kind: 'rack', pieces: 1, weight: null, note: '' }, 10);
  await source.settings.save({ ...DEFAULT_SETTINGS, unit: 'kg' }, 30);
  file = JSON.parse(value(await source.exportAll(9)));
  target = await freshStore();
  await target.finds.keep(ad('2 x 25 lb plates $40'), 500);
  before = JSON.parse(value(await target.exportAll(9)));
});

const now = async (): Promise<Loose> => JSON.parse(value(await target.exportAll(9)));
const deep = (levels: number): string => `${'['.repeat(levels)}${']'.repeat(levels)}`;
/** The file's text, spoiled before or after it is written. */
type Spoil = (file: Loose) => string | Loose;
const textOf = (spoil: Spoil): string => {
  const spoiled = spoil(file);
  return typeof spoiled === 'string' ? spoiled : JSON.stringify(spoiled);
};
const set =
  (path: readonly (string | number)[], to: unknown): Spoil =>
  (whole) => {
    const last = path.at(-1) as string;
    let at = whole;
    for (const step of path.slice(0, -1)) at = at[step];
    at[last] = to;
    return whole;
  };
/** Written where JSON has no value of that kind: 1e999, or a key that an object literal would not keep. */
const written =
  (path: readonly (string | number)[], json: string): Spoil =>
  (whole) =>
    JSON.stringify(set(path, '@@')(whole)).replace('"@@"', json);
const FIND = ['finds', 0, 'find'] as const;
const AD = ['finds', 0, 'ad'] as const;

/** What is spoiled, and the end of the place that the message names. */
const REFUSED: readonly (readonly [string, Spoil, string])[] = [
  ['finds that are no list', set(['finds'], { 0: 'x', length: 1 }), '“finds”'],
  ['a find that is a text', set(['finds', 0], HARM), '“finds” › number 1'],
  ['a find that is null', set(['finds', 0], null), '“finds” › number 1'],
  ['an id that is a number', set([...FIND, 'id'], 7), '“id”'],
  ['an empty id', set([...FIND, 'id'], ''), '“id”'],
  ['an id of a thousand letters', set([...FIND, 'id'], 'x'.repeat(1000)), '“id”'],
  ['a title that is an object', set([...FIND, 'title'], { toString: 'x' }), '“title”'],
  ['a title of a million letters', set([...FIND, 'title'], 'x'.repeat(1_000_000)), '“title”'],
  ['a status of its own making', set([...FIND, 'status'], 'constructor'), '“status”'],
  ['a status called __proto__', set([...FIND, 'status'], '__proto__'), '“status”'],
  ['a price without end', written([...FIND, 'prices', 0, 'minor'], '1e999'), '“minor”'],
  ['a price that is not a number', set([...FIND, 'prices', 0, 'minor'], Number.NaN), '“minor”'],
  ['a price in figures as text', set([...FIND, 'prices', 0, 'minor'], '15000'), '“minor”'],
  ['a price beyond whole numbers', written([...FIND, 'prices', 0, 'minor'], '9007199254740993000'), '“minor”'],
  ['a currency that is markup', set([...FIND, 'prices', 0, 'currency'], HARM), '“currency”'],
  ['a time before all times', set([...FIND, 'keptAt'], -1), '“keptAt”'],
  ['a time beyond all times', written([...FIND, 'changedAt'], '1e300'), '“changedAt”'],
  ['a distance below zero', set([...FIND, 'summary', 'distance'], { value: -5, unit: 'mi' }), '“distance” › “value”'],
  ['a call called toString', set([...FIND, 'summary', 'call'], 'toString'), '“call”'],
  ['a text of two million characters', set([...AD, 'listing', 'text'], 'x'.repeat(2_000_000)), '“text”'],
  ['a listing of another origin', set([...AD, 'listing', 'origin'], 'javascript:alert(1)'), '“origin”'],
  ['edits that are no list', set([...AD, 'edits', 'changes'], { by: 'hand' }), '“changes”'],
  ['an edit by somebody else', set([...AD, 'edits', 'changes'], [{ by: '__proto__' }]), '“by”'],
  ['an ad that names another find', set([...AD, 'id'], '../../finds/x'), '“ad” › “id”'],
  ['a need of a kind called constructor', set(['needs', 0, 'kind'], 'constructor'), '“kind”'],
  ['a need for half a rack', set(['needs', 0, 'pieces'], 0.5), '“pieces”'],
  ['settings that are a list', set(['settings', 'value'], []), '“settings” › “value”'],
  ['settings with a unit called __proto__', set(['settings', 'value', 'unit'], '__proto__'), '“unit”'],
  ['a list of deletions that is missing', (whole) => ({ ...whole, tombs: undefined }), '“tombs”'],
  ['lists 10,000 deep in place of a note', written([...FIND, 'notes'], deep(10_000)), '“notes”'],
];

describe('is refused with its place, and nothing is changed:', () => {
  it.each(REFUSED)('%s', async (_, spoil, where) => {
    const text = textOf(spoil);
    const outcome = await target.importAll(text);
    expect(outcome).toMatchObject({ ok: false, code: 'bad-record' });
    if (outcome.ok || !('path' in outcome)) throw new Error('taken');
    expect(say(badFileMessage(outcome))).toContain(`${where}. Nothing was changed.`);
    expect(await target.previewImport(text)).toEqual(outcome);
    expect(await now()).toEqual(before);
  });
});

describe('is refused as a whole, and nothing is changed:', () => {
  it.each<readonly [string, Spoil, string]>([
    ['a file of a later version', set(['version'], 99), 'newer-file'],
    ['a version that is a text', set(['version'], '1'), 'bad-record'],
    ['a version without end', written(['version'], '1e999'), 'newer-file'],
    ['a version below zero', set(['version'], -1), 'bad-record'],
    ['our format as a key of the prototype', (whole) => `{"__proto__":${JSON.stringify(whole)}}`, 'not-ours'],
    ['our format inside a list', (whole) => JSON.stringify([whole]), 'not-ours'],
    ['a text of JSON in JSON', (whole) => JSON.stringify(JSON.stringify(whole)), 'not-ours'],
    ['two bytes for each sign', (whole) => Buffer.from(JSON.stringify(whole), 'utf16le').toString('utf8'), 'not-json'],
    ['cut off in the middle', (whole) => JSON.stringify(whole).slice(0, -200), 'not-json'],
    ['followed by another', (whole) => `${JSON.stringify(whole)}${JSON.stringify(whole)}`, 'not-json'],
    ['NaN in it', (whole) => JSON.stringify(whole).replace('"version":1', '"version":NaN'), 'not-json'],
    ['a script', () => '(() => ({ format: "ironsift", version: 1 }))()', 'not-json'],
    ['a web page', () => `<!doctype html>${HARM}`, 'not-json'],
    ['lists without end', () => deep(1_000_000), 'not-ours'],
    ['50 MB of nothing', () => ' '.repeat(50_000_000), 'not-json'],
    ['50 MB in one text', () => JSON.stringify('x'.repeat(50_000_000)), 'not-ours'],
  ])('%s', async (_, spoil, code) => {
    expect(await target.importAll(textOf(spoil))).toMatchObject({ ok: false, code });
    expect(await now()).toEqual(before);
  });
});

describe('is taken for what it is:', () => {
  const taken = async (spoil: Spoil): Promise<Loose> => {
    value(await target.importAll(textOf(spoil)));
    return now();
  };
  const idOf = (whole: Loose): string => whole.finds[0].find.id;

  it('a byte order mark before it', async () => {
    expect((await taken((whole) => `\ufeff${JSON.stringify(whole)}`)).finds).toHaveLength(2);
  });
  it('markup in title, notes and place stays words', async () => {
    const { finds } = await taken((whole) => {
      Object.assign(whole.finds[0].find, { title: HARM, notes: HARM });
      whole.finds[0].find.summary.place = HARM;
      return whole;
    });
    expect(finds.find(({ find }: Loose) => find.title === HARM)?.find).toMatchObject({ notes: HARM, summary: { place: HARM } });
  });
  it('prototype keys beside the known ones are dropped, and reach no prototype', async () => {
    const id = idOf(file);
    const { finds } = await taken((whole) =>
      JSON.stringify(whole).replace('"find":{', '"find":{"__proto__":{"pwned":1},"constructor":{"prototype":{"pwned":1}},'),
    );
    const { find } = finds.find((one: Loose) => one.find.id === id);
    expect([Object.hasOwn(find, 'constructor'), Object.hasOwn(find, '__proto__'), find.pwned]).toEqual([false, false, undefined]);
    expect(({} as Loose).pwned).toBeUndefined();
  });
  it('prototype keys in what was set aside reach no prototype', async () => {
    await taken((whole) =>
      JSON.stringify({
        ...whole,
        setAside: [{ id: 'a', table: '__proto__', key: '__proto__', value: '@@', why: HARM, at: 1 }],
      }).replace('"@@"', '{"__proto__":{"pwned":1}}'),
    );
    expect(({} as Loose).pwned).toBeUndefined();
    expect(value(await target.setAside.all())).toHaveLength(1);
  });
  it.each(['__proto__', 'constructor', 'toString', 'a/b', '../x', '#', '%00', 'finds/1', '\u202ex', HARM.slice(0, 60)])(
    'a find with the id %j can be opened, removed and brought back',
    async (id) => {
      await taken((whole) => {
        whole.finds[0].find.id = id;
        whole.finds[0].ad.id = id;
        return whole;
      });
      expect(value(await target.finds.get(id)).find.id).toBe(id);
      const { token } = value(await target.finds.remove(id, 9000));
      expect(value(await target.finds.list(ALL)).rows.map((one) => one.id)).not.toContain(id);
      expect(value(await target.finds.undo(token)).id).toBe(id);
    },
  );
  it('the same find twice is one find', async () => {
    const { finds } = await taken((whole) => ({ ...whole, finds: [...whole.finds, ...whole.finds] }));
    expect(finds).toHaveLength(2);
  });
  it('the same find in two versions is the later one', async () => {
    const { finds } = await taken((whole) => {
      const older = structuredClone(whole.finds[0]);
      Object.assign(whole.finds[0].find, { notes: 'later', changedAt: 90_000 });
      Object.assign(older.find, { notes: 'earlier', changedAt: 80_000 });
      return { ...whole, finds: [...whole.finds, older] };
    });
    expect(finds.map(({ find }: Loose) => find.notes)).toContain('later');
  });
  it('deletions of tables that there are not do nothing', async () => {
    const ids = ['__proto__/x', 'constructor/x', 'settings/settings', 'aside/a', 'counters/finds', 'x', '/', 'finds/'];
    const { finds, settings } = await taken((whole) => ({ ...whole, tombs: ids.map((id) => ({ id, at: 8e15 })) }));
    expect(finds).toHaveLength(2);
    expect(settings).not.toBeNull();
  });
});
