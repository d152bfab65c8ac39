/** Hostile pages in real Chromium: nothing runs, nothing is sent, the panel answers or says why not, and goes on with the next ad. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Battery, startBattery } from './battery.ts';
import type { HostileCase } from './case.ts';
import { clobbering } from './clobbering.ts';
import { documents } from './documents.ts';
import { frames } from './frames.ts';
import { huge } from './huge.ts';
import { interference } from './interference.ts';
import { keys } from './keys.ts';
import { markup } from './markup.ts';
import { overridden } from './overridden.ts';
import { policies } from './policies.ts';
import { signs } from './signs.ts';
import { styles } from './styles.ts';

const GROUPS: Readonly<Record<string, readonly HostileCase[]>> = {
  'markup in every field': markup,
  'keys and structured data': keys,
  'names that hide properties': clobbering,
  'what is built in, spoiled': overridden,
  'pages that interfere': interference,
  'large and deep': huge,
  'shadow trees and frames': frames,
  'strict policies': policies,
  'odd signs': signs,
  'styles against everything': styles,
  'other documents': documents,
};
const CASES = Object.values(GROUPS).flat();
let battery: Battery;
const times: [number, string][] = [];

beforeAll(async () => {
  battery = await startBattery(CASES);
});
afterAll(async () => {
  console.log(
    `${CASES.length} hostile pages; the slowest, in ms: ${JSON.stringify(times.sort((a, b) => b[0] - a[0]).slice(0, 12))}`,
  );
  await battery?.close();
});

it('every page has a name of its own', () => expect(new Set(CASES.map(({ name }) => name)).size).toBe(CASES.length));

for (const [group, cases] of Object.entries(GROUPS)) {
  describe(group, () => {
    it.each(cases.map((one) => [one.name, one] as const))('%s', async (name, one) => {
      const seen = await battery.run(one);
      times.push([seen.took, name]);
      expect(seen.wrong).toEqual([]);
      const usual = one.by === 'sweep' ? 'list' : 'answer';
      expect(one.ends ?? [usual]).toContain(seen.state);
      if (one.reads !== null && one.by !== 'sweep') expect(seen.text).toContain(one.reads ?? '4 x 45 lb');
      expect(await battery.normalAfter()).toContain('Ordinary cast iron plates');
    });
  });
}
