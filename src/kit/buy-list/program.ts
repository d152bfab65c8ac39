/**
 * The buy list as an integer program, as plain data. Variables: x, offer bought or not; y, place driven to or not; u, pieces of an offer
 * that are used for a need; n, pieces bought new; and, where a price cut is asked for, d, the cut.
 *
 *   least   Σ kept·x + Σ trip·y + Σ use·u + Σ fresh·n
 *   with    Σ u + n = pieces           for each need
 *           u ≤ min(pieces in the offer, pieces needed)·x
 *           x ≤ y                      for the offer's place
 *           x + x' ≤ 1                 for offers that exclude each other
 *           Σ x ≥ 1                    for offers of which the buyer must have one
 *           Σ price·x + Σ cash·y + Σ fresh·n ≤ budget
 *
 * Only x and y need be whole: with them set, the rest moves pieces from offers to needs, and such a program has a whole solution at its
 * best (its matrix is totally unimodular).
 */
import type { Market } from './market.ts';
import { type OfferTerms, termsOfAll } from './terms.ts';

export interface Variable {
  readonly name: string;
  /** From zero up to this; null for no limit. */
  readonly most: number | null;
  readonly whole: boolean;
}

/** Index of a variable, and what it is multiplied by. */
export type Term = readonly [variable: number, factor: number];

export interface Row {
  readonly name: string;
  readonly terms: readonly Term[];
  readonly sense: '<=' | '>=' | '=';
  readonly right: number;
}

/** Minimise `objective` under `rows`. */
export interface Program {
  readonly variables: readonly Variable[];
  readonly objective: readonly Term[];
  readonly rows: readonly Row[];
}

export interface Wanted {
  /** What is to be least: the expected cost, or the money spent (then the budget sets no limit). */
  readonly least: 'cost' | 'spent';
  /** Sets of offers that may not be bought all together; an empty one asks for a list that buys something. */
  readonly notAll?: readonly (readonly string[])[];
  /** An offer that must be bought. */
  readonly with?: string;
  /** The price cut of the offer `with` is to be least, at an expected cost, or money spent, of at most this. */
  readonly cutFor?: number;
}

export interface BuyProgram {
  readonly program: Program;
  /** Offers with their terms, in the order of their variables, which are the program's first. */
  readonly offers: readonly OfferTerms[];
}

export function buyProgram(market: Market, wanted: Wanted): BuyProgram {
  const { needs, places, budget } = market;
  const offers = termsOfAll(market);
  const variables: Variable[] = [];
  const rows: Row[] = [];
  const variable = (name: string, most: number | null, whole: boolean): number => variables.push({ name, most, whole }) - 1;
  const row = (name: string, terms: readonly Term[], sense: Row['sense'], right: number): void => {
    rows.push({ name, terms, sense, right });
  };

  const x = offers.map((_, index) => variable(`x${index}`, 1, true));
  const y = new Map(places.map(({ id }, index) => [id, variable(`y${index}`, 1, true)]));
  const n = needs.map(({ pieces, fresh }, index) => variable(`n${index}`, fresh === null ? 0 : pieces, false));
  const cost: Term[] = places.map(({ id, trip }): Term => [y.get(id) ?? 0, trip]);
  const spent: Term[] = places.map(({ id, cash }): Term => [y.get(id) ?? 0, cash]);
  for (const [index, { fresh }] of needs.entries()) {
    cost.push([n[index] ?? 0, fresh ?? 0]);
    spent.push([n[index] ?? 0, fresh ?? 0]);
  }

  const filling: Term[][] = n.map((one) => [[one, 1]]);
  for (const [index, { offer, kept, supplies }] of offers.entries()) {
    const bought = x[index] ?? 0;
    cost.push([bought, kept]);
    spent.push([bought, offer.price]);
    row(
      `trip${index}`,
      [
        [bought, 1],
        [y.get(offer.place) ?? 0, -1],
      ],
      '<=',
      0,
    );
    for (const { need, pieces, use } of supplies) {
      const most = Math.min(pieces, needs[need]?.pieces ?? 0);
      const u = variable(`u${index}_${need}`, most, false);
      cost.push([u, use]);
      filling[need]?.push([u, 1]);
      row(
        `has${index}_${need}`,
        [
          [u, 1],
          [bought, -most],
        ],
        '<=',
        0,
      );
    }
  }
  for (const [index, { pieces }] of needs.entries()) row(`need${index}`, filling[index] ?? [], '=', pieces);

  const indexOf = new Map(offers.map(({ offer }, index) => [offer.id, index]));
  const both = new Set<string>();
  for (const [index, { offer }] of offers.entries()) {
    for (const other of offer.excludes) {
      const at = indexOf.get(other);
      if (at === undefined || at === index) continue;
      const key = `either${Math.min(index, at)}_${Math.max(index, at)}`;
      if (both.has(key)) continue;
      both.add(key);
      row(
        key,
        [
          [x[index] ?? 0, 1],
          [x[at] ?? 0, 1],
        ],
        '<=',
        1,
      );
    }
  }
  for (const [index, set] of (wanted.notAll ?? []).entries()) {
    const terms = set.flatMap((id): Term[] => (indexOf.has(id) ? [[x[indexOf.get(id) ?? 0] ?? 0, 1]] : []));
    if (set.length > 0) row(`other${index}`, terms, '<=', set.length - 1);
    else
      row(
        `other${index}`,
        x.map((one): Term => [one, 1]),
        '>=',
        1,
      );
  }
  for (const [index, group] of (market.must ?? []).entries()) {
    const terms = group.flatMap((id): Term[] => (indexOf.has(id) ? [[x[indexOf.get(id) ?? 0] ?? 0, 1]] : []));
    if (terms.length > 0) row(`must${index}`, terms, '>=', 1);
  }
  const at = wanted.with === undefined ? undefined : indexOf.get(wanted.with);
  const forced = at === undefined ? undefined : offers[at];
  if (wanted.with !== undefined && forced === undefined) throw new RangeError(`buyProgram: no offer ${wanted.with} to be had`);
  if (at !== undefined) row('with', [[x[at] ?? 0, 1]], '=', 1);
  const limit = wanted.least === 'spent' ? null : budget;
  if (wanted.cutFor === undefined || forced === undefined) {
    if (limit !== null) row('budget', spent, '<=', limit);
    return { program: { variables, objective: wanted.least === 'spent' ? spent : cost, rows }, offers };
  }
  const d = variable('d', forced.offer.price, false);
  if (wanted.least === 'spent') row('spent', [...spent, [d, -1]], '<=', wanted.cutFor);
  else row('cost', [...cost, [d, forced.offer.refusal - 1]], '<=', wanted.cutFor);
  if (limit !== null) row('budget', [...spent, [d, -1]], '<=', limit);
  return { program: { variables, objective: [[d, 1]], rows }, offers };
}
