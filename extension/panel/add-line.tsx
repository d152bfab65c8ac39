/** Adds a line that the reading missed. */
import { useWords } from '../components/speech.ts';
import { useEdits } from './edits.ts';
import { nextAdded } from './session.ts';

const OFFERED = ['plate', 'bumper', 'bar', 'rack', 'bench', 'other'] as const;

export function AddLine() {
  const { t } = useWords();
  const { session, set } = useEdits();
  return (
    <fieldset class="add-line">
      <legend>{t('panel_add_line')}</legend>
      {OFFERED.map((kind) => (
        <button key={kind} type="button" data-add={kind} onClick={() => set({ path: `${nextAdded(session)}.kind`, value: kind })}>
          {t(`panel_add_${kind}`)}
        </button>
      ))}
    </fieldset>
  );
}
