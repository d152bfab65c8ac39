/** Damaged records that were set aside, and looking for more. */
import { useEffect, useState } from 'preact/hooks';
import { useWords } from '../../components/speech.ts';
import { today } from '../../components/today.ts';
import type { SetAside as Aside } from '../../store/index.ts';
import type { WorkshopHost } from '../host.ts';
import { Sure } from '../sure.tsx';
import { useLive } from '../use-live.ts';
import { useComplaint, useStore } from '../use-store.tsx';

/** Tables whose name stands in the strings; a file may tell of others. */
const TABLES: readonly string[] = ['finds', 'removed', 'owned', 'needs', 'rates', 'captured', 'settings'];

/** JSON of what may hold anything that a database can. */
function written(value: unknown): string {
  try {
    return JSON.stringify(value, (_name, one) => (typeof one === 'bigint' ? String(one) : one), 1) ?? String(value);
  } catch {
    return String(value);
  }
}

export function SetAside({ host }: { readonly host: WorkshopHost }) {
  const { say, t } = useWords();
  const store = useStore();
  const { complaint, checked } = useComplaint();
  const [records, setRecords] = useState<readonly Aside[]>([]);
  const [dropping, setDropping] = useState<string | null>(null);
  const [found, setFound] = useState<number | null>(null);
  const count = useLive<number>(store.setAside.watch, [store]);
  useEffect(() => {
    let here = true;
    store.setAside.all().then((all) => here && all.ok && setRecords(all.value));
    return () => {
      here = false;
    };
  }, [store, count]);
  const download = (name: string, value: unknown) =>
    host.download(`ironsift-${name}-${today(new Date(host.now()))}.json`, 'application/json', written(value));
  return (
    <>
      <div class="setting">
        <h3>{t('settings_check')}</h3>
        <span class="setting-why">{t('settings_check_why')}</span>
        <div class="settings-actions">
          <button type="button" data-check onClick={async () => setFound(checked(await store.check()))}>
            {t('settings_check_now')}
          </button>
        </div>
        {found !== null && <p role="status">{t(found === 0 ? 'settings_check_sound' : 'settings_check_found', { n: found })}</p>}
        {complaint && <p role="alert">{complaint}</p>}
      </div>
      <div class="setting" data-setting="aside">
        <h3>{t('settings_aside')}</h3>
        <span class="setting-why">{t('settings_aside_why')}</span>
        {records.length === 0 ? (
          <p>{t('settings_aside_none')}</p>
        ) : (
          <div class="settings-actions">
            <button type="button" data-aside-all onClick={() => download('set-aside', records)}>
              {t('settings_aside_export_all', { n: records.length })}
            </button>
          </div>
        )}
        <ul class="aside">
          {records.map((record) => (
            <li key={record.id} data-aside={record.id}>
              {t('settings_aside_one', {
                part: t(`settings_aside_in_${TABLES.includes(record.table) ? record.table : 'other'}`),
                key: record.key,
                day: say.day(record.at),
              })}{' '}
              <button type="button" class="bare" data-save onClick={() => download('set-aside', record)}>
                {t('settings_aside_export')}
                <span class="unseen">: {record.key}</span>
              </button>{' '}
              <button type="button" class="bare" data-drop onClick={() => setDropping(record.id)}>
                {t('settings_aside_drop')}
                <span class="unseen">: {record.key}</span>
              </button>
              {dropping === record.id && (
                <Sure
                  words={t('settings_aside_sure')}
                  yes={t('settings_aside_drop')}
                  onYes={async () => checked(await store.setAside.drop(record.id))}
                  onNo={() => setDropping(null)}
                />
              )}
            </li>
          ))}
        </ul>
      </div>
    </>
  );
}
