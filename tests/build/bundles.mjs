// @ts-check
/**
 * What is bundled and how: scripts, pages, workers and style sheets, and how many gzipped bytes each may have. Bundling alone;
 * build.mjs puts the extension together.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import esbuild from 'esbuild';
import { gzipSync } from 'fflate';
import { mergeChunks } from './merge-chunks.mjs';
import { COUNTRIES, placeModules } from './place-lists.mjs';

/** Scripts that the browser runs by themselves: from where, and how many gzipped bytes each may have. */
const SCRIPTS = [
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
  { from: 'extension/workshop/index.tsx', to: 'workshop.js', budget: 82_000 },
];
/**
 * What comes behind a page, always or when it is asked for, read from disk once while the page draws itself. The core: the reader's rules
 * and the words of its languages are most of it. The store: Dexie is most of it.
 */
const BEHIND = [
  // More than at first by how sellers put what is cracked, loose, bent or home-made, what they keep, wish for or only speak of, spoken prices and rates of some
  // sizes: words that no ad of the corpus may have and the next one has.
  { name: 'core', from: 'src/evaluate.ts', always: true, budget: 198_000 },
  { name: 'store', from: 'extension/store/page-store.ts', always: true, budget: 50_000 },
  // Only once a place is asked for: the look-up, and the list of the buyer's own country. The largest has ZIP codes too.
  { name: 'gazetteer', from: 'src/places/gazetteer.ts', always: false, budget: 12_000 },
  ...COUNTRIES.map((country) => ({
    name: `places:${country}`,
    from: `places:${country}`,
    always: false,
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
export const OLDEST = { chrome: '116', firefox: '142.0' };

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
  // Behind the panel, that is: the Workshop loads some of it at once.
  const before = new Set(entries.find(({ name }) => name === 'panel.js')?.paths);
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
 * Names in libraries that become others, which nothing has, so that what they stand for can't be used. What is called does not become
 * undefined, for the add-on linter would tell of that. NOTICES.txt says which of them are in which package, BUILDING.md why.
 */
export const RENAMED = {
  everywhere: { innerHTML: 'noMarkup' },
  inWorkers: {
    fetch: 'noFetch',
    XMLHttpRequest: 'noRequest',
    'globalThis.XMLHttpRequest': 'undefined',
    'globalThis.process': 'undefined',
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
  define: RENAMED.inWorkers,
};

/** @typedef {{from: string, to: string}} Entry */

/** How everything is written. */
const written = (/** @type {string} */ root, /** @type {boolean} */ watching) =>
  /** @type {const} @satisfies {esbuild.BuildOptions} */ ({
    absWorkingDir: root,
    target: [`chrome${OLDEST.chrome}`, `firefox${OLDEST.firefox}`],
    minify: !watching,
    charset: 'utf8',
    legalComments: 'none',
    logLevel: 'silent',
  });

/** Bundles entries in one of the two forms that browsers take. */
const bundle = (
  /** @type {string} */ root,
  /** @type {readonly Entry[]} */ entries,
  /** @type {esbuild.BuildOptions} */ form,
  /** @type {boolean} */ watching,
) =>
  esbuild.build({
    ...written(root, watching),
    outdir: 'dist',
    bundle: true,
    write: false,
    metafile: true,
    entryPoints: entries.map(({ from, to }) => ({ in: from, out: to.replace(/\.\w+$/, '') })),
    jsx: 'automatic',
    jsxImportSource: 'preact',
    // Packages may be linked into the folder: their place elsewhere must not get into names and order of the output.
    preserveSymlinks: true,
    // Turns every `innerHTML` into a name that the DOM does not know: no library can write markup, and ad text can't become any.
    mangleProps: /^innerHTML$/,
    mangleCache: RENAMED.everywhere,
    plugins: [placeModules],
    ...form,
  });

/** The pages' scripts, which share what both need, in few files. */
async function bundlePages(/** @type {string} */ root, /** @type {boolean} */ watching) {
  const made = await bundle(root, PAGES, { format: 'esm', splitting: true, chunkNames: 'chunks/[name]-[hash]' }, watching);
  if (watching) return made;
  const [panel = '', workshop = ''] = PAGES.map(({ to }) => `dist/${to}`);
  const behind = BEHIND.filter(({ always }) => always).map(({ from }) => from);
  return mergeChunks(made, { page: panel, behind }, workshop, { ...written(root, watching), format: 'esm' });
}

/**
 * Bundles everything that is the same for both browsers. Throws when a source is missing.
 * @param {string} root folder of the project
 * @param {boolean} watching readable instead of small
 */
export async function bundleAll(root, watching) {
  const gone = [...SCRIPTS, ...PAGES, ...WORKERS, ...STYLES].filter(({ from }) => !existsSync(join(root, from)));
  if (gone.length > 0) throw new Error(`missing: ${gone.map(({ from }) => from).join(', ')}`);
  const made = await Promise.all([
    bundle(root, [...SCRIPTS, ...STYLES], { format: 'iife' }, watching),
    bundlePages(root, watching),
    bundle(root, WORKERS, AS_WORKER, watching),
  ]);
  const metafile = {
    inputs: Object.assign({}, ...made.map(({ metafile }) => metafile?.inputs)),
    outputs: Object.assign({}, ...made.map(({ metafile }) => metafile?.outputs)),
  };
  return { outputFiles: made.flatMap(({ outputFiles }) => outputFiles ?? []), metafile, budgets: budgetsOf(metafile) };
}
