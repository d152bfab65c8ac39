// @ts-check
/**
 * Makes the extension: `node build.mjs` builds dist/chrome, dist/firefox and a zip of each, checks them, and fails with a reason.
 * `node build.mjs --watch` builds again on every change, readable and without zips.
 */
import { existsSync, readdirSync, readFileSync, realpathSync, watch } from 'node:fs';
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import esbuild from 'esbuild';
import { gzipSync, zipSync } from 'fflate';
import { COUNTRIES, CREDIT, placeModules } from './places.mjs';
import {
  bannedCalls,
  bytes,
  impurities,
  markupWriters,
  missingMessages,
  missingPaths,
  overBudget,
  packageOf,
  remoteAddresses,
  together,
} from './tests/build/checks.mjs';

const ROOT = dirname(fileURLToPath(import.meta.url));
export const TARGETS = /** @type {const} */ (['chrome', 'firefox']);

/** Scripts that the browser runs by themselves: from where, and how many gzipped bytes each may have. */
export const SCRIPTS = [
  { from: 'extension/background/index.ts', to: 'background.js', budget: 10_000 },
  { from: 'extension/capture/index.ts', to: 'capture.js', budget: 15_000 },
  // Put into a page only when the buyer asks for every ad on it; it carries the readers once more.
  { from: 'extension/capture/sweep/index.ts', to: 'sweep.js', budget: 15_500 },
];
/**
 * Scripts of the extension's own pages: modules, so that the pages share what both need (`chunks/`) and fetch what is large only when
 * it is wanted. The budget is for everything that has to be there before the page shows something.
 */
export const PAGES = [
  { from: 'extension/panel/index.tsx', to: 'panel.js', budget: 60_000 },
  // With the store, which every screen needs; the screens themselves come when they are opened.
  { from: 'extension/workshop/index.tsx', to: 'workshop.js', budget: 80_000 },
];
/**
 * What comes behind a page, read from disk once while the page draws itself. The core: the reader's rules and the words of its languages
 * are most of it. The store: Dexie is most of it.
 */
const BEHIND = [
  { name: 'core', from: 'src/evaluate.ts', budget: 130_000 },
  { name: 'store', from: 'extension/store/page-store.ts', budget: 50_000 },
  // Only once a place is asked for: the look-up, and the list of the buyer's own country. The largest has ZIP codes too.
  { name: 'gazetteer', from: 'src/places/gazetteer.ts', budget: 12_000 },
  ...COUNTRIES.map((country) => ({
    name: `places:${country}`,
    from: `places:${country}`,
    budget: country === 'us' ? 500_000 : 80_000,
  })),
];
/** Workers of the pages: modules that stand alone. The budget covers what they carry with them. */
export const WORKERS = [{ from: 'extension/workshop/buy-list/solver-worker.ts', to: 'solver-worker.js', budget: 1_400_000 }];
/** Style sheets of the pages, with what they import. */
export const STYLES = [
  { from: 'extension/styles/panel.css', to: 'panel.css' },
  { from: 'extension/styles/workshop.css', to: 'workshop.css' },
];
/** The oldest browsers that have all we use: side panel on request, the CSS Custom Highlight API, the word on data collection (142 on Android). */
const OLDEST = { chrome: '116', firefox: '142.0' };

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

/** The licences of the packages that ended up in the bundles. */
function notices(/** @type {esbuild.Metafile} */ metafile) {
  /** @type {Map<string, string>} */
  const folders = new Map();
  for (const { inputs } of Object.values(metafile.outputs)) {
    for (const [path, { bytesInOutput }] of Object.entries(inputs)) {
      const name = packageOf(path);
      if (name !== undefined && bytesInOutput > 0) folders.set(name, join(ROOT, 'node_modules', name));
    }
  }
  const one = (/** @type {[string, string]} */ [name, folder]) => {
    const { version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    const file = readdirSync(folder).find((entry) => /^(licen[cs]e|copying)/i.test(entry));
    if (file === undefined) throw new Error(`${name} comes without a licence text`);
    return `${name} ${version} (${license})\n\n${readFileSync(join(folder, file), 'utf8').replaceAll('\r\n', '\n').trim()}\n`;
  };
  return [...folders]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(one)
    .join(`\n${'-'.repeat(70)}\n\n`);
}

const filesIn = (/** @type {string} */ folder) =>
  existsSync(folder)
    ? readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => join(entry.parentPath ?? entry.path, entry.name))
        .sort()
    : [];

/** An output with all that it loads before it runs; what it asks for later is not counted. */
function loadedWith(/** @type {esbuild.Metafile} */ metafile, /** @type {string} */ output, seen = new Set([output])) {
  for (const { path, kind } of metafile.outputs[output]?.imports ?? []) {
    if (kind !== 'import-statement' || seen.has(path)) continue;
    seen.add(path);
    loadedWith(metafile, path, seen);
  }
  return [...seen];
}

/** What is held to a budget: each script, each page with what it loads at once, and what comes behind a page. */
function budgetsOf(/** @type {esbuild.Metafile} */ metafile) {
  const made = (/** @type {string} */ from) =>
    Object.entries(metafile.outputs).find(([, { entryPoint }]) => entryPoint === from)?.[0] ?? '';
  const inBuild = (/** @type {string[]} */ outputs) => outputs.map((output) => output.replace(/^dist\//, ''));
  const entries = [...SCRIPTS, ...PAGES, ...WORKERS].map(({ from, to, budget }) => ({
    name: to,
    paths: inBuild(loadedWith(metafile, made(from))),
    budget,
  }));
  const before = new Set(entries.flatMap(({ paths }) => paths));
  const behind = BEHIND.map(({ name, from, budget }) => ({
    name,
    paths: inBuild(loadedWith(metafile, made(from))).filter((path) => !before.has(path)),
    budget,
  }));
  return [...entries, ...behind];
}

/** WebAssembly as gzipped bytes inside the script that imports it: there is no file to fetch, and no way to fetch is needed. */
/** @type {esbuild.Plugin} */
const packedCode = {
  name: 'packed-code',
  setup(build) {
    build.onLoad({ filter: /\.wasm$/ }, ({ path }) => ({
      contents: gzipSync(readFileSync(path), { level: 9, mtime: 0 }),
      loader: 'binary',
    }));
  },
};

/**
 * How workers are bundled. The glue of compiled code can fetch its code and run in Node; here it is handed its code, and both ways are
 * taken away, so that they can't be used and the checks see none.
 */
/** @type {esbuild.BuildOptions} */
const AS_WORKER = {
  format: 'esm',
  plugins: [packedCode],
  external: ['node:*'],
  define: {
    // A name that nothing has: a call of undefined would be told by the add-on linter.
    fetch: 'noFetch',
    XMLHttpRequest: 'noRequest',
    'globalThis.XMLHttpRequest': 'undefined',
    'globalThis.process': 'undefined',
  },
};

/** @typedef {{from: string, to: string}} Entry */

/**
 * Dexie's warnings to programmers name two addresses to read on. They are taken out, so that the check on addresses can stay strict.
 * @type {esbuild.Plugin}
 */
const withoutAddresses = {
  name: 'without-addresses',
  setup({ onLoad }) {
    onLoad({ filter: /[\\/]dexie[\\/]dist[\\/].+\.m?js$/ }, async ({ path }) => ({
      contents: (await readFile(path, 'utf8')).replace(/https?:\/\/[\w.]+\/\w{7,8}\b/g, 'its documentation'),
    }));
  },
};

/** Bundles entries in one of the two forms that browsers take. */
const bundle = (
  /** @type {readonly Entry[]} */ entries,
  /** @type {esbuild.BuildOptions} */ form,
  /** @type {boolean} */ watching,
) =>
  esbuild.build({
    entryPoints: entries.map(({ from, to }) => ({ in: from, out: to.replace(/\.\w+$/, '') })),
    absWorkingDir: ROOT,
    outdir: 'dist',
    bundle: true,
    write: false,
    metafile: true,
    target: [`chrome${OLDEST.chrome}`, `firefox${OLDEST.firefox}`],
    jsx: 'automatic',
    jsxImportSource: 'preact',
    minify: !watching,
    charset: 'utf8',
    legalComments: 'none',
    // Turns every `innerHTML` into a name that the DOM does not know: no library can write markup, and ad text can't become any.
    mangleProps: /^innerHTML$/,
    mangleCache: { innerHTML: 'noMarkup' },
    plugins: [withoutAddresses, placeModules],
    logLevel: 'silent',
    ...form,
  });

/** Everything that is the same for both browsers, and which of it is held to which budget. */
async function sharedFiles(/** @type {boolean} */ watching) {
  const gone = [...SCRIPTS, ...PAGES, ...WORKERS, ...STYLES].filter(({ from }) => !existsSync(join(ROOT, from)));
  if (gone.length > 0) throw new Error(`missing: ${gone.map(({ from }) => from).join(', ')}`);
  const [scripts, pages, workers] = await Promise.all([
    bundle([...SCRIPTS, ...STYLES], { format: 'iife' }, watching),
    bundle(PAGES, { format: 'esm', splitting: true, chunkNames: 'chunks/[name]-[hash]' }, watching),
    bundle(WORKERS, AS_WORKER, watching),
  ]);
  const made = [scripts, pages, workers];
  const outputFiles = made.flatMap(({ outputFiles }) => outputFiles ?? []);
  const metafile = {
    inputs: Object.assign({}, ...made.map(({ metafile }) => metafile?.inputs)),
    outputs: Object.assign({}, ...made.map(({ metafile }) => metafile?.outputs)),
  };
  /** @type {Files} */
  const files = {
    'THIRD-PARTY.txt': bytes(`${notices(metafile)}\n${'-'.repeat(70)}\n\n${CREDIT}`),
    LICENSE: readFileSync(join(ROOT, 'LICENSE')),
  };
  for (const { path, contents } of outputFiles) files[relative(join(ROOT, 'dist'), path)] = contents;
  const budgets = budgetsOf(metafile);
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
  await once().catch(report);
  if (!watching) return;
  /** @type {NodeJS.Timeout | undefined} */
  let soon;
  for (const folder of ['extension', 'src']) {
    watch(join(ROOT, folder), { recursive: true }, () => {
      clearTimeout(soon);
      soon = setTimeout(() => once().catch(report), 100);
    });
  }
}

if (process.argv[1] !== undefined && realpathSync(resolve(process.argv[1])) === fileURLToPath(import.meta.url)) await main();
