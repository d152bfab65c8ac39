/** What recognisers see of an ad: the letters of each line (src/read/text/classes.ts), and which rule made what of them. */
import { composeText } from '../../src/listing/compose.ts';
import type { PageListing } from '../../src/listing/page-listing.ts';
import type { Fact, Item, Reading } from '../../src/listing/reading.ts';
import { chooseLanguages } from '../../src/read/language/choose.ts';
import { scanText } from '../../src/read/text/scan.ts';

/** One line for each line of the ad that has words: its letters, then the tokens that they stand for, parted by "·". */
export function lettersOf(listing: PageListing): string[] {
  const { text } = composeText(listing);
  const { first, second } = chooseLanguages(listing.language, text);
  const scan = scanText(text, first, second);
  const lines: { letters: string; tokens: string[] }[] = [];
  scan.tokens.forEach(({ type, line, start, end }, at) => {
    if (type === 'line') return;
    lines[line] ??= { letters: '', tokens: [] };
    lines[line].letters += scan.plain[at] ?? '';
    lines[line].tokens.push(text.slice(start, end));
  });
  return lines.filter(Boolean).map(({ letters, tokens }) => `${letters.padEnd(24)} ${tokens.join('·')}`);
}

const ruleOf = (fact: Fact<unknown> | null): string => (fact ? ` <${fact.rule}>` : '');

const shown = ({ id, count, unitWeight }: Item): string =>
  `${id}: ${count?.value ?? '?'}${ruleOf(count)} x ${unitWeight ? `${unitWeight.value.value} ${unitWeight.value.unit}` : '?'}${ruleOf(unitWeight)}`;

/** Items and asking price, each value with the rule that read it, and the doubts. */
export const rulesOf = ({ items, asking, doubts }: Reading): string[] => [
  ...items.map(shown),
  `asking ${asking.basis}${ruleOf(asking.amount)}${ruleOf(asking.unitAmount)}`,
  ...doubts.map(({ id }) => `doubt ${id}`),
];
