import type { Page } from 'puppeteer-core';

/** Selects everything in the first element that matches, as a reader would with the mouse. */
export async function selectText(page: Page, selector: string): Promise<void> {
  await page.waitForSelector(selector);
  await page.evaluate((wanted) => {
    const element = document.querySelector(wanted);
    if (element !== null) getSelection()?.selectAllChildren(element);
  }, selector);
}

/** Puts text into a field in one go, as a paste does: one input event, no key presses. */
export async function pasteInto(page: Page, selector: string, text: string): Promise<void> {
  await page.waitForSelector(selector);
  await page.focus(selector);
  await page.keyboard.sendCharacter(text);
}
