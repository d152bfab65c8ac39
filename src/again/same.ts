/** Whether two ads are one and the same. Thresholds are ours, tried on the corpus and on invented reposts (tests/unit/again). */
import type { Mark } from './mark.ts';
import { likeness } from './sketch.ts';

/** By the address that names the ad; by its words under another address; or by few words, which two sellers could both have written. */
export type AgainHow = 'address' | 'words' | 'maybe';

export interface Same {
  readonly how: AgainHow;
  /** 0 to 1: how much of the words is the same. */
  readonly likeness: number;
}

/** An ad edited at its address keeps at least this much; less, and another block of that page was taken. */
const EDITED = 0.1;
/** A repost keeps at least this much of its words. */
const REPOST = 0.5;
/** Ads with fewer shingles are too short to be somebody's own words. */
const OWN_WORDS = 12;
/** Short ads must agree nearly in full, and below this they say nothing at all. */
const SHORT = 0.8;
const LEAST = 3;
/** Of the numbers of the longer ad, at least so many stand in the shorter one. */
const NUMBERS = 0.5;

/**
 * All numbers of the goods in one are in the other too: goods sold in the meantime may be missing, but none may be another.
 * Ads that share their wording and differ in a number are different ads of one seller.
 */
function sameNumbers(one: readonly string[], other: readonly string[]): boolean {
  const [few, many] = one.length <= other.length ? [one, other] : [other, one];
  const known = new Set(many);
  return few.every((number) => known.has(number)) && few.length >= many.length * NUMBERS;
}

/** Null for two different ads. The same whichever way round. */
export function sameAd(one: Mark, other: Mark): Same | null {
  const alike = likeness(one.sketch, other.sketch);
  if (one.address !== null && one.address === other.address && alike >= EDITED) return { how: 'address', likeness: alike };
  if (!sameNumbers(one.numbers, other.numbers)) return null;
  const size = Math.min(one.size, other.size);
  if (size >= OWN_WORDS) return alike >= REPOST ? { how: 'words', likeness: alike } : null;
  return size >= LEAST && alike >= SHORT ? { how: 'maybe', likeness: alike } : null;
}

const RANK: Readonly<Record<AgainHow, number>> = { address: 0, words: 1, maybe: 2 };

/** The likelier first. */
export const likelier = (one: Same, other: Same): number => RANK[one.how] - RANK[other.how] || other.likeness - one.likeness;
