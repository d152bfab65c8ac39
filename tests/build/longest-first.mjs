// @ts-check
import { BaseSequencer } from 'vitest/node';

/** Test files that take long, in seconds on two cores. The others come behind them, in the runner's own order. */
const LONG = {
  'browser/stories-in-firefox': 77,
  'browser/accessible': 75,
  'browser/hostile/documents': 60,
  'browser/store.': 55,
  'browser/languages': 48,
  'browser/story.': 48,
  'browser/hostile/words': 40,
  'browser/stories-in-chromium': 40,
  'browser/hostile/scripts': 38,
  'browser/panel': 36,
  'browser/store-in-firefox': 32,
  'browser/faults-in-firefox': 24,
  'browser/sweep': 24,
  'corpus/relations-of-worth': 24,
  'browser/faults-in-chromium': 18,
  'unit/cli/evaluate': 16,
  'build/outcome': 15,
  'unit/kit/buy-list-made': 14,
  'corpus/relations-of-drive': 13,
  'unit/read/fuzz': 11,
};

/** Starts with what takes longest, so that one worker does not sit idle while the other is at a long file at the end. */
export class LongestFirst extends BaseSequencer {
  /** @override @param {import("vitest/node").TestSpecification[]} files */
  async sort(files) {
    const sorted = await super.sort(files);
    /** @type {(file: import('vitest/node').TestSpecification) => number} */
    const seconds = ({ moduleId }) => Object.entries(LONG).find(([part]) => moduleId.includes(`/tests/${part}`))?.[1] ?? 0;
    return sorted.sort((a, b) => seconds(b) - seconds(a));
  }
}
