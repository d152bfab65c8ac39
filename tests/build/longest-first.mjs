// @ts-check
import { BaseSequencer } from 'vitest/node';

/** Test files that take long, in seconds on two cores. The others come behind them, in the runner's own order. */
const LONG = {
  'browser/accessible': 110,
  'browser/stories-in-firefox': 80,
  'browser/hostile/documents': 65,
  'browser/stories-in-chromium': 48,
  'browser/hostile/words': 42,
  'browser/store.': 36,
  'browser/hostile/scripts': 35,
  'browser/firefox.': 34,
  'browser/story.': 29,
  'browser/capture': 26,
  'browser/faults-in-workshop': 25,
  'browser/languages': 25,
  'corpus/relations.': 22,
  'browser/faults-in-firefox': 21,
  'browser/panel': 20,
  'outside/general-recogniser': 20,
  'extension/workshop/buy-list': 18,
  'build/outcome': 17,
  'browser/store-in-firefox': 17,
  'browser/faults-in-chromium': 17,
  'browser/sweep': 16,
  'unit/read/hostile': 14,
  'browser/touch': 14,
  'corpus/relations-of-worth': 14,
  'build/source-package': 12,
  'extension/workshop/live-regions': 12,
  'browser/kit': 10,
  'build/demo': 10,
  'browser/workshop': 10,
  'unit/kit/buy-list-made': 9,
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
