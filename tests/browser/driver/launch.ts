import puppeteer, { type Browser } from 'puppeteer-core';
import type { Display } from './display.ts';
import { buildOf, findBrowser } from './find.ts';
import { onFreshProfile } from './profile.ts';

export interface LaunchOptions {
  readonly display: Display;
  /** Folder of the unpacked extension; the build of this checkout when left out. */
  readonly extension?: string;
  /** Window size in CSS pixels. */
  readonly width?: number;
  readonly height?: number;
  /** Colour scheme that the browser reports to pages. */
  readonly scheme?: 'light' | 'dark';
  /** BCP 47 tag for the browser's own language. */
  readonly language?: string;
  /** Proxy for everything that is not loopback, "http://127.0.0.1:PORT"; see startOutsideWatch. */
  readonly proxy?: string;
  /** Folder for what is downloaded, without a question. */
  readonly downloads?: string;
  /** Without the bar that says that the browser is driven: for pictures. Chromium alone. */
  readonly withoutBar?: boolean;
}

export interface Launched {
  readonly browser: Browser;
  readonly name: 'chromium' | 'firefox';
  readonly display: Display;
}

export const QUIET = [
  // Chromium refuses to run as root with its sandbox; for everybody else the sandbox stays.
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-dev-shm-usage',
  // The browser's own errands (clock, account, updates): with these gone, whatever asks to leave the machine is ours.
  '--disable-features=NetworkTimeServiceQuerying,AutofillServerCommunication',
  '--gaia-url=http://127.0.0.1:9/',
  '--apps-gallery-update-url=http://127.0.0.1:9/',
  '--component-updater=url-source=http://127.0.0.1:9/',
];

const missing = (name: string): Error => new Error(`no ${name} was found on this machine`);

/** Chromium with the extension, in a window on the display. */
export async function launchChromium(options: LaunchOptions): Promise<Launched> {
  const { display, width = 1300, height = 900, language = 'en-US' } = options;
  const executablePath = findBrowser('chromium');
  if (executablePath === null) throw missing('Chromium');
  const browser = await onFreshProfile((userDataDir) =>
    puppeteer.launch({
      executablePath,
      headless: false,
      pipe: true,
      userDataDir,
      enableExtensions: [options.extension ?? buildOf('chrome')],
      env: { ...display.env, LANGUAGE: language.replace('-', '_') },
      defaultViewport: null,
      ...(options.withoutBar && { ignoreDefaultArgs: ['--enable-automation'] }),
      ...(options.downloads !== undefined && { downloadBehavior: { policy: 'allow' as const, downloadPath: options.downloads } }),
      args: [
        ...QUIET,
        `--window-size=${width},${height}`,
        '--window-position=0,0',
        `--lang=${language}`,
        // Or else another bar tells of the switch for root.
        ...(options.withoutBar ? ['--test-type'] : []),
        ...(options.scheme === 'dark' ? ['--force-dark-mode'] : []),
        ...(options.proxy === undefined ? [] : [`--proxy-server=${options.proxy}`]),
      ],
    }),
  );
  return { browser, name: 'chromium', display };
}

/** Firefox makes up an address for each extension and profile; with this preference it is known before. */
export const FIREFOX_ROOT = 'moz-extension://5f2d1c3a-7b7e-4c6d-9a51-1c2f3a4b5c6d/';

/** With this, BiDi opens an extension's pages and reaches the browser's own window (seen in Firefox ESR 153); without, it refuses both. */
export const FIREFOX_SYSTEM = '--remote-allow-system-access';

export const FIREFOX_QUIET = {
  // Tabs and the sidebar come at once: nothing that is tested moves, and what moves is drawn by the processor.
  'ui.prefersReducedMotion': 1,
  'services.settings.server': 'http://127.0.0.1:9/v1',
  'extensions.webextensions.uuids': JSON.stringify({ 'ironsift@ironsift.invalid': new URL(FIREFOX_ROOT).hostname }),
};

/** Firefox with the extension (its Firefox build), in a window on the display. */
export async function launchFirefox(options: LaunchOptions): Promise<Launched> {
  const { display, width = 1300, height = 900, language = 'en-US' } = options;
  const executablePath = findBrowser('firefox');
  if (executablePath === null) throw missing('Firefox');
  const proxy = options.proxy === undefined ? null : new URL(options.proxy);
  const browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath,
    headless: false,
    enableExtensions: true,
    // The browser's own errand: its remote settings obey the preference below only with this variable.
    env: { ...display.env, MOZ_REMOTE_SETTINGS_DEVTOOLS: '1' },
    defaultViewport: null,
    args: [FIREFOX_SYSTEM, `--width=${width}`, `--height=${height}`],
    extraPrefsFirefox: {
      ...FIREFOX_QUIET,
      'intl.locale.requested': language,
      ...(options.downloads !== undefined && { 'browser.download.folderList': 2, 'browser.download.dir': options.downloads }),
      'ui.systemUsesDarkTheme': options.scheme === 'dark' ? 1 : 0,
      ...(proxy && {
        'network.proxy.type': 1,
        'network.proxy.http': proxy.hostname,
        'network.proxy.http_port': Number(proxy.port),
        'network.proxy.ssl': proxy.hostname,
        'network.proxy.ssl_port': Number(proxy.port),
      }),
    },
  });
  await browser.installExtension(options.extension ?? buildOf('firefox'));
  return { browser, name: 'firefox', display };
}
