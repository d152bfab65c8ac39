/** Runs long work in short pieces, so that the page stays answerable: no piece is a task of over 50 ms, which browsers count as long. */

/** Aim for one piece, in milliseconds; one step more may follow. */
const SLICE = 8;

/** Time used so far, in milliseconds. */
export interface Spending {
  spent: number;
}

const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/** The work's result; null when it was called off in between. */
export async function inSlices<T>(work: Generator<void, T>, isOff: () => boolean, spending: Spending): Promise<T | null> {
  for (;;) {
    const start = performance.now();
    do {
      const step = work.next();
      if (step.done) {
        spending.spent += performance.now() - start;
        return step.value;
      }
    } while (performance.now() - start < SLICE);
    spending.spent += performance.now() - start;
    await pause();
    if (isOff()) return null;
  }
}
