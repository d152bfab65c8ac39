import type { Page } from 'puppeteer-core';

/** Money for one usable pound, kilogram or the lot, in minor units. */
export interface ShownRate {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly currency: string;
  readonly per: string;
}

/** What the panel shows, read from its data attributes. */
export interface Answer {
  readonly state: string;
  readonly kind: string | null;
  readonly says: string;
  readonly perUsablePound: ShownRate | null;
  readonly newDelivered: ShownRate | null;
  readonly flags: readonly string[];
}

/** Waits until the panel has come to an end of its work (an answer, nothing to judge, or a refusal) and reads it. */
export async function readAnswer(panel: Page, timeout = 15_000): Promise<Answer> {
  const settled = ['answer', 'nothing', 'refused', 'failed'].map((state) => `[data-state="${state}"]`).join(',');
  await panel.waitForSelector(settled, { timeout });
  return panel.evaluate(() => {
    const rate = (name: string) => JSON.parse(document.querySelector(`[data-${name}]`)?.getAttribute(`data-${name}`) ?? 'null');
    const call = document.querySelector('[data-call]');
    return {
      state: document.querySelector('[data-state]')?.getAttribute('data-state') ?? 'none',
      kind: call?.getAttribute('data-call') ?? null,
      says: (call ?? document.querySelector('[data-state]'))?.querySelector('h1')?.textContent?.trim() ?? '',
      perUsablePound: rate('per-usable-pound'),
      newDelivered: rate('new-delivered'),
      flags: [...document.querySelectorAll('[data-flag]')].map((flag) => flag.getAttribute('data-flag') ?? ''),
    };
  });
}

/** "rust ×2, bent": a flag that several items raise is named once. */
const tally = (flags: readonly string[]): string =>
  [...new Set(flags)]
    .map((flag) => ({ flag, times: flags.filter((other) => other === flag).length }))
    .map(({ flag, times }) => (times > 1 ? `${flag} ×${times}` : flag))
    .join(', ');

const major = (minor: number): string => (minor / 100).toFixed(2);

/** One line: call, cost per usable pound low/likely/high, new delivered, flags. */
export function answerLine({ kind, state, says, perUsablePound: own, newDelivered: fresh, flags }: Answer): string {
  if (kind === null) return `${state} "${says}"`;
  const cost = own
    ? `${major(own.low)}/${major(own.likely)}/${major(own.high)} ${own.currency} per usable ${own.per}`
    : 'no cost per usable pound';
  const asNew = fresh ? `new delivered ${major(fresh.likely)} per ${fresh.per}` : 'no price as new';
  return `${kind} "${says}" | ${cost} | ${asNew} | flags: ${flags.length === 0 ? 'none' : tally(flags)}`;
}
