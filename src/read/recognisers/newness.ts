/** Whether "new" speaks of the goods: not what they cost new, were bought as, or something else that is new. */
import { says } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';

/** How far a price or a word of its past reaches ("paid $450 for it brand new"). */
const REACH = 7;

/** True for every other word of condition. */
export function isNewness(scan: Scan, at: number): boolean {
  const term = scan.tokens[at]?.term;
  if (term?.condition !== 'new' && term?.condition !== 'like-new') return true;
  const before = scan.plain.slice(Math.max(0, at - 2), at);
  const behind = scan.plain.slice(at + 1, at + 8);
  // "One handle flaked, the other handle mint": of a part.
  if (scan.tokens[at - 1]?.term?.sense === 'handle') return false;
  // "Brand new these are $600": what they cost new.
  if (/^[az]{1,4}U?(?:\$?n|i)/.test(behind) && says(scan, at + 1, 'them')) return false;
  if (scan.plain[at + 1] === 'C') return false;
  // "Never used $90" tells no former price.
  if (/^[:=-]?\$?n?\$/.test(behind) && / ?n(?:ew|eu\w*)$/.test(scan.tokens[at]?.text ?? 'new')) return false;
  for (let i = at - 1; i >= Math.max(0, at - REACH) && scan.clause[i] === scan.clause[at]; i -= 1) {
    const letter = scan.plain[i] ?? 'l';
    if (letter === 'F' && term.condition === 'new' && scan.tokens[i]?.term?.sense !== 'stays') return false;
    if ((letter === '$' || letter === 'A') && i >= at - 4) return false;
    if (letter === ',' || letter === ';') break;
  }
  if (term.sense !== 'new') return true;
  // "new olympic bar", "new 45s", "Condition: new", "new, in the box"; not "a new one", "new in 2018".
  if (/^[mC]{0,3}k|^[mC]{0,2}n?[uhx(]|^ns/.test(behind)) return !/[Ez]a$|w$/.test(before);
  return (/^[:.,;l)(!]|^$/.test(behind) || says(scan, at + 1, 'except')) && !/[ain$uM_w]$/.test(before);
}
