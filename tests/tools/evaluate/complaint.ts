/** Something wrong with what the caller gave: told in one line, exit 2. */
export class Complaint extends Error {}

/** Any failure as one line. */
export const oneLine = (error: unknown): string =>
  (error instanceof Error ? error.message : String(error)).replaceAll(/\s+/g, ' ').trim();
