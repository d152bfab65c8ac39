/** Short pieces that a page sets beside each other (label and value, chips) belong on one line, as cells do; columns do not. */

import { own } from './own.ts';
import { shortText, tagOf } from './rendered.ts';
import type { Look, Sight } from './sight.ts';

const INLINE = new Set('SPAN B I STRONG EM A SMALL SUP SUB IMG ABBR DATA TIME S DEL INS MARK BDI CODE'.split(' '));
const LONGEST = 80;
/** The same in a source full of blanks and line ends. */
const MOST_WITH_BLANKS = 2000;

/** One line's worth: little text, and no boxes below each other inside. */
const isOnePiece = (element: Element): boolean =>
  (shortText(element, MOST_WITH_BLANKS)?.trim().length ?? Number.POSITIVE_INFINITY) <= LONGEST &&
  [...own(element).querySelectorAll('*')].every(
    (part) => INLINE.has(tagOf(part)) || own(own(part).parentElement ?? part).childElementCount === 1,
  );

export function besideEachOther(before: Element, element: Element, look: Look, lays: Look['lays'], sight: Sight): boolean {
  if (tagOf(element) === 'DD') return tagOf(before) === 'DT';
  if (lays === 'flow' || look.flow === 'cell') return false;
  if (!isOnePiece(before) || !isOnePiece(element)) return false;
  return sight.sameLine(before, element) ?? lays === 'across';
}
