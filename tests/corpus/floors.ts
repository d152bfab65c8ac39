/**
 * The floors under the measures of the corpus (floors.json): no change of the reader may bring a field below them. They are only ever raised, but for sets of ads that are added (their note):
 * `npm run corpus -- --raise` writes what is measured now, rounded down to two digits, where that is more than stands there.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { measuresOf, sumTallies, type Tally } from './tally.ts';
import type { Verdict } from './verdict.ts';

export interface Floors {
  /** What once brought them down, in words: sets of ads that were added. */
  readonly note?: string;
  /** Least precision and recall by field, from 0 to 1. */
  readonly fields: Readonly<Record<string, { readonly precision: number; readonly recall: number }>>;
  /** Largest share of ads with a decisive value that is wrong though no doubt was raised. */
  readonly confidentlyWrong: number;
}

/** What the whole corpus comes to. */
export interface Measured {
  readonly ads: number;
  readonly fields: ReadonlyMap<string, Tally>;
  readonly confidentlyWrong: number;
}

export function measure(verdicts: readonly Verdict[]): Measured {
  const confident = verdicts.filter((verdict) => verdict.confidentlyWrong.length > 0).length;
  return {
    ads: verdicts.length,
    fields: sumTallies(verdicts.map(({ fields }) => fields)),
    confidentlyWrong: confident / Math.max(1, verdicts.length),
  };
}

const fileIn = (root: string): string => `${root}/tests/corpus/floors.json`;
export const readFloors = (root: string): Floors => JSON.parse(readFileSync(fileIn(root), 'utf8')) as Floors;

/** Which measures lie below their floors, in words; a field with a floor that was never met is one too. */
export function shortfalls({ fields, confidentlyWrong }: Measured, floors: Floors): string[] {
  const found: string[] = [];
  for (const [field, floor] of Object.entries(floors.fields)) {
    const tally = fields.get(field);
    if (!tally) found.push(`${field}: no ad has it`);
    const { precision, recall } = measuresOf(tally ?? { right: 0, wrong: 0, missed: 0 });
    if (tally && (precision ?? 0) < floor.precision) found.push(`${field}: precision ${precision}, floor ${floor.precision}`);
    if (tally && (recall ?? 0) < floor.recall) found.push(`${field}: recall ${recall}, floor ${floor.recall}`);
  }
  if (confidentlyWrong > floors.confidentlyWrong)
    found.push(`confidently wrong: ${confidentlyWrong} of the ads, at most ${floors.confidentlyWrong}`);
  return found;
}

// A little slack keeps 0.29 from becoming 0.28 by binary fractions.
// What is right on every ad today may still miss one in a hundred of those to come.
const down = (value: number): number => Math.min(0.99, Math.floor(value * 100 + 1e-9) / 100);
const up = (value: number): number => Math.ceil(value * 100 - 1e-9) / 100;

/** Floors at what is measured, never lower than they were. */
export function raised({ fields, confidentlyWrong }: Measured, floors: Floors): Floors {
  const next: Record<string, { precision: number; recall: number }> = {};
  for (const field of [...new Set([...Object.keys(floors.fields), ...fields.keys()])].sort()) {
    const { precision, recall } = measuresOf(fields.get(field) ?? { right: 0, wrong: 0, missed: 0 });
    const floor = floors.fields[field];
    next[field] = {
      precision: Math.max(floor?.precision ?? 0, down(precision ?? 0)),
      recall: Math.max(floor?.recall ?? 0, down(recall ?? 0)),
    };
  }
  return { ...floors, fields: next, confidentlyWrong: Math.min(floors.confidentlyWrong, up(confidentlyWrong)) };
}

export const writeFloors = (root: string, floors: Floors): void =>
  writeFileSync(fileIn(root), `${JSON.stringify(floors, null, 2)}\n`);
