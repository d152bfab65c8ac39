/** Keeping the ticked ads among the finds. */
import { useState } from 'preact/hooks';
import { useWords } from '../../components/speech.ts';

export interface KeepBarProps {
  readonly ticked: number;
  /** How many rows are in sight, to tick them all at once. */
  readonly inSight: number;
  readonly onTickAll: () => void;
  readonly onTickNone: () => void;
  /** Keeps what is ticked; answers how many ads that were. */
  readonly onKeep: () => Promise<number>;
}

type Outcome = { readonly key: 'sweep_kept'; readonly n: number } | { readonly key: 'sweep_keep_failed' };

export function KeepBar({ ticked, inSight, onTickAll, onTickNone, onKeep }: KeepBarProps) {
  const { t } = useWords();
  const [outcome, setOutcome] = useState<Outcome | null>(null);
  const [busy, setBusy] = useState(false);
  const keep = async () => {
    setBusy(true);
    try {
      setOutcome({ key: 'sweep_kept', n: await onKeep() });
      onTickNone();
    } catch (error) {
      console.error('Ironsift:', error);
      setOutcome({ key: 'sweep_keep_failed' });
    }
    setBusy(false);
  };
  return (
    <div class="sweep-keep">
      <button type="button" class="strong" data-keep disabled={ticked === 0 || busy} onClick={keep}>
        {t('sweep_keep', { n: ticked })}
      </button>
      <button type="button" data-tick-all disabled={inSight === 0} onClick={onTickAll}>
        {t('sweep_tick_all')}
      </button>
      <button type="button" data-tick-none disabled={ticked === 0} onClick={onTickNone}>
        {t('sweep_tick_none')}
      </button>
      <p role="status">{outcome && (outcome.key === 'sweep_kept' ? t(outcome.key, { n: outcome.n }) : t(outcome.key))}</p>
    </div>
  );
}
