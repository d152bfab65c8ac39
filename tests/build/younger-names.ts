/**
 * Names in a build that came after the oldest browser it is for, by MDN's data on browsers' support (@mdn/browser-compat-data, CC0). A name is
 * all that is looked at, for what kind of thing a member is asked of is not known here. So it finds `URL.canParse` and a new global; of other
 * members it finds those written in several words that nothing old has, such as `moveBefore`, but not `union`, which anybody may call a thing
 * of his own. What the language itself has is held to ES2023 by the compiler besides (`lib` in tsconfig.json).
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

type Browser = 'chrome' | 'firefox';
interface Support {
  readonly version_added: string | false | null;
  readonly version_removed?: string | false;
  readonly flags?: unknown;
  readonly prefix?: string;
  readonly alternative_name?: string;
}
interface Known {
  readonly __compat?: { readonly support: Readonly<Partial<Record<Browser, Support | readonly Support[]>>> };
  readonly [name: string]: unknown;
}
type Group = Readonly<Record<string, Known>>;

const data = JSON.parse(readFileSync(createRequire(import.meta.url).resolve('@mdn/browser-compat-data'), 'utf8')) as {
  readonly api: Group;
  readonly javascript: { readonly builtins: Group };
  readonly webassembly: { readonly api: Group };
  readonly webextensions: { readonly api: Group };
  readonly css: { readonly properties: Group; readonly 'at-rules': Group; readonly selectors: Group };
};

/** The version since when it has been there under its name; infinite where it is not. "≤79" is at latest 79, "preview" none yet. */
function since(name: string, { __compat }: Known, browser: Browser): number {
  const all = [__compat?.support[browser] ?? []].flat();
  // Where one entry ends and another begins, only how much of it there is has changed.
  const isGone = ({ version_removed: end }: Support): boolean => !!end && !all.some(({ version_added: start }) => start === end);
  // What is called so of another object: contextMenus.create is told as the other name of menus.create.
  const isOther = ({ alternative_name: other }: Support): boolean => other !== undefined && !other.endsWith(`.${name}`);
  const versions = all
    .filter((support) => !support.flags && !support.prefix && !isGone(support) && !isOther(support))
    .map(({ version_added: version }) => Number.parseFloat((version || '').replace('≤', '')))
    .filter((version) => !Number.isNaN(version));
  return Math.min(Number.POSITIVE_INFINITY, ...versions);
}

/** Names and since when the first thing of that name has been there. */
function names(browser: Browser): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  const add = (name: string, known: Known): void => {
    const version = since(name.replace(/^.*\./, ''), known, browser);
    found.set(name, Math.min(found.get(name) ?? Number.POSITIVE_INFINITY, version));
  };
  for (const group of [data.api, data.javascript.builtins, data.webassembly.api, data.webextensions.api]) {
    for (const [holder, known] of Object.entries(group)) {
      add(/^[A-Z]/.test(holder) ? holder : `.${holder}`, known);
      for (const [member, its] of Object.entries(known)) {
        if (member === '__compat' || member.endsWith('_event')) continue;
        const name = member.replace(/_static$/, '');
        add(`${holder}.${name}`, its as Known);
        add(`.${name}`, its as Known);
      }
    }
  }
  return found;
}

/** What a script names: globals, members by what they are asked of, and members in several words by themselves. */
function* namedIn(script: string): Generator<string> {
  for (const [, holder, member] of script.matchAll(/(?<![\w$])([A-Za-z]\w*)(?=(?:\??\.([a-z]\w*))?)/g)) {
    if (holder !== undefined && /^[A-Z]/.test(holder)) yield holder;
    if (member !== undefined) yield `${holder}.${member}`;
  }
  for (const [member] of script.matchAll(/\.[a-z]+[A-Z]\w*/g)) yield member;
}

/** What a style sheet names: properties, rules and selectors. */
const GROUPS = [
  { group: data.css.properties, pattern: /(?<=[{;]\s*)([a-z][a-z-]*)(?=\s*:)/g },
  { group: data.css['at-rules'], pattern: /@([a-z][a-z-]*)/g },
  { group: data.css.selectors, pattern: /(?<=[\w\])*\s,>+~(]::?)([a-z][a-z-]*)(?=[\s{,:()[.>+~])/g },
];

/** Names younger than a version, each once, in the order of the letters. */
export function youngerScriptNames(script: string, browser: Browser, version: number): string[] {
  const known = names(browser);
  return [...new Set(namedIn(script))].filter((name) => (known.get(name) ?? 0) > version).sort();
}

export function youngerStyleNames(sheet: string, browser: Browser, version: number): string[] {
  const found = GROUPS.flatMap(({ group, pattern }) =>
    [...sheet.matchAll(pattern)]
      .map(([, name = '']) => name)
      .filter((name) => group[name] && since(name, group[name], browser) > version),
  );
  return [...new Set(found)].sort();
}
