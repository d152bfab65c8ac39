/** `npm run corpus`: reads every corpus ad and prints precision and recall per field, then the ads that differ, worst first. `-- --all` prints every one, `-- WORD` only those whose name holds it. */
import { read } from '../../src/read/index.ts';
import { listingOf, loadCases } from '../corpus/case.ts';
import { judge, type Tally, type Verdict } from '../corpus/score.ts';

const root = process.env.IRONSIFT_ROOT ?? process.cwd();
const words = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const all = process.argv.includes('--all');
const quiet = process.argv.includes('--quiet');

const cases = loadCases(`${root}/tests/corpus/ads`).filter(
  ({ name }) => words.length === 0 || words.some((word) => name.includes(word)),
);
const verdicts: Verdict[] = [];
for (const one of cases) verdicts.push(judge(one.name, read(await listingOf(one)), one.label));

const sums = new Map<string, Tally>();
for (const verdict of verdicts) {
  for (const [field, tally] of verdict.fields) {
    const sum = sums.get(field) ?? { right: 0, wrong: 0, missed: 0 };
    sums.set(field, { right: sum.right + tally.right, wrong: sum.wrong + tally.wrong, missed: sum.missed + tally.missed });
  }
}
const share = (part: number, rest: number): string => (part + rest === 0 ? '-' : (part / (part + rest)).toFixed(3));
console.log(`${cases.length} ads\n${'field'.padEnd(22)}  right  wrong missed  precision recall    F1`);
for (const [field, { right, wrong, missed }] of [...sums].sort((a, b) => a[0].localeCompare(b[0]))) {
  const f1 = right === 0 ? 0 : (2 * right) / (2 * right + wrong + missed);
  console.log(
    `${field.padEnd(22)} ${String(right).padStart(6)} ${String(wrong).padStart(6)} ${String(missed).padStart(6)}  ${share(right, wrong).padStart(9)} ${share(right, missed).padStart(6)} ${f1.toFixed(3).padStart(5)}`,
  );
}
const confident = verdicts.filter((verdict) => verdict.confidentlyWrong.length > 0);
console.log(
  `confidently wrong: ${confident.length} of ${cases.length} ads (${((100 * confident.length) / Math.max(1, cases.length)).toFixed(1)} %)`,
);
if (!quiet) {
  const faulty = verdicts
    .filter((verdict) => verdict.faults.length > 0)
    .sort((a, b) => b.confidentlyWrong.length - a.confidentlyWrong.length || b.faults.length - a.faults.length);
  for (const verdict of all ? faulty : faulty.slice(0, 25)) {
    console.log(
      `\n${verdict.name}${verdict.confidentlyWrong.length > 0 ? `  CONFIDENTLY WRONG: ${verdict.confidentlyWrong.join(', ')}` : ''}`,
    );
    for (const fault of verdict.faults) console.log(`  ${fault}`);
  }
}
