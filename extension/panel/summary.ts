/** The answer as plain text, to be pasted anywhere: the call, the numbers, the flags, the address. */
import type { Evaluation } from '../../src/listing/evaluation.ts';
import type { PageListing } from '../../src/listing/page-listing.ts';
import type { MassUnit } from '../../src/units/mass.ts';
import { likelyAndSpan, perWords, poundsIn } from '../components/figures.ts';
import type { Words } from '../components/speech.ts';
import { priceLine } from './call.tsx';
import { baselines, ownRate } from './cost.tsx';
import { groupFlags } from './flags.tsx';
import { keyTail } from './item-words.ts';

export function summary(words: Words, evaluation: Evaluation, listing: PageListing, unit: MassUnit): string {
  const { say, t } = words;
  const { worth, reading } = evaluation;
  const own = ownRate(worth);
  const { going, fresh } = baselines(worth);
  const lines = [say(evaluation.call.says), priceLine(words, evaluation)];
  if (own) lines.push(t('panel_summary_own', { rate: likelyAndSpan(words, own), per: perWords(words, own) }));
  if (going) lines.push(t('panel_summary_row', { what: t('panel_row_going'), rate: likelyAndSpan(words, going) }));
  if (fresh) lines.push(t('panel_summary_row', { what: t('panel_row_new'), rate: likelyAndSpan(words, fresh) }));
  if (worth.offered.likely > 0) {
    const usable = poundsIn(words, worth.usable.likely, unit);
    lines.push(t('panel_usable', { usable, offered: poundsIn(words, worth.offered.likely, unit) }));
  }
  for (const { flag, about } of groupFlags(words, evaluation.flags, reading.items)) {
    const found = flag.found ? `${say(flag.found)} ` : '';
    const weight = t(`panel_weight_of_flag_${keyTail(flag.weight)}`);
    lines.push(t('panel_summary_flag', { weight: about ? `${weight} (${about})` : weight, says: `${found}${say(flag.says)}` }));
  }
  if (listing.title) lines.push(listing.title);
  if (listing.address) lines.push(listing.address);
  return lines.join('\n');
}
