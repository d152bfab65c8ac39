/** What recognisers propose: mentions, each with its tokens and the rule that read it. Refiners make items and the price of them. */
import type { Condition, Kind } from '../listing/reading.ts';
import type { MassUnit } from '../units/mass.ts';

export interface Place {
  readonly from: number;
  readonly to: number;
  readonly rule: string;
}

/** So many pieces of such a weight. */
export interface Quantity extends Place {
  readonly count: number | null;
  /** The count is not written but follows from the words ("set of 45s" is two). */
  readonly countImplied?: boolean;
  /** Value of the weight; null for "4 plates". */
  readonly weight: number | null;
  readonly unit: MassUnit | null;
  /** Token of the noun inside the notation, if any. */
  readonly noun: number | null;
  /** "One of the 10s": a part of goods that may be told elsewhere. */
  readonly partitive?: boolean;
  /** Count and weight could be the other way round (a bare "10x5"). */
  readonly either?: boolean;
  /** The count that the seller gave before and took back, where it may have been that of other goods. */
  readonly was?: number;
  /** One of a list whose members share a count or a noun. */
  readonly list?: number;
}

/** A weight stated for the lot as a whole. `set` when it names a set by its size ("300 lb set"). */
export interface Total extends Place {
  readonly weight: number;
  readonly unit: MassUnit | null;
  readonly set: boolean;
  /** In brackets behind an item: its own subtotal, or the sum. */
  readonly bracketed?: boolean;
}

export type Measure =
  | 'boreMm'
  | 'shaftMm'
  | 'sleeveMm'
  | 'lengthMm'
  | 'diameterMm'
  | 'widthMm'
  | 'heightMm'
  /** A size of something that is no concern of ours: read, so that it is taken for nothing else. */
  | 'otherMm'
  | 'fits25'
  | 'fits50'
  | 'tensilePsi'
  | 'capacity';

export interface Fact extends Place {
  readonly measure: Measure;
  readonly value: number;
  readonly unit?: MassUnit | null;
  readonly hearsay?: boolean;
}

export type PriceRole =
  | 'asking'
  | 'per-pound'
  | 'per-kilogram'
  | 'each'
  | 'pair'
  | 'all'
  | 'former'
  | 'saving'
  | 'delivery'
  | 'deposit'
  /** Price of every line that has none of its own ("everything is $5 unless marked"). */
  | 'default'
  | 'other';

export interface Price extends Place {
  /** Amount in major units. */
  readonly amount: number;
  readonly currency: string | null;
  readonly high?: number;
  role: PriceRole;
  /** A price for everything, told by a word that leaves no doubt ("for all", "bundle price"). */
  whole?: boolean;
  /** Told by a word that is also said of asking prices ("cost", "new price"), or bid: taken where no price is asked. */
  weak?: boolean;
  /** Written with a currency, or told to be a price by the words around it. */
  readonly sure: boolean;
}

/** A noun of the trade that no quantity took. */
export interface Noun extends Place {
  readonly kind: Kind;
  readonly count: number | null;
  readonly plural: boolean;
  readonly weak: boolean;
}

export interface Finding extends Place {
  readonly condition: Condition;
  readonly hearsay?: boolean;
}
