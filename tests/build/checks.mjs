// @ts-check
/**
 * What a build is held against before it is written: each check takes the built files and gives the reasons why they must not ship.
 * Called by build.mjs on both targets; every one is seen failing in checks.test.ts.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import esbuild from 'esbuild';

/** @typedef {Record<string, Uint8Array>} Files what is built: path in the extension → content */
export const text = (/** @type {Uint8Array} */ bytes) => new TextDecoder().decode(bytes);
export const bytes = (/** @type {string} */ content) => new TextEncoder().encode(content);
export const gzipped = (/** @type {Uint8Array | undefined} */ content) => gzipSync(content ?? bytes(''), { level: 9 }).length;
const ofKind = (/** @type {Files} */ files, /** @type {RegExp} */ kind) => Object.keys(files).filter((path) => kind.test(path));

/** @returns {string[]} */
const stringsIn = (/** @type {unknown} */ value) =>
  typeof value === 'string'
    ? [value]
    : value !== null && typeof value === 'object'
      ? Object.values(value).flatMap(stringsIn)
      : [];

/** Paths that the manifest, a page or a style sheet names but the build does not have: the browser would refuse or show a hole. */
export function missingPaths(/** @type {Files} */ files) {
  const named = stringsIn(JSON.parse(text(files['manifest.json'] ?? bytes('{}'))))
    .filter((value) => /^[\w./-]+\.(?:js|html|css|png|svg|json)$/.test(value))
    .map((path) => ({ by: 'manifest.json', path }));
  for (const by of ofKind(files, /\.(html|css)$/)) {
    for (const [, inHtml, inCss, imported] of text(files[by] ?? bytes('')).matchAll(
      /(?:src|href)\s*=\s*["']([^"'#]+)["']|url\(\s*["']?([^"')#]+)["']?\s*\)|@import\s+["']([^"']+)["']/g,
    )) {
      const path = inHtml ?? inCss ?? imported ?? '';
      if (!/^[a-z]+:/i.test(path)) named.push({ by, path: posix.join(posix.dirname(by), path.replace(/[?#].*$/, '')) });
    }
  }
  for (const by of ofKind(files, /\.js$/)) {
    // What a module imports, at once or later, stands in the bundle as a path relative to it.
    for (const [, path] of text(files[by] ?? bytes('')).matchAll(/(?:\bfrom|\bimport)\s*\(?\s*"(\.[^"]+)"/g)) {
      named.push({ by, path: posix.join(posix.dirname(by), path ?? '') });
    }
  }
  return named
    .filter(({ path }) => files[path] === undefined)
    .map(({ by, path }) => `${by} names ${path}, which is not in the build`);
}

/** `__MSG_key__` in the manifest without a string in the default language: the browser refuses to load the extension. */
export function missingMessages(/** @type {Files} */ files) {
  const manifest = text(files['manifest.json'] ?? bytes('{}'));
  const known = JSON.parse(text(files[`_locales/${JSON.parse(manifest).default_locale}/messages.json`] ?? bytes('{}')));
  const wanted = new Set([...manifest.matchAll(/__MSG_(\w+)__/g)].map(([, key]) => key ?? ''));
  return [...wanted]
    .filter((key) => known[key] === undefined)
    .map((key) => `manifest.json wants the string "${key}", which _locales lacks`);
}

/** Calls that make code out of text: the extension's content security policy forbids them, and ad text must never run. */
export function bannedCalls(/** @type {Files} */ files) {
  const banned =
    /(?<![\w$.])(?:(?:eval|Function)\s*\(|new\s+Function\b)|\bset(?:Timeout|Interval)\(\s*["'`]|\.(?:innerHTML|outerHTML)\s*=(?!=)|\binsertAdjacentHTML\b|\bdocument\.write\b/g;
  return ofKind(files, /\.js$/).flatMap((path) =>
    [...text(files[path] ?? bytes('')).matchAll(banned)].map(
      ([call]) => `${path} has "${call}": text must never become code or markup`,
    ),
  );
}

/**
 * Addresses in the error messages of libraries, where a programmer may read on: words, not addresses that are reached. The solver's tells of
 * a file format; those of Dexie, which is in a chunk, of two mistakes in its use.
 */
export const TOLD_ONLY = [
  { path: /^solver-worker\.js$/, address: 'http://web.mit.edu/lpsolve/doc/CPLEX-format.htm' },
  { path: /^chunks\//, address: 'http://bit.ly/2kdckMn' },
  { path: /^chunks\//, address: 'https://tinyurl.com/y2uuvskb' },
];

/** Addresses outside the extension, and ways to reach them: nothing may be fetched, ever. Namespaces are names, not addresses. */
export function remoteAddresses(/** @type {Files} */ files) {
  const remote =
    /(?:https?|wss?):\/\/(?!(?:www\.)?(?:w3|schema)\.org\b)[^\s"'`)\\<>]+|(?<=(?:src|href)\s*=\s*["']|url\(["']?)\/\/[^\s"')]+/g;
  const reaching =
    /\b(?:XMLHttpRequest|WebSocket|EventSource|sendBeacon|WebTransport|importScripts|RTCPeerConnection)\b|(?:(?<![\w$.])|\b(?:window|self|globalThis)\.)fetch\s*\(/g;
  return ofKind(files, /\.(js|html|css)$/).flatMap((path) => {
    const content = text(files[path] ?? bytes(''));
    const found = [...content.matchAll(remote), ...(path.endsWith('.js') ? content.matchAll(reaching) : [])];
    return found
      .filter(([what]) => !TOLD_ONLY.some((told) => told.path.test(path) && told.address === what))
      .map(([what]) => `${path} has "${what}": the extension makes no requests`);
  });
}

/** Gzipped bytes of files that are loaded together. */
export const together = (/** @type {Files} */ files, /** @type {readonly string[]} */ paths) =>
  paths.reduce((sum, path) => sum + gzipped(files[path]), 0);

/** Bundles over their budget: the capture script runs in the buyer's page, and a slow panel is not opened twice. One that is missing is told too. */
export function overBudget(
  /** @type {Files} */ files,
  /** @type {readonly {name: string, paths: readonly string[], budget: number}[]} */ budgets,
) {
  return budgets.flatMap(({ name, paths, budget }) => {
    const missing = paths.filter((path) => files[path] === undefined);
    if (paths.length === 0 || missing.length > 0) return [`${name} has a budget, but is not in the build: ${missing.join(', ')}`];
    const size = together(files, paths);
    return size > budget ? [`${name} is ${size} bytes gzipped, over its budget of ${budget}`] : [];
  });
}

/** Bundles the core on its own, for no platform: it must need nothing but itself and zod. Gives what is wrong with it. */
export async function impurities(/** @type {string} */ root, entry = 'src/evaluate.ts') {
  if (!existsSync(join(root, entry))) return [`${entry} is missing`];
  try {
    const { metafile } = await esbuild.build({
      entryPoints: [entry],
      absWorkingDir: root,
      bundle: true,
      write: false,
      metafile: true,
      platform: 'neutral',
      format: 'esm',
      logLevel: 'silent',
    });
    const outside = Object.keys(metafile.inputs).filter((path) => !path.startsWith('src/') && packageOf(path) !== 'zod');
    return outside.map((path) => `src/ reaches outside itself: ${path}`);
  } catch (error) {
    return [`src/ does not bundle on its own: ${error instanceof Error ? error.message : error}`];
  }
}

/** Modules of ours that write markup: the build takes `innerHTML` away from everybody, so such code would silently do nothing. */
export function markupWriters(/** @type {string} */ root, /** @type {string[]} */ paths) {
  const ours = paths.filter((path) => packageOf(path) === undefined && /\.tsx?$/.test(path));
  const writes = ours.filter((path) =>
    /innerHTML|outerHTML|insertAdjacentHTML|dangerouslySet/.test(readFileSync(join(root, path), 'utf8')),
  );
  return writes.map((path) => `${path} writes markup: make elements instead, ad text must stay text`);
}

export const packageOf = (/** @type {string} */ path) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1];
