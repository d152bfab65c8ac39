/** What `npm run package` adds for the stores' forms. */
import { readdirSync, readFileSync } from 'node:fs';
import { JSDOM } from 'jsdom';
import { expect, it } from 'vitest';
import { makeManifest, TARGETS } from '../../build.mjs';
import { computedSight } from '../../extension/capture/readers/index.ts';
import { findBlocks } from '../../extension/capture/sweep/find-blocks.ts';
import { offersOf, readBlock } from '../../extension/capture/sweep/read-block.ts';
import { wordsOf } from '../../extension/components/speech.ts';
import { rowOf, tagOf } from '../../extension/panel/sweep/rows.ts';
import { toContract } from '../../src/contract.ts';
import { evaluate } from '../../src/evaluate.ts';
import { DEFAULT_SETTINGS } from '../../src/listing/settings.ts';
import { listingFrom } from '../tools/evaluate/input.ts';
import { english } from '../tools/evaluate/strings.ts';
import { forStores, partOf, permissions, screenshots, sizeOf } from '../tools/for-stores.ts';
import { GERMAN_PICTURES } from '../tools/picture-names.ts';
import { plainText } from '../tools/plain-text.ts';

const files = forStores('.');
const textOf = (name: string): string => String(files[name]);
const template = JSON.parse(readFileSync('manifest.template.json', 'utf8'));

it('holds the statement of privacy, and nothing of the parts beside it', () => {
  expect(textOf('privacy.md')).toMatch(/^# Ironsift: Privacy\n\nNothing is read until you ask/);
  expect(textOf('privacy.md')).not.toMatch(/\n## |Makers/);
});

it('holds an answer for every permission of either browser', () => {
  const asked = new Set<string>(TARGETS.flatMap((target) => makeManifest(template, target).permissions));
  for (const name of asked)
    expect(textOf('permissions.md')).toMatch(new RegExp(`^## ${name}\\b.*\\n\\nWhat for: .{20,} Why not less: .{20,}\\.$`, 'm'));
  expect(textOf('permissions.md')).toContain("'wasm-unsafe-eval'");
  expect(textOf('permissions.md')).toContain('No host permissions');
});

it('sends nobody to a file whom no file is given', () => {
  for (const name of ['privacy.md', 'permissions.md']) {
    expect(textOf(name).length).toBeGreaterThan(500);
    expect(textOf(name)).not.toMatch(/tests\/|\.(?:md|ts|mjs)\b/);
  }
  const readme =
    '# A\n\n## Privacy\n\nOne `a`.\nTwo is in `tests/b.ts`. **Three.** Four is in `C.md`.\n\nFive in `d/e`.\n\n## B\n';
  expect(partOf(readme, 'Privacy')).toBe('One `a`. **Three.**');
});

it('is plain text for fields that show it as it is: no line ends in mid-sentence, and there are no marks', () => {
  expect(
    plainText(
      '# A\n\nOne **two**\nthree `four`.\n\n- five\n  six;\n- seven.\n\n1. Eight\n   nine.\n\n```html\n<a>\n  <b>`\n```\n\nTen.',
    ),
  ).toBe('# A\n\nOne two three four.\n\n- five six;\n- seven.\n\n1. Eight nine.\n\n<a>\n  <b>`\n\nTen.');
  const texts = Object.keys(files).filter((name) => name.endsWith('.md'));
  expect(texts.length).toBeGreaterThan(6);
  for (const name of texts) {
    expect(textOf(name)).not.toMatch(/\*\*|`|\]\(/);
    const lines = textOf(name)
      .split('\n')
      .filter((line) => !/^(?:# |## |\s*<|$)/.test(line));
    expect(
      lines.filter((line) => !/[.:;]$/.test(line)),
      name,
    ).toEqual([]);
    expect(
      lines.filter((line) => !/^(?:- |\d+\. )?[\p{Lu}\p{L}]/u.test(line)),
      name,
    ).toEqual([]);
  }
});

it('has a text for every language that it speaks, with the name and the line that the extension has there', () => {
  const languages = readdirSync('extension/_locales');
  expect(languages).toEqual(['de', 'en']);
  for (const language of languages) {
    const { extName, extDescription } = JSON.parse(readFileSync(`extension/_locales/${language}/add-on.json`, 'utf8'));
    const listing = textOf(`listing-${language}.md`);
    expect(listing.startsWith(`# ${extName.message}\n\n${extDescription.message}\n\n`)).toBe(true);
    // What stands there before anything is set.
    expect(listing).toMatch(DEFAULT_SETTINGS.unit === 'lb' ? /\b(?:lb|pound)\b/ : /\bkg|kilogram/);
    expect(listing).toMatch(DEFAULT_SETTINGS.currency === 'USD' ? /US.dollar/i : DEFAULT_SETTINGS.currency);
    // As many list entries in each; a text of a store may have 16,000 characters (Chrome Web Store, from memory).
    expect(listing.match(/^- /gm)).toHaveLength(9);
    expect(listing.length).toBeLessThan(16_000);
  }
});

it('answers what the forms ask: one purpose, remote code, data, what is new', () => {
  for (const heading of ['Single purpose', 'Remote code', 'Data use']) expect(textOf('answers.md')).toContain(`# ${heading}\n`);
  expect(textOf('release-notes.md')).toMatch(/^The first version\.[\s\S]+\n- /);
  expect(textOf('release-notes.md')).not.toContain('## ');
});

it('tells a reviewer how to test, with an ad that is judged as it says', async () => {
  const manual = readFileSync('docs/stores/testing.md', 'utf8');
  const { commands }: { commands: Record<string, { suggested_key: { default: string } }> } = template;
  for (const { suggested_key: key } of Object.values(commands)) expect(manual).toContain(`**${key.default}**`);
  const [page = '', results = ''] = [...manual.matchAll(/```html\n([\s\S]+?)```/g)].map(([, html]) => html);
  for (const html of [page, results]) expect(textOf('testing.md')).toContain(html);
  const { worth, call, flags } = toContract(evaluate(await listingFrom(page), DEFAULT_SETTINGS), english());
  expect(worth.usable.likely).toBe(390);
  expect(call.because.join(' ')).toContain('10 lb of the 400 lb on offer');
  expect(flags.map(({ found }) => found).join(' ')).toContain('32 mm');
  expect(manual).toContain('a shaft of 32 mm, that one 10 has no mate, and that 390 lb of 400 count');
  const labels = [...labelsOf(results)];
  expect(labels).toHaveLength(3);
  expect(manual).toContain(`"${labels[0]}", "${labels[1]}" and "${labels[2]}".`);
});

/** What a sweep of the page writes beside its ads. */
function labelsOf(html: string): string[] {
  const url = 'http://127.0.0.1:8000/results.html';
  const { document } = new JSDOM(html, { url }).window;
  const sight = computedSight();
  const steps = findBlocks(document.body, sight);
  const words = wordsOf(english());
  for (;;) {
    const { done, value } = steps.next();
    if (!done) continue;
    return value.map(({ elements }) => {
      const { listing } = readBlock(elements, url, offersOf(document), sight);
      return tagOf(words, rowOf(words, { id: '', listing }, evaluate(listing, DEFAULT_SETTINGS))).words;
    });
  }
}

it('holds as many pictures as a store takes, of its size', () => {
  for (const names of [screenshots('.'), screenshots('.', GERMAN_PICTURES)]) {
    expect(names.length).toBeGreaterThan(2);
    expect(names.length).toBeLessThanOrEqual(5);
  }
  expect(Object.keys(files)).toEqual(
    expect.arrayContaining(['what-is-wrong.png', 'page-of-ads.png', 'pickup.png', 'de-page-of-ads.png']),
  );
  expect(Object.keys(files)).not.toContain('panel-dark.png');
  // Chrome Web Store, "small promotional tile", which it insists on (from memory).
  expect(sizeOf(files['tile.png'] as Buffer)).toEqual([440, 280]);
});

it('ends where the README has no such part', () => {
  expect(() => partOf('# A\n\n## Privacy of others\n', 'Privacy')).toThrow('README.md has no part "Privacy"');
  expect(() => permissions('# A\n')).toThrow('README.md has no part "Permissions"');
});
