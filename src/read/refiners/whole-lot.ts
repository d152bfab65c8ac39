/** The weight stated for the lot as a whole. */
import { type Fact, isPlate } from '../../listing/reading.ts';
import { inPounds, type Weight } from '../../units/mass.ts';
import type { Total } from '../mention.ts';
import { type Scan, span } from '../text/scan.ts';
import type { Draft } from './draft.ts';

/** Rules of weights that are said of goods. */
const OF_GOODS = ['weight-of-goods', 'heavy-goods'];

/** "265 lb set minus one 10", "Set 80 kg, eine Scheibe fehlt", "used to be a 300 lb set": the name of what it was. */
function isIncomplete(scan: Scan, { from, to }: Total): boolean {
  const words = (start: number, end: number): string =>
    scan.tokens
      .slice(Math.max(0, start), end)
      .map(({ text }) => text)
      .join(' ');
  const before = words(from - 5, from);
  let end = to + 1;
  while (end < to + 14 && scan.clause[end] === scan.clause[to]) end += 1;
  return (
    /\b(?:used to be|once|was|originally|ehemals|war mal|urspr\S*)\b[^.]{0,12}$/.test(before) ||
    /\b(?:minus|missing|short|less|lacks|lacking|fehlt|fehlen|unvollstandig|nicht mehr vollstandig|not complete|incomplete)\b/.test(
      words(to + 1, end),
    )
  );
}

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
  // "Rack, bench and 300 lb of plates": the weight is that of the plates and not of the lot.
  const beside = live.some(({ kind }) => ['rack', 'stands', 'bench'].includes(kind)) && live.some((item) => item.total !== null);
  const lots = plain.filter(
    (one) => !(beside && OF_GOODS.includes(one.rule)) && !(one.set && lines > 0 && isIncomplete(scan, one)),
  );
  const total = lots.find((candidate) => candidate.rule.startsWith('total')) ?? lots[0] ?? bracketed;
  if (!total) return null;
  return {
    value: { value: total.weight, unit: total.unit ?? 'lb' },
    basis: 'stated',
    rule: total.rule,
    evidence: [span(scan, total.from, total.to)],
  };
}
