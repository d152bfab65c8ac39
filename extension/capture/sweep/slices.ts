/** Runs long work in short pieces, so that the page stays answerable: no piece is a task of over 50 ms, which browsers count as long. */

/** Aim for one piece, in milliseconds; one step more may follow. */
const SLICE = 8;

/** Time used so far, in milliseconds. */
export interface Spending {
  spent: number;
}

const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/** Resolves when the work is done, or was called off in between. */
export async function inSlices(work: Iterator<void>, isOff: () => boolean, spending: Spending): Promise<void> {
  let done: boolean | undefined;
  while (!done && !isOff()) {
    const start = performance.now();
    do ({ done } = work.next());
    while (!done && performance.now() - start < SLICE);
    spending.spent += performance.now() - start;
    if (!done) await pause();
  }
}
