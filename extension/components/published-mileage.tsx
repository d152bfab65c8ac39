/** The published costs of a mile in the buyer's currency, to choose one of; nothing where there are none. */
import type { Settings } from '../../src/listing/settings.ts';
import { MILEAGE_RATES, mileageSource, perMileOf, rateOf } from '../../src/trip/mileage-rates.ts';
import { ChoiceField } from './choice-field.tsx';
import { useWords } from './speech.ts';

export interface PublishedMileageProps {
  readonly path: string;
  readonly label: string;
  readonly settings: Pick<Settings, 'perMile' | 'currency'>;
  readonly onPerMile: (perMile: number) => void;
}

export function PublishedMileage({ path, label, settings, onPerMile }: PublishedMileageProps) {
  const { say, t } = useWords();
  const { currency, perMile } = settings;
  const rates = MILEAGE_RATES.filter((rate) => rate.currency === currency);
  const published = rateOf(perMile, currency);
  if (rates.length === 0) return null;
  return (
    <ChoiceField
      path={path}
      label={label}
      labelShown
      value={published?.id ?? ''}
      options={[
        ...(published ? [] : [{ value: '', words: t('mileage_own') }]),
        ...rates.map((rate) => ({ value: rate.id, words: say(mileageSource(rate)) })),
      ]}
      onChoice={(id) => {
        const rate = rates.find((one) => one.id === id);
        if (rate) onPerMile(perMileOf(rate));
      }}
    />
  );
}
