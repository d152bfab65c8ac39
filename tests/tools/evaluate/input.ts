/** An ad from bytes, text or HTML, to a plain listing. */
import { extname } from 'node:path';
import { listingFromText, MAX_TEXT, type PageListing } from '../../../src/listing/page-listing.ts';
import { Complaint } from './complaint.ts';

export const MAX_BYTES = 1_000_000;

/** Bytes as text. Complains of what is not text (NUL bytes, not UTF-8) or over 1 MB. */
export function decode(bytes: Uint8Array, name: string): string {
  if (bytes.length > MAX_BYTES) throw new Complaint(`${name} is too large: ${bytes.length} bytes, and ${MAX_BYTES} are the most`);
  if (bytes.includes(0)) throw new Complaint(`${name} is not text: it holds NUL bytes`);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new Complaint(`${name} is not text: it is not valid UTF-8`);
  }
}

const OPENS = /^\s*<(?:!doctype\s+html|html|head|body|!--|[a-z][a-z0-9-]*[\s>/])/i;
const CLOSES = /<\/(?:html|body|div|p|ul|ol|li|table|tr|td|span|section|article|main|h[1-6]|dl|dd|script|b|strong)\s*>/i;

/** Whether it is to be read as HTML: by the file's ending, or by its tags. */
export const isHtml = (text: string, name = ''): boolean =>
  /^\.x?html?$/i.test(extname(name)) || OPENS.test(text) || CLOSES.test(text);

/** An HTML page as the extension would capture it. The DOM is loaded only when there is HTML to read. */
export async function listingFromHtml(html: string): Promise<PageListing> {
  const [{ JSDOM, VirtualConsole }, { readDocument }] = await Promise.all([
    import('jsdom'),
    import('../../../extension/capture/readers/index.ts'),
  ]);
  // No scripts run and nothing is fetched; an ad's broken style sheet is no news.
  const dom = new JSDOM(html, { virtualConsole: new VirtualConsole() });
  try {
    return { ...readDocument(dom.window.document, { origin: 'file' }).listing, address: null };
  } finally {
    dom.window.close();
  }
}

/** Text, marked up or not, as a listing. */
export async function listingFrom(text: string, name = ''): Promise<PageListing> {
  return isHtml(text, name) ? listingFromHtml(text) : listingFromText(text.slice(0, MAX_TEXT), 'file');
}
