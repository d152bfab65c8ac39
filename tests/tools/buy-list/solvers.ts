/** The extension's own solver, called directly. */
import loadHighs from 'highs';
import { solveWithHighs } from '../../../extension/workshop/buy-list/solve-with-highs.ts';
import type { Solve } from '../../../src/kit/buy-list/index.ts';

export async function highsSolver(): Promise<Solve> {
  const highs = await loadHighs();
  return async (program) => solveWithHighs(highs, program);
}
