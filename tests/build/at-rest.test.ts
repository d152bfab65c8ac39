/** Nothing moves for a reader who asked the system for less motion (WCAG 2.2, 2.3.3): what moves does so only where no such wish is known. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const FREE = /@media[^{]*\(\s*prefers-reduced-motion\s*:\s*no-preference\s*\)[^{]*\{/;
const STYLES =
  /@keyframes|@view-transition|(?<![\w-])(?:-webkit-)?(?:transition|animation|scroll-behavior)(?:-[a-z-]+)?['"]?\s*:(?!\s*['"]?(?:none|auto|0s)\b)[^;}\n]+/g;
const CODE =
  /\.animate\(|\.startViewTransition\(|\bbehavior:\s*['"]smooth|<(?:animate\w*|set|marquee)[\s>]|\.style\.(?:transition|animation)\b|\bscrollBehavior\b/g;

/** Without what stands under a query for readers who have no such wish. */
function asked(text: string): string {
  const free = FREE.exec(text);
  if (free === null) return text;
  const start = free.index + free[0].length;
  let end = start;
  for (let depth = 1; depth > 0 && end < text.length; end += 1) depth += { '{': 1, '}': -1 }[text[end] ?? ''] ?? 0;
  return text.slice(0, free.index) + asked(text.slice(end));
}

/** What moves whatever the reader asked for; styles also where a script holds them. */
const moving = (text: string): string[] => {
  const rest = asked(text.replace(/\/\*[\s\S]*?\*\//g, ''));
  return [...(rest.match(STYLES) ?? []), ...(rest.match(CODE) ?? [])];
};

it('nothing that ships moves unasked', () => {
  const files = readdirSync('extension', { recursive: true, encoding: 'utf8' }).filter((file) =>
    /\.(?:css|tsx?|html)$/.test(file),
  );
  const found = files.flatMap((file) => moving(readFileSync(join('extension', file), 'utf8')).map((one) => `${file}: ${one}`));
  expect(files.length).toBeGreaterThan(100);
  expect(found).toEqual([]);
});

it.each([
  ['a { transition: left 0.2s; }', 1],
  ['a { animation-name: turn; -webkit-animation: turn 1s }', 2],
  ['@keyframes turn { to { rotate: 1turn } }', 1],
  ['html { scroll-behavior: smooth; }', 1],
  [
    '@media (prefers-reduced-motion: no-preference) { a { transition: left 1s; } @keyframes b { to { left: 0 } } } a { animation: b }',
    1,
  ],
  ['@media screen and (prefers-reduced-motion: no-preference) { a { b { transition: left 1s; } } }', 0],
  ['@media (prefers-reduced-motion: reduce) { a { transition: left 1s; } }', 1],
  ['a { transition: none; animation: none; scroll-behavior: auto; } /* transition: left 1s; */', 0],
  ["<i style={{ transition: 'left 1s' }} />", 1],
  ["one.scrollIntoView({ behavior: 'smooth' }); one.animate([]); one.style.transition = 'left 1s'", 3],
  ["addEventListener('transitionend', moved)", 0],
])('%s', (text, count) => expect(moving(text)).toHaveLength(count));
