// @ts-check
/**
 * Fewer files for the extension's pages. The bundler makes a file of whatever one set of screens shares, some sixty before a panel shows
 * anything, and a browser's work for each is more than for what stands in it. Here files that are loaded together become one.
 */
import { dirname, join, relative, sep } from 'node:path';
import esbuild from 'esbuild';
import { groupsOf } from './chunk-groups.mjs';

/** @typedef {import('esbuild').Metafile['outputs']} Outputs */
/** @typedef {Pick<import('esbuild').BuildResult, 'outputFiles' | 'metafile'>} Made */

const inSlashes = (/** @type {string} */ path) => path.replaceAll(sep, '/');

/** Where a file is for an output that loads it, as a browser wants it said. */
function addressFrom(/** @type {string} */ output, /** @type {string} */ file) {
  const path = inSlashes(relative(dirname(output), file));
  return path.startsWith('.') ? path : `./${path}`;
}

/**
 * The bundler's account of files that were made of others: what went into each and what it loads, for budgets and notices.
 * @param {Outputs} before
 * @param {Outputs} after
 * @param {ReadonlyMap<string, readonly string[]>} files file of a group → its members
 * @returns {Outputs}
 */
function accountOf(before, after, files) {
  return Object.fromEntries(
    Object.entries(after).map(([output, { bytes, exports, imports }]) => {
      const { entryPoint } = before[output] ?? {};
      const inputs = Object.assign({}, ...(files.get(output) ?? [output]).map((one) => before[one]?.inputs));
      const loads = imports.map(({ kind, path }) => ({ kind, path: inSlashes(join(dirname(output), path)) }));
      return [output, { bytes, exports, imports: loads, inputs, ...(entryPoint && { entryPoint }) }];
    }),
  );
}

/**
 * The same program in fewer files. Every output is bundled once more, a group's file out of its members; what it takes from a member of
 * another group it takes from that group's file, where each name has the member's number before it.
 * @param {Made} made what the bundler split; nothing of it is written yet
 * @param {{page: string, behind: readonly string[]}} first see groupsOf
 * @param {string} second
 * @param {import('esbuild').BuildOptions & {absWorkingDir: string}} form how all is written
 * @returns {Promise<Made>}
 */
export async function mergeChunks(made, first, second, form) {
  const { inputs, outputs } = made.metafile ?? { inputs: {}, outputs: {} };
  const text = new Map(made.outputFiles?.map(({ path, contents }) => [inSlashes(relative(form.absWorkingDir, path)), contents]));
  const group = groupsOf(outputs, first, second);
  const files = new Map(
    [...new Set(group.values())].map((name, at) => [
      `dist/chunks/shared-${at + 1}.js`,
      [...group.keys()].filter((output) => group.get(output) === name),
    ]),
  );
  const fileOf = new Map([...files].flatMap(([file, members]) => members.map((member) => [member, file])));
  const numbers = new Map([...group.keys()].map((output, at) => [output, at]));
  const named = (/** @type {string} */ output, /** @type {(name: string, own: string) => string} */ write) =>
    (outputs[output]?.exports ?? []).map((name) => write(name, `m${numbers.get(output)}_${name}`)).join();
  const from = (/** @type {string | undefined} */ path) => `from ${JSON.stringify(path)};`;

  /** @type {import('esbuild').Plugin} */
  const plugin = {
    name: 'merge-chunks',
    setup({ onResolve, onLoad }) {
      onResolve({ filter: /.*/ }, ({ path, kind, importer, namespace, pluginData }) => {
        if (kind === 'entry-point') return { path, namespace: 'output', pluginData: path };
        // Ours name files in full, the bundler's where they stand beside each other.
        const ours = files.has(importer) || namespace !== 'output';
        const wanted = ours ? path : inSlashes(join(dirname(importer), path));
        const file = fileOf.get(wanted);
        if (file === undefined) return { path: addressFrom(pluginData, wanted), external: true };
        return { path: wanted, namespace: file === pluginData ? 'output' : `names for ${dirname(pluginData)}`, pluginData };
      });
      onLoad({ filter: /.*/, namespace: 'output' }, ({ path, pluginData }) => {
        const members = files.get(path);
        const handsOn = members?.map((one) => `export {${named(one, (name, own) => `${name} as ${own}`)}} ${from(one)}`);
        return { contents: handsOn?.join('\n') ?? text.get(path) ?? '', loader: 'js', pluginData };
      });
      onLoad({ filter: /.*/ }, ({ path, pluginData }) => ({
        contents: `export {${named(path, (name, own) => `${own} as ${name}`)}} ${from(fileOf.get(path))}`,
        loader: 'js',
        pluginData,
      }));
    },
  };
  const entries = [...files.keys(), ...Object.keys(outputs).filter((output) => !group.has(output))];
  const { outputFiles, metafile } = await esbuild.build({
    ...form,
    outdir: 'dist',
    bundle: true,
    write: false,
    metafile: true,
    entryPoints: entries.map((output) => ({ in: output, out: output.replace(/^dist\/|\.js$/g, '') })),
    plugins: [plugin],
  });
  return {
    ...made,
    outputFiles,
    metafile: { inputs, outputs: accountOf(outputs, metafile.outputs, files) },
  };
}
