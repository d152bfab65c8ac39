/** The store of a page of the extension: opened when it is first asked for, once. Import it with `import()`, so that the page shows itself first. */
import { oldSettings } from '../platform/settings.ts';
import type { OpenStore } from './api.ts';
import { openStore } from './open.ts';

let opening: Promise<OpenStore> | null = null;

/** The same store for every caller. One that could not be opened is tried again at the next call. */
export async function pageStore(): Promise<OpenStore> {
  opening ??= openStore({ oldSettings });
  const opened = await opening;
  if (!opened.ok) opening = null;
  return opened;
}
