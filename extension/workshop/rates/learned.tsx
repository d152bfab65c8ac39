/** What the finds taught, category by category, with the prices behind it. */
import { RATE_CATEGORIES, type RateCategory } from '../../../src/listing/settings.ts';
import { sourceOf } from '../../../src/price/rate-steps.ts';
import { cellBeforeLearning } from '../../../src/price/rates.ts';
import { money } from '../../../src/units/money.ts';
import { exactly } from '../../../src/units/range.ts';
import { likely, likelyAndSpan } from '../../components/figures.ts';
import { PriceStrip, type StripRange } from '../../components/price-strip.tsx';
import { useWords } from '../../components/speech.ts';
import { addressOf } from '../route.ts';
import { factorOf, moneyOf, nameOf, perWords } from './figures.ts';
import type { Rates } from './use-rates.ts';

/** So many finds are listed by name, the latest first. */
const MOST_LISTED = 50;

export function Learned({ rates }: { readonly rates: Rates }) {
  const { t } = useWords();
  const taught = RATE_CATEGORIES.filter((category) => rates.learned[category] !== undefined);
  return (
    <section aria-labelledby="rates-learned">
      <h2 id="rates-learned">{t('rates_learned')}</h2>
      <p>{t(taught.length > 0 ? 'rates_learned_how' : 'rates_learned_none', { n: rates.settings.halfLifeDays })}</p>
      {taught.map((category) => (
        <OneLearned key={category} rates={rates} category={category} />
      ))}
    </section>
  );
}

function OneLearned({ rates, category }: { readonly rates: Rates; readonly category: RateCategory }) {
  const words = useWords();
  const { say, t } = words;
  const { settings } = rates;
  const learned = rates.learned[category];
  const before = cellBeforeLearning(category, 'used', settings);
  if (learned === undefined || before === null) return null;
  const own = settings.rates[category]?.used !== undefined;
  const factor = factorOf(category, settings);
  const prices = rates.prices
    .filter((price) => price.category === category)
    .map((price) => ({ ...price, far: price.perUnit < learned.low || price.perUnit > learned.high }))
    .sort((a, b) => a.ageDays - b.ageDays);
  const far = prices.filter((price) => price.far).length;
  const range = (id: string, { low, likely: middle, high }: typeof before): StripRange => ({
    id,
    label: t(`rates_range_${id === 'learned' ? 'learned' : own ? 'own' : 'table'}`),
    figures: likelyAndSpan(words, moneyOf({ low, likely: middle, high }, category, settings)),
    low: low * factor,
    likely: middle * factor,
    high: high * factor,
  });
  const source = sourceOf(learned);
  const ranges = [range('before', before), range('learned', learned)];
  return (
    <article class="learned" data-learned={category} aria-labelledby={`learned-${category}`}>
      <h3 id={`learned-${category}`}>
        {nameOf(words, category)} <span class="quiet">{perWords(words, category, settings)}</span>
      </h3>
      <ul class="plain-list">
        {ranges.map((one) => (
          <li key={one.id}>{t('rates_range', { name: one.label, figures: one.figures })}</li>
        ))}
        {source && <li>{say(source)}</li>}
        {far > 0 && <li>{t('rates_far', { n: far })}</li>}
        {own && <li>{t('rates_own_holds')}</li>}
      </ul>
      <figure class="chart">
        <PriceStrip
          ranges={ranges}
          prices={prices.map(({ perUnit, far: isFar }) => ({ value: perUnit * factor, far: isFar }))}
          writeTick={(value) => say.money(money(value, settings.currency))}
        />
      </figure>
      <details>
        <summary>
          {t('rates_behind', { n: prices.length })}
          <span class="unseen">: {nameOf(words, category)}</span>
        </summary>
        <ul class="plain-list">
          {prices.slice(0, MOST_LISTED).map(({ find, perUnit, ageDays, far: isFar }, index) => (
            <li key={`${find.id} ${index}`} data-far={isFar ? '' : undefined}>
              <a href={addressOf('finds', find.id)}>
                <bdi>{find.title || t('finds_untitled')}</bdi>
              </a>{' '}
              {t('rates_behind_each', { price: likely(words, moneyOf(exactly(perUnit), category, settings)), n: ageDays })}
              {isFar && <> {t('rates_behind_far')}</>}
            </li>
          ))}
        </ul>
        {prices.length > MOST_LISTED && <p class="quiet">{t('rates_behind_more', { n: prices.length - MOST_LISTED })}</p>}
      </details>
    </article>
  );
}
