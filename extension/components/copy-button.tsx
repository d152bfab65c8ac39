/** Copies a text. Where the clipboard is closed to us, the text itself is shown, selected, to be copied by hand. */
import type { RefObject } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { useWords } from './speech.ts';

export interface CopyButtonProps {
  readonly name: string;
  readonly words: string;
  readonly text: () => string;
  /** Where the text is written: once it is another, what was copied is said no longer. */
  readonly source?: string;
  /** The button, for a key that presses it from elsewhere. */
  readonly button?: RefObject<HTMLButtonElement | null>;
}

export function CopyButton({ name, words, text, source, button }: CopyButtonProps) {
  const { t } = useWords();
  const [outcome, setOutcome] = useState<{ readonly copied: boolean; readonly text: string } | null>(null);
  useEffect(() => setOutcome(null), [source]);
  const copy = async () => {
    const written = text();
    try {
      await navigator.clipboard.writeText(written);
      setOutcome({ copied: true, text: written });
    } catch {
      setOutcome({ copied: false, text: written });
    }
  };
  return (
    <div class="copy">
      <button
        ref={button ?? null}
        type="button"
        data-copy={name}
        onClick={copy}
        onBlur={() => outcome?.copied && setOutcome(null)}
      >
        {outcome?.copied ? t('panel_copied') : words}
      </button>
      {/* Pressed from elsewhere the button is not in focus: what it says by itself is then not read out. */}
      {button && (
        <span role="status" class="unseen">
          {outcome?.copied && t('panel_copied')}
        </span>
      )}
      {outcome?.copied === false && (
        <label class="copy-by-hand">
          <span>{t('panel_copy_by_hand')}</span>
          <textarea readOnly rows={6} value={outcome.text} onFocus={(event) => event.currentTarget.select()} />
        </label>
      )}
    </div>
  );
}
