import { beforeEach, describe, expect, it } from 'vitest';
import { loadEdits, saveEdits } from '../../../extension/platform/edits.ts';
import { fakeBrowser } from './fake-browser.ts';

let fake: ReturnType<typeof fakeBrowser>;

beforeEach(() => {
  fake = fakeBrowser();
});

describe('what was said about an ad', () => {
  it('is there again, each ad its own', async () => {
    await saveEdits('a', { n: 1 });
    await saveEdits('b', { n: 2 });
    await saveEdits('a', { n: 3 });
    expect(await loadEdits('a')).toEqual({ n: 3 });
    expect(await loadEdits('b')).toEqual({ n: 2 });
    expect(await loadEdits('c')).toBeNull();
  });

  it('is saved one after the other: none overwrites another', async () => {
    await Promise.all(Array.from({ length: 20 }, (_, i) => saveEdits(`ad ${i}`, i)));
    expect(await Promise.all(Array.from({ length: 20 }, (_, i) => loadEdits(`ad ${i}`)))).toEqual(
      Array.from({ length: 20 }, (_, i) => i),
    );
  });

  it('is forgotten for the oldest of very many ads', async () => {
    for (let i = 0; i <= 300; i += 1) await saveEdits(`ad ${i}`, i);
    expect(await loadEdits('ad 0')).toBeNull();
    expect(await loadEdits('ad 1')).toBe(1);
  });

  it('counts as nothing when storage holds something else', async () => {
    await fake.storage.session.set({ edits: 'spoilt' });
    expect(await loadEdits('a')).toBeNull();
    await saveEdits('a', 1);
    expect(await loadEdits('a')).toBe(1);
  });
});
