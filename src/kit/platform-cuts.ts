/** How the sheets of a platform are cut: which rectangles come from which sheet, to scale. */
import type { Sheet, SheetId } from './platform-sheets.ts';

/** A piece on a sheet, in mm from the sheet's corner; `across` along its short side, `along` along its long one. */
export interface CutPiece {
  readonly acrossMm: number;
  readonly alongMm: number;
  readonly acrossSizeMm: number;
  readonly alongSizeMm: number;
  /** Layer that it goes into, from the ground up, from 0. */
  readonly layer: number;
}

export interface CutSheet {
  readonly sheet: SheetId;
  readonly shortMm: number;
  readonly longMm: number;
  readonly pieces: readonly CutPiece[];
}

/** What a saw takes away; common practice, no source. */
const KERF_MM = 3;
/** Sheets are laid out by what they measure in name: an oversized MDF sheet is trimmed to it. */
const nominal = (sheet: Sheet): readonly [short: number, long: number] =>
  sheet.material === 'mdf' ? [sheet.shortMm - 25.4, sheet.longMm - 25.4] : [sheet.shortMm, sheet.longMm];

interface Wanted {
  readonly short: number;
  readonly long: number;
  readonly layer: number;
}

/** Strips of one layer: as wide as a sheet is, run one way in even layers and the other way in odd ones, long ones in lengths. */
function stripsOf(short: number, long: number, acrossMm: number, alongMm: number, layer: number): Wanted[] {
  const strips: Wanted[] = [];
  for (let across = 0; acrossMm - across > 0.5; across += short) {
    for (let along = 0; alongMm - along > 0.5; along += long) {
      strips.push({ short: Math.min(short, acrossMm - across), long: Math.min(long, alongMm - along), layer });
    }
  }
  return strips;
}

interface OpenSheet {
  readonly sheet: SheetId;
  readonly size: readonly [number, number];
  readonly whole: readonly [number, number];
  /** Shelves across the sheet: each as long as its first piece, filled along the short side. */
  readonly shelves: { readonly from: number; readonly length: number; used: number }[];
  readonly pieces: CutPiece[];
}

/** Puts a piece on a sheet, on a shelf that is there or a new one; false when it has no room. */
function place(open: OpenSheet, { short, long, layer }: Wanted): boolean {
  const [width, length] = open.size;
  const put = (acrossMm: number, alongMm: number): true => {
    open.pieces.push({ acrossMm, alongMm, acrossSizeMm: short, alongSizeMm: long, layer });
    return true;
  };
  for (const shelf of open.shelves) {
    const at = shelf.used + KERF_MM;
    if (long > shelf.length + 0.5 || at + short > width + 0.5) continue;
    shelf.used = at + short;
    return put(at, shelf.from);
  }
  const last = open.shelves.at(-1);
  const from = last === undefined ? 0 : last.from + last.length + KERF_MM;
  if (from + long > length + 0.5 || short > width + 0.5) return false;
  open.shelves.push({ from, length: long, used: short });
  return put(0, from);
}

/**
 * The sheets of every layer with their pieces, by first fit of the longest first: no proof of the fewest sheets, but leftovers of one
 * layer serve another of the same sheet. A cut takes 3 mm.
 */
export function cutList(
  layers: readonly SheetId[],
  sheets: Readonly<Record<SheetId, Sheet>>,
  widthMm: number,
  depthMm: number,
): CutSheet[] {
  const open: OpenSheet[] = [];
  for (const type of new Set(layers)) {
    const sheet = sheets[type];
    const size = nominal(sheet);
    const wanted = layers.flatMap((layer, index): Wanted[] => {
      if (layer !== type) return [];
      const [across, along] = index % 2 === 0 ? [widthMm, depthMm] : [depthMm, widthMm];
      return stripsOf(size[0], size[1], across, along, index);
    });
    wanted.sort((a, b) => b.long - a.long || b.short - a.short);
    const own: OpenSheet[] = [];
    for (const piece of wanted) {
      if (own.some((one) => place(one, piece))) continue;
      const fresh: OpenSheet = { sheet: type, size, whole: [sheet.shortMm, sheet.longMm], shelves: [], pieces: [] };
      place(fresh, piece);
      own.push(fresh);
    }
    open.push(...own);
  }
  return open.map(({ sheet, whole: [shortMm, longMm], pieces }) => ({ sheet, shortMm, longMm, pieces }));
}
