/** How one price was split over the things it buys, and what each costs when the others are taken at the going rate. */
import type { Evaluation, Share } from '../../src/listing/evaluation.ts';
import type { Plan } from '../../src/listing/reading.ts';
import { figure, likelyAndSpan } from '../components/figures.ts';
import { useWords, type Words } from '../components/speech.ts';
import { nameOf } from './item-words.ts';

export function Split({ evaluation }: { readonly evaluation: Evaluation }) {
  const words = useWords();
  const { t } = words;
  const { items } = evaluation.reading;
  const { split } = evaluation.worth;
  const hasAlone = split.some((share) => share.alone !== null);
  const planOf = (id: string): Plan => items.find((item) => item.id === id)?.plan?.value ?? 'keep';
  return (
    <table class="split">
      <caption>{t('bundle_split')}</caption>
      <thead>
        <tr>
          <th scope="col">{t('bundle_split_item')}</th>
          <th scope="col">{t('bundle_split_share')}</th>
          <th scope="col">{t('bundle_split_worth')}</th>
          {hasAlone && <th scope="col">{t('bundle_split_alone')}</th>}
        </tr>
      </thead>
      <tbody>
        {split.map((share) => (
          <tr key={share.item} data-share={share.item}>
            <th scope="row">{nameOf(words, items, share.item) ?? share.item}</th>
            <td>{words.say.money(share.allIn)}</td>
            <td>{worthWords(words, share, planOf(share.item))}</td>
            {hasAlone && <td>{aloneWords(words, share, planOf(share.item))}</td>}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function worthWords(words: Words, share: Share, plan: Plan): string {
  if (plan === 'nothing') return words.t('bundle_not_counted');
  const worth = likelyAndSpan(words, share.worth);
  return plan === 'sell' ? words.t('bundle_sold_on', { worth }) : worth;
}

/** Nobody is paid for taking a thing: below zero the rest alone is worth more than the price. */
function aloneWords(words: Words, { alone, worth }: Share, plan: Plan): string {
  if (alone === null || plan === 'nothing') return words.t('bundle_not_counted');
  if (alone.minor > 0) return words.say.money(alone, 'whole');
  return words.t('bundle_alone_free', { over: figure(words, -alone.minor, { ...worth, likely: -alone.minor }) });
}
