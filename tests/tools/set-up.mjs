// @ts-check
/**
 * Makes a fresh clone ready: `node tests/tools/set-up.mjs test|start`. Runs before `npm test` and `npm start`, when there may be
 * no node_modules yet, so it uses nothing but Node. Installs only what is missing; does nothing on a machine that is ready.
 */
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { missingNeeds, onDebian } from './needs.mjs';

const ROOT = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
const say = (/** @type {string} */ line) => console.error(`set-up: ${line}`);

/** Runs a program with its output on ours; true when it ended well. */
const ran = (/** @type {string} */ program, /** @type {string[]} */ args, env = process.env) =>
  spawnSync(program, args, { cwd: ROOT, env, stdio: ['ignore', 2, 2] }).status === 0;

function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  say(`Node ${process.versions.node} is too old: 20.19 or newer is needed`);
  process.exit(1);
}

/** Packages of the lock that node_modules lacks or has in another version. npm keeps its own record of what it installed. */
function stalePackages() {
  const record = join(ROOT, 'node_modules/.package-lock.json');
  if (!existsSync(record)) return ['all'];
  const wanted = JSON.parse(readFileSync(join(ROOT, 'package-lock.json'), 'utf8')).packages;
  const have = JSON.parse(readFileSync(record, 'utf8')).packages;
  return Object.keys(wanted).filter(
    (path) => path !== '' && !wanted[path].optional && wanted[path].version !== have[path]?.version,
  );
}

/** Begun, and gone on with while something else is installed. */
async function installPackages() {
  if (stalePackages().length === 0) return;
  say('installing the npm packages of package-lock.json');
  const npm = process.env.npm_execpath;
  const [program, args] = npm?.endsWith('.js') ? [process.execPath, [npm, 'ci']] : ['npm', ['ci']];
  const child = spawn(program, args, {
    cwd: ROOT,
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32' && program === 'npm',
  });
  const [code] = await once(child, 'close').catch(() => [1]);
  if (code === 0) return;
  say('`npm ci` failed; without its packages nothing runs');
  process.exit(1);
}

function installPrograms(/** @type {'test' | 'start'} */ purpose) {
  const missing = missingNeeds(purpose);
  if (missing.length === 0) return;
  const packages = missing.map(({ debian }) => debian);
  if (onDebian() && process.getuid?.() === 0) {
    say(`installing ${packages.join(', ')}`);
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    ran('apt-get', ['update', '-q'], env);
    if (ran('apt-get', ['install', '-y', '-q', '--no-install-recommends', ...packages], env)) return;
    say('apt-get could not install them');
  }
  say(`not on this machine: ${missing.map(({ what }) => what).join(', ')}`);
  if (onDebian()) say(`as root: apt-get install ${packages.join(' ')}`);
  else say('install them with the package manager of this system');
  say(purpose === 'test' ? 'the tests in tests/browser will not run until then; all others do' : 'the demo needs them');
}

checkNode();
const packages = installPackages();
installPrograms(process.argv[2] === 'start' ? 'start' : 'test');
await packages;
