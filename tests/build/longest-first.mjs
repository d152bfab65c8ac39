// @ts-check
import { BaseSequencer } from 'vitest/node';

/** Test files that take long, in seconds on two cores. The others come behind them, in the runner's own order. */
const LONG = {
  'browser/accessible': 93,
  'browser/stories-in-firefox': 76,
  'browser/hostile/documents': 60,
  'browser/stories-in-chromium': 49,
  'browser/store.': 45,
  'browser/firefox.': 39,
  'browser/faults-in-firefox': 35,
  'browser/languages': 33,
  'browser/hostile/words': 32,
  'browser/capture': 30,
  'browser/store-in-firefox': 29,
  'browser/story.': 28,
  'browser/hostile/scripts': 26,
  'browser/sweep': 25,
  'browser/faults-in-workshop': 24,
  'browser/faults-in-chromium': 19,
  'browser/panel': 19,
  'build/outcome': 19,
  'browser/touch': 16,
  'corpus/relations.': 16,
  'extension/workshop/buy-list': 16,
  'extension/workshop/live-regions': 15,
  'corpus/relations-of-units': 14,
  'browser/kit': 14,
  'unit/kit/buy-list-made': 14,
  'unit/read/hostile': 13,
  'corpus/relations-of-drive': 12,
  'browser/workshop': 11,
  'build/source-package': 11,
  'corpus/relations-of-worth': 11,
  'browser/phone-in-firefox': 11,
  'corpus/corpus': 9,
  'extension/workshop/kit.': 8,
  'browser/pickup': 8,
  'build/demo': 7,
  'unit/cli/evaluate': 6,
  'unit/read/fuzz': 6,
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
