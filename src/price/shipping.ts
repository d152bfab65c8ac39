/** Which class of parcel a single piece makes when a shop sends it, and what that adds to plain shipping by weight. */
import type { Item } from '../listing/reading.ts';
import type { RateCategory } from '../listing/settings.ts';
import { millimetresToInches } from '../units/length.ts';
import { inPounds } from '../units/mass.ts';
import type { Range } from '../units/range.ts';

/** A boxed piece: inches and pounds, the way parcels are measured where these limits hold. Length is its longest side. */
export interface Parcel {
  readonly lengthIn: number;
  readonly widthIn: number;
  readonly heightIn: number;
  readonly pounds: number;
}

/**
 * ordinary: goes at the plain rate. handling: pays a fee for long or heavy parcels. large: pays a large-package fee. freight: no parcel
 * carrier takes it.
 */
export type ParcelClass = 'ordinary' | 'handling' | 'large' | 'freight';

/**
 * Limits of the large US parcel carriers and of the federal post, seen in a transcription of their lists; a parcel that is *over* a limit
 * is past it. The lists change, and other countries have others.
 */
const PARCEL_LIMITS = {
  handling: { lengthIn: 48, pounds: 50 },
  large: { lengthIn: 96, lengthAndGirthIn: 130, pounds: 110 },
  freight: { lengthAndGirthIn: 165, pounds: 150 },
} as const;

const girth = ({ widthIn, heightIn }: Parcel): number => 2 * (widthIn + heightIn);

export function parcelClassOf(parcel: Parcel): ParcelClass {
  const { lengthIn, pounds } = parcel;
  const around = lengthIn + girth(parcel);
  const { handling, large, freight } = PARCEL_LIMITS;
  if (pounds > freight.pounds || around > freight.lengthAndGirthIn) return 'freight';
  if (pounds > large.pounds || lengthIn > large.lengthIn || around > large.lengthAndGirthIn) return 'large';
  return pounds > handling.pounds || lengthIn > handling.lengthIn ? 'handling' : 'ordinary';
}

/** What each class adds to shipping, in US dollars a piece. Assumptions: shops pass on a part of the carriers' fees, and no list of what they pass on is published. */
export const SURCHARGES: Readonly<Record<ParcelClass, Range>> = {
  ordinary: { low: 0, likely: 0, high: 0 },
  handling: { low: 8, likely: 15, high: 30 },
  large: { low: 40, likely: 90, high: 180 },
  freight: { low: 90, likely: 150, high: 250 },
};

/** A box is so much longer than the bar in it: a 2.2 m bar is boxed at 90 in. Calculated. */
const PACKING_IN = 90 - millimetresToInches(2200);

/** Boxes of bars in inches and pounds where the ad tells no length. The 2.2 m bar's is seen in a transcription; the others are assumptions. */
const BAR_BOXES: Readonly<Partial<Record<RateCategory, Parcel>>> = {
  bar: { lengthIn: 90, widthIn: 4, heightIn: 4, pounds: 45 },
  'curl-bar': { lengthIn: 50, widthIn: 6, heightIn: 4, pounds: 20 },
  'hex-bar': { lengthIn: 60, widthIn: 26, heightIn: 4, pounds: 50 },
  'one-inch-bar': { lengthIn: 63, widthIn: 4, heightIn: 4, pounds: 15 },
};

/** Plates, dumbbells and kettlebells are small enough that only their weight counts: a cube of this side stands for their box. An assumption. */
const SMALL_BOX_IN = 18;

/** Pieces that are sent one to a box, by weight alone. */
const ONE_TO_A_BOX: ReadonlySet<RateCategory> = new Set<RateCategory>([
  'iron',
  'machined',
  'calibrated',
  'rubber-coated',
  'bumper',
  'one-inch-plate',
  'dumbbell',
  'kettlebell',
]);

/** The box that one piece of an item is sent in; null where several boxes or an unknown weight make that no single parcel. */
export function parcelOf(item: Item, category: RateCategory): Parcel | null {
  const box = BAR_BOXES[category];
  const pounds = item.unitWeight === null ? null : inPounds(item.unitWeight.value);
  if (box !== undefined) {
    const lengthIn = item.lengthMm === null ? box.lengthIn : millimetresToInches(item.lengthMm.value) + PACKING_IN;
    return { ...box, lengthIn, pounds: pounds ?? box.pounds };
  }
  if (pounds === null || !ONE_TO_A_BOX.has(category)) return null;
  return { lengthIn: SMALL_BOX_IN, widthIn: SMALL_BOX_IN, heightIn: 6, pounds };
}
