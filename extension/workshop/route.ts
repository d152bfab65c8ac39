/** Which screen the address names: "#finds/abc" is the screen "finds" with the rest "abc". */
import { useEffect, useState } from 'preact/hooks';

export interface Route {
  readonly screen: string;
  readonly rest: string;
  /** "#pickup/abc?only=plate-1+bar-1": the goods of it that are meant; empty for all of it, null where nothing is said. */
  readonly only: readonly string[] | null;
}

export function routeOf(hash: string): Route {
  const [, path = '', only] = /^#?\/?(.*?)(?:\?only=([^?]*))?$/s.exec(hash) ?? [];
  const [screen = '', ...rest] = path.split('/');
  return { screen, rest: rest.join('/'), only: only === undefined ? null : only.split('+').filter((id) => id !== '') };
}

/** Address of a screen, for links. */
export const addressOf = (screen: string, rest = '', only: readonly string[] | null = null): string =>
  `#${screen}${rest === '' ? '' : `/${rest}`}${only === null ? '' : `?only=${only.join('+')}`}`;

export function useRoute(): Route {
  const [route, setRoute] = useState(() => routeOf(location.hash));
  useEffect(() => {
    const changed = () => setRoute(routeOf(location.hash));
    addEventListener('hashchange', changed);
    return () => removeEventListener('hashchange', changed);
  }, []);
  return route;
}
