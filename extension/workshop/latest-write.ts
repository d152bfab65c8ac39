export interface LatestWrite<T> {
  (value: T): void;
  /** Something is being written, or waits for it. */
  readonly isBusy: () => boolean;
}

/**
 * Writes one thing again and again, as it is typed: one write is under way at a time, and of what comes meanwhile only the latest is
 * written next. So whoever leaves right after the last key has one write ahead of it, and not one for each key.
 */
export function latestWrite<T>(write: (value: T) => Promise<unknown>): LatestWrite<T> {
  let waiting: { readonly value: T } | null = null;
  let busy = false;
  const next = async (): Promise<void> => {
    busy = true;
    while (waiting) {
      const { value } = waiting;
      waiting = null;
      // What fails is told by who writes; the next one is written all the same.
      await write(value).catch(() => undefined);
    }
    busy = false;
  };
  const take = (value: T): void => {
    waiting = { value };
    if (!busy) void next();
  };
  return Object.assign(take, { isBusy: () => busy });
}
