/** Styles that hide, move or cover everything. */
import { adPage, type HostileCase, listPage } from './case.ts';

const styled = (name: string, rule: string, rest: Partial<HostileCase> = {}): HostileCase => ({
  name,
  body: adPage({ head: `<style>${rule}</style>` }),
  ...rest,
});
const unread = { reads: null, ends: ['failed', 'nothing'] } as const;
const list = (name: string, rule: string, rest: Partial<HostileCase> = {}): HostileCase => ({
  name,
  by: 'sweep',
  reads: null,
  body: listPage({ head: `<style>${rule}</style>` }),
  ...rest,
});

export const styles: readonly HostileCase[] = [
  styled('everything is not displayed', '* { display: none !important }', unread),
  styled('everything is invisible', '* { visibility: hidden !important }', unread),
  styled('everything is transparent', '* { opacity: 0 !important }', unread),
  styled('everything is of no size', '* { font-size: 0 !important }', unread),
  styled('nothing takes the pointer', '* { pointer-events: none !important }'),
  styled('everything is reset', '* { all: initial !important }', { reads: null, ends: ['answer', 'nothing', 'failed'] }),
  styled(
    'everything is fixed above everything',
    '* { position: fixed !important; z-index: 2147483647 !important; inset: 0 !important }',
    { reads: null, ends: ['answer', 'nothing', 'failed'] },
  ),
  styled(
    'everything turns for ever',
    '@keyframes spin { to { transform: rotate(1turn) } } * { animation: spin 1s infinite linear !important }',
  ),
  styled('the page is filtered and turned', 'html { filter: invert(1) blur(9px); transform: rotate(180deg) scale(0.1) }'),
  styled('the page is in a box of no height', 'html, body { height: 0 !important; overflow: hidden !important }'),
  styled('contents are skipped', 'main { content-visibility: hidden }'),
  styled('text comes from the style', 'li::before { content: "999 x " } .price::after { content: "000" }'),
  styled('all text runs backwards', '* { direction: rtl !important; unicode-bidi: bidi-override !important }'),
  styled('everything is an inline box', '* { display: inline !important }', {
    reads: null,
    ends: ['answer', 'nothing', 'failed'],
  }),
  styled('everything is a table cell', '* { display: table-cell !important }', {
    reads: null,
    ends: ['answer', 'nothing', 'failed'],
  }),
  list('a list of which everything is not displayed', 'main * { display: none !important }', { ends: ['list'], long: true }),
  list(
    'a list whose every child of the root is hidden',
    'html > * { visibility: hidden !important; pointer-events: none !important }',
    { ends: ['list'] },
  ),
  list(
    'a list that moves all the time',
    '@keyframes away { to { transform: translateY(50px) } } article { animation: away 0.2s infinite alternate }',
  ),
  list(
    'a list under a cover above everything',
    'body::before { content: ""; position: fixed; inset: 0; z-index: 2147483647; background: #fff }',
  ),
  list('a list of which every part is fixed', 'main * { position: fixed !important; inset: 0 !important }'),
];
