/** Rates of exchange: the buyer's own word, for nothing is fetched. */
import { useId, useMemo } from 'preact/hooks';
import { ChoiceField } from '../../components/choice-field.tsx';
import { NumberField } from '../../components/number-field.tsx';
import { parseNumber } from '../../components/parse-input.ts';
import { useWords } from '../../components/speech.ts';
import { currencyOptions } from './currencies.ts';
import type { Shown } from './use-settings.ts';

const HIGHEST = 1_000_000_000;
const LOWEST = 1e-9;

export function Exchange({ shown }: { readonly shown: Shown }) {
  const { say, t } = useWords();
  const hint = useId();
  const { settings, change, locale } = shown;
  const { currency, exchange } = settings;
  const all = useMemo(() => currencyOptions(locale, currency), [locale, currency]);
  const free = all.filter(({ value }) => value !== currency && exchange[value] === undefined);
  const set = (code: string, rate: number) => change((now) => ({ exchange: { ...now.exchange, [code]: rate } }));
  const drop = (code: string) =>
    change((now) => ({ exchange: Object.fromEntries(Object.entries(now.exchange).filter(([one]) => one !== code)) }));
  return (
    <div class="setting" data-setting="exchange">
      <h3>{t('settings_exchange')}</h3>
      <span id={hint} class="setting-why">
        {t('settings_exchange_why')}
      </span>
      {Object.entries(exchange).map(([code, rate]) => (
        <div key={code} data-exchange={code}>
          <NumberField
            path={`exchange.${code}`}
            label={t('settings_exchange_one', { code })}
            labelShown
            value={rate}
            write={(value) => say.number(value, 6)}
            parse={parseNumber}
            low={LOWEST}
            high={HIGHEST}
            complaint={t('settings_bad_exchange')}
            onValue={(value) => set(code, value)}
            width={7}
            unit={currency}
          />{' '}
          <button type="button" class="bare" data-drop={code} onClick={() => drop(code)}>
            {t('settings_remove')}
            <span class="unseen">: {code}</span>
          </button>
        </div>
      ))}
      <ChoiceField
        path="exchange.add"
        label={t('settings_exchange_add')}
        labelShown
        value=""
        options={[{ value: '', words: t('settings_choose') }, ...free]}
        hint={hint}
        onChoice={(code) => code !== '' && set(code, 1)}
      />
    </div>
  );
}
