/** The file of an export: its schema, and in words where another one is wrong. */
import * as z from 'zod/mini';
import { findSchema, moment } from '../../src/finds/record.ts';
import { type Message, message } from '../../src/words/message.ts';
import type { BadFile } from './api.ts';
import {
  adSchema,
  capturedPriceSchema,
  needSchema,
  ownedSchema,
  rateRowSchema,
  removedSchema,
  setAsideSchema,
  settingsRowSchema,
  tombSchema,
} from './records.ts';

export const FILE_FORMAT = 'ironsift';
/** Raised when a file of the new kind means something else to this program. */
export const FILE_VERSION = 1;

const keptSchema = z
  .object({ find: findSchema, ad: adSchema })
  .check(z.refine(({ find, ad }) => find.id === ad.id, { path: ['ad', 'id'] }));

const fileSchema = z.object({
  format: z.literal(FILE_FORMAT),
  version: z.literal(FILE_VERSION),
  exportedAt: moment,
  finds: z.array(keptSchema),
  removed: z.array(removedSchema),
  owned: z.array(ownedSchema),
  needs: z.array(needSchema),
  rates: z.array(rateRowSchema),
  captured: z.array(capturedPriceSchema),
  settings: z.nullable(settingsRowSchema),
  setAside: z.array(setAsideSchema),
  tombs: z.array(tombSchema),
});
export type ExportFile = z.infer<typeof fileSchema>;

type Read = { readonly ok: true; readonly file: ExportFile } | BadFile;

const bad = (code: BadFile['code'], path: BadFile['path'] = []): BadFile => ({ ok: false, code, path });

/** A union's own issues lie one deeper: the path to the innermost first one. */
const deepest = (issue: z.core.$ZodIssue | undefined): BadFile['path'] =>
  (issue?.path ?? []).map((step) => (typeof step === 'number' ? step : String(step)));

/** Of records with one id the version changed last, for a file put together by hand may hold several. */
const latest = <T>(records: readonly T[], idOf: (record: T) => string, at: (record: T) => number): T[] => [
  ...new Map([...records].sort((a, b) => at(a) - at(b)).map((record) => [idOf(record), record])).values(),
];

const ownId = ({ id }: { readonly id: string }): string => id;
const changed = ({ changedAt }: { readonly changedAt: number }): number => changedAt;

const onceEach = (file: ExportFile): ExportFile => ({
  ...file,
  finds: latest(
    file.finds,
    ({ find }) => find.id,
    ({ find }) => find.changedAt,
  ),
  removed: latest(file.removed, ownId, ({ removedAt }) => removedAt),
  owned: latest(file.owned, ownId, changed),
  needs: latest(file.needs, ownId, changed),
  rates: latest(file.rates, ownId, changed),
  captured: latest(file.captured, ownId, changed),
  tombs: latest(file.tombs, ownId, ({ at }) => at),
});

/** The checked file. Nothing is read from a file that is wrong anywhere. */
export function readFile(text: string): Read {
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    return bad('not-json');
  }
  const { format, version } = (typeof value === 'object' && value !== null ? value : {}) as {
    format?: unknown;
    version?: unknown;
  };
  if (format !== FILE_FORMAT) return bad('not-ours');
  if (typeof version === 'number' && version > FILE_VERSION) return bad('newer-file');
  const parsed = fileSchema.safeParse(value);
  return parsed.success ? { ok: true, file: onceEach(parsed.data) } : bad('bad-record', deepest(parsed.error.issues[0]));
}

/** A path into the file, outermost first: "finds, number 3: prices, number 1: minor". Names are those that stand in the file. */
const pathWords = (path: BadFile['path']): Message =>
  path
    .map((step) =>
      typeof step === 'number' ? message('store_file_number', { n: step + 1 }) : message('store_file_name', { name: step }),
    )
    .reduce(
      (outer, inner) => message('store_file_within', { outer: { message: outer }, inner: { message: inner } }),
      message('store_file_itself'),
    );

const MESSAGES = {
  'not-json': 'store_file_not_json',
  'not-ours': 'store_file_not_ours',
  'newer-file': 'store_file_newer',
  'bad-record': 'store_file_bad_record',
} as const;

/** What to tell the buyer of a file that was refused. */
export const badFileMessage = ({ code, path }: BadFile): Message =>
  message(MESSAGES[code], { where: { message: pathWords(path) } });
