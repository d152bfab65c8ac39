/** `npm run corpus -- --outside`: where a general-purpose recogniser library and our reader differ, class by class, with the reasons. */
import { compare, type Disagreement, tableOf } from '../outside/general-recogniser/compare.ts';
import { DIFFERENCES } from '../outside/general-recogniser/differences.ts';
import { englishAds, SORTS } from '../outside/general-recogniser/found.ts';
import { weightsInReadings } from '../outside/general-recogniser/in-reading.ts';

function printClass(title: string, list: readonly Disagreement[]): void {
  console.log(`\n${title}: ${list.length}`);
  for (const { ad, found, shown } of list) console.log(`  ${ad.padEnd(48)} ${found.value} ${found.unit ?? ''} | ${shown}`);
}

/** Prints to standard output; only ads whose name holds one of the words, all for none. */
export function printComparison(root: string, words: readonly string[]): void {
  const ads = englishAds(root).filter(({ name }) => words.length === 0 || words.some((word) => name.includes(word)));
  const comparison = compare(ads);
  for (const sort of SORTS) {
    const { theirs, ours } = comparison[sort];
    for (const [name, list] of theirs) {
      const reason = DIFFERENCES.find((one) => one.name === name);
      printClass(`${sort}, found by the library: ${name}${reason ? ` (right: ${reason.right})\n  ${reason.why}\n ` : ''}`, list);
    }
    for (const [how, list] of ours)
      printClass(`${sort}, found by us alone: ${how}`, sort === 'number' ? list.slice(0, 10) : list);
  }
  const { held, others } = weightsInReadings(ads);
  printClass('weights that both find and the reading leaves out', others);
  console.log(`\n${ads.length} English text ads\n${tableOf(comparison).join('\n')}`);
  console.log(`weights in the reading: ${held} of ${held + others.length}`);
}
