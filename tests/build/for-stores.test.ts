/** What `npm run package` adds for the stores' forms. */
import { expect, it } from 'vitest';
import { forStores, partOf, screenshots } from '../tools/for-stores.ts';

const files = forStores('.');

it('holds the statement of privacy and a reason for every permission, and nothing of the parts beside them', () => {
  expect(files['privacy.md']).toMatch(/^# Ironsift: Privacy\n\nNothing is read until you ask/);
  expect(files['permissions.md']).toContain('| `activeTab` ');
  for (const name of ['privacy.md', 'permissions.md']) expect(String(files[name])).not.toMatch(/\n## |Makers’ ratings|Makers'/);
});

it('holds as many pictures as a store takes, of its size', () => {
  expect(screenshots('.').length).toBeGreaterThan(2);
  expect(screenshots('.').length).toBeLessThanOrEqual(5);
  expect(Object.keys(files)).toEqual(expect.arrayContaining(['beside-the-page.png', 'finds.png']));
  expect(Object.keys(files)).not.toContain('panel-dark.png');
});

it('ends where the README has no such part', () => {
  expect(() => partOf('# A\n\n## Privacy of others\n', 'Privacy')).toThrow('README.md has no part "Privacy"');
});
