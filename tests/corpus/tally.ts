/** Counts of right and wrong values of one field, and what they come to. */
export interface Tally {
  right: number;
  /** Said by the reading but not so. */
  wrong: number;
  /** In the label but not read. */
  missed: number;
}

/** Shares from 0 to 1; null where there was nothing to find or nothing found. */
export interface Measures {
  readonly precision: number | null;
  readonly recall: number | null;
  readonly f1: number;
}

const noTally = (): Tally => ({ right: 0, wrong: 0, missed: 0 });

const share = (part: number, rest: number): number | null => (part + rest === 0 ? null : part / (part + rest));

export const measuresOf = ({ right, wrong, missed }: Tally): Measures => ({
  precision: share(right, wrong),
  recall: share(right, missed),
  f1: right === 0 ? 0 : (2 * right) / (2 * right + wrong + missed),
});

/** The tally of a field in a map, begun when there is none. */
export function tallyIn(fields: Map<string, Tally>, field: string): Tally {
  const known = fields.get(field) ?? noTally();
  fields.set(field, known);
  return known;
}

/** Sums of many maps, in the order of the field's names. */
export function sumTallies(all: Iterable<ReadonlyMap<string, Tally>>): Map<string, Tally> {
  const sums = new Map<string, Tally>();
  for (const fields of all) {
    for (const [field, tally] of fields) {
      const sum = tallyIn(sums, field);
      sum.right += tally.right;
      sum.wrong += tally.wrong;
      sum.missed += tally.missed;
    }
  }
  return new Map([...sums].sort(([a], [b]) => a.localeCompare(b)));
}
