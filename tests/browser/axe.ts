/** What the accessibility checker axe-core finds on a page, each with where it stands. */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Page } from 'puppeteer-core';
import { pale, UNSURE } from './contrast.ts';

export const AXE = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

/** Off unless asked for: the least size of what is pressed (WCAG 2.2, 2.5.8), and what is tried out but fits here. */
export const ALSO = ['target-size', 'label-content-name-mismatch', 'table-fake-caption', 'td-has-header', 'css-orientation-lock'];

/** The rules that depend on colours. */
export const OF_COLOURS = ['color-contrast'] as const;

/** The rules that depend on how large things are. */
export const OF_SIZES = ['target-size', 'scrollable-region-focusable'] as const;

/**
 * `except` names rules that mean nothing where the page is shown; `only` those that are looked at again in another way.
 * What axe can't tell is a fault too, but for contrasts, which it leaves open in drawings and under what lies over words: these are
 * marked, to reckon.
 */
export async function violations(
  page: Page,
  except: readonly string[] = [],
  only: readonly string[] = [],
): Promise<readonly string[]> {
  if (!(await page.evaluate("'axe' in globalThis"))) await page.evaluate(await readFile(AXE, 'utf8'));
  const found = await page.evaluate(
    async (disabled, enabled, alone, mark) => {
      const { axe } = globalThis as unknown as { axe: typeof import('axe-core') };
      const rules = Object.fromEntries([
        ...enabled.map((id) => [id, { enabled: true }]),
        ...disabled.map((id) => [id, { enabled: false }]),
      ]);
      // Where it stands is told by its own text; a selector for each element that was looked at costs a sixth of the time.
      const look = () =>
        axe.run(document, {
          selectors: false,
          elementRef: true,
          ...(alone.length > 0 ? { runOnly: { type: 'rule', values: [...alone] } } : { rules }),
        });
      // What comes while it looks moves what it has looked at, and it can't tell any more: then again, a few times.
      let changed = false;
      const watch = new MutationObserver(() => {
        changed = true;
      });
      watch.observe(document, { childList: true, subtree: true });
      let found = await look();
      for (let again = 0; changed && again < 5; again += 1) {
        await new Promise((done) => setTimeout(done, 200));
        watch.takeRecords();
        changed = false;
        found = await look();
      }
      watch.disconnect();
      const unsure = found.incomplete.filter(({ id }) => id === 'color-contrast').flatMap(({ nodes }) => nodes);
      for (const { element } of unsure) element?.setAttribute(mark, '');
      return [...found.violations, ...found.incomplete.filter(({ id }) => id !== 'color-contrast')].map(
        ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 200)).join(' | ')}`,
      );
    },
    except,
    ALSO,
    only,
    UNSURE,
  );
  return only.length > 0 && !only.includes('color-contrast') ? found : [...found, ...(await pale(page))];
}
