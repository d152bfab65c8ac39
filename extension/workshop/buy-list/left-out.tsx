/** Ads that are not on the list: at which price each would be, or why it is out of question. */
import { useState } from 'preact/hooks';
import type { Barred } from '../../../src/kit/buy-list/consider.ts';
import { offered } from '../../../src/kit/buy-list/market-of.ts';
import type { PriceCut } from '../../../src/kit/buy-list/others.ts';
import { useWords, type Words } from '../../components/speech.ts';
import type { Find } from '../../store/index.ts';
import { addressOf } from '../route.ts';
import type { ChoicesMade } from './choices.ts';
import type { Names } from './names.ts';
import { MOST_CUTS, type Worked } from './work-out.ts';

export interface LeftOutProps {
  readonly worked: Worked;
  /** Bought or gone: nothing to be had any more. */
  readonly past: readonly Find[];
  readonly chosen: readonly string[];
  readonly names: Names;
  readonly choices: ChoicesMade;
  /** Prices are still being worked out: those of the nearest, or behind the answer all that are left. */
  readonly pending: 'nearest' | 'rest' | null;
  readonly askCut: (offer: string) => void;
  readonly asking: string | null;
}

function cutWords({ t }: Words, price: number, cut: PriceCut | undefined, pending: boolean, { money }: Names): string {
  if (cut === undefined) return t(pending ? 'buy_cut_pending' : 'buy_cut_unknown');
  if (cut.cut === null) return t('buy_cut_never');
  return t('buy_cut', { price: money(price - cut.cut), asked: money(price) });
}

export function LeftOut({ worked, past, chosen, names, choices, pending, askCut, asking }: LeftOutProps) {
  const words = useWords();
  const { t } = words;
  const { left, cuts, made, considered } = worked;
  const [asked, setAsked] = useState<string | null>(null);
  const told = asked !== null && cuts.has(asked) ? asked : null;
  const bought = new Set(chosen.map((id) => offered(id).find));
  // Where the list was not found, or what else there is not yet: whatever fills something, in no order.
  const useful = made.market.offers.filter(({ barred, fills }) => barred === null && fills.length > 0).map(({ id }) => id);
  const rest = left.length > 0 ? left : useful.filter((id) => !chosen.includes(id));
  const fillsSomething = new Set(useful.map((id) => offered(id).find));
  const barred = considered.finds.filter((find) => find.barred !== null);
  const without = made.unreckoned.filter((id) => !barred.some((find) => find.id === id));
  const idle = considered.finds.filter(
    ({ id, barred: why }) => why === null && !bought.has(id) && !fillsSomething.has(id) && !without.includes(id),
  );
  if (rest.length + barred.length + without.length + idle.length + past.length === 0) return null;
  const row = (id: string, why: string, more: { readonly key?: string; readonly end?: preact.ComponentChildren } = {}) => (
    <li key={more.key ?? id} data-left-out={id}>
      <a href={addressOf('finds', id)}>
        <bdi>{names.title(id)}</bdi>
      </a>
      : {why} {more.end}
    </li>
  );
  const askFor = (offer: string) => (
    <button
      type="button"
      data-ask-cut={offer}
      aria-label={t('buy_cut_ask_named', { name: names.find(offer) })}
      onClick={(event) => {
        // The button goes: what it was asked of stays in hand.
        event.currentTarget.closest('li')?.querySelector('a')?.focus();
        setAsked(offer);
        askCut(offer);
      }}
    >
      {t('buy_cut_ask')}
    </button>
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
      <p role="status" class="unseen">
        {told && `${names.find(told)}: ${cutWords(words, names.offer(told)?.price ?? 0, cuts.get(told), false, names)}`}
      </p>
      <ul class="buy-left">
        {rest.map((offer, index) => {
          const { find } = offered(offer);
          const part = names.part(offer);
          const waits = pending === 'rest' || (pending === 'nearest' && index < MOST_CUTS) || asking === offer;
          const why = cutWords(words, names.offer(offer)?.price ?? 0, cuts.get(offer), waits, names);
          const canAsk = pending !== 'nearest' && asking === null && !cuts.has(offer) && worked.list.kind !== 'impossible';
          const end = (
            <>
              {canAsk && askFor(offer)}
              {part === null && mustHave(find)}
            </>
          );
          return row(find, part === null ? why : `${part}: ${why}`, { key: offer, end });
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
