/** The buyer's own notes on a find, stored as they are written. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { useWords } from '../../components/speech.ts';
import type { Find } from '../../store/index.ts';
import type { WorkshopHost } from '../host.ts';
import { useComplaint, useStore } from '../use-store.tsx';

/** Stored when the buyer has paused for so long, in ms, and at once on leaving. */
const PAUSE = 500;
const MOST = 20_000;

export function Notes({ find, host }: { readonly find: Find; readonly host: WorkshopHost }) {
  const { t } = useWords();
  const { finds } = useStore();
  const { complaint, checked } = useComplaint();
  const [draft, setDraft] = useState(find.notes);
  const unsaved = useRef<string | null>(null);
  const save = async () => {
    const notes = unsaved.current;
    if (notes === null) return;
    unsaved.current = null;
    const saved = checked(await finds.update(find.id, { notes }, host.now()));
    // What could not be stored stays wanted: leaving the field tries again.
    if (saved === null) unsaved.current ??= notes;
  };
  useEffect(() => {
    if (unsaved.current === null) return;
    const timer = setTimeout(save, PAUSE);
    return () => clearTimeout(timer);
  }, [draft]);
  useEffect(() => () => void save(), []);
  return (
    <label class="notes">
      <span class="field-label">{t('finds_notes')}</span>
      <textarea
        rows={4}
        maxLength={MOST}
        value={draft}
        data-path="notes"
        onInput={(event) => {
          unsaved.current = event.currentTarget.value;
          setDraft(event.currentTarget.value);
        }}
        onBlur={() => void save()}
      />
      {complaint && <span role="alert">{complaint}</span>}
    </label>
  );
}
