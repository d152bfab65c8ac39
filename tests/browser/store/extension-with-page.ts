/** The built extension with the store's test page in it, in a folder of its own: what ships has no such page. */
import { cp, mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { buildOf } from '../driver/find.ts';

const root = process.env.IRONSIFT_ROOT ?? process.cwd();

/** Gives the folder; whoever asked takes it away again. The build of this checkout must be there. */
export async function extensionWithPage(target: 'chrome' | 'firefox' = 'chrome'): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'ironsift-store-'));
  await cp(buildOf(target), folder, { recursive: true });
  await build({
    entryPoints: [join(root, 'tests/browser/store/page.ts')],
    outfile: join(folder, 'store-test.js'),
    bundle: true,
    format: 'iife',
    target: ['chrome116', 'firefox142'],
    logLevel: 'error',
  });
  await writeFile(
    join(folder, 'store-test.html'),
    '<!doctype html><html lang="en"><meta charset="utf-8"><title>Store</title><script src="store-test.js"></script></html>',
  );
  // Another, in which the browser's own calls are at hand and nothing else runs.
  await writeFile(
    join(folder, 'still-test.html'),
    '<!doctype html><html lang="en"><meta charset="utf-8"><title>Still</title></html>',
  );
  return folder;
}
