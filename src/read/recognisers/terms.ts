import type { Fact } from '../../listing/reading.ts';
import { type Scan, span } from '../text/scan.ts';

/** Words about the terms of sale, by their sense in the dictionary ("term:stock-photo"). */
export function readTerms(scan: Scan): Fact<string>[] {
  return scan.tokens.flatMap((token, at) => {
    const sense = token.term?.sense;
    if (!sense?.startsWith('term:')) return [];
    return [{ value: sense.slice(5), basis: 'stated' as const, rule: 'term', evidence: [span(scan, at, at)] }];
  });
}
