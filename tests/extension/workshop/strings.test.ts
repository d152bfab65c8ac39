/** Every string that the Workshop and the keeping of ads name exists, and every string of their parts is named. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => join(folder, file));
const code = ['extension/workshop', 'extension/panel', 'extension/components', 'src/message', 'src/finds']
  .flatMap(filesIn)
  .map((file) => readFileSync(file, 'utf8'))
  .join('\n');

const LOCALE = 'extension/_locales/en';
const keysIn = (part: string): string[] => Object.keys(JSON.parse(readFileSync(join(LOCALE, part), 'utf8')));
const known = new Set(readdirSync(LOCALE).flatMap(keysIn));

const PARTS = ['buy', 'kit', 'workshop', 'finds', 'compare', 'keep', 'pickup', 'weigh', 'message', 'bought', 'part', 'posted'];
const named = [...code.matchAll(new RegExp(`'((?:${PARTS.join('|')})_\\w+)'`, 'g'))].map(([, key = '']) => key);
const beginnings = [...code.matchAll(new RegExp(`[\`']((?:${PARTS.join('|')})_\\w*_)(?:\\$\\{|')`, 'g'))].map(
  ([, key = '']) => key,
);

describe.each(PARTS)('%s.json', (part) => {
  const keys = keysIn(`${part}.json`);

  it('names only what is there', () => {
    const wanted = named.filter((key) => key.startsWith(`${part}_`) && !key.endsWith('_'));
    expect(wanted.length).toBeGreaterThan(0);
    expect(wanted.filter((key) => !known.has(key))).toEqual([]);
  });

  it('has none left over', () => {
    const isNamed = (key: string): boolean => {
      const plain = key.replace(/_one$/, '');
      return code.includes(`'${plain}'`) || beginnings.some((beginning) => plain.startsWith(beginning)) || VARYING.test(plain);
    };
    expect(keys.filter((key) => !isNamed(key))).toEqual([]);
  });
});

/** Named by a value alone: a screen, a row of the comparison, what lots are measured by. */
const VARYING =
  /^workshop_|^kit_(?:best|jump)(?:_unit)?$|^weigh_(?:washer_(?:wanted|tolerance|weighed|each)|\w+In)$|^pickup_\w+Mm$|^compare_(?:call|asked|all_in|usable|per_pound|per_new|new|most|drive)$/;
