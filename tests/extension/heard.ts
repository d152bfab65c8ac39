/** What a screen reader is told by itself, in jsdom: every text that comes into a live region. */
import { act } from 'preact/test-utils';
import { SETTLE_MS } from '../../extension/components/announcer.tsx';

export const wait = (ms: number) => act(() => new Promise((resolve) => setTimeout(resolve, ms)));

const REGIONS = '[role=status], [role=alert], [aria-live]';

/** Every text that stands in a live region, in turn, until it has been quiet for a while. `pause` where the clock is the test's own. */
export async function heard(doing: () => Promise<unknown>, pause = wait): Promise<string[]> {
  const said: string[] = [];
  const regions = () => document.querySelectorAll(REGIONS);
  const last = new Map([...regions()].map((one) => [one, one.textContent]));
  const watch = new MutationObserver(() => {
    for (const one of regions()) {
      if (one.textContent && one.textContent !== last.get(one)) said.push(one.textContent);
      last.set(one, one.textContent);
    }
  });
  watch.observe(document.body, { subtree: true, childList: true, characterData: true });
  await doing();
  await pause(SETTLE_MS + 300);
  watch.disconnect();
  return said;
}
