// @ts-check
/** Which of the files that the bundler made are loaded together; merge-chunks.mjs makes one of them. */

/** @typedef {import('esbuild').Metafile['outputs']} Outputs */

/** A file that only some screens need, in bytes: one that is larger stays by itself, so that no other screen waits for it. */
const SMALL = 8000;

const importsOf = (/** @type {Outputs} */ outputs, /** @type {string} */ one, /** @type {string} */ kind) =>
  (outputs[one]?.imports ?? []).filter((found) => found.kind === kind && !found.external).map(({ path }) => path);

/** Everything that is reached from some outputs by imports of one kind, themselves included. */
function reached(/** @type {Outputs} */ outputs, /** @type {readonly string[]} */ from, /** @type {readonly string[]} */ kinds) {
  const seen = new Set(from);
  for (const one of seen) for (const kind of kinds) for (const path of importsOf(outputs, one, kind)) seen.add(path);
  return seen;
}
const AT_ONCE = ['import-statement'];
const EVER = ['import-statement', 'dynamic-import'];

/**
 * When a page needs an output: "at once", with the first of what comes behind it at every start, or with which of its other parts.
 * @param {Outputs} outputs
 * @param {string} page
 * @param {readonly string[]} behind sources of what always comes behind a page, in the order in which it is waited for
 * @returns {(output: string) => string}
 */
function whenNeeded(outputs, page, behind) {
  const first = reached(outputs, [page], AT_ONCE);
  const later = [...reached(outputs, [page], EVER)].flatMap((one) => {
    const from = outputs[one]?.entryPoint;
    return from === undefined || one === page ? [] : [{ from, needs: reached(outputs, [one], AT_ONCE) }];
  });
  return (output) => {
    if (first.has(output)) return 'at once';
    const by = later.filter(({ needs }) => needs.has(output)).map(({ from }) => from);
    return behind.find((from) => by.includes(from)) ?? (by.sort().join(' ') || 'never');
  };
}

/**
 * Which outputs become one: output → what it has in common with those it joins. Together is what both pages need at the same times, and
 * what is small and needed by some screens of the second page, whichever.
 * @param {Outputs} outputs
 * @param {{page: string, behind: readonly string[]}} first whose parts are kept apart by when it needs them
 * @param {string} second
 * @returns {Map<string, string>} without what stays by itself
 */
export function groupsOf(outputs, first, second) {
  const here = whenNeeded(outputs, first.page, first.behind);
  const needed = whenNeeded(outputs, second, []);
  const there = (/** @type {string} */ output) => (['at once', 'never'].includes(needed(output)) ? needed(output) : 'some');
  /** @type {Map<string, string>} */
  const group = new Map();
  for (const [output, { entryPoint, bytes }] of Object.entries(outputs)) {
    if (entryPoint || (there(output) === 'some' && bytes >= SMALL)) continue;
    if (here(output) !== 'never' || there(output) !== 'never') group.set(output, `${here(output)} | ${there(output)}`);
  }
  /** Without it, a screen that needs one small file would load whatever the others of its group need. */
  const asksForMore = (/** @type {string} */ output) =>
    [...reached(outputs, [output], AT_ONCE)].some(
      (one) => group.get(one) !== group.get(output) && there(one) === 'some' && !(here(one) === 'at once' && group.has(one)),
    );
  for (let size = -1; size !== group.size; ) {
    size = group.size;
    for (const [output, name] of group) if (name.endsWith('some') && asksForMore(output)) group.delete(output);
  }
  const alone = (/** @type {string} */ name) => [...group.values()].filter((other) => other === name).length === 1;
  return new Map([...group].filter(([, name]) => !alone(name)));
}
