/** The Workshop's host in a browser: the platform, and nothing more. */
import { locale, strings } from '../platform/index.ts';
import type { WorkshopHost } from './host.ts';

export const browserHost = (): WorkshopHost => ({ strings: strings(), locale: locale(), now: () => Date.now() });
