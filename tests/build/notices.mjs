// @ts-check
/**
 * NOTICES.txt: what the extension carries that is not ours, under which licence, and in which of its files. Made from the bundler's
 * own account of what went where, so that nothing is forgotten and nothing named that is not there.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { RENAMED, WORKERS } from './bundles.mjs';
import { packageOf } from './checks.mjs';
import { CREDIT } from './place-lists.mjs';
import { SOLVER, SOLVER_PARTS } from './solver-notice.mjs';

/** Licences that let us ship a package inside an MIT extension as long as their text goes with it; MPL-2.0 wants its source named too. */
const ALLOWED = ['MIT', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', '0BSD', 'MPL-2.0'];

/** First lines of licence texts, for packages whose package.json names none. */
const BY_TEXT = [
  { begins: /^(?:the )?isc license/i, licence: 'ISC' },
  { begins: /^(?:the )?mit license/i, licence: 'MIT' },
];

const LINE = `\n${'-'.repeat(70)}\n\n`;

/**
 * What the build makes of a package beside minifying it: which of its names become others (`RENAMED`). Looked for in the files themselves, so that
 * a package is told of that begins to use such a name. Apache-2.0, 4(b), wants changes told; the other licences do not mind.
 * @param {string} root folder that holds node_modules
 * @param {readonly string[]} inputs paths of the package's files below it
 * @param {readonly string[]} files outputs that they are in
 */
function changesOf(root, inputs, files) {
  const workers = WORKERS.map(({ to }) => to);
  const renamed = { ...RENAMED.everywhere, ...(files.some((file) => workers.includes(file)) ? RENAMED.inWorkers : {}) };
  const code = inputs.map((path) => readFileSync(join(root, path), 'utf8')).join('\n');
  return Object.entries(renamed)
    .filter(([name]) => new RegExp(`\\b${name.replaceAll('.', '\\.')}\\b`).test(code))
    .map(([name, other]) => `${name} to ${other}`);
}

/** Whether a package is changed, and where its source is: MPL-2.0, 3.2, wants whoever gets the minified form told. */
const changedAndSource = (/** @type {string} */ name, /** @type {string} */ version, /** @type {readonly string[]} */ changes) =>
  `${changes.length > 0 ? `Changed: ${changes.join('; ')}. Minified` : 'Unchanged but for minifying'}; its source is the npm package ${name}, version ${version}.`;

/**
 * Which packages ended up in which outputs; bundled as nothing at all does not count.
 * @param {Pick<import('esbuild').Metafile, 'outputs'>} metafile
 * @returns {Map<string, {inputs: string[], files: string[]}>} package → its files that are carried, and outputs; all sorted
 */
export function bundledPackages(metafile) {
  /** @type {Map<string, {inputs: Set<string>, files: Set<string>}>} */
  const found = new Map();
  for (const [output, { inputs }] of Object.entries(metafile.outputs)) {
    for (const [path, { bytesInOutput }] of Object.entries(inputs)) {
      const name = packageOf(path);
      if (name === undefined || bytesInOutput === 0) continue;
      const known = found.get(name) ?? { inputs: new Set(), files: new Set() };
      known.inputs.add(path);
      known.files.add(output.replace(/^dist\//, ''));
      found.set(name, known);
    }
  }
  const sorted = [...found].sort(([a], [b]) => (a < b ? -1 : 1));
  return new Map(sorted.map(([name, { inputs, files }]) => [name, { inputs: [...inputs].sort(), files: [...files].sort() }]));
}

/** One package's part. Throws when it comes without a licence text, or under a licence that is not allowed. */
function noticeOf(
  /** @type {string} */ root,
  /** @type {string} */ name,
  /** @type {{inputs: readonly string[], files: readonly string[]}} */ { inputs, files },
) {
  const folder = join(root, 'node_modules', name);
  const { version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const read = (/** @type {RegExp} */ kind) => {
    const file = existsSync(folder) ? readdirSync(folder).find((entry) => kind.test(entry)) : undefined;
    return file === undefined ? undefined : readFileSync(join(folder, file), 'utf8').replaceAll('\r\n', '\n').trim();
  };
  const text = read(/^(?:licen[cs]e|copying)/i);
  if (text === undefined) throw new Error(`${name} is bundled, but comes without a licence text`);
  const licence = license ?? BY_TEXT.find(({ begins }) => begins.test(text))?.licence;
  if (!ALLOWED.includes(licence))
    throw new Error(`${name} is bundled, but its licence (${licence ?? 'none named'}) is not allowed`);
  // The Apache licence wants a NOTICE file passed on.
  const notice = read(/^notice/i);
  const carried = changedAndSource(name, version, changesOf(root, inputs, files));
  return `${name} ${version} (${licence})\nin ${files.join(', ')}\n${carried}\n\n${text}\n${notice ? `\n${notice}\n` : ''}`;
}

/**
 * The whole text.
 * @param {string} root folder that holds node_modules
 * @param {Pick<import('esbuild').Metafile, 'outputs'>} metafile
 */
export function notices(root, metafile) {
  const packages = bundledPackages(metafile);
  return [
    ...[...packages].map(([name, carried]) => noticeOf(root, name, carried)),
    ...(packages.has(SOLVER) ? [SOLVER_PARTS] : []),
    CREDIT,
  ].join(LINE);
}
