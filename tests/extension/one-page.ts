/**
 * One page and one set of modules for many test files: what a test leaves of itself is taken away after it, and what modules look for
 * when they are first run is there. Here and not beside what opens pages: a module that files share is run once, and what it hangs on to
 * tests holds for the first file alone.
 */
import 'fake-indexeddb/auto';
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach } from 'vitest';

afterEach(() => {
  for (const root of document.body.children) act(() => render(null, root));
});
