/** One hostile page: what it is made of, how its ad is asked for, and how that may end. All invented. */
import type { Page } from 'puppeteer-core';

export interface HostileCase {
  /** In words: the test's name, and the page's name on the server. */
  readonly name: string;
  /** The whole document as it is served; a function where it is large. */
  readonly body: string | (() => string);
  /** Content type; HTML when left out. */
  readonly type?: string;
  readonly headers?: Readonly<Record<string, string>>;
  /** How the ad is asked for; by picking when left out. */
  readonly by?: 'pick' | 'selection' | 'sweep';
  /** What happens between asking and choosing, or once a sweep reads. It must settle by itself. */
  readonly meanwhile?: (page: Page) => Promise<unknown>;
  /** Words that the capture must hold; null where there is nothing to be had. */
  readonly reads?: string | null;
  /** States of the panel in which it may end: an answer when left out. Every other one says in words why not. */
  readonly ends?: readonly PanelEnd[];
  /** A page that takes long and has a like among the others: played where all are, see `EVERY_PAGE`. */
  readonly long?: true;
  /** The page may go elsewhere of its own accord. */
  readonly moves?: boolean;
}

export type PanelEnd = 'answer' | 'nothing' | 'refused' | 'failed' | 'list' | 'empty';

/** Where everything that should never happen reports to, on the server of the pages. */
export const HIT = '/hit';

/** Elements of ours that only words taken for markup could have made. */
export const MADE =
  'main :is(img, script, iframe, object, embed, link, style, base, meta, [onerror], [onload], [onfocus], [ontoggle], a[href^="javascript:" i], a[href^="data:" i])';

/** What markup would do if it were taken for markup: told to the server, to the page and to the buyer. */
const harm = (sign: string): string => `window.__hit='${sign}';new Image().src='${HIT}/${sign}';alert('${sign}')`;

/** One line of each kind of markup and template that text could be mistaken for. */
const PAYLOADS: readonly string[] = [
  `<script>${harm('script')}</script>`,
  `<img src=x onerror="${harm('onerror')}">`,
  `"><svg onload="${harm('onload')}">`,
  `</title></textarea></style></script><script>${harm('closing')}</script>`,
  `<iframe srcdoc="<script>top.${harm('srcdoc')}</script>"></iframe>`,
  `<details open ontoggle="${harm('ontoggle')}">`,
  `<input autofocus onfocus="${harm('onfocus')}">`,
  `<a href="javascript:${harm('href')}">4 x 45</a>`,
  `<link rel="stylesheet" href="${HIT}/link"><style>@import '${HIT}/import';</style>`,
  `<meta http-equiv="refresh" content="0;url=${HIT}/refresh"><base href="${HIT}/">`,
  `{{constructor.constructor("${harm('template')}")()}} \${${harm('literal')}} <%= 7*7 %> #{7*7}`,
  '{price} {message} $1 $& $$ %s %n __MSG_locale_tag__',
];

/** Text as HTML that shows it. */
export const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, (sign) => `&${{ '&': 'amp', '<': 'lt', '>': 'gt', '"': 'quot' }[sign]};`);

export const MARKUP = PAYLOADS.join(' ');
export const SHOWN_MARKUP = escaped(MARKUP);

export const LINES = '<p>Cast iron plates with 2 inch holes.</p><ul><li>4 x 45 lb</li><li>2 x 25 lb</li></ul>';

/** An ordinary ad with something about it. */
export const adPage = (parts: { head?: string; before?: string; inside?: string; after?: string } = {}): string =>
  `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Olympic plates</title>${parts.head ?? ''}</head><body>` +
  `${parts.before ?? ''}<main><h1>Olympic plates, 230 lb</h1><p class="price">$100</p><div id="ad">${LINES}</div>${parts.inside ?? ''}</main>${parts.after ?? ''}</body></html>`;

export const script = (code: string): string => `<script>${code}</script>`;

const card = (n: number, extra: string): string =>
  `<article><h3><a href="/ad/${n}">Iron plates, ${n} x 45 lb</a></h3><p><b>$${n * 40}</b></p>${extra}</article>`;

/** A results page of five ads. */
export const listPage = (parts: { head?: string; before?: string; inCard?: string; after?: string } = {}): string =>
  `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Notices</title>${parts.head ?? ''}</head><body>${parts.before ?? ''}<main id="list">` +
  `${[2, 4, 6, 8, 10].map((n) => card(n, parts.inCard ?? '')).join('')}</main>${parts.after ?? ''}</body></html>`;
