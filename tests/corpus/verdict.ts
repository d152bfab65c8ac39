/** What judging a reading against its label finds: tallies by field, faults in words, and what is wrong with no doubt raised. */
import type { Reading } from '../../src/listing/reading.ts';
import type { Label } from './case.ts';
import { type Tally, tallyIn } from './tally.ts';

export interface Verdict {
  readonly name: string;
  readonly fields: Map<string, Tally>;
  /** What differs, in words. */
  readonly faults: string[];
  /** Decisive values that are wrong though no doubt was raised about them. */
  readonly confidentlyWrong: string[];
}

/** Equal within a share of the wanted value (or of 1, when that is smaller). */
export const near = (a: number, b: number, tolerance = 0.005): boolean => Math.abs(a - b) <= tolerance * Math.max(1, Math.abs(b));

const isSaid = (value: unknown): boolean => value !== null && value !== undefined && value !== false;

/** Collects the verdict of one case. */
export class Judge {
  readonly verdict: Verdict;

  constructor(
    name: string,
    private readonly reading: Reading,
    private readonly label: Label,
  ) {
    this.verdict = { name, fields: new Map(), faults: [], confidentlyWrong: [] };
  }

  tally(field: string): Tally {
    return tallyIn(this.verdict.fields, field);
  }

  fault(words: string): void {
    this.verdict.faults.push(words);
  }

  /** Whether the reading raised a doubt about a path, or the label says that nobody could be sure of it. */
  doubted(path: string): boolean {
    const open = this.label.doubtful ?? [];
    return (
      open.some((about) => about === path || path.startsWith(`${about}.`) || about.startsWith(path)) ||
      this.reading.doubts.some(({ about }) => about.startsWith(path) || path.startsWith(about.split('.')[0] ?? '-'))
    );
  }

  confident(field: string, path = field): void {
    if (!this.doubted(path)) this.verdict.confidentlyWrong.push(field);
  }

  /** Counts one value. A `decisive` one that is said, wrong and not doubted makes the ad confidently wrong. */
  compare(field: string, said: unknown, want: unknown, equal: boolean, decisive = false): void {
    const counts = this.tally(field);
    if (equal) {
      if (isSaid(want)) counts.right += 1;
      return;
    }
    if (isSaid(said)) counts.wrong += 1;
    if (isSaid(want)) counts.missed += 1;
    this.fault(`${field}: read ${JSON.stringify(said)}, label ${JSON.stringify(want)}`);
    if (decisive && said !== null && said !== undefined) this.confident(field);
  }

  compareNumbers(field: string, said: number | null, want: number | null, decisive = false, tolerance = 0.005): void {
    this.compare(field, said, want, said === null || want === null ? said === want : near(said, want, tolerance), decisive);
  }

  compareFlag(field: string, said: boolean, want: boolean): void {
    this.compare(field, said, want, said === want);
  }
}
