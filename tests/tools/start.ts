/**
 * `npm start`: builds the extension and shows it at work on the demo board, or on any page with `-- --url URL`.
 * With a display it opens a browser and leaves it to you; without one it drives the browser itself and reports on every ad.
 */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { serve } from '../demo/serve.mjs';
import { demonstrate } from './demonstrate.ts';
import { openForUser } from './open-for-user.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

function fail(why: string): never {
  process.stderr.write(`${why}\n`);
  process.exit(2);
}

function wantedUrl(): string | null {
  try {
    const { values } = parseArgs({ options: { url: { type: 'string' } } });
    return values.url === undefined ? null : new URL(values.url).href;
  } catch (error) {
    fail(`npm start -- [--url URL]: ${error instanceof Error ? error.message : error}`);
  }
}

const url = wantedUrl();
if (spawnSync(process.execPath, [join(ROOT, 'build.mjs')], { stdio: 'inherit' }).status !== 0) process.exit(1);

const board = await serve();
try {
  if (process.env.DISPLAY || process.platform !== 'linux') {
    await openForUser(url ?? board.url, join(ROOT, 'dist/chrome'));
  } else {
    const ads = url === null ? board.ads : [{ id: 'page', url, title: url }];
    process.exitCode = await demonstrate(ads, join(ROOT, 'out'));
  }
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
} finally {
  await board.close();
}
