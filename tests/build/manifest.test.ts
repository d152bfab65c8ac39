import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { makeManifest, mergeMessages, TARGETS } from '../../build.mjs';

const template = JSON.parse(readFileSync(new URL('../../manifest.template.json', import.meta.url), 'utf8'));
const chrome = makeManifest(template, 'chrome');
const firefox = makeManifest(template, 'firefox');

describe('makeManifest', () => {
  it('leaves the template as it is and gives the same again', () => {
    const before = structuredClone(template);
    for (const target of TARGETS) expect(makeManifest(template, target)).toEqual(makeManifest(template, target));
    expect(template).toEqual(before);
  });

  it.each(TARGETS)('is Manifest V3 with two shortcuts for %s', (target) => {
    const manifest = makeManifest(template, target);
    expect(manifest.manifest_version).toBe(3);
    expect(manifest.default_locale).toBe('en');
    expect(manifest.commands).toEqual({
      'take-ad': expect.objectContaining({ suggested_key: { default: 'Alt+Shift+U' } }),
      'read-every-ad': expect.objectContaining({ suggested_key: { default: 'Alt+Shift+L' } }),
    });
  });

  // Chrome for Developers, "Manifest file format"; MDN, "manifest.json": which browser knows which key (from memory).
  it('gives Chrome its own keys and none of Firefox', () => {
    expect(chrome.background).toEqual({ service_worker: 'background.js' });
    expect(chrome.side_panel).toEqual({ default_path: 'panel.html' });
    expect(Number(chrome.minimum_chrome_version)).toBeGreaterThanOrEqual(116);
    for (const key of ['sidebar_action', 'browser_specific_settings', 'panel']) expect(chrome).not.toHaveProperty(key);
  });

  it('gives Firefox its own keys and none of Chrome', () => {
    expect(firefox.background).toEqual({ scripts: ['background.js'] });
    expect(firefox.sidebar_action).toMatchObject({ default_panel: 'panel.html', open_at_install: false });
    const { gecko } = firefox.browser_specific_settings;
    expect(gecko.id).toMatch(/^[\w.-]+@[\w.-]+$/);
    expect(gecko.data_collection_permissions).toEqual({ required: ['none'] });
    expect(Number.parseFloat(gecko.strict_min_version)).toBeGreaterThanOrEqual(142);
    for (const key of ['side_panel', 'minimum_chrome_version', 'panel']) expect(firefox).not.toHaveProperty(key);
  });

  it('asks for no more than it needs, and for no host', () => {
    expect([...chrome.permissions].sort()).toEqual(['activeTab', 'contextMenus', 'scripting', 'sidePanel', 'storage']);
    expect([...firefox.permissions].sort()).toEqual(['activeTab', 'contextMenus', 'scripting', 'storage']);
  });

  // Whatever else a manifest may hold (hosts, also optional ones, scripts in pages, pages let in) gives more power, or shows the page more.
  // The build adds `version` to the template.
  it('holds these keys and no other', () => {
    const shared = [
      'action',
      'background',
      'commands',
      'content_security_policy',
      'default_locale',
      'description',
      'icons',
      'incognito',
      'manifest_version',
      'name',
      'permissions',
    ];
    expect(Object.keys(chrome).sort()).toEqual([...shared, 'minimum_chrome_version', 'side_panel'].sort());
    expect(Object.keys(firefox).sort()).toEqual([...shared, 'browser_specific_settings', 'sidebar_action'].sort());
    for (const { action, content_security_policy: policy } of [chrome, firefox]) {
      expect(Object.keys(action).sort()).toEqual(['default_icon', 'default_title']);
      expect(Object.keys(policy)).toEqual(['extension_pages']);
    }
  });

  // What is seen in a private window must not be stored (Mozilla, "Add-on Policies", data from private browsing sessions), and a find is stored.
  // Chrome would otherwise run one process, with one store, for its incognito windows too ("spanning", "Manifest - Incognito"; both from memory).
  it.each(TARGETS)('stays out of private windows in %s', (target) => {
    expect(makeManifest(template, target).incognito).toBe('not_allowed');
  });

  it('lets its pages load and reach nothing but themselves', () => {
    for (const { content_security_policy: policy } of [chrome, firefox]) {
      expect(policy.extension_pages).toContain("default-src 'none'");
      expect(policy.extension_pages).toContain("connect-src 'none'");
      expect(policy.extension_pages).toContain("worker-src 'self'");
      // The solver's WebAssembly, which comes with the extension, may be compiled; text may not become script.
      expect(policy.extension_pages.replace("'wasm-unsafe-eval'", '')).not.toMatch(/unsafe|https?:|\*/);
    }
  });
});

describe('mergeMessages', () => {
  const one = { message: 'One' };

  it('makes one set of the parts', () => {
    expect(mergeMessages({ 'b.json': { b: one }, 'a.json': { a: one } })).toEqual({ a: one, b: one });
  });

  it('refuses a key that is there already, in whatever case', () => {
    expect(() => mergeMessages({ 'a.json': { call_go: one }, 'b.json': { call_Go: one } })).toThrow(
      'b.json: key "call_Go" is in a.json already',
    );
  });

  it.each(['call-go', 'call go', '', 'prix_é'])('refuses the key %j', (key) => {
    expect(() => mergeMessages({ 'a.json': { [key]: one } })).toThrow('only letters, digits and _');
  });

  it('refuses a key without a message, and a dollar sign that the browser would take for a place', () => {
    expect(() => mergeMessages({ 'a.json': { a: {} as { message: string } } })).toThrow('has no "message"');
    for (const message of ['$5', 'at $', '$$$'])
      expect(() => mergeMessages({ 'a.json': { a: { message } } })).toThrow('write a dollar sign as $$');
    for (const message of ['$$5', 'at $$', '$$$$', 'none'])
      expect(mergeMessages({ 'a.json': { a: { message } } })).toEqual({ a: { message } });
  });
});
