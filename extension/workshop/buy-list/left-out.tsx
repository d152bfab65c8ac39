/** Ads that are not on the list: at which price each would be, or why it is out of question. */
import type { Barred } from '../../../src/kit/buy-list/consider.ts';
import { offered } from '../../../src/kit/buy-list/market-of.ts';
import type { PriceCut } from '../../../src/kit/buy-list/others.ts';
import { useWords, type Words } from '../../components/speech.ts';
import type { Find } from '../../store/index.ts';
import { addressOf } from '../route.ts';
import type { ChoicesMade } from './choices.ts';
import type { Names } from './names.ts';
import type { Worked } from './use-buy-list.ts';

export interface LeftOutProps {
  readonly worked: Worked;
  /** Bought or gone: nothing to be had any more. */
  readonly past: readonly Find[];
  readonly chosen: readonly string[];
  readonly names: Names;
  readonly choices: ChoicesMade;
  /** Prices are still being worked out. */
  readonly pending: boolean;
}

function cutWords({ t }: Words, price: number, cut: PriceCut | undefined, pending: boolean, { money }: Names): string {
  if (cut === undefined) return t(pending ? 'buy_cut_pending' : 'buy_cut_far');
  if (cut.cut === null) return t('buy_cut_never');
  return t('buy_cut', { price: money(price - cut.cut), asked: money(price) });
}

export function LeftOut({ worked, past, chosen, names, choices, pending }: LeftOutProps) {
  const words = useWords();
  const { t } = words;
  const { left, cuts, made, considered } = worked;
  const waiting = left.slice(0, cuts.size + (pending ? 1 : 0));
  const bought = new Set(chosen.map((id) => offered(id).find));
  const inLeft = new Set(left.map((id) => offered(id).find));
  const barred = considered.finds.filter((find) => find.barred !== null);
  const without = made.unreckoned.filter((id) => !barred.some((find) => find.id === id));
  const idle = considered.finds.filter(
    ({ id, barred: why }) => why === null && !bought.has(id) && !inLeft.has(id) && !without.includes(id),
  );
  if (left.length + barred.length + without.length + idle.length + past.length === 0) return null;
  const row = (id: string, why: string, more: { readonly key?: string; readonly end?: preact.ComponentChildren } = {}) => (
    <li key={more.key ?? id} data-left-out={id}>
      <a href={addressOf('finds', id)}>
        <bdi>{names.title(id)}</bdi>
      </a>
      : {why} {more.end}
    </li>
  );
  const mustHave = (id: string) => (
    <button
      type="button"
      data-must={id}
      aria-label={t('buy_must_named', { name: names.title(id) })}
      onClick={() => choices.say(id, 'must')}
    >
      {t('buy_must')}
    </button>
  );
  const back = (id: string) => (
    <button
      type="button"
      data-back={id}
      aria-label={t('buy_back_named', { name: names.title(id) })}
      onClick={() => choices.say(id, null)}
    >
      {t('buy_back')}
    </button>
  );
  return (
    <section class="no-print" aria-labelledby="buy-left">
      <h2 id="buy-left">{t('buy_left_out')}</h2>
      <ul class="buy-left">
        {left.map((offer, index) => {
          const { find } = offered(offer);
          const part = names.part(offer);
          const why = cutWords(words, names.offer(offer)?.price ?? 0, cuts.get(offer), pending && index < waiting.length, names);
          return row(find, part === null ? why : `${part}: ${why}`, { key: offer, end: part === null ? mustHave(find) : null });
        })}
        {barred.map(({ id, barred: why }) =>
          row(id, t(`buy_barred_${(why as Barred).replace('-', '_')}`), { end: why === 'left-out' ? back(id) : null }),
        )}
        {without.map((id) => row(id, t('buy_no_price')))}
        {past.map(({ id, status }) => row(id, t(`buy_past_${status}`)))}
      </ul>
      {idle.length > 0 && (
        <details>
          <summary>{t('buy_idle', { n: idle.length })}</summary>
          <ul class="buy-left">{idle.map(({ id }) => row(id, t('buy_fills_nothing')))}</ul>
        </details>
      )}
    </section>
  );
}
