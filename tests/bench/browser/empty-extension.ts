/** An extension that does nothing but what any must: a shortcut, a panel, a page. What it costs is the browser's, not ours. */
import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const MANIFEST = {
  manifest_version: 3,
  name: 'Empty',
  version: '1',
  permissions: ['activeTab', 'scripting', 'storage', 'sidePanel'],
  background: { service_worker: 'background.js' },
  side_panel: { default_path: 'panel.html' },
  commands: { take: { suggested_key: { default: 'Alt+Shift+U' }, description: 'Take' } },
};

/** Opens its panel, puts one line into the page, hands one word over through the storage: the way that every capture has to go. */
const BACKGROUND = `chrome.commands.onCommand.addListener(async (_, tab) => {
  chrome.sidePanel.open({ tabId: tab.id });
  const [{ result }] = await chrome.scripting.executeScript({ target: { tabId: tab.id }, func: () => String(getSelection()) });
  await chrome.storage.session.set({ word: { result, at: Date.now() } });
});`;

const PANEL = `const show = (word) => word && document.body.replaceChildren(Object.assign(document.createElement('p'), { id: 'word', textContent: word.result }));
chrome.storage.session.get('word').then(({ word }) => show(word));
chrome.storage.session.onChanged.addListener(({ word }) => show(word?.newValue));`;

const page = (script: string) =>
  `<!doctype html><html lang="en"><meta charset="utf-8"><title>Empty</title><body><p data-state="empty">Empty</p>${script}</body></html>`;

/** Gives its folder; whoever asked takes it away again. */
export async function emptyExtension(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'ironsift-empty-'));
  const files = {
    'manifest.json': JSON.stringify(MANIFEST),
    'background.js': BACKGROUND,
    'panel.js': PANEL,
    'panel.html': page('<script src="panel.js"></script>'),
    'workshop.html': page(''),
  };
  await Promise.all(Object.entries(files).map(([name, content]) => writeFile(join(folder, name), content)));
  return folder;
}
