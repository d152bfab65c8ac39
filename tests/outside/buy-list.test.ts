/** The buy list against a second solver of another make (YALPS 0.6.4, MIT): the same least cost for the same program. */
import { beforeAll, expect, it } from 'vitest';
import { buyProgram, type Wanted } from '../../src/kit/buy-list/program.ts';
import type { Solve } from '../../src/kit/buy-list/solve.ts';
import { madeMarket } from '../tools/buy-list/markets.ts';
import { highsSolver } from '../tools/buy-list/solvers.ts';
import { solveWithYalps } from '../tools/buy-list/yalps.ts';

let solve: Solve;
beforeAll(async () => {
  solve = await highsSolver();
});

it.each<[Wanted['least'], number, number]>([
  ['cost', 0, 150],
  ['spent', 1000, 50],
])('has the same least %s as another solver', { timeout: 120_000 }, async (least, first, count) => {
  let solved = 0;
  let infeasible = 0;
  for (let seed = first; seed < first + count; seed += 1) {
    const { program } = buyProgram(madeMarket(seed, { offers: 4 + (seed % 13), needs: 3 + (seed % 6) }), { least });
    const other = solveWithYalps(program);
    if (other === null) continue;
    const own = await solve(program);
    expect(own.status, `seed ${seed}`).toBe(other.status);
    if (own.status === 'infeasible' || other.status === 'infeasible') infeasible += 1;
    else {
      expect(Math.round(own.objective), `seed ${seed}`).toBe(Math.round(other.objective));
      solved += 1;
    }
  }
  expect(solved + infeasible).toBeGreaterThan(count * 0.95);
  expect(solved).toBeGreaterThan(count / 2);
  if (least === 'cost') expect(infeasible).toBeGreaterThan(0);
});
