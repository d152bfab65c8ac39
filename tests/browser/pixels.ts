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

/** How many dark pixels a part of a picture has: words, on a light ground. */
export const inked = (
  picture: string,
  { x, y, width, height }: { x: number; y: number; width: number; height: number },
): Promise<number> =>
  new Promise((resolve, reject) => {
    const part = `${width}x${height}+${x}+${y}`;
    execFile(
      'convert',
      [
        picture,
        '-crop',
        part,
        '+repage',
        '-colorspace',
        'Gray',
        '-threshold',
        '50%',
        '-negate',
        '-format',
        '%[fx:round(mean*w*h)]',
        'info:',
      ],
      (error, stdout) => (error ? reject(error) : resolve(Number(stdout))),
    );
  });
