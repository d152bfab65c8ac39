/** The solver as the page sees it: started at the first program, and stopped at once when what it works on isn't wanted any more. */
import type { Program, Solution, Solve } from '../../../src/kit/buy-list/index.ts';
import type { Answer, Request } from './messages.ts';

export interface Solver {
  readonly solve: Solve;
  /** Ends the worker; whatever is being solved rejects with a `SolverStopped`. The next program starts a new one. */
  stop(): void;
}

export class SolverStopped extends Error {
  override readonly name = 'SolverStopped';
}

/** The part of a Worker that is needed. */
export type SolverWorker = Pick<Worker, 'postMessage' | 'terminate' | 'addEventListener'>;

interface Waiting {
  readonly resolve: (solution: Solution) => void;
  readonly reject: (error: Error) => void;
}

/** Beside the page's script in the built extension. */
const WORKER = 'solver-worker.js';

export function makeSolver(start = (): SolverWorker => new Worker(WORKER, { type: 'module' })): Solver {
  let worker: SolverWorker | null = null;
  let last = 0;
  const waiting = new Map<number, Waiting>();

  const end = (error: Error): void => {
    worker?.terminate();
    worker = null;
    const left = [...waiting.values()];
    waiting.clear();
    for (const { reject } of left) reject(error);
  };

  const started = (): SolverWorker => {
    if (worker !== null) return worker;
    const made = start();
    made.addEventListener('message', ({ data }: MessageEvent<Answer>) => {
      const asked = waiting.get(data.id);
      waiting.delete(data.id);
      if (asked === undefined) return;
      if ('solution' in data) asked.resolve(data.solution);
      else asked.reject(new Error(data.failed));
    });
    made.addEventListener('error', ({ message }) => {
      if (worker === made) end(new Error(message || 'the solver did not start'));
    });
    worker = made;
    return made;
  };

  return {
    solve: (program: Program) =>
      new Promise((resolve, reject) => {
        last += 1;
        waiting.set(last, { resolve, reject });
        started().postMessage({ id: last, program } satisfies Request);
      }),
    stop: () => end(new SolverStopped('stopped')),
  };
}
