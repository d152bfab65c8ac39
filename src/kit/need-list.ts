/** The list of needs as it is kept: what follows from the lifter's figures, and over it the buyer's own word. */
import type { KitFigures } from '../listing/settings.ts';
import { kilograms, type MassUnit, type Weight } from '../units/mass.ts';
import { type Need, needsOf } from './needs.ts';

/** A need with the name that it has in the store. */
export interface NamedNeed extends Need {
  readonly id: string;
}

/** A need as the store keeps it. `own`: set, added or (with 0 pieces) taken off by the buyer. */
export interface StoredNeed {
  readonly id: string;
  readonly kind: Need['kind'];
  readonly pieces: number;
  readonly weight: Weight | null;
  readonly own?: boolean | undefined;
}

const DEFAULT = 'default/';
const idOf = ({ kind, weight }: Pick<Need, 'kind' | 'weight'>): string =>
  `${DEFAULT}${kind}${weight === null ? '' : `/${weight.value}${weight.unit}`}`;

/** Unit of the plates that are bought. */
export const plateUnit = ({ plates }: Pick<KitFigures, 'plates'>): MassUnit => (plates === 'kg' ? 'kg' : 'lb');

/** The list that the figures ask for. A mixed kit has its bar in kilograms, as its bumpers are. */
export function defaultNeeds(figures: KitFigures): NamedNeed[] {
  const { best, jump, olympicLifts, plates } = figures;
  return needsOf({ best, jump, olympicLifts, unit: plateUnit(figures) })
    .map((need) => (plates === 'mixed' && need.kind === 'bar' ? { ...need, weight: kilograms(20) } : need))
    .map((need) => ({ ...need, id: idOf(need) }));
}

/** The list in the order of the default one, the buyer's own needs behind it; what was taken off is left out. */
export function needList(stored: readonly StoredNeed[], figures: KitFigures): NamedNeed[] {
  const defaults = defaultNeeds(figures);
  const place = new Map(defaults.map(({ id }, index) => [id, index]));
  return stored
    .filter(({ pieces }) => pieces > 0)
    .map(({ id, kind, pieces, weight }) => {
      const because = defaults[place.get(id) ?? -1]?.because ?? 'own';
      return { id, kind, pieces, weight, because };
    })
    .sort((a, b) => (place.get(a.id) ?? 1000) - (place.get(b.id) ?? 1000) || (a.id < b.id ? -1 : 1));
}

export interface ListChange {
  readonly put: readonly StoredNeed[];
  readonly remove: readonly string[];
}

/** What has to be written so that the list follows the figures. What the buyer set stays; with `reset` it goes too. */
export function listChange(stored: readonly StoredNeed[], figures: KitFigures, reset = false): ListChange {
  const kept = new Map(stored.map((one) => [one.id, one]));
  const wanted = defaultNeeds(figures);
  const names = new Set(wanted.map(({ id }) => id));
  const isOwn = ({ own }: StoredNeed): boolean => own === true && !reset;
  return {
    put: wanted.flatMap(({ id, kind, pieces, weight }): StoredNeed[] => {
      const before = kept.get(id);
      const same = before !== undefined && (isOwn(before) || (before.pieces === pieces && before.own !== true));
      return same ? [] : [{ id, kind, pieces, weight }];
    }),
    remove: stored.filter((one) => !names.has(one.id) && !isOwn(one)).map(({ id }) => id),
  };
}
