/** Knowing an ad again: the same address, or the same words under another. Pure; what is kept of an ad for it is its mark. */

/** By the address that names the ad; by its words under another address; or by few words, which two sellers could both have written. */
export type AgainHow = 'address' | 'words' | 'maybe';
