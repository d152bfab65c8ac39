/**
 * The whole reading of an ad against nothing but finding amounts and units in it by a general-purpose recogniser
 * (@microsoft/recognizers-text-number-with-unit 1.3.1, MIT), on the same ads in one run. Aim: ten times faster.
 */
import { read } from '../../src/read/index.ts';
import { englishAds } from '../outside/general-recogniser/found.ts';
import { findWithLibrary } from '../outside/general-recogniser/library.ts';
import { processorTime } from './timing.ts';

/** Every so manyeth ad of the corpus: the library takes tens of milliseconds for one. */
const STEP = 20;

export function benchAgainstLibrary(root: string): void {
  const ads = englishAds(root).filter((_, index) => index % STEP === 0);
  const bytes = ads.reduce((sum, { text }) => sum + text.length, 0);
  const ours = processorTime(() => ads.map(({ listing }) => read(listing)), 50) / ads.length;
  const theirs =
    processorTime(() => ads.map(({ text }) => [findWithLibrary(text, 'money'), findWithLibrary(text, 'weight')]), 3) / ads.length;
  console.log(
    `\nAgainst a recogniser library on ${ads.length} corpus ads of ${Math.round(bytes / ads.length)} bytes (aim: ten times faster)\n` +
      `reading ${ours.toFixed(3)} ms an ad, the library's money and weights alone ${theirs.toFixed(3)} ms an ad: ${(theirs / ours).toFixed(0)} times faster`,
  );
}
