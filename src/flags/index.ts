/** All flags of a reading: first the deal-breakers, then cautions, then notes; in the order of the ad within each. */
import type { Flag, FlagWeight } from '../listing/evaluation.ts';
import type { Reading } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import type { PlateWeight } from '../price/usable.ts';
import { adRules, rust } from './ad.ts';
import { barRules } from './bars.ts';
import { benchRules } from './benches.ts';
import { breakRules } from './breaks.ts';
import { bumperRules } from './bumpers.ts';
import { claimRules } from './claims.ts';
import { plateValueRules } from './plate-values.ts';
import { plateRules } from './plates.ts';
import { rackRules } from './racks.ts';
import { type Context, flagOf, type ItemRule } from './rule.ts';

export const itemRules: readonly ItemRule[] = [
  ...plateRules,
  ...bumperRules,
  ...barRules,
  ...rackRules,
  ...benchRules,
  ...breakRules,
  ...claimRules,
  ...plateValueRules,
  rust,
];
export { adRules };

const ORDER: Readonly<Record<FlagWeight, number>> = { 'deal-breaker': 0, caution: 1, note: 2 };

const contextOf = (reading: Reading, weights: readonly PlateWeight[], settings: Settings): Context => ({
  reading,
  settings,
  plates: new Map(weights.map((plate) => [plate.item.id, plate])),
});

function flagsOfItems(rules: readonly ItemRule[], context: Context): Flag[] {
  const flags: Flag[] = [];
  for (const item of context.reading.items) {
    for (const rule of rules) {
      if (!rule.kinds.includes(item.kind.value)) continue;
      const finding = rule.test(item, context);
      if (finding !== null) flags.push(flagOf(rule, finding, item.id));
    }
  }
  return flags;
}

export function raiseFlags(reading: Reading, weights: readonly PlateWeight[], settings: Settings): Flag[] {
  if (!reading.aboutThisTrade) return [];
  const context = contextOf(reading, weights, settings);
  const flags: Flag[] = [];
  for (const rule of adRules) {
    const finding = rule.test(context);
    if (finding !== null) flags.push(flagOf(rule, finding, null));
  }
  flags.push(...flagsOfItems(itemRules, context));
  return flags.sort((a, b) => ORDER[a.weight] - ORDER[b.weight]);
}

const bearingRules = itemRules.filter((rule) => rule.weight === 'deal-breaker' || rule.bears);

/** Only the flags that an item's worth depends on: for weighing many possible states of one ad. */
export const flagsOnWorth = (reading: Reading, weights: readonly PlateWeight[], settings: Settings): Flag[] =>
  flagsOfItems(bearingRules, contextOf(reading, weights, settings));
