/** The buyer's settings, loaded once; until then, and where nothing is stored, the defaults. */
import { useCallback, useEffect, useState } from 'preact/hooks';
import { DEFAULT_SETTINGS, type Settings } from '../../src/listing/settings.ts';
import type { Host } from './host.ts';

export function useSettings(host: Host): { readonly settings: Settings; readonly keep: (settings: Settings) => void } {
  const [settings, setSettings] = useState<Settings>(DEFAULT_SETTINGS);
  useEffect(() => {
    let here = true;
    host.loadSettings().then(
      (loaded) => here && setSettings(loaded),
      (error: unknown) => console.error('Ironsift:', error),
    );
    return () => {
      here = false;
    };
  }, [host]);
  const keep = useCallback(
    (changed: Settings) => {
      setSettings(changed);
      host.saveSettings(changed).catch((error: unknown) => console.error('Ironsift:', error));
    },
    [host],
  );
  return { settings, keep };
}
