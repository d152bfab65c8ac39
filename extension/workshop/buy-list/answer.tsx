/** The answer: how many ads, what it costs, what is left of the money, and what it would cost new. */
import type { Found } from '../../../src/kit/buy-list/index.ts';
import type { Totals } from '../../../src/kit/buy-list/lines.ts';
import { asWritten } from '../../../src/words/write-figures.ts';
import { useWords } from '../../components/speech.ts';
import type { Names } from './names.ts';
import type { Worked } from './work-out.ts';

export interface AnswerProps {
  readonly worked: Worked;
  readonly found: Found;
  readonly totals: Totals;
  readonly names: Names;
}

export function Answer({ worked, found, totals, names }: AnswerProps) {
  const { t } = useWords();
  const { list, made } = worked;
  const { money } = names;
  const { chosen, cost } = found.kit;
  const { budget } = made.market;
  const pieces = found.kit.fresh.reduce((sum, one) => sum + one.pieces, 0);
  const written = (minor: number): number => asWritten({ minor, currency: worked.settings.currency }).minor;
  // Of the parts and sums as they stand beside it: a buyer who adds up must come to the same.
  const spent = written([totals.sellers, totals.driving, totals.shops].map(written).reduce((sum, part) => sum + part, 0));
  const fresh = written(totals.allNew);
  return (
    <div class="buy-answer" data-list={list.kind}>
      {list.kind === 'short' && (
        <p class="buy-headline" data-short>
          {t('buy_short', { by: money(list.by) })}
        </p>
      )}
      <p class="buy-headline" data-headline>
        {chosen.length === 0
          ? t('buy_all_new', { total: money(spent) })
          : t('buy_headline', { ads: t('buy_ads', { n: chosen.length }), total: money(spent) })}
      </p>
      <p data-parts>
        {t('buy_parts', { sellers: money(totals.sellers), driving: money(totals.driving), shops: money(totals.shops) })}
        {pieces > 0 && ` ${t('buy_new_pieces', { n: pieces })}`}
      </p>
      {list.kind !== 'short' && budget !== null && (
        <p data-left>{t('buy_within', { budget: money(budget), left: money(written(budget) - spent) })}</p>
      )}
      {chosen.length > 0 && (
        <p data-against-new>
          {t(fresh >= spent ? 'buy_against_new' : 'buy_dearer_than_new', {
            fresh: money(fresh),
            saved: money(Math.abs(fresh - spent)),
          })}
        </p>
      )}
      <p class="quiet" data-proof={found.proven ? 'proven' : 'open'}>
        {t(found.proven ? (list.kind === 'short' ? 'buy_proven_least' : 'buy_proven') : 'buy_not_proven', {
          bound: money(Math.ceil(found.bound - 1e-6)),
          found: money(list.kind === 'short' ? found.kit.spent : cost),
        })}
      </p>
      {totals.brings > 0 && <p class="quiet">{t('buy_brings', { brings: money(totals.brings), cost: money(cost) })}</p>}
      {made.unpriced.length > 0 && (
        <p role="note" data-unpriced>
          {t('buy_unpriced', { what: made.unpriced.map((need) => names.need(need)).join('; ') })}
        </p>
      )}
    </div>
  );
}
