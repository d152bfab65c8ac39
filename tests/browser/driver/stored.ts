/** What the extension's own database holds, read beside the extension. */
import type { Page } from 'puppeteer-core';

/** Every record of the database as JSON, read in one of the extension's pages. */
const ALL = `new Promise((resolve, reject) => {
  const opening = indexedDB.open('ironsift');
  opening.onerror = () => reject(opening.error);
  opening.onsuccess = () => {
    const db = opening.result;
    const names = [...db.objectStoreNames];
    if (names.length === 0) return db.close(), resolve('');
    const reading = db.transaction(names);
    const all = names.map((name) => reading.objectStore(name).getAll());
    reading.oncomplete = () => (db.close(), resolve(JSON.stringify(all.map(({ result }) => result))));
    reading.onerror = () => (db.close(), reject(reading.error));
  };
})`;

/**
 * Waits until a piece of JSON is in the database. A page that is left takes a write with it that is not done, and how long one takes is the
 * machine's matter: what is typed shows at once, and a test that leaves the page next has to wait for this.
 */
export async function waitUntilStored(page: Page, json: string): Promise<void> {
  const end = Date.now() + 20_000;
  for (;;) {
    const all = (await page.evaluate(ALL)) as string;
    if (all.includes(json)) return;
    if (Date.now() > end) throw new Error(`not stored: ${json}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}
