// @ts-check
/**
 * Runs a TypeScript entry with plain Node: `node tests/tools/run.mjs ENTRY [ARGUMENT…]`.
 * Bundles the project's own modules (packages stay outside) into node_modules/.cache/ironsift, then runs the result in this
 * process, so that arguments, standard input, signals and exit code are the entry's own.
 */
import { existsSync } from 'node:fs';
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { basename, extname, join, relative, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const ROOT = resolve(fileURLToPath(new URL('../..', import.meta.url)));
const CACHE = join(ROOT, 'node_modules/.cache/ironsift');

/** @returns {never} */
const give = (/** @type {string} */ line) => {
  process.stderr.write(`${line}\n`);
  process.exit(2);
};

/** A bundled module would see the bundle's address as its own; modules that read files beside themselves need their true one. */
/** @type {import('esbuild').Plugin} */
const ownAddress = {
  name: 'own-address',
  setup(build) {
    build.onLoad({ filter: /\.(ts|tsx|mjs)$/, namespace: 'file' }, async ({ path }) => ({
      contents: (await readFile(path, 'utf8')).replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href)),
      loader: path.endsWith('.tsx') ? 'tsx' : path.endsWith('.ts') ? 'ts' : 'js',
    }));
  },
};

async function bundle(/** @type {string} */ entry) {
  const esbuild = await import('esbuild');
  const { outputFiles } = await esbuild.build({
    entryPoints: [entry],
    bundle: true,
    write: false,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    packages: 'external',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    sourcemap: 'inline',
    logLevel: 'error',
    plugins: [ownAddress],
  });
  const name = relative(ROOT, entry).replaceAll(/[\\/]/g, '-').replace(extname(entry), '');
  const file = join(CACHE, `${name}.mjs`);
  const fresh = outputFiles[0]?.text ?? '';
  if (existsSync(file) && (await readFile(file, 'utf8')) === fresh) return file;
  await mkdir(CACHE, { recursive: true });
  // Written aside and moved, so that two runs at once never read half a file.
  await writeFile(`${file}.${process.pid}`, fresh);
  await rename(`${file}.${process.pid}`, file);
  return file;
}

const [wanted, ...rest] = process.argv.slice(2);
const entry = resolve(ROOT, wanted ?? give('usage: node tests/tools/run.mjs ENTRY [ARGUMENT…]'));
if (!existsSync(entry)) give(`there is no ${relative(ROOT, entry)}`);
if (!existsSync(join(ROOT, 'node_modules/esbuild')))
  give('the packages are not installed yet: run `npm ci` in the project folder first');

const file = await bundle(entry).catch((error) => give(`${basename(entry)} could not be bundled: ${error.message}`));
// npm runs scripts in the project's folder; file names on the command line are meant from where the person stands.
if (process.env.INIT_CWD !== undefined && existsSync(process.env.INIT_CWD)) process.chdir(process.env.INIT_CWD);
process.argv = [process.execPath, entry, ...rest];
process.setSourceMapsEnabled(true);
await import(pathToFileURL(file).href);
