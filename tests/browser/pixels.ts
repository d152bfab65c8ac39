/** What a page really shows. */
import { execFile } from 'node:child_process';
import type { Page } from 'puppeteer-core';

/** How many pixels of the page have exactly this colour. */
export async function coloured(page: Page, colour: string): Promise<number> {
  const picture = await page.screenshot({ type: 'png' });
  return new Promise((resolve, reject) => {
    const child = execFile(
      'convert',
      [
        'png:-',
        '-fill',
        'black',
        '+opaque',
        colour,
        '-fill',
        'white',
        '-opaque',
        colour,
        '-format',
        '%[fx:round(mean*w*h)]',
        'info:',
      ],
      (error, stdout) => (error ? reject(error) : resolve(Number(stdout))),
    );
    child.stdin?.end(picture);
  });
}
