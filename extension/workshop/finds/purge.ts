/** How long what was removed can be brought back. */
import type { Store } from '../../store/index.ts';

export const DAYS_REMOVED = 30;

/** Deletes for good what was removed longer ago. What can't be deleted now goes the next time. */
export const purgeOld = ({ finds }: Store, now: number): Promise<unknown> =>
  finds.purge(now - DAYS_REMOVED * 86_400_000).catch((error: unknown) => console.error('Ironsift:', error));
