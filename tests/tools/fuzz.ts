/**
 * `npm run fuzz`: reads 100,000 generated and damaged ads and says what broke, made as small as it gets; exit code 1 when something did.
 *   -- N         so many instead            -- --seed S   the same ads as a run before (the seed is printed)
 */
import { parseArgs } from 'node:util';
import fc from 'fast-check';
import { loadCases } from '../corpus/case.ts';
import { alwaysFine } from './fuzz/properties.ts';
import { wholeNumber } from './whole-number.ts';

const root = process.env.IRONSIFT_ROOT ?? process.cwd();
const { values, positionals } = parseArgs({ allowPositionals: true, options: { seed: { type: 'string' } } });
const seed = wholeNumber(values.seed, Date.now() % 2 ** 31);
const numRuns = wholeNumber(positionals[0], 100_000, 1);
const texts = loadCases(`${root}/tests/corpus/ads`).map(({ text }) => text);

const started = performance.now();
const result = fc.check(alwaysFine(texts), { numRuns, seed });
const seconds = (performance.now() - started) / 1000;
console.log(`${result.numRuns} ads in ${seconds.toFixed(1)} s, seed ${seed}: ${result.failed ? 'BROKEN' : 'nothing broke'}`);
if (result.failed) {
  const [listing] = result.counterexample ?? [];
  const error = result.errorInstance;
  console.log(error instanceof Error ? (error.stack ?? error.message) : String(error));
  console.log(JSON.stringify(listing, null, 2));
  process.exitCode = 1;
}
