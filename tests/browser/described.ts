/** Whether a screen reader is told, at a field, the hint that stands beside it for the eyes. */
import type { CDPSession, Page, Protocol } from 'puppeteer-core';

export interface Described {
  /** Fields with a hint. */
  readonly hinted: number;
  /** Those of them that the browser describes by other words, or none. */
  readonly undescribed: readonly string[];
}

/** Marks each field that has a hint in sight, and gives the hints in their order. What a field complains of goes before its hint. */
const hints = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const FIELDS = 'input:not([type="radio"], [type="checkbox"]), select, textarea';
    const found: string[] = [];
    for (const field of document.querySelectorAll<HTMLElement>(FIELDS)) {
      delete field.dataset.hinted;
      if (!field.checkVisibility() || field.getAttribute('aria-invalid') === 'true') continue;
      const box = field.closest('.field, label') ?? field;
      const setting = field.closest('.setting');
      const hint =
        box.querySelector('.line-notes') ??
        (box.nextElementSibling?.matches('.line-notes') ? box.nextElementSibling : null) ??
        // What stands over several fields is of all of them.
        (setting?.querySelectorAll(FIELDS).length === 1 ? setting.querySelector('.setting-why') : null);
      if (!hint?.checkVisibility()) continue;
      field.dataset.hinted = String(found.length);
      found.push(hint.textContent ?? '');
    }
    return found;
  });

const squeezed = (text: unknown): string =>
  String(text ?? '')
    .replace(/\s+/g, ' ')
    .trim();

export async function described(page: Page, session: CDPSession): Promise<Described> {
  const all = await hints(page);
  if (all.length === 0) return { hinted: 0, undescribed: [] };
  const { nodes } = await session.send('Accessibility.getFullAXTree');
  const told = new Map(nodes.map(({ backendDOMNodeId, description }) => [backendDOMNodeId, squeezed(description?.value)]));
  const { root } = await session.send('DOM.getDocument', { depth: -1 });
  await session.send('DOM.disable');
  const undescribed: string[] = [];
  const look = ({ attributes = [], backendNodeId, children = [] }: Protocol.DOM.Node): void => {
    const at = attributes.indexOf('data-hinted');
    const hint = at < 0 ? '' : squeezed(all[Number(attributes[at + 1])]);
    const says = told.get(backendNodeId);
    if (!says?.includes(hint) && at >= 0) undescribed.push(`"${hint}", told: "${says}"`);
    for (const child of children) look(child);
  };
  look(root);
  return { hinted: all.length, undescribed };
}
