/** What stands beside a field to explain it, against what a screen reader is told of that field. */
import type { CDPSession, Page, Protocol } from 'puppeteer-core';

type Part = Protocol.DOM.Node;

/**
 * Words beside a field that are not in its description, each after the field. What explains a field stands within it (a unit, a note), right
 * behind it, or behind it in its group; what has an id is there for some field to name.
 */
export async function unsaid(
  page: Page,
  session: CDPSession,
  nodes: readonly Protocol.Accessibility.AXNode[],
): Promise<string[]> {
  const { wanted, by } = await page.evaluate(() => {
    const FIELD = 'input:not([type="checkbox"], [type="radio"]), select, textarea';
    const HINT = '.setting-why, .line-notes, .quiet, .complaint';
    const isSeen = (one: Element): boolean => one.checkVisibility() && !one.closest('.unseen');
    const fields = [...document.querySelectorAll(FIELD)].filter(isSeen);
    const wanted: [number, string][] = [];
    for (const [at, field] of fields.entries()) {
      (field as HTMLElement).dataset.hinted = String(at);
      const box = field.closest('.field');
      const walker = document.createTreeWalker(box ?? field, NodeFilter.SHOW_TEXT);
      while (box && walker.nextNode()) {
        const { parentElement: around, textContent: text } = walker.currentNode;
        const own = around?.closest('.field') === box && !around.closest('label, select, textarea, button, [role="listbox"]');
        if (own && isSeen(around) && text?.trim()) wanted.push([at, text]);
      }
    }
    const hints = [...document.querySelectorAll(HINT)].filter((one) => isSeen(one) && one.textContent?.trim());
    for (const hint of hints) {
      const last = hint.previousElementSibling;
      const group = hint.parentElement?.matches('.setting, fieldset')
        ? hint.parentElement
        : last?.matches('.field, label')
          ? last
          : null;
      for (const [at, field] of fields.entries())
        if (group?.contains(field) && field.compareDocumentPosition(hint) & Node.DOCUMENT_POSITION_FOLLOWING)
          wanted.push([at, hint.textContent ?? '']);
    }
    return { wanted, by: hints.filter(({ id }) => id !== '').map(({ textContent }) => textContent ?? '') };
  });
  const { root } = await session.send('DOM.getDocument', { depth: -1 });
  const marked = new Map<string, { readonly id: number; readonly path: string }>();
  const look = ({ attributes = [], backendNodeId, children = [] }: Part): void => {
    const of = (name: string): string => attributes[attributes.indexOf(name) + 1] ?? '';
    if (attributes.includes('data-hinted')) marked.set(of('data-hinted'), { id: backendNodeId, path: of('data-path') });
    for (const child of children) look(child);
  };
  look(root);
  // How blanks are told between elements is the browser's.
  const bare = (text: unknown): string => String(text ?? '').replace(/\s+/g, '');
  const told = new Map(nodes.map(({ backendDOMNodeId, description }) => [backendDOMNodeId, bare(description?.value)]));
  const all = [...told.values()].filter((text) => text !== '');
  return [
    ...wanted.flatMap(([at, hint]) => {
      const field = marked.get(String(at));
      return told.get(field?.id)?.includes(bare(hint)) ? [] : [`${field?.path}: ${hint}`];
    }),
    ...by.filter((hint) => !all.some((text) => text.includes(bare(hint)))).map((hint) => `no field: ${hint}`),
  ];
}
