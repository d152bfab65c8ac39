/** Prices taken from shops' pages: looked at, used for the table, removed. */
import { useState } from 'preact/hooks';
import type { RateCategory } from '../../../src/listing/settings.ts';
import { cellsFrom, perUnitOf } from '../../../src/price/shop-price.ts';
import { exactly } from '../../../src/units/range.ts';
import { likely, poundsIn } from '../../components/figures.ts';
import { useWords } from '../../components/speech.ts';
import type { CapturedPrice } from '../../store/index.ts';
import { moneyOf, nameOf, perWords } from './figures.ts';
import type { Rates } from './use-rates.ts';

/** What may become a link: a file that was imported can name any address. */
const IS_PAGE = /^https?:\/\//i;

/** The shop as far as the address tells it; the buyer's own word where there is none. */
function shopOf(address: string | null): string {
  if (address === null || !IS_PAGE.test(address)) return 'own';
  try {
    return new URL(address).hostname.slice(0, 200) || 'own';
  } catch {
    // URL.canParse would tell, but not before Chrome 120.
    return 'own';
  }
}

export function Captured({ rates }: { readonly rates: Rates }) {
  const words = useWords();
  const { t } = words;
  const [removed, setRemoved] = useState<CapturedPrice | null>(null);
  const { captured, settings } = rates;
  const sorted = [...captured].sort((a, b) => b.at - a.at);
  const several = [...new Set(captured.map(({ category }) => category))].filter(
    (category) => captured.filter((one) => one.category === category && perUnitOf(one, settings)).length > 1,
  );
  const use = (category: RateCategory, prices: readonly CapturedPrice[]) => {
    const source = [...new Set(prices.map(({ address }) => shopOf(address)))].join(', ').slice(0, 300);
    rates.change((now) => {
      const cells = cellsFrom(prices, now, source, rates.date);
      return cells === null ? {} : { rates: { ...now.rates, [category]: { ...now.rates[category], ...cells } } };
    });
  };
  return (
    <section aria-labelledby="rates-captured">
      <h2 id="rates-captured">{t('rates_captured')}</h2>
      <p>{t('rates_captured_how')}</p>
      <ul class="captured">
        {sorted.map((price) => (
          <li key={price.id} data-captured={price.id}>
            <OneCaptured price={price} rates={rates} onUse={() => use(price.category, [price])} />{' '}
            <button
              type="button"
              class="bare"
              data-remove
              onClick={() => {
                setRemoved(price);
                rates.removeCaptured(price.id);
              }}
            >
              {t('rates_captured_remove')}
              <span class="unseen">
                : <bdi>{price.title}</bdi>
              </span>
            </button>
          </li>
        ))}
      </ul>
      {several.map((category) => {
        const all = captured.filter((one) => one.category === category);
        return (
          <p key={category}>
            <button type="button" data-use-all={category} onClick={() => use(category, all)}>
              {t('rates_use_all', { n: all.length, category: nameOf(words, category) })}
            </button>
          </p>
        );
      })}
      {removed && (
        <p role="status">
          {t('rates_captured_removed')}{' '}
          <button
            type="button"
            data-undo
            onClick={() => {
              rates.putCaptured(removed);
              setRemoved(null);
            }}
          >
            {t('finds_undo')}
          </button>
        </p>
      )}
    </section>
  );
}

interface OneProps {
  readonly price: CapturedPrice;
  readonly rates: Rates;
  readonly onUse: () => void;
}

function OneCaptured({ price, rates, onUse }: OneProps) {
  const words = useWords();
  const { say, t } = words;
  const { settings } = rates;
  const per = perUnitOf(price, settings);
  const { category, title, address, pounds, shipping, at } = price;
  return (
    <>
      {address && IS_PAGE.test(address) ? (
        <a href={address} rel="noreferrer noopener" target="_blank">
          <bdi>{title || t('finds_untitled')}</bdi>
        </a>
      ) : (
        <strong>
          <bdi>{title || t('finds_untitled')}</bdi>
        </strong>
      )}
      <span class="captured-facts">
        {[
          nameOf(words, category),
          say.money(price.price),
          ...(pounds === null ? [] : [poundsIn(words, pounds, settings.unit)]),
          ...(per === null
            ? []
            : [`${likely(words, moneyOf(exactly(per.fresh), category, settings))} ${perWords(words, category, settings)}`]),
          ...(shipping === null ? [] : [t('rates_captured_shipping', { price: { money: shipping } })]),
          say.day(at),
        ].join(' · ')}
      </span>
      {per === null ? (
        <span class="quiet">{t('rates_captured_no_rate', { currency: price.price.currency })}</span>
      ) : (
        <button type="button" class="bare" data-use onClick={onUse}>
          {t('rates_use')}
          <span class="unseen">
            : <bdi>{title}</bdi>
          </span>
        </button>
      )}
    </>
  );
}
