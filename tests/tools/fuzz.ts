/**
 * `npm run fuzz`: reads 100,000 generated and damaged ads and says what broke, made as small as it gets; exit code 1 when something did.
 *   -- N         so many instead            -- --seed S   the same ads as a run before (the seed is printed)
 */
import fc from 'fast-check';
import { loadCases } from '../corpus/case.ts';
import { alwaysFine } from './fuzz/properties.ts';

const root = process.env.IRONSIFT_ROOT ?? process.cwd();
const [runs = '100000'] = process.argv.slice(2).filter((word, index, all) => /^\d+$/.test(word) && all[index - 1] !== '--seed');
const seedAt = process.argv.indexOf('--seed');
const seed = seedAt === -1 ? Date.now() % 2 ** 31 : Number(process.argv[seedAt + 1]);
const texts = loadCases(`${root}/tests/corpus/ads`).map(({ text }) => text);

const started = performance.now();
const result = fc.check(alwaysFine(texts), { numRuns: Number(runs), seed });
const seconds = (performance.now() - started) / 1000;
console.log(`${result.numRuns} ads in ${seconds.toFixed(1)} s, seed ${seed}: ${result.failed ? 'BROKEN' : 'nothing broke'}`);
if (result.failed) {
  const [listing] = result.counterexample ?? [];
  const error = result.errorInstance;
  console.log(error instanceof Error ? (error.stack ?? error.message) : String(error));
  console.log(JSON.stringify(listing, null, 2));
  process.exitCode = 1;
}
