/** What the page reports goes into session storage, checked, one after the other. */
import { pageListingSchema } from '../../src/listing/page-listing.ts';
import { type CaptureState, dropCapture, loadCapture, storeCapture } from '../platform/capture-state.ts';
import { Failure, type Input, type Sender } from '../platform/messages.ts';
import { showPanelTab } from '../platform/open-panel.ts';

let last: Promise<unknown> = Promise.resolve();

/** Reports come in their order; a report that is still being stored is not overtaken by the next. */
export function inTurn(work: () => Promise<void>): Promise<null> {
  const done = last.catch(() => undefined).then(work);
  last = done;
  return done.then(() => null);
}

export const tabOf = (sender: Sender): number => {
  if (sender.tab?.id === undefined) throw new Failure('no-tab');
  return sender.tab.id;
};

export async function fail(tabId: number, reason: (CaptureState & { state: 'failed' })['reason']): Promise<void> {
  await storeCapture(tabId, { state: 'failed', reason, at: Date.now() });
  await showPanelTab(tabId);
}

export const onCaptured = (input: Input<'captured'>, sender: Sender): Promise<null> =>
  inTurn(async () => {
    const tabId = tabOf(sender);
    const parsed = pageListingSchema.safeParse(input.listing);
    if (!parsed.success) {
      await fail(tabId, 'bad-input');
      throw new Failure('bad-input');
    }
    const stored = await storeCapture(tabId, { state: 'ready', listing: parsed.data, cut: input.cut === true, at: Date.now() });
    if (stored) return void (await showPanelTab(tabId));
    await fail(tabId, 'full');
    throw new Failure('full');
  });

const KNOWN: ReadonlySet<string> = new Set<Input<'capture-failed'>['reason']>(['empty', 'disturbed']);

export const onCaptureFailed = (input: Input<'capture-failed'>, sender: Sender): Promise<null> =>
  inTurn(async () => fail(tabOf(sender), KNOWN.has(input.reason) ? input.reason : 'unexpected'));

/** What was captured before is kept, so that leaving loses nothing. */
export const onPicking = (_: Input<'picking'>, sender: Sender): Promise<null> =>
  inTurn(async () => {
    const known = await loadCapture(tabOf(sender));
    const before = known?.state === 'ready' ? known : known?.state === 'picking' ? known.before : null;
    await storeCapture(tabOf(sender), { state: 'picking', before, at: Date.now() });
  });

export const onPickLeft = (_: Input<'pick-left'>, sender: Sender): Promise<null> =>
  inTurn(async () => {
    const known = await loadCapture(tabOf(sender));
    if (known?.state !== 'picking') return;
    if (known.before) await storeCapture(tabOf(sender), known.before);
    else await dropCapture(tabOf(sender));
  });
