/** The screens of the Workshop, in the order of the buyer's work. Each is fetched when it is first opened. */
import type { ComponentType } from 'preact';
import type { WorkshopHost } from './host.ts';

export interface ScreenProps {
  readonly host: WorkshopHost;
  /** What stands behind the screen's name in the address: "#finds/abc" gives "abc"; empty otherwise. */
  readonly rest: string;
  /** Which goods of it are meant, where the address says so: see `Route`. */
  readonly only?: readonly string[] | null;
}
export type Screen = ComponentType<ScreenProps>;

export interface ScreenEntry {
  /** Its name in the address, and the tail of its string's key: workshop_finds. */
  readonly id: string;
  readonly load: () => Promise<{ readonly default: Screen }>;
}

export const SCREENS: readonly ScreenEntry[] = [
  { id: 'finds', load: () => import('./finds/index.tsx') },
  { id: 'side-by-side', load: () => import('./side-by-side/index.tsx') },
  { id: 'kit', load: () => import('./kit/index.tsx') },
  { id: 'buy-list', load: () => import('./buy-list/index.tsx') },
  { id: 'pickup', load: () => import('./pickup/index.tsx') },
  { id: 'weigh', load: () => import('./weigh/index.tsx') },
  { id: 'rates', load: () => import('./rates/index.tsx') },
  { id: 'settings', load: () => import('./settings/index.tsx') },
];
