/** What the seller says that it all adds up to: "that's 210 lbs", "those add up to 245", "loaded bar, 315 lbs": a total where it is the sum of what is told. */
import { inPounds } from '../../units/mass.ts';
import type { Total } from '../mention.ts';
import { says } from '../text/says.ts';
import { type Scan, unitBetween, valueAt } from '../text/scan.ts';
import type { Draft } from './draft.ts';

/** How far from the sum a total may lie. */
const NEAR = 0.02;
/** No piece of the trade weighs so much, in lb. */
const HEAVIEST = 160;
/** Tokens between the words and the number. */
const REACH = 3;

const poundsOf = ({ weight, count, unit }: Draft): number =>
  weight && count ? count.value * inPounds({ value: weight.value, unit: unit ?? 'lb' }) : 0;

/** The totals; drafts that were made of their numbers are taken out of the list. */
export function takeSummed(scan: Scan, drafts: Draft[]): Total[] {
  const told = drafts.filter((item) => poundsOf(item) > 0 && !item.sold);
  if (told.length < 2) return [];
  // What is told again adds nothing.
  const sizes = new Map<string, number>();
  for (const item of told) {
    const size = `${item.kind} ${item.weight?.value} ${item.unit}`;
    sizes.set(size, Math.max(sizes.get(size) ?? 0, poundsOf(item)));
  }
  const sum = [...sizes.values()].reduce((all, size) => all + size, 0);
  const isSum = (value: number, unit: 'lb' | 'kg'): boolean => Math.abs(inPounds({ value, unit }) / sum - 1) <= NEAR;
  const usual = told.every(({ unit }) => unit === 'kg') ? 'kg' : 'lb';
  const totals: Total[] = [];
  for (let at = 0; at < scan.tokens.length && totals.length === 0; at += 1) {
    if (scan.plain[at] !== 'n' || scan.letters[at] === 'M' || scan.plain[at - 1] === '$') continue;
    const value = valueAt(scan, at) ?? 0;
    if (value < 20 || !(isSum(value, 'lb') || isSum(value, 'kg'))) continue;
    const unit = unitBetween(scan, at, at + 1);
    if (!isSum(value, unit ?? usual) || /^(?:[$x%]|[-.]?[fJ])/.test(scan.plain.slice(at + 1, at + 3))) continue;
    let before = at - 1;
    while (at - before <= REACH && !says(scan, before, 'adds-up') && scan.clause[before] === scan.clause[at]) before -= 1;
    const said = says(scan, before, 'adds-up') && scan.clause[before] === scan.clause[at];
    const own = drafts.findIndex(
      (item) => item.count === null && item.weight?.value === value && item.places.every(({ from }) => from === at),
    );
    const heavy = unit !== null && inPounds({ value, unit }) >= HEAVIEST;
    if (!said && !heavy) continue;
    if (own !== -1) drafts.splice(own, 1);
    totals.push({ rule: 'total-summed', from: at, to: unit ? at + 1 : at, weight: value, unit: unit ?? usual, set: false });
  }
  return totals;
}
