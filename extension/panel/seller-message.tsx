/** The message's heading; what is under it is fetched when it is opened. */
import { useState } from 'preact/hooks';
import type { Evaluation } from '../../src/listing/evaluation.ts';
import type { Item } from '../../src/listing/reading.ts';
import { useWords } from '../components/speech.ts';

export interface SellerMessageProps {
  readonly evaluation: Evaluation;
  readonly title: string;
  /** What the buyer takes of it, where that is not all. */
  readonly only?: readonly Item[];
}

type Draft = typeof import('./seller-draft.tsx').SellerDraft;

export function SellerMessage(props: SellerMessageProps) {
  const { t } = useWords();
  const [open, setOpen] = useState(false);
  const [loaded, setLoaded] = useState<{ readonly Draft: Draft } | null>(null);
  const toggle = (now: boolean) => {
    setOpen(now);
    if (!now || loaded) return;
    import('./seller-draft.tsx').then(
      ({ SellerDraft }) => setLoaded({ Draft: SellerDraft }),
      (error: unknown) => console.error('Ironsift:', error),
    );
  };
  return (
    <details class="seller-message" open={open} onToggle={(event) => toggle(event.currentTarget.open)}>
      <summary>{t('message_heading')}</summary>
      {open && loaded && <loaded.Draft {...props} />}
    </details>
  );
}
