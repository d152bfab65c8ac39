/**
 * `npm run corpus`: reads every corpus ad, prints precision and recall per field, then the ads that differ, worst first; exit code 1 below a floor.
 *   -- --all     every ad that differs, not the worst 25      -- --quiet   none of them
 *   -- WORD      only ads whose name holds it (no floors)     -- --raise   raises the floors to what is measured
 *   -- --letters how each ad was cut up, and which rule read what
 *   -- --outside where a recogniser library of the registry and the reader differ, and why (nothing else is printed)
 */
import { read } from '../../src/read/index.ts';
import { listingOf, loadCases } from '../corpus/case.ts';
import { measure, raised, readFloors, shortfalls, writeFloors } from '../corpus/floors.ts';
import { judge } from '../corpus/score.ts';
import { measuresOf, type Tally } from '../corpus/tally.ts';
import type { Verdict } from '../corpus/verdict.ts';
import { lettersOf, rulesOf } from './letters.ts';

const root = process.env.IRONSIFT_ROOT ?? process.cwd();
const words = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const asked = (option: string): boolean => process.argv.includes(`--${option}`);

if (asked('outside')) {
  const { printComparison } = await import('./compare-recogniser.ts');
  printComparison(root, words);
  process.exit();
}

const cases = loadCases(`${root}/tests/corpus/ads`).filter(
  ({ name }) => words.length === 0 || words.some((word) => name.includes(word)),
);
if (cases.length === 0) {
  process.stderr.write(`no ad has "${words.join('" or "')}" in its name\n`);
  process.exit(2);
}
const verdicts: Verdict[] = [];
for (const one of cases) {
  const listing = await listingOf(one);
  const reading = read(listing);
  verdicts.push(judge(one.name, reading, one.label));
  if (asked('letters')) console.log([one.name, ...lettersOf(listing), ...rulesOf(reading)].join('\n  '), '\n');
}
const measured = measure(verdicts);

const share = (value: number | null): string => (value === null ? '-' : value.toFixed(3));

function printField(field: string, tally: Tally): void {
  const { precision, recall, f1 } = measuresOf(tally);
  const counts = [tally.right, tally.wrong, tally.missed].map((count) => String(count).padStart(6)).join(' ');
  console.log(
    `${field.padEnd(22)} ${counts}  ${share(precision).padStart(9)} ${share(recall).padStart(6)} ${share(f1).padStart(5)}`,
  );
}

function printVerdict({ name, faults, confidentlyWrong }: Verdict): void {
  console.log(`\n${name}${confidentlyWrong.length > 0 ? `  CONFIDENTLY WRONG: ${confidentlyWrong.join(', ')}` : ''}`);
  for (const fault of faults) console.log(`  ${fault}`);
}

console.log(`${cases.length} ads\n${'field'.padEnd(22)}  right  wrong missed  precision recall    F1`);
for (const [field, tally] of measured.fields) printField(field, tally);
const confident = verdicts.filter((verdict) => verdict.confidentlyWrong.length > 0).length;
console.log(`confidently wrong: ${confident} of ${cases.length} ads (${(100 * measured.confidentlyWrong).toFixed(1)} %)`);

if (!asked('quiet')) {
  const faulty = verdicts
    .filter((verdict) => verdict.faults.length > 0)
    .sort((a, b) => b.confidentlyWrong.length - a.confidentlyWrong.length || b.faults.length - a.faults.length);
  for (const verdict of asked('all') ? faulty : faulty.slice(0, 25)) printVerdict(verdict);
}

if (words.length === 0) {
  if (asked('raise')) writeFloors(root, raised(measured, readFloors(root)));
  const short = shortfalls(measured, readFloors(root));
  if (short.length > 0)
    console.log(`\nbelow the floors of tests/corpus/floors.json:\n${short.map((line) => `  ${line}`).join('\n')}`);
  process.exitCode = short.length > 0 ? 1 : 0;
}
