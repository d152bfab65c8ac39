// @ts-check
/** The source as a reviewer of an add-on store gets it: every file that is kept, and nothing that is made. */
import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { zipSync } from 'fflate';

/** What a build, a run or an editor makes; the same as in .gitignore, for a folder that is no repository. */
const MADE = /^(?:node_modules|dist|out|coverage|\.git)(?:\/|$)|\.log$/;

/** Whether the folder is the top of a repository of its own. */
function isRepository(/** @type {string} */ root) {
  if (!existsSync(join(root, '.git'))) return false;
  const top = execFileSync('git', ['rev-parse', '--show-toplevel'], { cwd: root, encoding: 'utf8' }).trim();
  return realpathSync(top) === realpathSync(root);
}

function filesBelow(/** @type {string} */ root, /** @type {string} */ folder = '') {
  /** @type {string[]} */
  const found = [];
  for (const entry of readdirSync(join(root, folder), { withFileTypes: true })) {
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    if (MADE.test(path)) continue;
    if (entry.isDirectory()) found.push(...filesBelow(root, path));
    else if (entry.isFile()) found.push(path);
  }
  return found;
}

/**
 * Paths of everything that belongs to the source, sorted: what git keeps, or in an unpacked copy what is there.
 * @param {string} root folder of the project
 */
export function sourceFiles(root) {
  const kept = isRepository(root)
    ? execFileSync('git', ['ls-files', '-z'], { cwd: root, encoding: 'utf8' })
        .split('\0')
        .filter((path) => path !== '' && existsSync(join(root, path)))
    : filesBelow(root);
  return kept.sort((a, b) => (a < b ? -1 : 1));
}

/** Made by Unix, so that scripts stay scripts. */
const UNIX = 3;
const modeOf = (/** @type {string} */ file) => ((statSync(file).mode & 0o100 ? 0o755 : 0o644) | 0o100000) * 0x10000;

/**
 * The source as a zip, the same wherever and whenever it is made.
 * @param {string} root folder of the project
 */
export function sourcePackage(root) {
  const files = sourceFiles(root).map((path) => {
    const file = join(root, path);
    return [path, [readFileSync(file), { os: UNIX, attrs: modeOf(file) >>> 0 }]];
  });
  return zipSync(Object.fromEntries(files), { level: 9, mtime: new Date(1980, 0, 1) });
}
