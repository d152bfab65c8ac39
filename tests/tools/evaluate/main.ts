/** What the command does, from its arguments to its exit code; the streams are given to it. */
import { createReadStream } from 'node:fs';
import { open, readFile } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';
import { answer } from './answer.ts';
import { answerLine, isBlank, linesOf } from './batch.ts';
import { Complaint, oneLine } from './complaint.ts';
import { decode, listingFrom, MAX_BYTES } from './input.ts';
import { settingsFrom } from './settings.ts';
import { english } from './strings.ts';

const USAGE = 'usage: evaluate [--settings FILE] [FILE | --batch FILE]';

export type Bytes = AsyncIterable<Uint8Array>;

export interface Streams {
  /** Standard input, read where no file is named. */
  readonly input: Bytes;
  /** A line of the answer; what comes next waits for it. */
  readonly print: (line: string) => Promise<unknown>;
  /** The one line that says what is wrong. */
  readonly complain: (line: string) => void;
}

/** Gives the exit code: 0, 2 for what can't be read, 1 for a fault of ours. */
export async function main(words: readonly string[], streams: Streams): Promise<number> {
  try {
    await run(words, streams);
    return 0;
  } catch (error) {
    streams.complain(oneLine(error));
    return error instanceof Complaint ? 2 : 1;
  }
}

async function run(words: readonly string[], { input, print }: Streams): Promise<void> {
  const { file, batch, settings: settingsFile } = readArguments(words);
  const settings = await readSettings(settingsFile);
  const say = english();
  const opened = async (name: string): Promise<Bytes> => (name === '-' ? input : openFile(name));
  if (batch !== undefined) {
    for await (const line of linesOf(await opened(batch))) if (!isBlank(line)) await print(await answerLine(line, settings, say));
    return;
  }
  const text = decode(await bytesOf(await opened(file)), file === '-' ? 'standard input' : file);
  await print(JSON.stringify(answer(await listingFrom(text, file), settings, say), null, 2));
}

function readArguments(words: readonly string[]) {
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      options: { settings: { type: 'string' }, batch: { type: 'string' } },
      allowPositionals: true,
    });
    if (positionals.length > 1 || (values.batch !== undefined && positionals.length > 0)) throw new Complaint(USAGE);
    return { ...values, file: positionals[0] ?? '-' };
  } catch (error) {
    throw error instanceof Complaint ? error : new Complaint(`${oneLine(error)} ${USAGE}`);
  }
}

/** All bytes, but no more than it takes to see that they are too many. */
async function bytesOf(stream: Bytes): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  let size = 0;
  for await (const part of stream) {
    parts.push(part);
    size += part.length;
    if (size > MAX_BYTES) break;
  }
  return Buffer.concat(parts);
}

async function openFile(name: string): Promise<Bytes> {
  const file = await open(name).catch(() => {
    throw new Complaint(`${name} can't be opened`);
  });
  const isFolder = (await file.stat()).isDirectory();
  await file.close();
  if (isFolder) throw new Complaint(`${name} is a folder`);
  return createReadStream(name);
}

async function readSettings(name: string | undefined): Promise<Settings> {
  if (name === undefined) return DEFAULT_SETTINGS;
  const bytes = await readFile(name).catch(() => {
    throw new Complaint(`settings ${name} can't be opened`);
  });
  return settingsFrom(decode(bytes, `settings ${name}`), name);
}
