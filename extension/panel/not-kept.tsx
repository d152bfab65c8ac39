/** Says that what was changed here could not be stored; it stays in sight, for the field that was changed may be far down. */
import type { Message } from '../../src/words/message.ts';
import { useWords } from '../components/speech.ts';

export interface NotKeptProps {
  /** Why settings could not be kept. */
  readonly settings: Message | null;
  /** Whether what was said about the ad could not be remembered. */
  readonly edits: boolean;
}

export function NotKept({ settings, edits }: NotKeptProps) {
  const { say, t } = useWords();
  if (settings === null && !edits) return null;
  return (
    <div class="not-kept" role="alert">
      {settings && <p data-not-kept="settings">{say(settings)}</p>}
      {edits && <p data-not-kept="edits">{t('panel_edits_not_kept')}</p>}
    </div>
  );
}
