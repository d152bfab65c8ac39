/** Keeping the ticked ads among the finds. */
import { useState } from 'preact/hooks';
import { useWords } from '../../components/speech.ts';
import { failureMessage } from '../../store/failure.ts';
import type { KeptMany } from './sweep-host.ts';

export interface KeepBarProps {
  readonly ticked: number;
  /** How many rows are in sight, to tick them all at once. */
  readonly inSight: number;
  readonly onTickAll: () => void;
  readonly onTickNone: () => void;
  /** Keeps what is ticked, and takes the tick from what is kept. */
  readonly onKeep: () => Promise<KeptMany>;
}

export function KeepBar({ ticked, inSight, onTickAll, onTickNone, onKeep }: KeepBarProps) {
  const { say, t } = useWords();
  const [outcome, setOutcome] = useState<KeptMany | null>(null);
  const [busy, setBusy] = useState(false);
  const keep = async () => {
    setBusy(true);
    try {
      setOutcome(await onKeep());
    } catch (error) {
      console.error('Ironsift:', error);
      setOutcome({ kept: 0, left: Array.from({ length: ticked }, (_, index) => index), code: 'unexpected' });
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
      <p role="status">{outcome !== null && outcome.kept > 0 && t('sweep_kept', { n: outcome.kept })}</p>
      {outcome !== null && outcome.code !== null && (
        <p role="alert" class="complaint">
          {t('sweep_left', { n: outcome.left.length })} {say(failureMessage(outcome.code))}
        </p>
      )}
    </div>
  );
}
