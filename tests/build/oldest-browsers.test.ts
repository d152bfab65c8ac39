// @vitest-environment node
/** No browser as old as the oldest that the manifest lets in was run: so nothing younger than those may be named unasked. */
import { fileURLToPath } from 'node:url';
import { beforeAll, expect, it } from 'vitest';
import { bundleAll, OLDEST } from './bundles.mjs';
import { youngerScriptNames, youngerStyleNames } from './younger-names.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const BROWSERS = ['chrome', 'firefox'] as const;

/** Why each name may stand there all the same. */
const ALL_THE_SAME: Readonly<Record<string, string>> = {
  '.getComposedRanges': 'asked for by extension/capture/take-selection.ts',
  '.openOrClosedShadowRoot': 'asked for by extension/platform/shadow-root.ts',
  'dom.openOrClosedShadowRoot': 'asked for by extension/platform/shadow-root.ts',
  '.storageBuckets': 'asked for by extension/store/copy.ts',
  '.moveBefore': 'asked for by preact',
  '.setImmediate': 'asked for by Dexie',
  '.withResolvers': 'asked for by Dexie',
  '.userAgentData': 'asked for by Dexie',
  SuppressedError: 'asked for by Dexie',
  '.stackTraceLimit': 'asked for by zod',
  'Symbol.dispose': "asked for by the solver's glue",
  '.fromBase64': 'asked for by what the bundler adds for packed code',
  'Uint8Array.fromBase64': 'asked for by what the bundler adds for packed code',
  QuotaExceededError: 'the name of an error, by which older browsers call one too',
  '.isOpen': 'a word of our own',
  '.isShown': 'a word of our own',
  '.setStatus': 'a word of our own',
  '.maxWidth': 'a property of a style',
  '.notEqual': 'a word of Dexie',
  '.toArray': 'a word of Dexie',
};

let scripts = '';
let sheets = '';
beforeAll(async () => {
  const { outputFiles } = await bundleAll(ROOT, false);
  const of = (kind: RegExp): string =>
    outputFiles
      .filter(({ path }) => kind.test(path))
      .map(({ text }) => text)
      .join('\n');
  // The lists of places are names of places.
  scripts = of(/(?<!chunks\/[a-z]{2}-\w+)\.js$/);
  sheets = of(/\.css$/);
});

it('knows what came when', () => {
  // MDN's pages of these, read from memory.
  expect(youngerScriptNames('URL.canParse(a);Object.groupBy(b,c);new SuppressedError;d.moveBefore(e)', 'chrome', 116)).toEqual([
    '.canParse',
    '.groupBy',
    '.moveBefore',
    'Object.groupBy',
    'SuppressedError',
    'URL.canParse',
  ]);
  expect(youngerScriptNames('URL.canParse(a);a.toSorted();structuredClone(b);new Map', 'chrome', 120)).toEqual([]);
  expect(youngerScriptNames('browser.sidePanel.open(a)', 'chrome', 115)).toEqual(['sidePanel.open']);
  expect(youngerStyleNames('a{field-sizing:content;color:red}@starting-style{b:user-valid{top:0}}', 'chrome', 116)).toEqual([
    'field-sizing',
    'starting-style',
    'user-valid',
  ]);
});

it.each(BROWSERS)('names nothing in a script that is younger than the oldest %s, or says why', (browser) => {
  expect(scripts.length).toBeGreaterThan(1_000_000);
  const found = youngerScriptNames(scripts, browser, Number.parseFloat(OLDEST[browser]));
  expect(found.filter((name) => !(name in ALL_THE_SAME))).toEqual([]);
});

it('gives no reason for a name that nothing has', () => {
  const found = BROWSERS.flatMap((browser) => youngerScriptNames(scripts, browser, Number.parseFloat(OLDEST[browser])));
  expect(Object.keys(ALL_THE_SAME).filter((name) => !found.includes(name))).toEqual([]);
});

it.each(BROWSERS)('names nothing in a style sheet that is younger than the oldest %s', (browser) => {
  expect(sheets.length).toBeGreaterThan(10_000);
  expect(youngerStyleNames(sheets, browser, Number.parseFloat(OLDEST[browser]))).toEqual([]);
});
