/** What can go wrong in the store, by stable codes, and the message that tells the buyer. */
import { type Message, message } from '../../src/words/message.ts';

/**
 * `full`: the disk or the browser's quota. `refused`: the browser keeps nothing here (storage switched off).
 * `broken`: the browser can't open its files; as a rule it can when started again, and the store then brings back its second copy, if there is one.
 * `blocked`: another page of an older version has the store open. `outdated`: this page is the older one and must be loaded again.
 * `newer`: the store was written by a newer version of the extension. `not-found`: no such record, or nothing to undo any more.
 * `unreadable`: the record failed its check and was set aside. `bad-input`: what was handed in failed its check.
 * `unexpected`: a defect; nothing was written.
 */
export const STORE_CODES = [
  'full',
  'refused',
  'broken',
  'blocked',
  'outdated',
  'newer',
  'not-found',
  'unreadable',
  'bad-input',
  'unexpected',
] as const;
export type StoreCode = (typeof STORE_CODES)[number];

export type Outcome<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly code: StoreCode };

/** Thrown inside the store; its API gives an `Outcome`. */
export class StoreFailure extends Error {
  constructor(readonly code: StoreCode) {
    super(code);
  }
}

/** Names of errors that browsers give: W3C Indexed Database API 3.0, "Exceptions", and Dexie's own. */
const BY_NAME: Readonly<Record<string, StoreCode>> = {
  QuotaExceededError: 'full',
  // Firefox where its databases are switched off or the profile can't be written.
  InvalidStateError: 'refused',
  SecurityError: 'refused',
  MissingAPIError: 'refused',
  OpenFailedError: 'refused',
  // Chromium when its files are damaged, mostly after it was killed: at the next start it has new ones.
  UnknownError: 'broken',
  BlockedError: 'blocked',
  VersionError: 'newer',
  DatabaseClosedError: 'outdated',
};

interface NamedError {
  readonly name?: unknown;
  readonly inner?: unknown;
}

/** The code of whatever was thrown. The innermost named cause holds: a transaction that aborts for want of room says "abort" outside. */
export function codeOf(error: unknown): StoreCode {
  if (error instanceof StoreFailure) return error.code;
  if (typeof error !== 'object' || error === null) return 'unexpected';
  const { name, inner } = error as NamedError;
  const within = inner && inner !== error ? codeOf(inner) : 'unexpected';
  return within === 'unexpected' ? (BY_NAME[String(name)] ?? 'unexpected') : within;
}

const MESSAGES: Readonly<Record<StoreCode, string>> = {
  full: 'store_full',
  refused: 'store_refused',
  broken: 'store_broken',
  blocked: 'store_blocked',
  outdated: 'store_outdated',
  newer: 'store_newer',
  'not-found': 'store_not_found',
  unreadable: 'store_unreadable',
  'bad-input': 'store_bad_input',
  unexpected: 'store_unexpected',
};

/** What to tell the buyer. */
export const failureMessage = (code: StoreCode): Message => message(MESSAGES[code]);

/** Runs a piece of work; whatever it throws becomes a code. Defects and the browser's refusals are written to the console, which stays on this machine. */
export async function settle<T>(work: () => T | PromiseLike<T>): Promise<Outcome<T>> {
  try {
    return { ok: true, value: await work() };
  } catch (error) {
    const code = codeOf(error);
    if (code === 'unexpected' || code === 'refused' || code === 'broken') console.error('Ironsift:', error);
    return { ok: false, code };
  }
}
