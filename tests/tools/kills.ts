/**
 * `npm run kills`: kills the browser in the middle of writing to the store 200 times, on one profile, and holds what is found after each
 * start against what the store had confirmed; exit code 1 when anything was lost. Needs the build and the browser, no display.
 *   -- N         so many kills instead            -- --seed S   the same steps as a run before (the seed is printed)
 *   -- --browser firefox                          Firefox instead of Chromium
 */
import { parseArgs } from 'node:util';
import { killOften } from '../browser/store/kill.ts';
import { wholeNumber } from './whole-number.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { seed: { type: 'string' }, browser: { type: 'string' } },
});
const seed = wholeNumber(values.seed, Date.now() % 1_000_000);
const kills = wholeNumber(positionals[0], 200, 1);
const name = values.browser ?? 'chromium';
if (name !== 'chromium' && name !== 'firefox') throw new Error('--browser chromium or firefox');

const report = await killOften(kills, seed, (line) => console.log(line), 900, name);
const { confirmed, underWay, refusals, restored, faults, finds } = report;
console.log(
  `${kills} kills, seed ${seed}: ${confirmed} confirmed steps, ${finds} finds at the end; after ${underWay} kills the step under way was there in full, after the others not at all; ${refusals} starts without a database, ${restored} with a deleted one that was brought back; ${faults.length === 0 ? 'nothing was lost' : 'LOST'}`,
);
for (const fault of faults) console.log(fault);
if (faults.length > 0) process.exitCode = 1;
