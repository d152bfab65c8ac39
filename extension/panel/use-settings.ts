/** The buyer's settings, loaded once; until then, and where nothing is stored, the defaults. */
import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { DEFAULT_SETTINGS, type Settings } from '../../src/listing/settings.ts';
import type { Host } from './host.ts';

const report = (error: unknown) => console.error('Ironsift:', error);

/** What was changed, by name. */
const changesIn = (before: Settings, after: Settings): Partial<Settings> =>
  Object.fromEntries(Object.entries(after).filter(([name, value]) => before[name as keyof Settings] !== value));

export function useSettings(host: Host): { readonly settings: Settings; readonly keep: (settings: Settings) => void } {
  const [settings, setSettings] = useState<Settings>(DEFAULT_SETTINGS);
  const now = useRef(settings);
  /** Changes made before the stored settings were there: they join them then, and overwrite nothing else. */
  const early = useRef<Partial<Settings> | null>({});
  const show = (next: Settings) => {
    now.current = next;
    setSettings(next);
  };
  useEffect(() => {
    let here = true;
    host.loadSettings().then(
      (loaded) => {
        if (!here) return;
        const waiting = early.current ?? {};
        early.current = null;
        if (Object.keys(waiting).length === 0) return show(loaded);
        const joined = { ...loaded, ...waiting };
        show(joined);
        host.saveSettings(joined).catch(report);
      },
      (error: unknown) => {
        early.current = null;
        report(error);
      },
    );
    return () => {
      here = false;
    };
  }, [host]);
  const keep = useCallback(
    (changed: Settings) => {
      if (early.current) early.current = { ...early.current, ...changesIn(now.current, changed) };
      else host.saveSettings(changed).catch(report);
      show(changed);
    },
    [host],
  );
  return { settings, keep };
}
