/**
 * Firefox's own window, which BiDi reaches where the browser was started for it (launch.ts), and through it the page in the real sidebar.
 * Only for looking and for where to click: what a buyer does is done with keys and mouse.
 */
import type { Launched } from './launch.ts';

interface Connection {
  send(method: string, params: object): Promise<{ readonly result: Record<string, unknown> }>;
}
/** puppeteer-core 24.43 keeps it to itself and has no call of its own for windows. */
const connectionOf = ({ browser }: Launched): Connection =>
  (browser as unknown as { readonly connection: Connection }).connection;

/** There is but one; to look for it costs as much as what is asked of it. */
const windows = new WeakMap<Launched, string>();

async function windowOf(launched: Launched): Promise<string | undefined> {
  const known = windows.get(launched);
  if (known !== undefined) return known;
  const { result: tree } = await connectionOf(launched).send('browsingContext.getTree', { 'moz:scope': 'chrome' });
  const all = tree.contexts as readonly { readonly context: string; readonly url: string }[];
  const context = all.find(({ url }) => url.endsWith('browser.xhtml'))?.context;
  if (context !== undefined) windows.set(launched, context);
  return context;
}

/** Runs an expression in the script of the browser's window; gives its text. */
export async function inFirefoxWindow(launched: Launched, expression: string): Promise<string> {
  const { result } = await connectionOf(launched).send('script.evaluate', {
    expression: `Promise.resolve(${expression}).then(String)`,
    target: { context: await windowOf(launched) },
    awaitPromise: true,
  });
  const {
    type,
    result: found,
    exceptionDetails,
  } = result as {
    type: string;
    result?: { value: string };
    exceptionDetails?: { text: string };
  };
  if (type !== 'success') throw new Error(`in Firefox's window: ${exceptionDetails?.text}`);
  return found?.value ?? '';
}

/** Runs an expression over `document` of the page in the sidebar; gives its text. Throws where the sidebar is shut. */
export const inSidebar = (launched: Launched, expression: string): Promise<string> =>
  inFirefoxWindow(
    launched,
    `new Promise((resolve, reject) => {
      const frame = document.getElementById('sidebar')?.contentDocument?.getElementById('webext-panels-browser');
      if (!frame) return reject(new Error('the sidebar is shut'));
      const name = 'ironsift-' + Math.random();
      const hear = ({ data }) => { frame.messageManager.removeMessageListener(name, hear); resolve(data); };
      frame.messageManager.addMessageListener(name, hear);
      const script = '{ const document = content.document; let found; try { found = String(' + ${JSON.stringify(expression)} + '); } catch (error) { found = String(error); } sendAsyncMessage(' + JSON.stringify(name) + ', found); }';
      frame.messageManager.loadFrameScript('data:,' + encodeURIComponent(script), false);
    })`,
  );

/** Where the toolbar's button is on the screen, in pixels of the screen; it is put beside the address bar first, as a buyer would. */
export async function toolbarButton(launched: Launched): Promise<{ readonly x: number; readonly y: number }> {
  const id = 'ironsift_ironsift_invalid-browser-action';
  const box = await inFirefoxWindow(
    launched,
    `(async () => {
      CustomizableUI.addWidgetToArea('${id}', CustomizableUI.AREA_NAVBAR);
      await new Promise((resolve) => setTimeout(resolve, 300));
      const { left, top, width, height } = document.getElementById('${id}').getBoundingClientRect();
      return JSON.stringify({ x: Math.round(mozInnerScreenX + left + width / 2), y: Math.round(mozInnerScreenY + top + height / 2) });
    })()`,
  );
  return JSON.parse(box);
}
