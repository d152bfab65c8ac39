/**
 * Figures that would run into the number before them: $120 with raised cents, 1 with a raised-and-lowered half, and elements that only
 * their style keeps apart: a price, then the miles to it.
 */
import { own } from './own.ts';
import { shortText, tagOf } from './rendered.ts';
import type { TextBuilder } from './text-builder.ts';

/** What begins a longer text is no figure of its own. */
const LONGEST = 2000;

export function separateFigures(element: Element, out: TextBuilder): void {
  const isRaised = tagOf(element) === 'SUP';
  if (!/[\p{L}\d]$/u.test(out.tail) || !(isRaised || own(element).previousSibling?.nodeType === 1)) return;
  const text = shortText(element, LONGEST)?.trim() ?? '';
  if (!isRaised) {
    // Not between bare figures: a page may well set one number in pieces.
    if (/^[$€£]/.test(text) || /^.\d \d+\D/.test(`${out.tail.slice(-2)} ${text}`)) out.space();
    return;
  }
  if (!/\d$/.test(out.tail)) return;
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
