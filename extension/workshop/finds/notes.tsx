/** The buyer's own notes on a find, stored with every key: whoever closes the tab right after the last one has no pause to wait for. */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { useWords } from '../../components/speech.ts';
import type { Find } from '../../store/index.ts';
import type { WorkshopHost } from '../host.ts';
import { latestWrite } from '../latest-write.ts';
import { useComplaint, useStore } from '../use-store.tsx';

const MOST = 20_000;

export function Notes({ find, host }: { readonly find: Find; readonly host: WorkshopHost }) {
  const { t } = useWords();
  const { finds } = useStore();
  const { complaint, checked } = useComplaint();
  const [draft, setDraft] = useState(find.notes);
  /** What could not be stored stays wanted: leaving the field tries again. */
  const refused = useRef<string | null>(null);
  const write = useMemo(
    () =>
      latestWrite(async (notes: string) => {
        refused.current = checked(await finds.update(find.id, { notes }, host.now())) === null ? notes : null;
      }),
    [finds, find.id],
  );
  // Another window that has the same find open: what was written there is shown here, or the next key would take it back.
  useEffect(() => {
    if (!write.isBusy() && refused.current === null) setDraft(find.notes);
  }, [find.notes]);
  return (
    <label class="notes">
      <span class="field-label">{t('finds_notes')}</span>
      <textarea
        rows={4}
        maxLength={MOST}
        value={draft}
        data-path="notes"
        onInput={(event) => {
          setDraft(event.currentTarget.value);
          write(event.currentTarget.value);
        }}
        onBlur={() => refused.current !== null && write(refused.current)}
      />
      {complaint && <span role="alert">{complaint}</span>}
    </label>
  );
}
