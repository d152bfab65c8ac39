/** The answer to one ad: what `evaluate` gives, with numbers as ranges and sentences as messages. */
import type { Caution } from '../flags/cautions.ts';
import type { BarEstimate } from '../mechanics/estimates.ts';
import type { Distance } from '../units/length.ts';
import type { Currency, Money } from '../units/money.ts';
import type { Range } from '../units/range.ts';
import type { Message } from '../words/message.ts';
import type { Span } from './page-listing.ts';
import type { Correction, Kind, Reading } from './reading.ts';
import type { SettingPath } from './setting-path.ts';

export type FlagWeight = 'deal-breaker' | 'caution' | 'note';

export interface Flag {
  /** Stable name of the flag in kebab-case, e.g. "bore-oversized". */
  readonly id: string;
  readonly weight: FlagWeight;
  /** Id of the item it concerns; null for the ad as a whole. */
  readonly item: string | null;
  /** What it means in use and what to do. */
  readonly says: Message;
  /** What was read or measured. */
  readonly found: Message | null;
  /** The limit it was held against. */
  readonly limit: Message | null;
  /** Where the limit comes from: a published rule, "common practice, no source". */
  readonly source: Message;
  readonly evidence: readonly Span[];
}

/** Money as a range, in minor units. */
export interface MoneyRange extends Range {
  readonly currency: Currency;
}

/** A baseline or cost: for a lot as a whole ("lot") or for one usable pound or kilogram. */
export interface Rate extends MoneyRange {
  readonly per: 'lot' | 'lb' | 'kg';
}

/** Why some of the plate weight on offer doesn't count as usable: `sold-on` and `unwanted` by the buyer's own plan. */
export interface Loss {
  readonly item: string;
  readonly reason:
    | 'wrong-bore'
    | 'odd'
    | 'cracked'
    | 'split-hub'
    | 'cement'
    | 'sloppy'
    | 'unknown-count'
    | 'unknown-weight'
    | 'unknown-bore'
    | 'sold-on'
    | 'unwanted';
  readonly pounds: number;
}

/** Usable plates beyond what the kit lacks: counted as usable, but worth only what they resell for. */
export interface Surplus {
  readonly item: string;
  readonly pounds: number;
}

/** One item's share of the all-in cost of the ad. Shares sum to the all-in to the minor unit. */
export interface Share {
  readonly item: string;
  readonly allIn: Money;
  /** Its share of the asking price alone; those sum to the price to the minor unit. */
  readonly price: Money;
  /** What it is worth at the going rate, or what it resells for. */
  readonly worth: MoneyRange;
  /**
   * What it costs the buyer if everything else is taken at its going worth: the all-in less the worth of the others. Below zero when the
   * others alone are worth more than the price. Null when there is nothing else, or no worth to take it at.
   */
  readonly alone: Money | null;
}

/** Parts of the calculation, in the order in which one follows from the other. */
export const STEP_GROUPS = ['weight', 'price', 'drive', 'cost', 'rates', 'worth', 'most'] as const;
export type StepGroup = (typeof STEP_GROUPS)[number];

/** One line of the calculation, for "How was this worked out?". */
export interface Step {
  readonly id: string;
  readonly label: Message;
  /** Money in minor units. */
  readonly result: Range;
  readonly unit: 'money' | 'money-per-lb' | 'money-per-mi' | 'lb' | 'mi' | 'mph' | 'mm' | 'fraction';
  readonly basis: 'stated' | 'implied' | 'assumed' | 'measured' | 'worked-out';
  readonly source: Message | null;
  /** Currency of a result in money, where it is not that of the ad. */
  readonly currency?: Currency;
  /** The part of the calculation that the line belongs to; when absent, that of the line before it. */
  readonly group?: StepGroup;
  /** How it follows from other lines, in words. */
  readonly formula?: Message;
  /** The setting that the result is, low, likely and high or one figure; the buyer may put one of their own there. */
  readonly edit?: SettingPath;
  /** A rate that was learned from the buyer's own finds. */
  readonly fromFinds?: true;
}

/** What a sound piece, or a sound pound or kilogram of plates, costs used and new. */
export interface Sound {
  readonly kind: Kind;
  readonly per: 'piece' | 'lb' | 'kg';
  readonly used: MoneyRange;
  readonly fresh: MoneyRange;
}

export interface Worth {
  readonly currency: Currency;
  /** Usable plate weight in pounds. */
  readonly usable: Range;
  readonly offered: Range;
  readonly losses: readonly Loss[];
  readonly surplus: readonly Surplus[];
  /** True weight of all plates on offer: `likely` is its centre of mass, which lies above face value for cast plates. */
  readonly trueWeight: Range;
  /** Price plus trip plus tax; null when there is no price. */
  readonly allIn: MoneyRange | null;
  /** Cost of a usable pound, from the plates' share of the all-in; null when there is no price or no usable weight. */
  readonly perUsablePound: Rate | null;
  /** What the same goods cost new, delivered, per usable pound for plates, as a lot otherwise. */
  readonly newDelivered: Rate | null;
  readonly goingRate: Rate | null;
  /** Where nothing on offer is worth anything, what a sound one of the same kind costs; null otherwise, and without a rate for it. */
  readonly sound: Sound | null;
  /** Value of all usable goods at the going rate. */
  readonly goingWorth: MoneyRange | null;
  readonly newWorth: MoneyRange | null;
  /** The most to pay the seller. Null when nothing here can be valued. */
  readonly walkAway: Money | null;
  /** What paying the asking price, and the drive, saves against the same goods new and delivered in their condition; below zero, costs. */
  readonly saving: Money | null;
  readonly openingOffer: Money | null;
  readonly split: readonly Share[];
  readonly steps: readonly Step[];
}

/** What a drive's cost is made of, in minor units of the buyer's currency; they sum to the cost. */
export interface DriveParts {
  readonly driving: Range;
  readonly time: Range;
  readonly tolls: Range;
  /** Hire of a van, when the goods need one. */
  readonly van: Range;
}

export interface Trip {
  /** One way. */
  readonly distance: Distance;
  readonly basis: 'stated' | 'typed' | 'between-places';
  /** One way in miles: a range where it comes from the coordinates of two places. */
  readonly miles: Range;
  /** There and back, as often as the load takes. */
  readonly cost: MoneyRange;
  readonly parts: DriveParts;
  /** How often one has to drive. */
  readonly times: number;
  /** Between which places the distance was worked out; why there is a van or more than one trip; what does not fit. */
  readonly notes: readonly Message[];
  /** One-way distance at which the saving is gone; null when there is no saving to spend. */
  readonly breakEven: Distance | null;
}

/** What setting out saves on average after a drive of that distance, as a range for what the drive may cost; minor units. */
export interface SavingAt {
  /** One way. */
  readonly distance: Distance;
  readonly saving: Range;
}

/** What setting out is worth on average, when the buyer may refuse at the door. */
export interface Prospect {
  /** E[max(0, worth − price)], before the drive. */
  readonly saving: Money;
  /** The same less the drive: below zero it is better to stay at home. Null when the distance isn't known. */
  readonly afterDrive: Money | null;
  /** Chance, 0 to 1, that the goods turn out worth less than the price: a drive for nothing. */
  readonly refusal: number;
  /** What it is worth to know everything before the drive: no question is worth more. */
  readonly knowingAll: Money;
  /** Asking price up to which setting out pays, rounded down to a whole major unit. Null when there is none, or no distance is known. */
  readonly breakEvenPrice: Money | null;
  /** One-way distance up to which it pays; null when no saving is left, or when driving costs nothing. */
  readonly breakEvenDistance: Distance | null;
  /** What is left of the saving at distances from none to past the break-even and past the seller; empty when there is nothing to spend. */
  readonly byDistance: readonly SavingAt[];
}

export interface Question {
  readonly id: string;
  readonly about: string;
  readonly says: Message;
  /** How much knowing the answer before the drive is worth. */
  readonly value: Money;
}

export type CallKind = 'go' | 'haggle' | 'ask' | 'leave';

export interface Call {
  readonly kind: CallKind;
  /** The call in words with its number: "Worth the drive up to 42 miles". */
  readonly says: Message;
  readonly because: readonly Message[];
}

export interface Evaluation {
  readonly reading: Reading;
  readonly corrections: readonly Correction[];
  readonly flags: readonly Flag[];
  /** What the straight bars would do under the buyer's load. */
  readonly estimates: readonly BarEstimate[];
  readonly cautions: readonly Caution[];
  readonly worth: Worth;
  readonly trip: Trip | null;
  /** Null without a price, or when something here, or all of it, can't be valued. */
  readonly prospect: Prospect | null;
  readonly questions: readonly Question[];
  readonly call: Call;
}
