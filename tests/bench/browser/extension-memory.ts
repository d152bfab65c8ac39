/** What the processes of a browser's extensions hold, as Linux counts it. */
import { readdir, readFile } from 'node:fs/promises';
import type { Browser } from 'puppeteer-core';

const read = (pid: number, file: string): Promise<string> => readFile(`/proc/${pid}/${file}`, 'utf8').catch(() => '');

/** 0 where the process is gone. Its name may hold brackets and blanks, so that it is counted from the last bracket. */
const parentOf = async (pid: number): Promise<number> =>
  Number((await read(pid, 'stat')).replace(/^.*\) \S+ /s, '').split(' ')[0]);

async function isWithin(pid: number, root: number): Promise<boolean> {
  for (let at = pid; at > 1; at = await parentOf(at)) if (at === root) return true;
  return false;
}

/**
 * Bytes of memory that the processes of the browser's extensions hold and share with nobody: what would be free without them, and 0 where
 * there are none. The panel and the background of an extension live in one process, which Chromium starts with `--extension-process`.
 */
export async function extensionMemory(browser: Browser): Promise<number> {
  const root = browser.process()?.pid;
  if (root === undefined) throw new Error('extensionMemory: a browser that was not started from here');
  let held = 0;
  for (const name of await readdir('/proc')) {
    const pid = Number(name);
    if (!Number.isInteger(pid)) continue;
    if (!(await read(pid, 'cmdline')).includes('--extension-process') || !(await isWithin(pid, root))) continue;
    const shares = (await read(pid, 'smaps_rollup')).matchAll(/^Private_(?:Clean|Dirty): +(\d+) kB$/gm);
    for (const [, kilobytes] of shares) held += Number(kilobytes) * 1024;
  }
  return held;
}
