/**
 * `npm run kills`: kills Chromium in the middle of writing to the store 200 times, on one profile, and holds what is found after each
 * start against what the store had confirmed; exit code 1 when anything was lost. Needs the build and Chromium, no display.
 *   -- N         so many kills instead            -- --seed S   the same steps as a run before (the seed is printed)
 */
import { killOften } from '../browser/store/kill.ts';

const words = process.argv.slice(2);
const seedAt = process.argv.indexOf('--seed');
const seed = seedAt === -1 ? Date.now() % 1_000_000 : Number(process.argv[seedAt + 1]);
const kills = Number(words.find((word, index) => /^\d+$/.test(word) && words[index - 1] !== '--seed') ?? 200);

const report = await killOften(kills, seed, (line) => console.log(line));
const { confirmed, underWay, refusals, restored, faults, finds } = report;
console.log(
  `${kills} kills, seed ${seed}: ${confirmed} confirmed steps, ${finds} finds at the end; after ${underWay} kills the step under way was there in full, after the others not at all; ${refusals} starts without a database, ${restored} with a deleted one that was brought back; ${faults.length === 0 ? 'nothing was lost' : 'LOST'}`,
);
for (const fault of faults) console.log(fault);
if (faults.length > 0) process.exitCode = 1;
