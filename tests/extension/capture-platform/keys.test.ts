/** Sentences name the keys that the buyer's browser really has. */
import { afterAll, expect, it } from 'vitest';
import { handInApi } from '../../../extension/platform/browser.ts';
import { learnKeys, strings } from '../../../extension/platform/words.ts';

const WORDS: Readonly<Record<string, string>> = {
  shift_key: 'Umschalt',
  toolbar_key: 'Ironsift in der Symbolleiste',
  ask: 'drücken Sie {ask_key}, oder',
  sweep_shortcut: 'oder {sweep_key} drücken',
  plain: 'Nichts zu {n}',
};
const browser = (commands?: object) =>
  handInApi({ i18n: { getMessage: (key: string) => WORDS[key] ?? '' }, commands } as unknown as Parameters<typeof handInApi>[0]);
const having = (ask: string, sweep: string) => ({
  getAll: async () => [
    { name: 'take-ad', shortcut: ask },
    { name: 'read-every-ad', shortcut: sweep },
  ],
});
const said = () => ['ask', 'sweep_shortcut', 'plain', 'missing'].map((key) => strings()[key]);

// Modules serve other files too: as they were.
afterAll(async () => {
  browser(having('Alt+Shift+U', 'Alt+Shift+L'));
  await learnKeys();
  handInApi(undefined as unknown as Parameters<typeof handInApi>[0]);
});

it('the suggested ones until they are known', () => {
  browser();
  expect(said()).toEqual(['drücken Sie Alt+Umschalt+U, oder', 'oder Alt+Umschalt+L drücken', 'Nichts zu {n}', undefined]);
});

it('those that the buyer has chosen', async () => {
  browser(having('Ctrl+Shift+9', 'Alt+K'));
  await learnKeys();
  expect(said()).toEqual(['drücken Sie Ctrl+Umschalt+9, oder', 'oder Alt+K drücken', 'Nichts zu {n}', undefined]);
});

it.each([
  ['taken away', having('', '')],
  ['unknown to a phone', undefined],
])('none when they are %s: the button is named, and a bare hint is left out', async (_, commands) => {
  browser(commands);
  await learnKeys();
  expect(said()).toEqual(['drücken Sie Ironsift in der Symbolleiste, oder', '', 'Nichts zu {n}', undefined]);
});

it('those known so far when the browser does not say', async () => {
  browser(having('Ctrl+Shift+9', 'Alt+K'));
  await learnKeys();
  browser({ getAll: () => Promise.reject(new Error('not now')) });
  await learnKeys();
  expect(said()).toEqual(['drücken Sie Ctrl+Umschalt+9, oder', 'oder Alt+K drücken', 'Nichts zu {n}', undefined]);
});
