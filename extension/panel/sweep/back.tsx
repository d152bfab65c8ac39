/** The way back from one ad to the list. */
import { useEffect, useRef } from 'preact/hooks';
import { useWords } from '../../components/speech.ts';

export interface BackProps {
  readonly ads: number;
  /** True when the ad was just chosen from the list: the keyboard goes on from here. */
  readonly takesFocus: boolean;
  readonly onBack: () => void;
}

export function Back({ ads, takesFocus, onBack }: BackProps) {
  const { t } = useWords();
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (takesFocus) button.current?.focus();
  }, []);
  return (
    <p class="sweep-back">
      <button type="button" ref={button} data-back onClick={onBack}>
        {t('sweep_back', { n: ads })}
      </button>
    </p>
  );
}
