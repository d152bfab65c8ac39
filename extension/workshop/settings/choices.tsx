/** Settings that are a choice: units, currency, language, look, and which published cost of a mile. */
import { useMemo } from 'preact/hooks';
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';
import { MILEAGE_RATES } from '../../../src/trip/mileage-rates.ts';
import { ChoiceField, type Option } from '../../components/choice-field.tsx';
import { PublishedMileage } from '../../components/published-mileage.tsx';
import { useWords } from '../../components/speech.ts';
import { currencyOptions } from './currencies.ts';
import { Setting } from './setting.tsx';
import type { Shown } from './use-settings.ts';

interface ChoiceProps {
  readonly shown: Shown;
  readonly name: 'unit' | 'currency' | 'language' | 'theme';
  readonly options: readonly Option[];
}

function Choice({ shown, name, options }: ChoiceProps) {
  const { t } = useWords();
  const { settings, change } = shown;
  const standard = DEFAULT_SETTINGS[name];
  return (
    <Setting
      name={name}
      standard={options.find(({ value }) => value === standard)?.words ?? standard}
      isOwn={settings[name] !== standard}
      onPutBack={() => change({ [name]: standard })}
    >
      {(hint) => (
        <ChoiceField
          path={name}
          label={t(`settings_${name}`)}
          labelShown
          value={settings[name]}
          options={options}
          hint={hint}
          onChoice={(value) => change({ [name]: value } as Partial<Settings>)}
        />
      )}
    </Setting>
  );
}

export function Units({ shown }: { readonly shown: Shown }) {
  const { t } = useWords();
  const { locale, settings } = shown;
  const currencies = useMemo(() => currencyOptions(locale, settings.currency), [locale, settings.currency]);
  const units = (['lb', 'kg'] as const).map((value) => ({ value, words: t(`settings_units_${value}`) }));
  return (
    <>
      <Choice shown={shown} name="unit" options={units} />
      <Choice shown={shown} name="currency" options={currencies} />
    </>
  );
}

export function Language({ shown }: { readonly shown: Shown }) {
  const { t } = useWords();
  const options = (['auto', 'en', 'de'] as const).map((value) => ({ value, words: t(`settings_language_${value}`) }));
  return <Choice shown={shown} name="language" options={options} />;
}

export function Theme({ shown }: { readonly shown: Shown }) {
  const { t } = useWords();
  const options = (['system', 'light', 'dark'] as const).map((value) => ({ value, words: t(`settings_theme_${value}`) }));
  return <Choice shown={shown} name="theme" options={options} />;
}

/** A published cost of a mile in place of one's own figure; nothing where there is none in the buyer's currency. */
export function Mileage({ shown }: { readonly shown: Shown }) {
  const { t } = useWords();
  const { settings, change } = shown;
  if (!MILEAGE_RATES.some(({ currency }) => currency === settings.currency)) return null;
  return (
    <div class="setting" data-setting="published">
      <PublishedMileage
        path="published"
        label={t('settings_published')}
        settings={settings}
        onPerMile={(perMile) => change({ perMile })}
      />
    </div>
  );
}
