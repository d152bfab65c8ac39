/** Rates: what each category costs used, new and to send; what the finds taught; and prices taken from shops. */
import { useWords } from '../../components/speech.ts';
import { failureMessage } from '../../store/index.ts';
import type { WorkshopHost } from '../host.ts';
import type { ScreenProps } from '../screens.ts';
import { WithStore } from '../use-store.tsx';
import { Captured } from './captured.tsx';
import { Learned } from './learned.tsx';
import { RateTable } from './table.tsx';
import { useRates } from './use-rates.ts';

export default function Rates({ host }: ScreenProps) {
  return (
    <WithStore host={host}>
      <Shown host={host} />
    </WithStore>
  );
}

function Shown({ host }: { readonly host: WorkshopHost }) {
  const { say, t } = useWords();
  const rates = useRates(host);
  if (rates === null) return <p class="quiet">{t('workshop_opening')}</p>;
  const { failed } = rates;
  return (
    <div class="rates">
      <p>{t('rates_about', { currency: rates.settings.currency })}</p>
      {failed && <p role="alert">{say(failureMessage(failed))}</p>}
      <RateTable rates={rates} />
      <Learned rates={rates} />
      <Captured rates={rates} />
    </div>
  );
}
