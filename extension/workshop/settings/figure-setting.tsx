/** A setting that is one number. */
import { NumberField } from '../../components/number-field.tsx';
import { useWords } from '../../components/speech.ts';
import { digitsOf, type Figure, factorOf, parserOf, standardOf, standardWords, unitKey } from './figures.ts';
import { Setting } from './setting.tsx';
import type { Shown } from './use-settings.ts';

export function FigureSetting({ figure, shown }: { readonly figure: Figure; readonly shown: Shown }) {
  const words = useWords();
  const { say, t } = words;
  const { settings } = shown;
  const put = (value: number | null) => shown.change((now) => figure.write(value, now));
  const { name, quantity, low, high } = figure;
  const factor = factorOf(quantity, settings);
  const value = figure.read(settings);
  const standard = standardOf(figure);
  const unit = t(unitKey(quantity, settings), { currency: settings.currency });
  const write = (one: number): string => say.number(one, digitsOf(quantity));
  return (
    <Setting
      name={name}
      standard={standardWords(words, figure, settings) ?? t('settings_none')}
      isOwn={value !== standard}
      onPutBack={() => put(standard)}
    >
      {(hint) => (
        <NumberField
          path={name}
          label={t(`settings_${name}`)}
          labelShown
          value={value === null ? null : value * factor}
          write={write}
          parse={parserOf(quantity)}
          low={low * factor}
          high={high * factor}
          complaint={t('settings_bad_number', { low: write(low * factor), high: write(high * factor), unit })}
          onValue={(typed) => put(typed / factor)}
          onEmpty={figure.optional ? () => put(null) : undefined}
          width={7}
          hint={hint}
          unit={unit}
        />
      )}
    </Setting>
  );
}
