/** The buyer's settings, followed live; until they are there, and where nothing is stored, the defaults. */
import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { DEFAULT_SETTINGS, type Settings } from '../../src/listing/settings.ts';
import type { Message } from '../../src/words/message.ts';
import { codeOf, failureMessage } from '../store/failure.ts';
import type { Host } from './host.ts';

const report = (error: unknown) => console.error('Ironsift:', error);

/** What was changed, by name. */
const changesIn = (before: Settings, after: Settings): Partial<Settings> =>
  Object.fromEntries(Object.entries(after).filter(([name, value]) => before[name as keyof Settings] !== value));

export interface KeptSettings {
  readonly settings: Settings;
  readonly keep: (settings: Settings) => void;
  /** Why the last change could not be kept; it holds here all the same. */
  readonly failed: Message | null;
}

export function useSettings(host: Host): KeptSettings {
  const [settings, setSettings] = useState<Settings>(DEFAULT_SETTINGS);
  const [failed, setFailed] = useState<Message | null>(null);
  const now = useRef(settings);
  /** Changes made before the stored settings were there: they join them then, and overwrite nothing else. */
  const early = useRef<Partial<Settings> | null>({});
  /** Writes of this page that are under way, and what was seen of the stored settings meanwhile: it may be older than what is shown. */
  const writing = useRef(0);
  const seenMeanwhile = useRef<Settings | null>(null);
  const show = (next: Settings) => {
    now.current = next;
    setSettings(next);
  };
  /** What is stored, at first and whenever another page changed it; the same again judges and draws nothing anew. */
  const follow = (next: Settings) => {
    if (early.current) return;
    if (writing.current > 0) seenMeanwhile.current = next;
    else if (JSON.stringify(next) !== JSON.stringify(now.current)) show(next);
  };
  const save = async (changed: Settings) => {
    writing.current += 1;
    await host.saveSettings(changed).then(
      () => setFailed(null),
      (error: unknown) => {
        report(error);
        setFailed(failureMessage(codeOf(error)));
      },
    );
    writing.current -= 1;
    const seen = seenMeanwhile.current;
    if (writing.current > 0 || seen === null) return;
    seenMeanwhile.current = null;
    follow(seen);
  };
  useEffect(() => {
    let here = true;
    let stop: (() => void) | null = null;
    host.loadSettings().then(
      (loaded) => {
        if (!here) return;
        stop = host.watchSettings(follow);
        const waiting = early.current ?? {};
        early.current = null;
        if (Object.keys(waiting).length === 0) return follow(loaded);
        const joined = { ...loaded, ...waiting };
        show(joined);
        void save(joined);
      },
      (error: unknown) => {
        early.current = null;
        report(error);
      },
    );
    return () => {
      here = false;
      stop?.();
    };
  }, [host]);
  const keep = useCallback(
    (changed: Settings) => {
      if (early.current) early.current = { ...early.current, ...changesIn(now.current, changed) };
      else void save(changed);
      show(changed);
    },
    [host],
  );
  return { settings, keep, failed };
}
