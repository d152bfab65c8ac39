import type { Span } from '../listing/page-listing.ts';
import type { Item, Reading } from '../listing/reading.ts';
import { LIMITS, type LimitName } from './limits.ts';
import { type ItemRule, onCondition } from './rule.ts';

const BENCH = ['bench'] as const;
const UPRIGHTS = /\b(?:uprights?|bar (?:holders?|catch(?:es)?)|attached rack|built[- ]in rack|olympic weight bench)\b/i;

/** How far from the bench the words may stand, on the same line. */
const REACH = 200;

/** Where the ad says that a bench has uprights, or null. */
export function uprightsOf(item: Item, { text }: Pick<Reading, 'text'>): Span | null {
  for (const span of item.evidence) {
    const from = Math.max(0, span.start - REACH);
    const before = text.slice(from, span.start);
    const start = from + before.lastIndexOf('\n') + 1;
    const [line = ''] = text.slice(start, span.end + REACH).split('\n', 1);
    const found = UPRIGHTS.exec(line);
    if (found !== null) return { start: start + found.index, end: start + found.index + found[0].length };
  }
  return null;
}

const uprights: ItemRule = {
  id: 'bench-with-uprights',
  kinds: BENCH,
  weight: 'note',
  source: 'common-practice',
  test(item, { reading }) {
    const span = uprightsOf(item, reading);
    return span === null ? null : { evidence: [span] };
  },
};

const shortBench: ItemRule = {
  id: 'bench-short',
  kinds: BENCH,
  weight: 'note',
  source: 'ipf',
  test(item) {
    if (item.lengthMm === null || item.lengthMm.value >= LIMITS.benchLength.value - LIMITS.benchSlack.value) return null;
    return {
      found: { length: { mm: item.lengthMm.value } },
      limit: { limit: { mm: LIMITS.benchLength.value } },
      evidence: item.lengthMm.evidence,
    };
  },
};

const wobbly: ItemRule = {
  id: 'bench-wobbly',
  kinds: BENCH,
  weight: 'caution',
  source: 'common-practice',
  test: onCondition('wobbly'),
};

/** A size outside of the useful ones: too small or too large, by the same rule and the same words. */
const outOf = (id: string, size: 'widthMm' | 'heightMm', low: LimitName, high: LimitName): ItemRule => ({
  id,
  kinds: BENCH,
  weight: 'note',
  source: 'ipf',
  test(item) {
    const stated = item[size];
    const slack = LIMITS.benchSlack.value;
    const [least, most] = [LIMITS[low].value, LIMITS[high].value];
    if (stated === null || (stated.value >= least - slack && stated.value <= most + slack)) return null;
    return {
      found: { size: { mm: stated.value } },
      limit: { low: { mm: least }, high: { mm: most } },
      evidence: stated.evidence,
    };
  },
});

const width = outOf('bench-width', 'widthMm', 'benchNarrow', 'benchWide');
const height = outOf('bench-height', 'heightMm', 'benchLow', 'benchHigh');

export const benchRules: readonly ItemRule[] = [wobbly, shortBench, width, height, uprights];
