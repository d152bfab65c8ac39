/** What add-on stores ask for beside the packed extension: the privacy statement, the reasons of the permissions, pictures of the screen. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { PICTURES } from './picture-names.ts';

/** A part of the README by its heading, as a text of its own. Throws when there is none. */
export function partOf(readme: string, heading: string): string {
  const [, part] = readme.split(`\n## ${heading}\n`);
  if (part === undefined) throw new Error(`README.md has no part "${heading}"`);
  return `# Ironsift: ${heading}\n${part.split('\n## ')[0]?.trimEnd()}\n`;
}

/** Width and height of a PNG: its header chunk holds them, big-endian, from byte 16 (PNG specification, 11.2.1). */
const sizeOf = (png: Buffer): readonly [number, number] => [png.readUInt32BE(16), png.readUInt32BE(20)];

/** Those of the README's pictures that are of a store's size (Chrome Web Store: 1280 by 800, five at most; from memory). */
export const screenshots = (root: string): readonly string[] =>
  PICTURES.filter((name) => sizeOf(readFileSync(join(root, 'docs/pictures', name))).join() === '1280,800');

/** Files by the name that they get. */
export function forStores(root: string): Readonly<Record<string, Buffer | string>> {
  const readme = readFileSync(join(root, 'README.md'), 'utf8');
  return {
    'permissions.md': partOf(readme, 'Permissions'),
    'privacy.md': partOf(readme, 'Privacy'),
    ...Object.fromEntries(screenshots(root).map((name) => [name, readFileSync(join(root, 'docs/pictures', name))])),
  };
}
