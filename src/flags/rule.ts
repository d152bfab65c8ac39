/** What a flag is made of: data and a predicate. Rules are listed in one file per kind of equipment. */
import type { Flag, FlagWeight } from '../listing/evaluation.ts';
import type { Span } from '../listing/page-listing.ts';
import type { Condition, Fact, Item, Kind, Reading } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import type { PlateWeight } from '../price/usable.ts';
import type { Money } from '../units/money.ts';
import { message, type Param } from '../words/message.ts';
import type { Held, LimitSource } from './limits.ts';

export interface Context {
  readonly reading: Reading;
  readonly settings: Settings;
  /** Plate weight by item. */
  readonly plates: ReadonlyMap<string, PlateWeight>;
}

/** What a predicate gives when its flag is up. */
export interface Finding {
  /** In place of the rule's weight. */
  readonly weight?: FlagWeight;
  /** In place of the rule's sentence. */
  readonly says?: string;
  readonly params?: Readonly<Record<string, Param>>;
  /** What was read or measured: parameters of the "found" sentence. */
  readonly found?: Readonly<Record<string, Param>>;
  /** Parameters of the "limit" sentence. */
  readonly limit?: Readonly<Record<string, Param>>;
  readonly source?: LimitSource;
  readonly evidence: readonly Span[];
}

export interface ItemRule {
  readonly id: string;
  readonly kinds: readonly Kind[];
  readonly weight: FlagWeight;
  readonly source: LimitSource;
  /** Says that the flag bears on an item's worth though it is no deal-breaker by itself. */
  readonly bears?: true;
  readonly test: (item: Item, context: Context) => Finding | null;
}

export interface AdRule {
  readonly id: string;
  readonly weight: FlagWeight;
  readonly source: LimitSource;
  readonly test: (context: Context) => Finding | null;
}

const key = (id: string, part: string): string => `flag_${id.replaceAll('-', '_')}_${part}`;

/** The flag of a finding: its sentences are found by the flag's name. */
export function flagOf(rule: ItemRule | AdRule, finding: Finding, item: string | null): Flag {
  return {
    id: rule.id,
    weight: finding.weight ?? rule.weight,
    item,
    says: message(finding.says ?? key(rule.id, 'says'), finding.params),
    found: finding.found ? message(key(rule.id, 'found'), finding.found) : null,
    limit: finding.limit ? message(key(rule.id, 'limit'), finding.limit) : null,
    source: message(`source_${(finding.source ?? rule.source).replaceAll('-', '_')}`),
    evidence: finding.evidence,
  };
}

/** The part of a finding that says whose limit it was. */
export const sourceOf = ({ source }: Held): Pick<Finding, 'source'> => (source === undefined ? {} : { source });

export const stated = (item: Item, condition: Condition): Fact<Condition> | null =>
  item.conditions.find((fact) => fact.value === condition) ?? null;

/** A predicate for a flag that a condition word raises by itself. */
export const onCondition =
  (condition: Condition) =>
  (item: Item): Finding | null => {
    const fact = stated(item, condition);
    return fact === null ? null : { evidence: fact.evidence };
  };

/** What an item costs in the buyer's currency: its own price, or that of the ad when it is the only thing in it; null where none is told. */
export function priceOf(item: Item, { reading: { items, asking }, settings }: Context): Fact<Money> | null {
  const price = item.ownPrice ?? (items.length === 1 ? asking.amount : null);
  return price === null || price.value.currency !== settings.currency || asking.placeholder ? null : price;
}
