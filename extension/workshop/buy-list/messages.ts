/** What the page and the solver's worker say to each other. */
import type { Program, Solution } from '../../../src/kit/buy-list/index.ts';

export interface Request {
  readonly id: number;
  readonly program: Program;
}

export type Answer =
  | { readonly id: number; readonly solution: Solution }
  /** For the developer, not for the buyer. */
  | { readonly id: number; readonly failed: string };
