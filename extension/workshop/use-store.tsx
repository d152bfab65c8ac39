/** The store for every screen below: opened once, and a clear word where the browser gives none. */
import { type ComponentChildren, createContext } from 'preact';
import { useContext, useEffect, useLayoutEffect, useState } from 'preact/hooks';
import { useWords } from '../components/speech.ts';
import { applyTheme } from '../components/theme.ts';
import { failureMessage, type OpenStore, type Outcome, type Stop, type Store } from '../store/index.ts';
import { purgeOld } from './finds/purge.ts';
import type { WorkshopHost } from './host.ts';

const Opened = createContext<Store | null>(null);

/** Shows `children` once the store is open; what went wrong, with the way out, where it can't be opened. */
export function WithStore({ host, children }: { readonly host: WorkshopHost; readonly children: ComponentChildren }) {
  const { say, t } = useWords();
  const [opened, setOpened] = useState<OpenStore | null>(null);
  const [outdated, setOutdated] = useState(false);
  // Before the frame is drawn, so that the store is asked while it is.
  useLayoutEffect(() => {
    let here = true;
    host.store().then((result) => {
      if (!here) return;
      if (result.ok) result.value.onOutdated(() => setOutdated(true));
      setOpened(result);
    });
    return () => {
      here = false;
    };
  }, [host]);
  const store = opened?.ok ? opened.value : null;
  useEffect(() => (store ? following(store, host) : undefined), [store, host]);
  useEffect(() => store?.settings.watch((seen) => seen.ok && applyTheme(seen.value.theme)), [store]);
  if (opened === null) return <p class="quiet">{t('workshop_opening')}</p>;
  if (!opened.ok) return <p role="alert">{say(failureMessage(opened.code))}</p>;
  return (
    <Opened.Provider value={opened.value}>
      {outdated && <p role="alert">{say(failureMessage('outdated'))}</p>}
      {children}
    </Opened.Provider>
  );
}

/** So long after the store is there, in ms, the screen has it for itself: to learn is to read every find, and the first rows would wait for it. */
const SCREEN_FIRST = 500;

/** The going rate follows the finds, and what is lacking the kit, while a screen is open; what was removed long ago is deleted. */
function following(store: Store, host: WorkshopHost): Stop {
  const stops: Stop[] = [];
  let wanted = true;
  const start = (follow: (store: Store, clock: () => number) => Stop) => void (wanted && stops.push(follow(store, host.now)));
  const timer = setTimeout(() => {
    void purgeOld(store, host.now());
    import('../store/learning.ts').then(({ keepLearning }) => start(keepLearning));
    import('../store/kit-need.ts').then(({ keepFollowingKit }) => start(keepFollowingKit));
  }, SCREEN_FIRST);
  return () => {
    wanted = false;
    clearTimeout(timer);
    for (const stop of stops) stop();
  };
}

/** The open store. Only below `WithStore`. */
export function useStore(): Store {
  const store = useContext(Opened);
  if (store === null) throw new Error('no store here');
  return store;
}

/** The last thing that failed, in words; cleared by the next that works. */
export function useComplaint(): { readonly complaint: string | null; readonly checked: <T>(outcome: Outcome<T>) => T | null } {
  const { say } = useWords();
  const [complaint, setComplaint] = useState<string | null>(null);
  const checked = <T,>(outcome: Outcome<T>): T | null => {
    setComplaint(outcome.ok ? null : say(failureMessage(outcome.code)));
    return outcome.ok ? outcome.value : null;
  };
  return { complaint, checked };
}
