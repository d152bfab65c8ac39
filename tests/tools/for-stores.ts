/**
 * What add-on stores ask for beside the packed extension: the texts of their forms, in docs/stores/ or out of README and CHANGELOG, and
 * pictures. What Chrome's store wants is told from memory of its developer console, November 2026.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readStrings } from './evaluate/strings.ts';
import { GERMAN_PICTURES, PICTURES, TILE } from './picture-names.ts';
import { plainText } from './plain-text.ts';

/** A sentence that sends the reader to a file: who reads the form has none. */
const NAMES_A_FILE = /`[^`\s]*(?:\/|\.(?:md|ts|mjs|txt))[^`\s]*`/;

/** A part of the README by its heading, without what names files. Throws when there is none. */
export function partOf(readme: string, heading: string): string {
  const [, part] = readme.split(`\n## ${heading}\n`);
  if (part === undefined) throw new Error(`README.md has no part "${heading}"`);
  const paragraphs = (part.split('\n## ')[0] ?? '').trim().split(/\n{2,}/);
  const kept = paragraphs.map((paragraph) =>
    paragraph.startsWith('|')
      ? paragraph
      : paragraph
          .replaceAll('\n', ' ')
          .split(/(?<=[.!?](?:\*\*)?) /)
          .filter((sentence) => !NAMES_A_FILE.test(sentence))
          .join(' '),
  );
  return kept.filter((paragraph) => paragraph !== '').join('\n\n');
}

/** Its table of permissions as one answer for each, as the form has a field for each; what stands around the table comes behind. */
export function permissions(readme: string): string {
  const paragraphs = partOf(readme, 'Permissions').split('\n\n');
  const rows = paragraphs.filter((paragraph) => paragraph.startsWith('|')).flatMap((table) => table.split('\n'));
  const answers = rows
    .map((row) => row.split('|').map((cell) => cell.trim()))
    .filter(([, name = '']) => name.startsWith('`'))
    .map(([, name = '', what, why]) => `## ${name.replaceAll('`', '')}\n\nWhat for: ${what}. Why not less: ${why}.`);
  return [...answers, '## Everything else', ...paragraphs.filter((paragraph) => !paragraph.startsWith('|'))].join('\n\n');
}

/** The newest part of the CHANGELOG, without its heading. */
const newest = (changes: string): string => (changes.split(/^## .*$/m)[1] ?? '').trim();

/** Width and height of a PNG: its header chunk holds them, big-endian, from byte 16 (PNG specification, 11.2.1). */
export const sizeOf = (png: Buffer): readonly [number, number] => [png.readUInt32BE(16), png.readUInt32BE(20)];

/** Those pictures that are of a store's size (1280 by 800, five at most). */
export const screenshots = (root: string, names: readonly string[] = PICTURES): readonly string[] =>
  names.filter((name) => sizeOf(readFileSync(join(root, 'docs/pictures', name))).join() === '1280,800');

/** What the store shows of it in one language: name, the line below it, and the text. */
function listing(root: string, language: string): string {
  const { extName, extDescription } = readStrings(new URL(`../../extension/_locales/${language}/`, import.meta.url));
  return `# ${extName}\n\n${extDescription}\n\n${textOf(root, `docs/stores/listing-${language}.md`)}`;
}

const textOf = (root: string, file: string): string => readFileSync(join(root, file), 'utf8');

/** Files by the name that they get. */
export function forStores(root: string): Readonly<Record<string, Buffer | string>> {
  const readme = textOf(root, 'README.md');
  const languages = readdirSync(join(root, 'extension/_locales'));
  const pictures = [...screenshots(root), ...screenshots(root, GERMAN_PICTURES), TILE];
  const texts = {
    ...Object.fromEntries(languages.map((language) => [`listing-${language}.md`, listing(root, language)])),
    'answers.md': textOf(root, 'docs/stores/answers.md'),
    'permissions.md': `# Ironsift: Permissions\n\n${permissions(readme)}`,
    'privacy.md': `# Ironsift: Privacy\n\n${partOf(readme, 'Privacy')}`,
    'testing.md': textOf(root, 'docs/stores/testing.md'),
    'release-notes.md': newest(textOf(root, 'CHANGELOG.md')),
  };
  return {
    ...Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, `${plainText(text)}\n`])),
    ...Object.fromEntries(pictures.map((name) => [name.replace('/', '-'), readFileSync(join(root, 'docs/pictures', name))])),
  };
}
