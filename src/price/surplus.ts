/** What of the usable plates the kit has no need of. */
import type { Item } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import { inPounds } from '../units/mass.ts';
import { sameFace } from './same-face.ts';

/** Usable plates of one line: `gain` is what a pound is worth more when it is kept than when it is sold on, in minor units. */
export interface Kept {
  readonly item: Item;
  readonly unit: number;
  readonly pounds: number;
  readonly gain: number;
}

/**
 * Share of each line's usable pounds that is beyond the need, by item. The kit takes what is worth most to keep first. Plates whose face
 * value the ad doesn't give can't be held against a need and are no surplus. Empty where no need is known.
 */
export function surplusOf(kept: readonly Kept[], need: Settings['need']): ReadonlyMap<string, number> {
  const shares = new Map<string, number>();
  if (need === null) return shares;
  const lacking = need.map(({ weight, pieces }) => ({ face: inPounds(weight), pieces }));
  for (const { item, unit, pounds } of [...kept].sort((a, b) => b.gain - a.gain)) {
    if (unit <= 0 || pounds <= 0) continue;
    const pieces = pounds / unit;
    let wanted = 0;
    for (const one of lacking) {
      if (!sameFace(one.face, unit)) continue;
      const taken = Math.min(one.pieces, pieces - wanted);
      one.pieces -= taken;
      wanted += taken;
    }
    if (wanted < pieces - 1e-9) shares.set(item.id, 1 - wanted / pieces);
  }
  return shares;
}
