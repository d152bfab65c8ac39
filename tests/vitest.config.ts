import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { LongestFirst } from './build/longest-first.mjs';
import { placeModulesInTests } from './build/place-lists.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
/** One after another; the projects of one turn run at the same time, in as many workers as keep two cores busy. */
const FIRST = { maxWorkers: 3, sequence: { groupOrder: 0 } };
const SECOND = { maxWorkers: 2, sequence: { groupOrder: 1 } };
const LAST = { maxWorkers: 2, sequence: { groupOrder: 2 } };
/** Modules and the page serve all files of a worker. */
const inPage = {
  ...FIRST,
  environment: 'jsdom',
  setupFiles: ['tests/extension/patience.ts'],
  testTimeout: 60_000,
  isolate: false,
  restoreMocks: true,
  unstubGlobals: true,
};
const SHARING = 'tests/extension/{panel,sweep,capture,workshop}/**/*.test.{ts,tsx}';
/** A project's tests lie in the folders of its name, or in those given. */
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
    sequence: { sequencer: LongestFirst },
    // A busy machine makes everything late; what must be fast is measured by processor time.
    testTimeout: 20_000,
    expect: { poll: { timeout: 20_000 } },
    projects: [
      // The core holds no state, so its modules serve all files of a worker: loading them and getting warm with them takes half of the time
      // otherwise, and again in each further worker.
      project('core', { ...SECOND, include: ['tests/{unit,outside,corpus}/**/*.test.ts'], isolate: false }),
      // Whose tests wait now and then: a third worker goes on meanwhile.
      project('extension', { ...inPage, exclude: [SHARING] }),
      // What a test leaves of itself is taken away after it, so that one page may serve for many files.
      project('extension', {
        ...inPage,
        name: 'extension-page',
        include: [SHARING],
        setupFiles: [...inPage.setupFiles, 'tests/extension/one-page.ts'],
      }),
      project('build', { ...FIRST, isolate: false, testTimeout: 120_000, hookTimeout: 120_000 }),
      // Last, for a busy machine makes real browsers late; two at a time, each on a screen of its own, for the keyboard has one focus. Three at a
      // time save a minute on two cores, and make them late enough to fail.
      project('browser', {
        ...LAST,
        isolate: false,
        testTimeout: 90_000,
        hookTimeout: 90_000,
        // Said at the end, by name; at a desk a test that fails now and then should fail.
        retry: process.env.CI ? 1 : 0,
      }),
    ],
  },
});
