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
  await page.$eval(
    selector,
    (field, words) => {
      (field as HTMLElement).focus();
      document.execCommand('insertText', false, words);
    },
    text,
  );
}

/** Types in place of what a field holds, with key presses of the debugging protocol; waits for the field. */
export async function typeInto(page: Page, selector: string, text: string): Promise<void> {
  await page.waitForSelector(selector);
  await page.$eval(selector, (field) => {
    field.closest('details')?.setAttribute('open', '');
    (field as HTMLInputElement).select();
  });
  await page.type(selector, text);
}
