/** Judges many ads in short pieces, so that the panel never stops answering: no task of over 50 ms. */
import type { Evaluation } from '../../../src/listing/evaluation.ts';
import type { SweptAd } from './sweep-host.ts';

/** Aim for one piece, in milliseconds; the ad that is being judged is finished. */
const SLICE = 12;
/** Rows are handed on so often, in milliseconds: the list is drawn anew each time. */
const HAND_ON = 120;

export type Judged = readonly (readonly [SweptAd, Evaluation | null])[];

/** Hands the judged ads on in groups. Gives a function that calls it off. `judge` may throw: such an ad comes with null. */
export function judgeAll(
  ads: readonly SweptAd[],
  judge: (ad: SweptAd) => Evaluation,
  take: (judged: Judged) => void,
): () => void {
  let next = 0;
  let off = false;
  let done: [SweptAd, Evaluation | null][] = [];
  let handed = performance.now();
  const piece = (): void => {
    if (off) return;
    const start = performance.now();
    for (; next < ads.length && performance.now() - start < SLICE; next += 1) {
      const ad = ads[next] as SweptAd;
      try {
        done.push([ad, judge(ad)]);
      } catch (error) {
        console.error('Ironsift:', error);
        done.push([ad, null]);
      }
    }
    if (next >= ads.length || performance.now() - handed > HAND_ON) {
      const judged = done;
      done = [];
      handed = performance.now();
      if (judged.length > 0) take(judged);
    }
    if (next < ads.length) setTimeout(piece, 0);
  };
  setTimeout(piece, 0);
  return () => {
    off = true;
  };
}
