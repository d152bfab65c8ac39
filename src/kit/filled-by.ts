/** What a lot would fill of a kit's open needs, need by need. */
import type { Evaluation } from '../listing/evaluation.ts';
import type { KitFigures } from '../listing/settings.ts';
import { fillsOf } from './fills.ts';
import type { NamedNeed } from './need-list.ts';

export interface Filled {
  /** With the pieces that are lacking. */
  readonly need: NamedNeed;
  /** Pieces of it that the lot fills: never more than are lacking. */
  readonly pieces: number;
}

/** In the order of the needs; those of which it fills nothing are left out. */
export function filledBy(evaluation: Evaluation, open: readonly NamedNeed[], kit: Pick<KitFigures, 'plates'> | null): Filled[] {
  const fills = fillsOf(evaluation, open, kit);
  return open.flatMap((need, index): Filled[] => {
    const pieces = fills.reduce((sum, fill) => sum + (fill.need === index ? fill.pieces : 0), 0);
    return pieces === 0 ? [] : [{ need, pieces: Math.min(pieces, need.pieces) }];
  });
}
