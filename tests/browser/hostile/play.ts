/** Hostile pages in real Chromium: nothing runs, nothing is sent, the panel answers or says why not, and goes on with the next ad. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ALIKE } from './alike.ts';
import { type Battery, startBattery } from './battery.ts';
import type { HostileCase } from './case.ts';
import type { Groups } from './pages.ts';

/**
 * After so many pages comes a normal one, and after each that may end without an answer: those that are answered show themselves that what came before
 * has left all usable.
 */
const NORMAL_AFTER = 8;

const wanted = (pages: readonly HostileCase[]) =>
  pages.filter(({ name, long }) => process.env.EVERY_PAGE || !(long || name in ALIKE));
/** The pages that are played, in this order. */
export const played = (groups: Groups): readonly HostileCase[] => Object.values(groups).flatMap(wanted);

/** Tests for pages by group, in one browser; a test file for some groups each, so that they may run at the same time. */
export function playHostile(groups: Groups): void {
  const cases = played(groups);
  let battery: Battery;
  let since: string[] = [];
  beforeAll(async () => {
    battery = await startBattery(cases);
  });
  afterAll(() => battery?.close());

  for (const [group, pages] of Object.entries(groups)) {
    describe(group, () => {
      it.each(wanted(pages).map((one) => [one.name, one] as const))('%s', async (_, one) => {
        const seen = await battery.run(one);
        expect(seen.wrong).toEqual([]);
        const usual = one.by === 'sweep' ? 'list' : 'answer';
        expect(one.ends ?? [usual]).toContain(seen.state);
        if (one.reads !== null && one.by !== 'sweep') expect(seen.text).toContain(one.reads ?? '4 x 45 lb');
        await battery.tidy();
        since.push(one.name);
        if (since.length < NORMAL_AFTER && one.ends === undefined && one !== cases.at(-1)) return;
        const after = since.join(', ');
        since = [];
        expect(await battery.normalAfter(), after).toContain('Ordinary plates');
      });
    });
  }

  it('nothing comes late, once the last page was looked at', async () => {
    expect(await battery.late()).toEqual([]);
  });
}
