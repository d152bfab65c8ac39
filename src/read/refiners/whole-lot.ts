/** The weight stated for the lot as a whole. */
import { type Fact, isPlate } from '../../listing/reading.ts';
import { inPounds, type Weight } from '../../units/mass.ts';
import type { Total } from '../mention.ts';
import { BESIDE } from '../recognisers/totals.ts';
import { saysWithin } from '../text/says.ts';
import { type Scan, span } from '../text/scan.ts';
import type { Draft } from './draft.ts';

/** Rules of weights that are said of goods. */
const OF_GOODS = ['weight-of-goods', 'heavy-goods', 'weight-in-goods', 'lone-total', 'total-summed', BESIDE];

/** "Total weight of plates is 405 lb": a total whose own words name the plates. */
const namesPlates = (scan: Scan, { from, to }: Total): boolean =>
  scan.tokens
    .slice(from, to + 3)
    .some(({ term }, index) => isPlate(term?.kind ?? 'other') && scan.clause[from + index] === scan.clause[from]);

/** "265 lb set minus one 10", "Set 80 kg, eine Scheibe fehlt", "used to be a 300 lb set": the name of what it was. */
function isIncomplete(scan: Scan, { from, to }: Total): boolean {
  let end = to + 1;
  while (end < to + 14 && scan.clause[end] === scan.clause[to]) end += 1;
  return saysWithin(scan, from - 3, from, 'once') || saysWithin(scan, to + 1, end, 'incomplete');
}

/** "A 300 lb set (the bar that came with it was junk, I threw it out)": a part that is gone, told in the set's own sentence. */
const isWithoutPart = (scan: Scan, { to }: Total, sold: readonly Draft[]): boolean =>
  sold.some(({ places }) => places.some(({ from }) => from > to && scan.clause[from] === scan.clause[to]));

/** A weight in brackets counts when it is near the sum of all plates; else it is the subtotal of its line. */
export function finishTotal(
  scan: Scan,
  totals: readonly Total[],
  live: readonly Draft[],
  sold: readonly Draft[],
): Fact<Weight> | null {
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
  // "Rack, bench and 300 lb of plates": the weight is that of the plates and not of the lot.
  const plates = live.filter((item) => isPlate(item.kind));
  const told = plates.length > 0 && plates.every((item) => item.weight !== null && item.count !== null);
  const beside =
    live.some(({ kind }) => ['rack', 'stands', 'bench'].includes(kind)) && (told || live.some((item) => item.total !== null));
  const ofPlates = (one: Total): boolean => OF_GOODS.includes(one.rule) || (!one.set && namesPlates(scan, one));
  const lots = plain.filter(
    (one) => !(beside && ofPlates(one)) && !(one.set && lines > 0 && (isIncomplete(scan, one) || isWithoutPart(scan, one, sold))),
  );
  const total = lots.find((candidate) => candidate.rule.startsWith('total')) ?? lots[0] ?? (beside ? undefined : bracketed);
  if (!total) return null;
  return {
    value: { value: total.weight, unit: total.unit ?? 'lb' },
    basis: 'stated',
    rule: total.rule,
    evidence: [span(scan, total.from, total.to)],
  };
}
