/** JSON Lines: one ad in, one answer out, in the same order. A bad line is answered with its error and the rest goes on. */
import * as z from 'zod/mini';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import type { Settings } from '../../../src/listing/settings.ts';
import type { Speaker } from '../../../src/words/say.ts';
import { answer } from './answer.ts';
import { Complaint, oneLine } from './complaint.ts';
import { decode, listingFromHtml, MAX_BYTES } from './input.ts';

const NEWLINE = 10;
/** JSON may write every byte of an ad as an escape of six. */
const MAX_LINE = MAX_BYTES * 6 + 10_000;

const lineSchema = z.object({
  id: z.union([z.string(), z.number()]),
  text: z.optional(z.string()),
  html: z.optional(z.string()),
});

/** Lines of a stream of bytes, without their line ends; empty ones are left out. */
export async function* linesOf(stream: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  let parts: Uint8Array[] = [];
  for await (const chunk of stream) {
    let start = 0;
    for (let end = chunk.indexOf(NEWLINE, start); end >= 0; end = chunk.indexOf(NEWLINE, start)) {
      yield Buffer.concat([...parts, chunk.subarray(start, end)]);
      parts = [];
      start = end + 1;
    }
    if (start < chunk.length) parts.push(chunk.subarray(start));
  }
  if (parts.length > 0) yield Buffer.concat(parts);
}

const idOf = (value: unknown): string | number | null => {
  const id = typeof value === 'object' && value !== null && 'id' in value ? value.id : null;
  return typeof id === 'string' || typeof id === 'number' ? id : null;
};

function parse(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    throw new Complaint('the line is not JSON');
  }
}

/** One line of JSON for one line of input. Never throws. */
export async function answerLine(bytes: Uint8Array, settings: Settings, say: Speaker): Promise<string> {
  let id: string | number | null = null;
  try {
    if (bytes.length > MAX_LINE) throw new Complaint(`the line is too large: ${bytes.length} bytes`);
    const value = parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
    id = idOf(value);
    const parsed = z.safeParse(lineSchema, value);
    if (!parsed.success) throw new Complaint('a line is {"id": string or number, "text" or "html": string}');
    const { text, html } = parsed.data;
    if ((text === undefined) === (html === undefined)) throw new Complaint('a line holds either "text" or "html"');
    const body = decode(new TextEncoder().encode(html ?? text), html === undefined ? 'text' : 'html');
    const listing = html === undefined ? listingFromText(body, 'file') : await listingFromHtml(body);
    return JSON.stringify({ id: parsed.data.id, ...answer(listing, settings, say) });
  } catch (error) {
    return JSON.stringify({ id, error: oneLine(error) });
  }
}

export const isBlank = (line: Uint8Array): boolean => line.every((byte) => byte === 32 || byte === 9 || byte === 13);
