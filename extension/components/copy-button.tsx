/** Copies a text. Where the clipboard is closed to us, the text itself is shown, selected, to be copied by hand. */
import { useState } from 'preact/hooks';
import { useWords } from './speech.ts';

export interface CopyButtonProps {
  readonly name: string;
  readonly words: string;
  readonly text: () => string;
}

export function CopyButton({ name, words, text }: CopyButtonProps) {
  const { t } = useWords();
  const [outcome, setOutcome] = useState<{ readonly copied: boolean; readonly text: string } | null>(null);
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
      <button type="button" data-copy={name} onClick={copy} onBlur={() => outcome?.copied && setOutcome(null)}>
        {outcome?.copied ? t('panel_copied') : words}
      </button>
      {outcome?.copied === false && (
        <label class="copy-by-hand">
          <span>{t('panel_copy_by_hand')}</span>
          <textarea readOnly rows={6} value={outcome.text} onFocus={(event) => event.currentTarget.select()} />
        </label>
      )}
    </div>
  );
}
