/** Whether a thing fills a need: the same kind, and for plates and bars the same weight. */
import type { Kind } from '../listing/reading.ts';
import { sameFace } from '../price/same-face.ts';
import { inPounds, type Weight } from '../units/mass.ts';
import { nextWeight } from './next-weight.ts';

/** What is needed, owned or found, one piece of it. */
export interface Thing {
  readonly kind: Kind | 'platform';
  /** Of one piece; null where it has none that matters or none is known. */
  readonly weight: Weight | null;
}

/** A bar of 20 kg does for one of 45 lb; one of 15 kg does not. An assumption. */
const SAME_BAR = 0.05;

/** Face values that are the same plate: within rounding. A 20 kg and a 45 lb plate are not, for they make no pair. */
const samePlate = (a: Weight, b: Weight): boolean => sameFace(inPounds(a), inPounds(b));

/** Bumpers are needed for their height and for being dropped, and are sold in both units: one of 45 lb does for one of 20 kg. Common practice, no source. */
function sameBumper(a: Weight, b: Weight): boolean {
  const next = a.unit === b.unit ? null : nextWeight(a);
  return samePlate(a, b) || (next !== null && samePlate(next, b));
}

const sameBar = (a: Weight, b: Weight): boolean =>
  Math.abs(inPounds(a) - inPounds(b)) <= SAME_BAR * Math.max(inPounds(a), inPounds(b));

/** An iron plate of 1.25 lb and a micro plate of 1.25 lb are one thing; a bumper is another, for it is thicker and is dropped. */
const plain = (kind: Thing['kind']): Thing['kind'] => (kind === 'micro' ? 'plate' : kind);

export const isPlateKind = (kind: Thing['kind']): boolean => plain(kind) === 'plate' || kind === 'bumper';

/** A bar of unknown weight counts as the one needed, as most are; a plate of unknown weight counts as none. */
export function fillsNeed(thing: Thing, need: Thing): boolean {
  if (plain(thing.kind) !== plain(need.kind)) return false;
  if (isPlateKind(need.kind)) {
    if (thing.weight === null || need.weight === null) return false;
    return need.kind === 'bumper' ? sameBumper(thing.weight, need.weight) : samePlate(thing.weight, need.weight);
  }
  if (need.kind === 'bar') return thing.weight === null || need.weight === null || sameBar(thing.weight, need.weight);
  return true;
}
