/** Documents that are no web page. */
import { adPage, type HostileCase, LINES } from './case.ts';

const PDF =
  '%PDF-1.1\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj 2 0 obj<</Type/Pages/Kids[3 0 R]/Count 1>>endobj 3 0 obj<</Type/Page/Parent 2 0 R/MediaBox[0 0 99 99]>>endobj\ntrailer<</Root 1 0 R>>\n%%EOF';
const unread = { reads: null, ends: ['failed', 'nothing', 'refused'] } as const;

export const documents: readonly HostileCase[] = [
  { name: 'plain text', type: 'text/plain', body: 'Olympic plates, 2 inch\n4 x 45 lb\n$100' },
  { name: 'plain text of 2 MB', type: 'text/plain', body: () => `4 x 45 lb\n${'olympic plates $100\n'.repeat(100_000)}` },
  {
    name: 'XML',
    type: 'application/xml',
    body: '<?xml version="1.0"?><ad><title>Olympic plates</title><line>4 x 45 lb plates</line><price>$100</price></ad>',
    reads: null,
    ends: ['answer', 'failed', 'nothing'],
  },
  {
    name: 'XHTML with upper and lower case',
    type: 'application/xhtml+xml',
    body: `<html xmlns="http://www.w3.org/1999/xhtml"><head><title>x</title></head><body><main><h1>Olympic plates</h1><p class="price">$100</p>${LINES}</main></body></html>`,
  },
  {
    name: 'an SVG document',
    type: 'image/svg+xml',
    body: '<svg xmlns="http://www.w3.org/2000/svg"><text y="20">4 x 45 lb olympic plates $100</text><script>window.svg = 1</script></svg>',
    reads: null,
    ends: ['answer', 'failed', 'nothing'],
  },
  { name: 'a picture', type: 'image/gif', body: 'GIF89a\u0001\u0000\u0001\u0000\u0000\u0000\u0000;', ...unread },
  { name: 'a PDF', type: 'application/pdf', body: PDF, ...unread },
  {
    name: 'JSON',
    type: 'application/json',
    body: '{"ad":"4 x 45 lb olympic plates $100","__proto__":{}}',
    reads: null,
    ends: ['answer', 'nothing', 'failed'],
  },
  { name: 'an empty document', body: '', ...unread },
  {
    name: 'a document without an end',
    body: '<!doctype html><main><h1>Olympic plates<p class=price>$100<div id=ad><ul><li>4 x 45 lb<li>2 x 25 lb',
  },
  {
    name: 'a document in quirks mode with everything in capitals',
    body: '<HTML><BODY><H1>OLYMPIC PLATES</H1><FONT>4 x 45 lb $100</FONT>',
  },
  { name: 'a page that can be edited', body: adPage({ after: '<script>document.designMode = "on"</script>' }) },
  {
    name: 'a page in which everything can be edited, and nothing used',
    body: adPage().replace('<body>', '<body contenteditable inert>'),
  },
  {
    name: 'a page made of one text field',
    body: adPage().replace('<div id="ad">', '<textarea id="field">4 x 45 lb plates $100').replace('</div>', '</textarea>'),
    by: 'selection',
  },
  {
    name: 'a set of frames',
    body: '<!doctype html><frameset cols="50%,50%"><frame src="/normal"><frame src="/normal"></frameset>',
  },
];
