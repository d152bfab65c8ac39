/** The structured content of an ad. Every value says how it is known (basis), where it stands (evidence) and which rule read it. */
import type { Distance } from '../units/length.ts';
import type { Weight } from '../units/mass.ts';
import type { Currency, Money } from '../units/money.ts';
import type { Message } from '../words/message.ts';
import type { Span } from './page-listing.ts';

export type Basis = 'stated' | 'implied' | 'assumed' | 'measured';

/** One value of a reading. `rule` names the recogniser or refiner; `evidence` are spans of `Reading.text`. */
export interface Fact<T> {
  readonly value: T;
  readonly basis: Basis;
  readonly rule: string;
  readonly evidence: readonly Span[];
}

export const KINDS = [
  'plate',
  'bumper',
  'micro',
  'bar',
  'curl-bar',
  'hex-bar',
  'rack',
  'stands',
  'bench',
  'collars',
  'dumbbell',
  'kettlebell',
  'storage',
  'other',
] as const;
export type Kind = (typeof KINDS)[number];

/** Kinds that are loaded on a bar: what usable pounds are made of. */
export const PLATE_KINDS: readonly Kind[] = ['plate', 'bumper', 'micro'];
export const isPlate = (kind: Kind): boolean => PLATE_KINDS.includes(kind);

export const MATERIALS = ['iron', 'steel', 'rubber', 'urethane', 'vinyl', 'cement', 'wood', 'chrome'] as const;
export type Material = (typeof MATERIALS)[number];

/** How plates were made, as far as the ad says: decides how far face value can be trusted. */
export const GRADES = ['calibrated', 'machined', 'cast', 'rubber-coated'] as const;
export type Grade = (typeof GRADES)[number];

export const CONDITIONS = [
  'new',
  'like-new',
  'rust-light',
  'rust',
  'rust-heavy',
  'no-rust',
  'bent',
  'straight',
  'seized-sleeves',
  'spins',
  'cracked',
  'chipped',
  'missing-parts',
  'missing-catches',
  'repainted',
  'home-made',
  'stored-outdoors',
  'stored-indoors',
  'wobbly',
  'welded',
  'bolted',
  'split-hub',
  'mismatched',
  'odd',
  'torn',
] as const;
export type Condition = (typeof CONDITIONS)[number];

/** What a buyer does with one thing of a bundle: keep it, sell it on, or count it for nothing. */
export const PLANS = ['keep', 'sell', 'nothing'] as const;
export type Plan = (typeof PLANS)[number];

/** Rule of a condition that the ad says of one piece among several: "one of the 10s is cracked". */
export const OF_ONE_PIECE = 'condition-of-one';

/** Rule of a hole told in whole inches ("2 inch hole"): the name of the sleeve that it is for, which nobody has measured. */
export const NOMINAL_BORE = 'bore-nominal';

export interface Item {
  /** Stable within a reading: kind and order of appearance ("plate-1"). */
  readonly id: string;
  readonly kind: Fact<Kind>;
  /** Pieces, not pairs. */
  readonly count: Fact<number> | null;
  readonly unitWeight: Fact<Weight> | null;
  /** Weight of all pieces together: stated, or count times unit weight. */
  readonly totalWeight: Fact<Weight> | null;
  /** Which sleeve it is made for (plates), or has (bars). */
  readonly fits: Fact<'50mm' | '25mm'> | null;
  /** Hole of a plate in millimetres, as stated. */
  readonly boreMm: Fact<number> | null;
  readonly shaftMm: Fact<number> | null;
  readonly sleeveMm: Fact<number> | null;
  readonly lengthMm: Fact<number> | null;
  /** A maker's claim: capacity in pounds or kilograms. */
  readonly capacity: Fact<Weight> | null;
  /** A maker's claim: tensile strength in psi. */
  readonly tensilePsi: Fact<number> | null;
  readonly diameterMm: Fact<number> | null;
  /** Of a rack, stands or a bench: from the floor to its top. */
  readonly heightMm: Fact<number> | null;
  /** Of a bench: of what one lies on. */
  readonly widthMm: Fact<number> | null;
  /** Of a bar: how far it is out of true, as the buyer measured it. No ad is read for it. */
  readonly bowMm: Fact<number> | null;
  readonly material: Fact<Material> | null;
  readonly grade: Fact<Grade> | null;
  readonly conditions: readonly Fact<Condition>[];
  /** Price of this line as a whole, where the ad gives it a price of its own. */
  readonly ownPrice: Fact<Money> | null;
  /** What single pieces of it weighed on the buyer's scale, one weight per piece. */
  readonly weighed: Fact<readonly Weight[]> | null;
  /** What the buyer would do with it; null is as good as "keep". */
  readonly plan: Fact<Plan> | null;
  /** What all of it would fetch when sold on, where the buyer says so. */
  readonly resale: Fact<Money> | null;
  readonly basis: Basis;
  readonly evidence: readonly Span[];
}

/** Hole of a plate as far as somebody measured it, or null. */
export const measuredBore = ({ boreMm }: Pick<Item, 'boreMm'>): Fact<number> | null =>
  boreMm?.rule === NOMINAL_BORE ? null : boreMm;

/** Bow of a bar that was measured and shown neither to be straight nor to be bent, or null. */
export const doubtfulBow = ({ bowMm, conditions }: Pick<Item, 'bowMm' | 'conditions'>): Fact<number> | null =>
  conditions.some(({ value }) => value === 'bent' || value === 'straight') ? null : bowMm;

/** Whether the buyer means to keep it, as far as they said. */
export const isKept = (item: Item): boolean => (item.plan?.value ?? 'keep') === 'keep';

/** Whether the ad is about one single piece, as far as it says: a bench, a bar, one plate. */
export const isOnePiece = ({ items }: Pick<Reading, 'items'>): boolean =>
  items.length === 1 && items.every(({ kind, count }) => (isPlate(kind.value) ? count?.value === 1 : (count?.value ?? 1) === 1));

export type PriceBasis = 'lot' | 'per-pound' | 'per-kilogram' | 'each' | 'pair' | 'range' | 'none';

/** What an item says of itself before anything is known. */
export const NO_FACTS = {
  count: null,
  unitWeight: null,
  totalWeight: null,
  fits: null,
  boreMm: null,
  shaftMm: null,
  sleeveMm: null,
  lengthMm: null,
  capacity: null,
  tensilePsi: null,
  diameterMm: null,
  heightMm: null,
  widthMm: null,
  bowMm: null,
  material: null,
  grade: null,
  ownPrice: null,
  weighed: null,
  plan: null,
  resale: null,
} as const satisfies Partial<Item>;

export interface Asking {
  /** Price of everything on offer in the ad: stated, or worked out from a unit price. Null when the ad doesn't say. */
  readonly amount: Fact<Money> | null;
  readonly basis: PriceBasis;
  /** Price per pound, kilogram, piece or pair. */
  readonly unitAmount: Fact<Money> | null;
  /** The upper end, where the ad gives a range. */
  readonly high: Fact<Money> | null;
  readonly currency: Fact<Currency> | null;
  readonly firm: Fact<boolean> | null;
  readonly openToOffers: Fact<boolean> | null;
  /** Crossed-out, "was", "retail": never the asking price. */
  readonly former: readonly Fact<Money>[];
  /** Delivery or shipping, when the seller offers it at a price. */
  readonly delivery: Fact<Money> | null;
  /** The price is a stand-in ($1, $1234) for "make me an offer". */
  readonly placeholder: boolean;
}

/** A value set by the buyer: by hand, by settling a doubt, or by measuring. `path` as "asking.amount" or "plate-1.count". */
export interface Correction {
  readonly path: string;
  readonly value: string | number | boolean | null;
  readonly unit?: string | undefined;
  readonly basis?: 'stated' | 'measured' | undefined;
}

export interface Choice {
  readonly says: Message;
  readonly corrections: readonly Correction[];
}

/** Something that could be meant in two ways. The first choice is what the reading assumes until it is settled. */
export interface Doubt {
  readonly id: string;
  readonly about: string;
  readonly why: Message;
  readonly choices: readonly Choice[];
  readonly evidence: readonly Span[];
}

/** Terms of sale that a buyer should know: nothing may be tried, the pictures are not of the goods, money is wanted before they are seen. */
export type SaleTerm = 'no-test' | 'stock-photo' | 'paid-ahead';

export interface Reading {
  /** The text that all spans index: the title's line, when it is not in the text already, then the text as given. */
  readonly text: string;
  readonly language: 'en' | 'de';
  readonly asking: Asking;
  readonly items: readonly Item[];
  /** Items that the ad names but says are gone. */
  readonly sold: readonly Item[];
  /** A weight stated for the lot as a whole ("300 lb in all"). */
  readonly statedTotal: Fact<Weight> | null;
  readonly place: Fact<string> | null;
  readonly distance: Fact<Distance> | null;
  readonly aboutThisTrade: boolean;
  readonly wanted: boolean;
  readonly terms: readonly Fact<SaleTerm>[];
  readonly doubts: readonly Doubt[];
}
