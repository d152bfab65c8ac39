import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { LongestFirst } from './build/longest-first.mjs';
import { placeModulesInTests } from './build/place-lists.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const inPage = { environment: 'jsdom', setupFiles: ['tests/extension/patience.ts'], testTimeout: 60_000 };
const SHARING = 'tests/extension/{panel,sweep,capture,workshop}/**/*.test.{ts,tsx}';
const project = (name: string, rest: object = {}) => ({
  extends: true as const,
  test: { name, include: [`tests/${name}/**/*.test.{ts,tsx}`], ...rest },
});

export default defineConfig({
  root,
  plugins: [placeModulesInTests],
  // The bundler's settings, so that tests see what ships.
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    maxWorkers: 2,
    sequence: { sequencer: LongestFirst },
    // A busy machine makes everything late; what must be fast is measured by processor time.
    testTimeout: 20_000,
    expect: { poll: { timeout: 20_000 } },
    projects: [
      // The core holds no state, so its modules serve all files of a worker: half the time goes into loading them otherwise.
      project('unit', { isolate: false }),
      project('outside', { isolate: false }),
      project('corpus', { isolate: false }),
      project('extension', { ...inPage, exclude: [SHARING] }),
      // What a test leaves of itself is taken away after it, so that one page may serve for many files.
      project('extension', {
        name: 'extension-page',
        ...inPage,
        include: [SHARING],
        setupFiles: [...inPage.setupFiles, 'tests/extension/one-page.ts'],
        isolate: false,
        restoreMocks: true,
        unstubGlobals: true,
      }),
      project('build', { isolate: false, testTimeout: 120_000, hookTimeout: 120_000 }),
      // Last, for a busy machine makes real browsers late; two at a time, each on a screen of its own, for the keyboard has one focus. Three at a
      // time save a minute on two cores, and make them late enough to fail.
      project('browser', {
        isolate: false,
        testTimeout: 90_000,
        hookTimeout: 90_000,
        // Said at the end, by name; at a desk a test that fails now and then should fail.
        retry: process.env.CI ? 1 : 0,
        sequence: { groupOrder: 1 },
      }),
    ],
  },
});
