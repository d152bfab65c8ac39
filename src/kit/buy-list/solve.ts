/** What a solver of integer programs has to give. It is an argument: the core has none of its own. */
import type { Program } from './program.ts';

export type Solution =
  | {
      readonly status: 'optimal';
      /** One value per variable, in the program's order. */
      readonly values: readonly number[];
      readonly objective: number;
      /** No solution is below this, by the solver's own proof. */
      readonly bound: number;
    }
  | { readonly status: 'infeasible' };

/**
 * Solves to an absolute gap under one minor unit, so that a program whose objective is whole is solved exactly. Rejects when the solver
 * fails or is stopped.
 */
export type Solve = (program: Program) => Promise<Solution>;
