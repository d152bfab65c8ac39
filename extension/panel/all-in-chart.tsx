/** Where the all-in goes: the price by what it buys, and the drive. Nothing is drawn of a whole that has but one part. */
import type { Evaluation } from '../../src/listing/evaluation.ts';
import { figure } from '../components/figures.ts';
import { useWords } from '../components/speech.ts';
import { PATTERNS, SplitBar, type SplitPart } from '../components/split-bar.tsx';
import { nameOf } from './item-words.ts';

export function AllInChart({ evaluation: { worth, trip, reading } }: { readonly evaluation: Evaluation }) {
  const words = useWords();
  const { t } = words;
  const { allIn, split, currency } = worth;
  if (allIn === null) return null;
  const bought = split
    .map(({ item, price }) => ({ id: item, label: nameOf(words, reading.items, item) ?? item, amount: price.minor }))
    .filter(({ amount }) => amount > 0)
    .sort((one, other) => other.amount - one.amount);
  // The drive counts only when it is in the all-in: not with an ad in another currency.
  const drive = trip !== null && trip.cost.currency === currency ? trip.cost.likely : 0;
  const room = PATTERNS - (drive > 0 ? 1 : 0);
  const shown = bought.length > room ? bought.slice(0, room - 1) : bought;
  const rest = bought.slice(shown.length).reduce((sum, { amount }) => sum + amount, 0);
  const whole = bought.reduce((sum, { amount }) => sum + amount, 0) + drive;
  const parts = [
    ...shown,
    ...(rest > 0 ? [{ id: 'rest', label: t('working_part_rest'), amount: rest }] : []),
    ...(drive > 0 ? [{ id: 'drive', label: t('working_part_drive'), amount: drive }] : []),
  ].map(
    (part): SplitPart => ({
      ...part,
      figure: figure(words, part.amount, { ...allIn, likely: part.amount }),
      share: words.say.percent((part.amount / whole) * 100),
    }),
  );
  return parts.length < 2 ? null : <SplitBar caption={t('working_all_in_chart')} parts={parts} />;
}
