/** The Workshop's host in a browser: the platform, the store and the core, and nothing more. */
import { locale, strings } from '../platform/index.ts';
import { pageStore } from '../store/page-store.ts';
import type { WorkshopHost } from './host.ts';

export function browserHost(): WorkshopHost {
  return {
    strings: strings(),
    locale: locale(),
    now: () => Date.now(),
    store: pageStore,
    core: async () => ({ ...(await import('../../src/evaluate.ts')), ...(await import('../../src/sensitivity.ts')) }),
    solver: async () => (await import('./buy-list/solver.ts')).makeSolver(),
    download,
  };
}

/** By a link to a blob: no permission, and nothing leaves the machine. */
function download(name: string, type: string, content: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = Object.assign(document.createElement('a'), { href: address, download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
