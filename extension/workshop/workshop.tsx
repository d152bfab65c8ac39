/** The Workshop's frame: the names of its screens, and the one that is open. */
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { speaker } from '../../src/words/say.ts';
import { Speech, wordsOf } from '../components/speech.ts';
import { useKeptFocus } from '../components/use-kept-focus.ts';
import type { WorkshopHost } from './host.ts';
import { addressOf, useRoute } from './route.ts';
import { SCREENS, type Screen, type ScreenEntry } from './screens.ts';

export interface WorkshopProps {
  readonly host: WorkshopHost;
  readonly screens?: readonly ScreenEntry[];
}

export function Workshop({ host, screens = SCREENS }: WorkshopProps) {
  const say = useMemo(() => speaker(host.strings, host.locale), [host]);
  const { t } = wordsOf(say);
  const route = useRoute();
  const entry = screens.find(({ id }) => id === route.screen) ?? screens[0];
  const { Open, failed } = useScreen(entry);
  const heading = useRef<HTMLHeadingElement>(null);
  const moved = useRef(false);
  useKeptFocus();
  useEffect(() => {
    if (entry) document.title = `${t(`workshop_${entry.id.replaceAll('-', '_')}`)}: ${t('extName')}`;
    // A screen that was asked for takes the focus, so that its name is read out; the first one leaves it where it is.
    if (moved.current) heading.current?.focus();
    moved.current = true;
  }, [entry?.id]);
  return (
    <Speech.Provider value={say}>
      <header class="workshop-head">
        <nav aria-label={t('workshop_screens')}>
          <ul>
            {screens.map(({ id }) => (
              <li key={id}>
                <a href={addressOf(id)} aria-current={id === entry?.id ? 'page' : undefined}>
                  {t(`workshop_${id.replaceAll('-', '_')}`)}
                </a>
              </li>
            ))}
          </ul>
        </nav>
      </header>
      <main class="workshop" data-screen={entry?.id}>
        <h1 ref={heading} tabIndex={-1}>
          {entry ? t(`workshop_${entry.id.replaceAll('-', '_')}`) : ''}
        </h1>
        {failed && <p role="alert">{t('workshop_failed')}</p>}
        {Open && <Open key={entry?.id} host={host} {...(entry?.id === route.screen ? route : { rest: '' })} />}
      </main>
    </Speech.Provider>
  );
}

function useScreen(entry: ScreenEntry | undefined): { readonly Open: Screen | null; readonly failed: boolean } {
  const [loaded, setLoaded] = useState<{ readonly id: string; readonly Open: Screen | null } | null>(null);
  // Before the frame is drawn, so that it is fetched while it is.
  useLayoutEffect(() => {
    if (!entry) return;
    let wanted = true;
    entry.load().then(
      (module) => wanted && setLoaded({ id: entry.id, Open: module.default }),
      (error: unknown) => {
        console.error('Ironsift:', error);
        if (wanted) setLoaded({ id: entry.id, Open: null });
      },
    );
    return () => {
      wanted = false;
    };
  }, [entry]);
  const current = loaded?.id === entry?.id ? loaded : null;
  return { Open: current?.Open ?? null, failed: current !== null && current.Open === null };
}
