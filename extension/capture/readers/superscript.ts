/** Raised and lowered figures that would run into the number before them: $120 with raised cents, 1 with a raised-and-lowered half. */
import { tagOf } from './rendered.ts';
import type { TextBuilder } from './text-builder.ts';

export function separateSuperscript(element: Element, out: TextBuilder): void {
  if (tagOf(element) !== 'SUP' || !/\d$/.test(out.tail)) return;
  const text = (element.textContent ?? '').trim();
  if (/^\d\d$/.test(text) && /(?:^|[^\d.,])[\d,]+$/.test(out.tail)) {
    const after = element.nextSibling?.textContent ?? '';
    if (!/^\s*[/⁄]/.test(after)) out.mark('.');
    else out.space();
  } else if (
    /^\d+\s*[/⁄]?$/.test(text) &&
    /^\s*(?:[/⁄]|\d)/.test(`${/[/⁄]$/.test(text) ? '/' : ''}${element.nextSibling?.textContent ?? ''}`)
  ) {
    out.space();
  }
}
