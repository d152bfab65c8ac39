/** Hands what was read to the background. */
import { sendToBackground } from '../platform/messages.ts';
import type { Captured } from './readers/index.ts';

export type Taken = Captured;

export async function report({ listing, cut }: Taken): Promise<void> {
  if (listing.text.trim() === '') await sendToBackground('capture-failed', { reason: 'empty' });
  else await sendToBackground('captured', { listing, cut });
}
