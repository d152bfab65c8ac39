/** Drives the real extension in a real browser on a virtual screen, with real keys. Used by the browser tests and by `npm start`. */

export { allowReload, type Background, backgroundOf } from './background.ts';
export { type Display, onDisplay, startDisplay } from './display.ts';
export { type BrowserName, buildOf, findBrowser } from './find.ts';
export { inFirefoxWindow, inSidebar, toolbarButton } from './firefox-window.ts';
export { pressKeys, pressShortcut, pressSweepShortcut } from './keys.ts';
export { type Launched, launchChromium, launchFirefox } from './launch.ts';
export { launchHeadless, launchHeadlessFirefox } from './launch-headless.ts';
export { type Outsider, startOutsideWatch } from './outside-watch.ts';
export { anew, goToOwn, openOwn, rootOf, type Started } from './own-page.ts';
export { pasteInto, selectText, typeInto } from './page.ts';
export { extensionId, isPanel, openPanelInTab, panelOf, waitForState } from './panel.ts';
export { waitUntilStored } from './stored.ts';
