/** A language made for tests: every string accented, two fifths longer and in brackets, so that what is not a string, or is cut, shows. */
import { readFileSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

const ACCENTS: Readonly<Record<string, string>> = Object.fromEntries(
  [...'aAcCeEiInNoOrRsStTuUyYwWzZ'].map((letter, at) => [letter, [...'áÁćĆéÉíÍńŃóÓŕŔśŚţŢúÚýÝŵŴźŹ'][at] ?? letter]),
);
const KEPT = new Set(['extName', 'locale_tag']);

/** "Worth the drive" as "[Ŵóŕţh ţhé dŕívé······]"; places stay. */
export function pseudo(message: string): string {
  const accented = message
    .split(/(\{\w+\}|\$\$)/)
    .map((part) => (/^(?:\{\w+\}|\$\$)$/.test(part) ? part : part.replace(/[a-z]/gi, (letter) => ACCENTS[letter] ?? letter)))
    .join('');
  const words = message.replace(/\{\w+\}/g, '');
  // In pieces of five: languages that are longer have more words too, hardly ever one of 40 letters.
  const more = '·'.repeat(Math.ceil(words.length * 0.4)).replace(/(.{5})(?=.)/g, '$1 ');
  return /\p{L}/u.test(words) ? `[${accented}${more}]` : message;
}

/** Puts the made language into an unpacked extension, under the tag of a real one, which the browser must know. */
export async function addPseudo(extension: string, language: string): Promise<void> {
  const english: Record<string, { message: string }> = JSON.parse(
    readFileSync(join(extension, '_locales/en/messages.json'), 'utf8'),
  );
  const made = Object.fromEntries(
    Object.entries(english).map(([key, { message }]) => [key, { message: KEPT.has(key) ? message : pseudo(message) }]),
  );
  made.locale_tag = { message: language };
  await mkdir(join(extension, '_locales', language), { recursive: true });
  await writeFile(join(extension, '_locales', language, 'messages.json'), JSON.stringify(made));
}
