/** Which screen the address names: "#finds/abc" is the screen "finds" with the rest "abc". */
import { useEffect, useState } from 'preact/hooks';

export interface Route {
  readonly screen: string;
  readonly rest: string;
}

export function routeOf(hash: string): Route {
  const [screen = '', ...rest] = hash.replace(/^#\/?/, '').split('/');
  return { screen, rest: rest.join('/') };
}

/** Address of a screen, for links. */
export const addressOf = (screen: string, rest = ''): string => `#${screen}${rest === '' ? '' : `/${rest}`}`;

export function useRoute(): Route {
  const [route, setRoute] = useState(() => routeOf(location.hash));
  useEffect(() => {
    const changed = () => setRoute(routeOf(location.hash));
    addEventListener('hashchange', changed);
    return () => removeEventListener('hashchange', changed);
  }, []);
  return route;
}
