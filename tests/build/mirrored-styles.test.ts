/** Styles name sides by the direction of the writing, so that a language from right to left mirrors them by itself. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const STYLES = 'extension/styles';
const SIDED =
  /(?<![\w-])(?:(?:margin|padding|border|scroll-margin|scroll-padding)-)?(?:left|right)(?:-(?:width|color|style))?\s*:/;
const SIDED_VALUE = /(?<![\w-])(?:text-align|float|clear)\s*:\s*(?:left|right)\b/;
/** Four values, of which the second and the last are the two sides. */
const FOUR = /(?<![\w-])(?:margin|padding|inset|border-width)\s*:\s*(\S+)\s+(\S+)\s+(\S+)\s+([^\s;]+)\s*;/;

/** The declarations of a style sheet that name a side of the screen. */
const sided = (css: string): string[] =>
  (css.replace(/\/\*[\s\S]*?\*\//g, '').match(/[\w-]+\s*:[^;{}]+;/g) ?? []).filter((declaration) => {
    const [, , second, , last] = FOUR.exec(declaration) ?? [];
    return SIDED.test(declaration) || SIDED_VALUE.test(declaration) || second !== last;
  });

describe.each(readdirSync(STYLES).filter((file) => file.endsWith('.css')))('%s', (file) => {
  it('names no side of the screen', () => expect(sided(readFileSync(join(STYLES, file), 'utf8'))).toEqual([]));
});

it.each([
  ['a { border-left: 1px solid; }', 1],
  ['a { padding: 0 1px 0 2px; right: 0; }', 2],
  ['a { text-align: right; }', 1],
  ['a { margin: 0 1px 0 1px; border-inline-start: 0; inset-inline-end: 0; float: inline-start; } /* left: 0; */', 0],
  ['a { background: left 0 top 0; grid-area: left; }', 0],
])('%s', (css, count) => expect(sided(css)).toHaveLength(count));
