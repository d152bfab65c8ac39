// @ts-check
import { BaseSequencer } from 'vitest/node';

/** Test files that take long, in seconds on two cores. The others come behind them, in the runner's own order. */
const LONG = {
  'browser/accessible': 90,
  'browser/stories-in-firefox': 71,
  'browser/hostile/documents': 58,
  'browser/stories-in-chromium': 43,
  'browser/hostile/scripts': 37,
  'browser/languages': 35,
  'browser/hostile/words': 35,
  'browser/firefox.': 32,
  'browser/store.': 31,
  'browser/capture': 25,
  'browser/story.': 24,
  'browser/sweep': 23,
  'browser/faults-in-firefox': 21,
  'extension/workshop/buy-list': 20,
  'corpus/relations.': 20,
  'build/outcome': 19,
  'browser/store-in-firefox': 17,
  'browser/faults-in-workshop': 16,
  'browser/faults-in-chromium': 15,
  'browser/kit': 15,
  'browser/touch': 13,
  'browser/panel': 13,
  'corpus/relations-of-worth': 12,
  'extension/workshop/live-regions': 11,
  'browser/pickup': 11,
  'unit/cli/evaluate': 11,
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
