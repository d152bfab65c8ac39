/** What is selected on a page: in its text, in a text field, in a shadow root, or in a frame of the same origin. */
import { shadowRootOf } from '../platform/shadow-root.ts';
import { browserSight } from './browser-sight.ts';
import { type Captured, pageAddress, readRanges } from './readers/index.ts';
import { readLanguage } from './readers/language.ts';
import { MAX_TEXT } from './readers/limits.ts';
import { own } from './readers/own.ts';
import { frameDocument } from './readers/rendered.ts';

interface ComposedSelection {
  /** Selection API: sees into the shadow roots that it is given. */
  getComposedRanges?(options: { shadowRoots: readonly ShadowRoot[] }): readonly StaticRange[];
}

const hasWords = (range: Range): boolean => !range.collapsed && range.toString().trim() !== '';

function plainRanges(document: Document): Range[] {
  const selection = own(document).getSelection();
  if (!selection) return [];
  return Array.from({ length: selection.rangeCount }, (_, index) => selection.getRangeAt(index)).filter(
    (range) => !range.collapsed,
  );
}

function shadowRootsIn(document: Document): ShadowRoot[] {
  const found: ShadowRoot[] = [];
  const pending: (Document | ShadowRoot)[] = [document];
  for (let root = pending.pop(); root; root = pending.pop()) {
    for (const element of own(root).querySelectorAll('*')) {
      const shadow = shadowRootOf(element);
      if (!shadow) continue;
      found.push(shadow);
      pending.push(shadow);
    }
  }
  return found;
}

/** A selection inside a shadow root: the document's own selection shows only its host. */
function shadowRanges(document: Document): Range[] {
  const shadowRoots = shadowRootsIn(document);
  if (shadowRoots.length === 0) return [];
  const composed =
    (own(document).getSelection() as (Selection & ComposedSelection) | null)?.getComposedRanges?.({ shadowRoots }) ?? [];
  const ranges: Range[] = [];
  for (const { startContainer, startOffset, endContainer, endOffset } of composed) {
    if (startContainer.getRootNode() !== endContainer.getRootNode()) continue;
    const range = own(document).createRange();
    range.setStart(startContainer, startOffset);
    range.setEnd(endContainer, endOffset);
    ranges.push(range);
  }
  return ranges.filter(hasWords);
}

const isField = (element: Element): element is HTMLInputElement | HTMLTextAreaElement =>
  element.tagName === 'TEXTAREA' || (element.tagName === 'INPUT' && element.getAttribute('type')?.toLowerCase() !== 'password');

function fieldSelection(document: Document): { text: string; field: Element } | null {
  let field = own(document).activeElement;
  for (let shadow = field && shadowRootOf(field); shadow?.activeElement; shadow = shadowRootOf(field))
    field = shadow.activeElement;
  if (!field || !isField(field) || field.selectionStart === null) return null;
  const text = field.value.slice(field.selectionStart, field.selectionEnd ?? field.selectionStart);
  return text.trim() === '' ? null : { text, field };
}

function fromField({ text, field }: { text: string; field: Element }): Captured {
  return {
    listing: {
      origin: 'selection',
      address: pageAddress(own(field.ownerDocument).URL),
      title: '',
      text: text.slice(0, MAX_TEXT),
      struck: [],
      priceText: null,
      offers: [],
      language: readLanguage(field),
    },
    cut: text.length > MAX_TEXT,
    stretches: [],
  };
}

/** Null when nothing but blanks is selected. */
export function takeSelection(document: Document): Captured | null {
  const field = fieldSelection(document);
  if (field) return fromField(field);
  const plain = plainRanges(document);
  for (const ranges of [plain, ...(plain.some(hasWords) ? [] : [shadowRanges(document)])]) {
    const captured = readRanges(ranges, { origin: 'selection', sight: browserSight(), address: window.location.href });
    if (captured && captured.listing.text.trim() !== '') return captured;
  }
  for (const frame of own(document).querySelectorAll('iframe, frame')) {
    const inside = frameDocument(frame);
    const captured = inside && takeSelection(inside);
    if (captured) return captured;
  }
  return null;
}
