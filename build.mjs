// @ts-check
/**
 * Makes the extension: `node build.mjs` builds dist/chrome, dist/firefox and a zip of each, checks them, and fails with a reason.
 * `node build.mjs --watch` builds again on every change, readable and without zips.
 */
import { existsSync, readdirSync, readFileSync, realpathSync, watch } from 'node:fs';
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { zipSync } from 'fflate';
import { bundleAll, OLDEST } from './tests/build/bundles.mjs';
import {
  bannedCalls,
  bytes,
  impurities,
  markupWriters,
  missingMessages,
  missingPaths,
  overBudget,
  remoteAddresses,
  together,
} from './tests/build/checks.mjs';
import { brokenLanguages } from './tests/build/languages.mjs';
import { notices } from './tests/build/notices.mjs';

const ROOT = dirname(fileURLToPath(import.meta.url));
export const TARGETS = /** @type {const} */ (['chrome', 'firefox']);

/**
 * The manifest for one browser. Pure: the template is left as it is.
 * @param {Record<string, any>} template manifest.template.json, in which `background` and `panel` are bare file names
 * @param {'chrome' | 'firefox'} target
 * @returns {Record<string, any>}
 */
export function makeManifest(template, target) {
  const { background, panel, ...manifest } = structuredClone(template);
  if (target === 'chrome') {
    // Chrome runs the background as a service worker and refuses `scripts`.
    manifest.background = { service_worker: background };
    // The panel beside the page is Chrome's side panel, which is a permission of its own; Firefox warns about both.
    manifest.permissions = [...manifest.permissions, 'sidePanel'];
    manifest.side_panel = { default_path: panel };
    // sidePanel.open(), which the shortcut needs, came with 116. Firefox calls this key unknown.
    manifest.minimum_chrome_version = OLDEST.chrome;
    return manifest;
  }
  // Firefox has no extension service workers; it runs the same file in an event page.
  manifest.background = { scripts: [background] };
  // The panel beside the page is Firefox's sidebar. It stays shut at install: nothing opens unasked.
  manifest.sidebar_action = {
    default_title: manifest.name,
    default_panel: panel,
    default_icon: manifest.icons,
    open_at_install: false,
  };
  // Firefox wants a fixed id for storage and signing, and a word on data: none is collected. Chrome calls these keys unknown.
  manifest.browser_specific_settings = {
    gecko: {
      id: 'ironsift@ironsift.invalid',
      strict_min_version: OLDEST.firefox,
      data_collection_permissions: { required: ['none'] },
    },
  };
  return manifest;
}

/**
 * The parts of one language as one messages.json. Throws on what a browser would refuse or silently misread.
 * @param {Record<string, Record<string, {message: string}>>} parts file name → its keys
 */
export function mergeMessages(parts) {
  /** @type {Record<string, {message: string}>} */
  const merged = {};
  /** @type {Record<string, string>} */
  const origin = {};
  for (const [file, entries] of Object.entries(parts).sort(([a], [b]) => (a < b ? -1 : 1))) {
    for (const [key, entry] of Object.entries(entries)) {
      // Browsers ignore case in keys.
      const folded = key.toLowerCase();
      if (!/^[a-zA-Z0-9_]+$/.test(key)) throw new Error(`${file}: key "${key}" may hold only letters, digits and _`);
      if (origin[folded] !== undefined) throw new Error(`${file}: key "${key}" is in ${origin[folded]} already`);
      if (typeof entry?.message !== 'string') throw new Error(`${file}: key "${key}" has no "message"`);
      if (/(?<!\$)(?:\$\$)*\$(?!\$)/.test(entry.message)) throw new Error(`${file}: key "${key}": write a dollar sign as $$`);
      origin[folded] = file;
      merged[key] = entry;
    }
  }
  return merged;
}

/** @typedef {import("./tests/build/checks.mjs").Files} Files */

const filesIn = (/** @type {string} */ folder) =>
  existsSync(folder)
    ? readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => join(entry.parentPath ?? entry.path, entry.name))
        .sort()
    : [];

/** Everything that is the same for both browsers, and which of it is held to which budget. */
async function sharedFiles(/** @type {boolean} */ watching) {
  const { outputFiles, metafile, budgets } = await bundleAll(ROOT, watching);
  /** @type {Files} */
  const files = {
    'NOTICES.txt': bytes(notices(ROOT, metafile)),
    LICENSE: readFileSync(join(ROOT, 'LICENSE')),
  };
  for (const { path, contents } of outputFiles) files[relative(join(ROOT, 'dist'), path)] = contents;
  const extension = join(ROOT, 'extension');
  const markup = markupWriters(ROOT, Object.keys(metafile.inputs));
  if (markup.length > 0) throw new Error(markup.join('\n'));
  const asTheyAre = filesIn(extension).filter((file) =>
    /^(?:[^/]+\.html|icons\/.+\.png)$/.test(relative(extension, file).replaceAll(sep, '/')),
  );
  for (const file of asTheyAre) files[relative(extension, file).replaceAll(sep, '/')] = readFileSync(file);
  for (const language of readdirSync(join(extension, '_locales'))) {
    const parts = filesIn(join(extension, '_locales', language)).filter((file) => file.endsWith('.json'));
    const named = parts.map((file) => [relative(ROOT, file), JSON.parse(readFileSync(file, 'utf8'))]);
    files[`_locales/${language}/messages.json`] = bytes(`${JSON.stringify(mergeMessages(Object.fromEntries(named)), null, 1)}\n`);
  }
  return { files, budgets };
}

/** A zip that is the same, byte for byte, wherever and whenever it is made. The date is local on purpose: zips hold local time. */
export function packed(/** @type {Files} */ files) {
  const sorted = Object.fromEntries(Object.entries(files).sort(([a], [b]) => (a < b ? -1 : 1)));
  return zipSync(sorted, { level: 9, mtime: new Date(1980, 0, 1) });
}

/** Writes a file whole or not at all, and only when it changes: a browser may be running the extension from this folder. */
async function put(/** @type {string} */ path, /** @type {Uint8Array} */ content) {
  if (existsSync(path) && readFileSync(path).equals(content)) return;
  await mkdir(dirname(path), { recursive: true });
  await writeFile(`${path}.${process.pid}`, content);
  await rename(`${path}.${process.pid}`, path);
}

/** Builds both targets into dist/. Throws with every reason at once when a check fails; then dist/ is left as it was. */
export async function build({ watching = false } = {}) {
  const { files: shared, budgets } = await sharedFiles(watching);
  const template = JSON.parse(readFileSync(join(ROOT, 'manifest.template.json'), 'utf8'));
  template.version = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')).version;
  const outcomes = TARGETS.map((target) => {
    /** @type {Files} */
    const files = { ...shared, 'manifest.json': bytes(`${JSON.stringify(makeManifest(template, target), null, 2)}\n`) };
    const found = [
      missingPaths,
      missingMessages,
      brokenLanguages,
      bannedCalls,
      remoteAddresses,
      ...(watching ? [] : [(/** @type {Files} */ built) => overBudget(built, budgets)]),
    ];
    return { target, files, wrong: found.flatMap((check) => check(files).map((why) => `${target}: ${why}`)) };
  });
  const wrong = [...(await impurities(ROOT)), ...outcomes.flatMap((outcome) => outcome.wrong)];
  if (wrong.length > 0) throw new Error(wrong.join('\n'));
  for (const { target, files } of outcomes) {
    const folder = join(ROOT, 'dist', target);
    for (const [path, content] of Object.entries(files)) await put(join(folder, path), content);
    const stale = filesIn(folder).filter((file) => files[relative(folder, file).replaceAll(sep, '/')] === undefined);
    for (const file of stale) await rm(file, { force: true });
    if (!watching) await put(join(ROOT, 'dist', `ironsift-${target}.zip`), packed(files));
  }
  return { files: shared, budgets };
}

async function main() {
  const watching = process.argv.includes('--watch');
  const once = async () => {
    const { files, budgets } = await build({ watching });
    const sizes = budgets.map(({ name, paths, budget }) => `${name} ${together(files, paths)}/${budget} B gz`);
    console.log(`built dist/${TARGETS.join(' and dist/')}: ${sizes.join(', ')}`);
  };
  const report = (/** @type {unknown} */ error) => {
    console.error(`build failed:\n${error instanceof Error ? error.message : error}`);
    if (!watching) process.exitCode = 1;
  };
  // One after the other: two builds at once would write the same files.
  let last = once().catch(report);
  await last;
  if (!watching) return;
  const again = () => {
    last = last.then(() => once().catch(report));
  };
  /** @type {NodeJS.Timeout | undefined} */
  let soon;
  for (const folder of ['extension', 'src']) {
    watch(join(ROOT, folder), { recursive: true }, () => {
      clearTimeout(soon);
      soon = setTimeout(again, 100);
    });
  }
}

if (process.argv[1] !== undefined && realpathSync(resolve(process.argv[1])) === fileURLToPath(import.meta.url)) await main();
