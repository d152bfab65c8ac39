/**
 * The buy list's program solved by HiGHS and by a solver in plain TypeScript (YALPS 0.6.4, MIT) as the market grows, on the same programs
 * in one run. The latter gets ten seconds for each, and isn't asked for larger ones once it ran out of them twice.
 */
import { buyList, type Program, type Solve } from '../../src/kit/buy-list/index.ts';
import { further } from '../../src/kit/buy-list/others.ts';
import { buyProgram } from '../../src/kit/buy-list/program.ts';
import { madeMarket } from '../tools/buy-list/markets.ts';
import { highsSolver } from '../tools/buy-list/solvers.ts';
import { solveWithYalps } from '../tools/buy-list/yalps.ts';

const TIME_OUT = 10_000;
/** For the programs that follow, of which there are many. */
const SHORT_TIME_OUT = 3000;
const FOLLOWED = 13;
const SEEDS = [1, 2, 3, 4, 5];

/** The programs that follow on one market: alternatives and price cuts. */
async function followUps(seed: number, solve: Solve): Promise<Program[]> {
  const market = madeMarket(seed, { offers: 30, budgets: 1 });
  const list = await buyList(market, solve);
  const programs: Program[] = [];
  if (list.kind !== 'kit') return programs;
  const noted: Solve = (program) => {
    programs.push(program);
    return solve(program);
  };
  let slices = 0;
  for await (const _slice of further(market, list.kit, noted)) {
    slices += 1;
    if (slices === 6) break;
  }
  return programs;
}

/** How far a solution breaks a row at worst: the other solver gives some that are none. */
const brokenBy = ({ rows }: Program, values: readonly number[]): number =>
  Math.max(
    ...rows.map(({ terms, sense, right }) => {
      const over = terms.reduce((total, [at, factor]) => total + factor * (values[at] ?? 0), -right);
      return sense === '=' ? Math.abs(over) : sense === '<=' ? over : -over;
    }),
  );

/** Wall time of one call in milliseconds: worker threads of a solver would not show otherwise. */
async function timed<T>(run: () => T | Promise<T>): Promise<{ readonly took: number; readonly gave: T }> {
  const start = performance.now();
  const gave = await run();
  return { took: performance.now() - start, gave };
}

const sum = (times: readonly number[]): number => times.reduce((total, one) => total + one, 0);
const shown = (times: readonly number[]): string => `${middle(times).toFixed(0)} ms (worst ${Math.max(...times).toFixed(0)})`;
const middle = (times: readonly number[]): number => [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;

export async function benchBuyList(): Promise<void> {
  const solve = await highsSolver();
  // Warm-up: the first solve compiles.
  await solve(buyProgram(madeMarket(0, { offers: 20 }), { least: 'cost' }).program);
  console.log(`\nBuy list, proven best: median of ${SEEDS.length} made-up markets (aim: under 2 s for 400 offers)`);
  let late = 0;
  for (const offers of [20, 50, 100, 200, 400, 800]) {
    const programs = SEEDS.map((seed) => buyProgram(madeMarket(seed, { offers }), { least: 'cost' }).program);
    const own: number[] = [];
    const other: number[] = [];
    let stopped = 0;
    for (const program of programs) {
      own.push((await timed(() => solve(program))).took);
      if (late >= 2) continue;
      const { took, gave } = await timed(() => solveWithYalps(program, TIME_OUT));
      other.push(took);
      if (gave === null) stopped += 1;
    }
    const size = `${programs[0]?.variables.length} variables, ${programs[0]?.rows.length} rows`;
    const compared =
      other.length === 0
        ? 'not asked'
        : `${shown(other)}${stopped > 0 ? `, ${stopped} of ${other.length} stopped` : ''}: ${(middle(other) / middle(own)).toFixed(1)} times as long, in all ${(sum(other) / sum(own)).toFixed(1)}`;
    console.log(`${String(offers).padStart(4)} offers (${size}): HiGHS ${shown(own)}, YALPS ${compared}`);
    if (stopped > 1) late += 1;
  }
  const own: number[] = [];
  const other: number[] = [];
  const failed = { stopped: 0, worse: 0 };
  for (const program of await followUps(FOLLOWED, solve)) {
    const first = await timed(() => solve(program));
    const second = await timed(() => solveWithYalps(program, SHORT_TIME_OUT));
    own.push(first.took);
    other.push(second.took);
    if (second.gave === null) failed.stopped += 1;
    else if (first.gave.status === 'optimal') {
      const { gave } = second;
      const right =
        gave.status === 'optimal' && gave.objective < first.gave.objective + 1 && brokenBy(program, gave.values) < 1e-3;
      if (!right) failed.worse += 1;
    }
  }
  console.log(
    `the ${own.length} programs of three alternatives and three price cuts among 30 offers: HiGHS ${shown(own)}, YALPS ${shown(other)}, ${failed.stopped} stopped after ${SHORT_TIME_OUT / 1000} s, ${failed.worse} worse or no solution`,
  );
}
