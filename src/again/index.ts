/** Knowing an ad again: the same address, or the same words under another. Pure; what is kept of an ad for it is its mark. */

export { type AdAddress, adAddress } from './address.ts';
export { type Known, knownAmong, type LookUp, lookUp } from './look-up.ts';
export { keysOf, MARK_VERSION, type Mark, markOf, markSchema } from './mark.ts';
export { type AgainHow, type Same, sameAd } from './same.ts';
