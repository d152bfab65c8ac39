/**
 * Elements that hide the document's and the form's own properties behind their names (HTML standard: named properties of Document and
 * HTMLFormElement override what is built in, in every world; those of Window take names that are free).
 */
import { adPage, HIT, type HostileCase, LINES, listPage } from './case.ts';

const formAd = (names: readonly string[]): string =>
  adPage().replace(
    `<div id="ad">${LINES}</div>`,
    `<form id="ad">${names.map((name) => `<input type="hidden" name="${name}">`).join('')}${LINES}</form>`,
  );
const form = (what: string, ...names: readonly string[]): HostileCase => ({
  name: `a form around the ad with fields named ${what}`,
  body: formAd(names),
});
const named = (what: string, before: string): HostileCase => ({
  name: `elements named as the document's ${what}`,
  body: adPage({ before }),
});
const pictures = (...names: readonly string[]): string => names.map((name) => `<img name="${name}" alt="">`).join('');

const READING = [
  'getAttribute',
  'hasAttribute',
  'attributes',
  'className',
  'id',
  'textContent',
  'tagName',
  'localName',
  'nodeName',
];
const WALKING = [
  'children',
  'childNodes',
  'firstChild',
  'firstElementChild',
  'nextSibling',
  'parentNode',
  'parentElement',
  'nodeType',
  'shadowRoot',
];
const ASKING = [
  'querySelector',
  'querySelectorAll',
  'closest',
  'matches',
  'contains',
  'ownerDocument',
  'isConnected',
  'getRootNode',
];
const PLACING = ['getBoundingClientRect', 'scrollIntoView', 'checkVisibility', 'style', 'hidden'];

export const clobbering: readonly HostileCase[] = [
  form('"children", as an honest form may', 'children', 'title', 'id', 'name', 'action', 'method'),
  form('"nodeType"', 'nodeType'),
  form('"childNodes"', 'childNodes'),
  form('"tagName"', 'tagName'),
  form('"parentNode" and "parentElement"', 'parentNode', 'parentElement'),
  form('"querySelector" and its like', ...ASKING),
  form('"getAttribute" and its like', ...READING),
  form('"ownerDocument"', 'ownerDocument'),
  form('"isConnected"', 'isConnected'),
  form('after everything that walks', ...WALKING),
  form('after everything that places', ...PLACING),
  form('after all of these', ...READING, ...WALKING, ...ASKING, ...PLACING),
  { ...form('"querySelectorAll", selected', ...ASKING), by: 'selection' },
  { ...form('after everything that walks, selected', ...WALKING), by: 'selection' },
  {
    name: 'a form around each card with fields named after everything',
    by: 'sweep',
    reads: null,
    body: listPage({ inCard: '' })
      .replaceAll(
        '<article>',
        `<article><form>${[...READING, ...WALKING, ...ASKING, ...PLACING].map((name) => `<input type="hidden" name="${name}">`).join('')}`,
      )
      .replaceAll('</article>', '</form></article>'),
  },
  {
    name: 'a form around the whole list with fields named after everything',
    by: 'sweep',
    reads: null,
    body: listPage().replace(
      '<main id="list">',
      `<form><main id="list">${[...READING, ...WALKING, ...ASKING, ...PLACING].map((name) => `<input type="hidden" name="${name}">`).join('')}`,
    ),
  },
  named('body', '<img name="body"><form name="body"></form>'),
  named('documentElement', '<form name="documentElement"></form>'),
  named('createElement', pictures('createElement', 'createRange', 'adoptedStyleSheets')),
  named('querySelectorAll', pictures('querySelector', 'querySelectorAll', 'getElementById')),
  named('defaultView', pictures('defaultView', 'URL', 'title', 'location')),
  named('getSelection', pictures('getSelection', 'activeElement', 'elementsFromPoint')),
  { ...named('getSelection, selected', pictures('getSelection', 'activeElement', 'createRange')), by: 'selection' },
  {
    name: "a list with elements named as the document's own",
    by: 'sweep',
    reads: null,
    body: listPage({
      before: pictures('body', 'documentElement', 'createElement', 'querySelectorAll', 'defaultView', 'title', 'URL'),
    }),
  },
  {
    name: "ids that are the names of the browser's and of our own globals",
    body: adPage({
      before: `<form id="browser"><input name="runtime" id="x"><input name="i18n"></form><form id="ironsiftDispose"><input name="capture"><input name="sweep"></form><a id="Ironsift" href="${HIT}"></a>`,
    }),
  },
  {
    name: "a list with ids of the browser's and of our own globals",
    by: 'sweep',
    reads: null,
    body: listPage({
      before:
        '<form id="browser"><input name="runtime" id="x"></form><form id="ironsiftDispose"><input name="capture"><input name="sweep"></form>',
    }),
  },
  {
    name: 'an id "body" and "head" on other elements',
    body: adPage({ before: '<div id="body"></div><div id="head"></div><div id="documentElement"></div>' }),
  },
  {
    // Chromium gives its own API to no script there: the words for a page without access are all that can be had.
    name: 'frames named as globals',
    reads: null,
    ends: ['refused'],
    body: adPage({
      before:
        '<iframe name="chrome" srcdoc="x"></iframe><iframe name="self"></iframe><iframe name="document" srcdoc="x"></iframe>',
    }),
  },
  {
    name: 'an ad without a body element',
    body: '<!doctype html><html><frameset></frameset></html>',
    reads: null,
    ends: ['failed', 'nothing'],
  },
];
