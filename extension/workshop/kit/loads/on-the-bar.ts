/** The kit as the arithmetic of loads takes it. */
import type { LoadedBar, OwnedPlates } from '../../../../src/kit/plates.ts';
import { isPlateKind, type Thing } from '../../../../src/kit/same-thing.ts';
import type { KitFigures } from '../../../../src/listing/settings.ts';
import { kilograms, type MassUnit, pounds, type Weight } from '../../../../src/units/mass.ts';
import type { Owned } from '../../../store/index.ts';

/** Plates of known weight, of both units alike. */
export const platesOf = (
  things: readonly (Thing & { readonly pieces: number; readonly thicknessMm?: number | null | undefined })[],
): OwnedPlates[] =>
  things.flatMap(({ kind, weight, pieces, thicknessMm }) =>
    isPlateKind(kind) && weight !== null && weight.value > 0 ? [{ weight, pieces, thicknessMm: thicknessMm ?? null }] : [],
  );

export const barsOf = (owned: readonly Owned[]): Owned[] =>
  owned.filter(({ kind, pieces }) => pieces > 0 && (kind === 'bar' || kind === 'curl-bar' || kind === 'hex-bar'));

/** Weight of the bar where none is owned, or its own isn't known. */
const usualBar = (unit: MassUnit): Weight => (unit === 'kg' ? kilograms(20) : pounds(45));

export const loadedBar = (own: Owned | null, figures: KitFigures, unit: MassUnit): LoadedBar => ({
  weight: own?.weight && own.weight.value > 0 ? own.weight : usualBar(unit),
  collars: figures.collars ?? { value: 0, unit },
  sleeveMm: figures.sleeveLengthMm,
});
