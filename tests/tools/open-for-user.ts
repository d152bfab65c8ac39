import { extensionId, findBrowser, type Launched, launchChromium, launchFirefox, onDisplay } from '../browser/driver/index.ts';

const byHand = (folder: string): string =>
  [
    'This browser does not load an extension from the command line (some branded builds refuse it). By hand:',
    '  1. open the page of extensions (chrome://extensions, edge://extensions) and switch on developer mode',
    `  2. "Load unpacked": choose ${folder}`,
    '  In Firefox: about:debugging, This Firefox, "Load Temporary Add-on…": choose dist/firefox/manifest.json',
  ].join('\n');

/** Chromium first, Firefox when there is none. Null when the browser that is there refuses the extension. */
async function launch(): Promise<Launched | null> {
  const display = onDisplay(process.env.DISPLAY ?? '');
  const wants = { display, width: 1300, height: 900 };
  try {
    if (findBrowser('chromium') === null) return await launchFirefox(wants);
    const launched = await launchChromium(wants);
    await extensionId(launched.browser);
    return launched;
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    return null;
  }
}

/** Opens the address in a window with the extension loaded, and comes back when the buyer closes the browser. */
export async function openForUser(url: string, folder: string): Promise<void> {
  if (findBrowser('chromium') === null && findBrowser('firefox') === null) {
    console.error('No browser was found. Install Chromium or Firefox, or name one in IRONSIFT_CHROMIUM or IRONSIFT_FIREFOX.');
    process.exitCode = 1;
    return;
  }
  const launched = await launch();
  if (launched === null) {
    console.log(`${byHand(folder)}\nThe demo board is at ${url} until you press Ctrl+C.`);
    await new Promise<void>((resolve) => process.once('SIGINT', () => resolve()));
    return;
  }
  const { browser } = launched;
  const page = (await browser.pages())[0] ?? (await browser.newPage());
  await page.goto(url);
  console.log(`Open in ${launched.name}: ${url}`);
  console.log('Open an ad, select its text, and press Alt+Shift+U; with nothing selected you pick the ad with the mouse.');
  console.log('Close the browser, or press Ctrl+C here, to end.');
  await new Promise<void>((resolve) => browser.once('disconnected', () => resolve()));
}
