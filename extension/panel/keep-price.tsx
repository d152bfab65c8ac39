/** A shop's page says what goods cost new: its price can be kept for the table of rates. */
import { useEffect, useState } from 'preact/hooks';
import type { Evaluation } from '../../src/listing/evaluation.ts';
import type { PageListing } from '../../src/listing/page-listing.ts';
import type { Message } from '../../src/words/message.ts';
import { useWords } from '../components/speech.ts';
import { useOneAtATime } from '../components/use-one-at-a-time.ts';
import { failureMessage } from '../store/failure.ts';
import type { CapturedPrice } from '../store/index.ts';
import type { KeepHost } from './keep-host.ts';

type ShopPriceOf = typeof import('../../src/price/shop-price.ts').shopPriceOf;

export interface KeepPriceProps {
  readonly host: KeepHost;
  readonly listing: PageListing;
  readonly evaluation: Evaluation;
}

export function KeepPrice({ host, listing, evaluation }: KeepPriceProps) {
  const { say, t } = useWords();
  const [kept, setKept] = useState<CapturedPrice | null>(null);
  const [failed, setFailed] = useState<Message | null>(null);
  const { once } = useOneAtATime();
  // Only a page that marks up what it offers can be a shop's: the reckoning is fetched for such a one.
  const [shop, setShop] = useState<{ readonly priceOf: ShopPriceOf } | null>(null);
  const marksUp = listing.offers.length > 0;
  useEffect(() => {
    if (!marksUp) return;
    import('../../src/price/shop-price.ts').then(
      ({ shopPriceOf }) => setShop({ priceOf: shopPriceOf }),
      (error: unknown) => console.error('Ironsift:', error),
    );
  }, [marksUp]);
  useEffect(() => {
    setKept(null);
    setFailed(null);
  }, [listing]);
  const price = shop?.priceOf(listing, evaluation) ?? null;
  if (price === null) return null;
  const keep = async () => {
    const title = listing.title.trim().slice(0, 300);
    const outcome = await host.keepPrice({ ...price, title, address: listing.address });
    setFailed(outcome.ok ? null : failureMessage(outcome.code));
    if (outcome.ok) setKept(outcome.value);
  };
  return (
    <div class="keep-price">
      {kept ? (
        <p role="status">
          {t('rates_price_kept', {
            price: { money: kept.price },
            category: { message: { key: `category_${kept.category.replaceAll('-', '_')}` } },
          })}{' '}
          <button type="button" class="bare" data-open-rates onClick={() => host.openWorkshop('rates')}>
            {t('rates_price_open')}
          </button>
        </p>
      ) : (
        <button type="button" class="bare" data-keep-price onClick={() => once(keep)}>
          {t('rates_keep_price')}
        </button>
      )}
      {failed && <p role="alert">{say(failed)}</p>}
    </div>
  );
}
