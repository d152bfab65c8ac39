/** Everything out as a file, and a file in: first looked at, then merged. */
import { useId, useState } from 'preact/hooks';
import { useWords } from '../../components/speech.ts';
import { today } from '../../components/today.ts';
import { type BadFile, badFileMessage, failureMessage, type Outcome, type Preview } from '../../store/index.ts';
import type { WorkshopHost } from '../host.ts';
import { useComplaint, useStore } from '../use-store.tsx';

interface Looked {
  readonly text: string;
  readonly preview: Preview;
}

const isBadFile = (outcome: Outcome<unknown> | BadFile): outcome is BadFile => !outcome.ok && 'path' in outcome;

/** The text of a file; null when it can't be read, such as one that is gone by now. */
const textOf = (file: Blob): Promise<string | null> =>
  new Promise((resolve) => {
    const reader = new FileReader();
    reader.onload = () => resolve(typeof reader.result === 'string' ? reader.result : null);
    reader.onerror = () => resolve(null);
    reader.readAsText(file);
  });

export function Transfer({ host }: { readonly host: WorkshopHost }) {
  const { t } = useWords();
  const store = useStore();
  const { complaint, checked } = useComplaint();
  const day = today(new Date(host.now()));
  const exportAll = async () => {
    const file = checked(await store.exportAll(host.now()));
    if (file !== null) host.download(`ironsift-${day}.json`, 'application/json', file);
  };
  const exportCsv = async () => {
    const file = checked(await store.exportCsv((key) => t(key)));
    if (file !== null) host.download(`ironsift-finds-${day}.csv`, 'text/csv', file);
  };
  return (
    <>
      <div class="setting">
        <h3>{t('settings_export')}</h3>
        <span class="setting-why">{t('settings_export_why')}</span>
        <div class="settings-actions">
          <button type="button" data-export onClick={() => void exportAll()}>
            {t('settings_export_all')}
          </button>
          <button type="button" data-export-csv onClick={() => void exportCsv()}>
            {t('settings_export_csv')}
          </button>
        </div>
        {complaint && <p role="alert">{complaint}</p>}
      </div>
      <Import />
    </>
  );
}

function Import() {
  const { say, t } = useWords();
  const id = useId();
  const store = useStore();
  const [looked, setLooked] = useState<Looked | null>(null);
  const [told, setTold] = useState<{ readonly words: string; readonly bad: boolean } | null>(null);
  /** What is being done: with ten thousand finds it takes seconds. */
  const [doing, setDoing] = useState<string | null>(null);
  const refuse = (words: string) => {
    setLooked(null);
    setTold({ words, bad: true });
  };
  /** The value, or null with the reason told. */
  const settled = <T,>(outcome: Outcome<T> | BadFile): T | null => {
    if (outcome.ok) return outcome.value;
    refuse(say(isBadFile(outcome) ? badFileMessage(outcome) : failureMessage(outcome.code)));
    return null;
  };
  const look = async (file: Blob | undefined) => {
    if (!file || doing !== null) return;
    setTold(null);
    setDoing(t('settings_import_looking'));
    const text = await textOf(file);
    const preview = text === null ? null : settled(await store.previewImport(text));
    setDoing(null);
    if (text === null) refuse(t('settings_import_unreadable'));
    else if (preview) setLooked({ text, preview });
  };
  const take = async ({ text }: Looked) => {
    if (doing !== null) return;
    setDoing(t('settings_import_taking'));
    const imported = settled(await store.importAll(text));
    setDoing(null);
    if (!imported) return;
    setLooked(null);
    setTold({ words: t('settings_imported', { ...imported }), bad: false });
  };
  return (
    <div class="setting" data-import>
      <label for={id} class="field-label">
        {t('settings_import')}
      </label>{' '}
      <input
        id={id}
        type="file"
        accept=".json,application/json"
        data-path="import"
        aria-describedby={`${id}-why`}
        onChange={(event) => {
          void look(event.currentTarget.files?.[0]);
          // The same file, mended, may be chosen again.
          event.currentTarget.value = '';
        }}
      />
      <span id={`${id}-why`} class="setting-why">
        {t('settings_import_why')}
      </span>
      {looked && <Look looked={looked} onTake={() => void take(looked)} onLeave={() => setLooked(null)} />}
      {doing !== null && (
        <p role="status" data-doing>
          {doing}
        </p>
      )}
      {told && <p role={told.bad ? 'alert' : 'status'}>{told.words}</p>}
    </div>
  );
}

interface LookProps {
  readonly looked: Looked;
  readonly onTake: () => void;
  readonly onLeave: () => void;
}

function Look({ looked: { preview }, onTake, onLeave }: LookProps) {
  const { say, t } = useWords();
  const { exportedAt, finds, others, settings, added, replaced, kept } = preview;
  return (
    <div data-preview role="status">
      <p>{t('settings_preview_of', { day: say.day(exportedAt, true) })}</p>
      <ul class="plain-list">
        <li>{t('settings_preview_finds', { n: finds })}</li>
        <li>{t('settings_preview_others', { n: others })}</li>
        <li>{t(settings ? 'settings_preview_settings' : 'settings_preview_no_settings')}</li>
        <li>{t('settings_preview_does', { added, replaced, kept })}</li>
      </ul>
      <div class="settings-actions">
        <button type="button" class="strong" data-take onClick={onTake}>
          {t('settings_import_take')}
        </button>
        <button type="button" data-leave onClick={onLeave}>
          {t('settings_import_leave')}
        </button>
      </div>
    </div>
  );
}
