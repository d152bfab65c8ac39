/** What the extension holds in storage, read through one of its pages: asking the background would wake it. */
import type { Page } from 'puppeteer-core';
import { expect } from 'vitest';

const STORAGE = '(globalThis.browser ?? chrome).storage.session';

export const forgetAll = (own: Page): Promise<unknown> => own.evaluate(`${STORAGE}.clear()`);

export const held = (
  own: Page,
): Promise<Record<string, { readonly state?: string; readonly ads?: readonly { readonly id: string }[] }>> =>
  own.evaluate(`${STORAGE}.get(null)`) as ReturnType<typeof held>;

/** State of what was captured; null where nothing was. One tab alone has something. */
export const captured = async (own: Page): Promise<string | null> =>
  Object.entries(await held(own)).find(([key]) => key.startsWith('capture:'))?.[1].state ?? null;

export const waitForCaptured = (own: Page, state: string): Promise<void> =>
  expect.poll(() => captured(own), { timeout: 30_000 }).toBe(state);

/** Ids of all ads that were swept, in the order in which they came. */
export const sweptIds = async (own: Page): Promise<string[]> =>
  Object.entries(await held(own))
    .filter(([key]) => /^sweep:\d+:\d+$/.test(key))
    .sort(([one], [other]) => Number(one.split(':')[2]) - Number(other.split(':')[2]))
    .flatMap(([, { ads }]) => (ads ?? []).map(({ id }) => id));

/** State of the sweep. */
export const sweepState = async (own: Page): Promise<string | null> =>
  Object.entries(await held(own)).find(([key]) => /^sweep:\d+$/.test(key))?.[1].state ?? null;
