/** A draft of an item: what the mentions of it said so far. Refiners fill it in; `finish` makes the item of it. */
import type { Condition, Grade, Kind, Material } from '../../listing/reading.ts';
import type { MassUnit } from '../../units/mass.ts';
import type { Fact, Place } from '../mention.ts';

export interface Known<T> {
  value: T;
  rule: string;
  from: number;
  to: number;
  implied?: boolean;
  hearsay?: boolean;
}

export interface Draft {
  kind: Kind;
  kindRule: string;
  kindAt: number;
  /** The kind is a guess by default. */
  kindAssumed: boolean;
  count: Known<number> | null;
  weight: Known<number> | null;
  unit: MassUnit | null;
  /** Weight of this line as a whole, where pieces are not told. */
  total: { value: number; unit: MassUnit; place: Place } | null;
  places: Place[];
  fits: Known<'50mm' | '25mm'> | null;
  /** Words of fit said of the lot, which hold when the ad names only one. */
  spread: Known<'50mm' | '25mm'>[];
  measures: Map<Fact['measure'], Fact>;
  material: Known<Material> | null;
  grade: Known<Grade> | null;
  conditions: Known<Condition>[];
  ownPrice: { amount: number; currency: string | null; place: Place } | null;
  sold: boolean;
  /** Where the ad says that somebody has spoken for it. */
  pending?: Place;
  partitive: boolean;
  /** Count and weight could be the other way round. */
  either: boolean;
  /** Made up from a set's usual composition. */
  implied: boolean;
  list: number | null;
  /** The count before the seller corrected one that may be that of other goods. */
  was?: number;
  /** Tells one piece from others of its kind (see labelled.ts). */
  label?: string;
  /** Names goods again that the ad counts elsewhere (see recall.ts). */
  again?: boolean;
}

export function draft(kind: Kind, place: Place, more: Partial<Draft> = {}): Draft {
  return {
    kind,
    kindRule: place.rule,
    kindAt: place.from,
    kindAssumed: false,
    count: null,
    weight: null,
    unit: null,
    total: null,
    places: [place],
    fits: null,
    spread: [],
    measures: new Map(),
    material: null,
    grade: null,
    conditions: [],
    ownPrice: null,
    sold: false,
    partitive: false,
    either: false,
    implied: false,
    list: null,
    ...more,
  };
}

export const firstToken = (item: Draft): number => Math.min(...item.places.map((place) => place.from));
