/** Sheets of a PDF. Firefox packs its objects into compressed streams (seen in ESR 153), so those are looked into as well. */
import { inflateSync } from 'node:zlib';

const PAGE = /\/Type\s*\/Page\b/g;
const pagesIn = (text: string): number => text.match(PAGE)?.length ?? 0;

function unpacked(stream: Buffer): string {
  try {
    return inflateSync(stream).toString('latin1');
  } catch {
    // A picture or a font in another packing: no objects are in it.
    return '';
  }
}

export function sheetsOf(pdf: Uint8Array): number {
  const bytes = Buffer.from(pdf);
  const text = bytes.toString('latin1');
  let sheets = pagesIn(text);
  for (const { index, 0: head } of text.matchAll(/\/ObjStm\b[\s\S]{0,200}?stream\r?\n/g)) {
    const from = index + head.length;
    sheets += pagesIn(unpacked(bytes.subarray(from, text.indexOf('endstream', from))));
  }
  return sheets;
}
