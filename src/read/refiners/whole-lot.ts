/** The weight stated for the lot as a whole. */
import { type Fact, isPlate } from '../../listing/reading.ts';
import { inPounds, type Weight } from '../../units/mass.ts';
import type { Total } from '../mention.ts';
import { type Scan, span } from '../text/scan.ts';
import type { Draft } from './draft.ts';

/** A weight in brackets counts when it is near the sum of all plates; else it is the subtotal of its line. */
export function finishTotal(scan: Scan, totals: readonly Total[], live: readonly Draft[]): Fact<Weight> | null {
  const sum = live
    .filter((item) => isPlate(item.kind))
    .reduce(
      (all, item) => all + (item.count?.value ?? 0) * inPounds({ value: item.weight?.value ?? 0, unit: item.unit ?? 'lb' }),
      0,
    );
  const plain = totals.filter((total) => !total.bracketed);
  const lines = live.filter((item) => isPlate(item.kind)).length;
  const bracketed = totals.find(
    (total) =>
      total.bracketed && lines > 1 && Math.abs(inPounds({ value: total.weight, unit: total.unit ?? 'lb' }) - sum) <= 0.02 * sum,
  );
  const total = plain.find((candidate) => candidate.rule.startsWith('total')) ?? plain[0] ?? bracketed;
  if (!total) return null;
  return {
    value: { value: total.weight, unit: total.unit ?? 'lb' },
    basis: 'stated',
    rule: total.rule,
    evidence: [span(scan, total.from, total.to)],
  };
}
