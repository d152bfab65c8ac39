/** The answer first: the call in words, and the one line of numbers that goes with it. */
import type { Evaluation } from '../../src/listing/evaluation.ts';
import type { Asking } from '../../src/listing/reading.ts';
import { useWords, type Words } from '../components/speech.ts';

const highestAsked = ({ amount, high }: Asking): number => Math.max(amount?.value.minor ?? 0, high?.value.minor ?? 0);

/** "Asked $120. Pay at most $165, open at $100." with what is known of it. */
export function priceLine({ t }: Words, { reading, worth }: Evaluation): string {
  const asked = reading.asking.amount;
  const most = worth.walkAway;
  // With more room than is asked, the most to pay is no price to name to the seller.
  if (asked && most && !reading.asking.placeholder && highestAsked(reading.asking) < most.minor) {
    const open = worth.openingOffer;
    const bargain = open && open.minor < asked.value.minor;
    return [
      t('panel_asked', { price: { money: asked.value } }),
      bargain
        ? t('bundle_more_than_asked', { most: { money: most }, open: { money: open } })
        : t('bundle_more_than_asked_at_once', { most: { money: most } }),
    ].join(' ');
  }
  const parts = [asked ? t('panel_asked', { price: { money: asked.value } }) : t('panel_no_price')];
  if (worth.walkAway && worth.openingOffer) {
    parts.push(t('panel_pay_and_open', { most: { money: worth.walkAway }, open: { money: worth.openingOffer } }));
  } else if (worth.walkAway) {
    parts.push(t('panel_pay_at_most', { most: { money: worth.walkAway } }));
  }
  return parts.join(' ');
}

export function CallHeader({ evaluation }: { readonly evaluation: Evaluation }) {
  const words = useWords();
  return (
    <header class="call" data-call={evaluation.call.kind}>
      <h1>{words.say(evaluation.call.says)}</h1>
      <p class="call-line">{priceLine(words, evaluation)}</p>
    </header>
  );
}
