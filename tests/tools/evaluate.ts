/**
 * Judges ads from the command line.
 *   npm run -s evaluate -- FILE              text or HTML; standard input without FILE, or with "-"
 *   npm run -s evaluate -- --batch FILE      JSON Lines {"id", "text" | "html"} in, {"id", …} out
 *   … --settings FILE                        the buyer's settings: any part of them, as JSON
 * Prints JSON. What can't be read is told in one line on standard error, with exit code 2.
 */
import { once } from 'node:events';
import { createReadStream } from 'node:fs';
import { open, readFile } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import { DEFAULT_SETTINGS, type Settings } from '../../src/listing/settings.ts';
import { answer } from './evaluate/answer.ts';
import { answerLine, isBlank, linesOf } from './evaluate/batch.ts';
import { Complaint, oneLine } from './evaluate/complaint.ts';
import { decode, listingFrom, MAX_BYTES } from './evaluate/input.ts';
import { settingsFrom } from './evaluate/settings.ts';
import { english } from './evaluate/strings.ts';

const USAGE = 'usage: evaluate [--settings FILE] [FILE | --batch FILE]';

function readArguments() {
  try {
    const { values, positionals } = parseArgs({
      options: { settings: { type: 'string' }, batch: { type: 'string' } },
      allowPositionals: true,
    });
    if (positionals.length > 1 || (values.batch !== undefined && positionals.length > 0)) throw new Complaint(USAGE);
    return { ...values, file: positionals[0] ?? '-' };
  } catch (error) {
    throw error instanceof Complaint ? error : new Complaint(`${oneLine(error)} ${USAGE}`);
  }
}

/** All bytes of a file or of standard input, but no more than it takes to see that they are too many. */
async function bytesOf(name: string): Promise<Uint8Array> {
  const stream = name === '-' ? process.stdin : await openFile(name);
  const parts: Uint8Array[] = [];
  let size = 0;
  for await (const part of stream) {
    parts.push(part);
    size += part.length;
    if (size > MAX_BYTES) break;
  }
  return Buffer.concat(parts);
}

async function openFile(name: string): Promise<NodeJS.ReadableStream & AsyncIterable<Buffer>> {
  const file = await open(name).catch(() => {
    throw new Complaint(`${name} can't be opened`);
  });
  if ((await file.stat()).isDirectory()) throw new Complaint(`${name} is a folder`);
  await file.close();
  return createReadStream(name);
}

async function readSettings(name: string | undefined): Promise<Settings> {
  if (name === undefined) return DEFAULT_SETTINGS;
  const bytes = await readFile(name).catch(() => {
    throw new Complaint(`settings ${name} can't be opened`);
  });
  return settingsFrom(decode(bytes, `settings ${name}`), name);
}

async function print(line: string): Promise<void> {
  if (!process.stdout.write(`${line}\n`)) await once(process.stdout, 'drain');
}

async function run(): Promise<void> {
  const { file, batch, settings: settingsFile } = readArguments();
  const settings = await readSettings(settingsFile);
  const say = english();
  if (batch !== undefined) {
    const stream = batch === '-' ? process.stdin : await openFile(batch);
    for await (const line of linesOf(stream)) if (!isBlank(line)) await print(await answerLine(line, settings, say));
    return;
  }
  const name = file === '-' ? 'standard input' : file;
  const text = decode(await bytesOf(file), name);
  await print(JSON.stringify(answer(await listingFrom(text, file), settings, say), null, 2));
}

// A reader that has seen enough (`| head`) is no fault.
process.stdout.on('error', () => process.exit(0));
await run().catch((error: unknown) => {
  process.stderr.write(`${oneLine(error)}\n`);
  process.exitCode = error instanceof Complaint ? 2 : 1;
});
