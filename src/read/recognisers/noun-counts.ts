/** Counts behind a noun: "Bench 1.", "collars x2", "barbell (2)", "Bar straight - 1 pc", "collars, 1 pair": kept for the noun, and used up. */
import type { Kind } from '../../listing/reading.ts';
import { blank, findAll, type Scan, valueAt } from '../text/scan.ts';
import { isCount, MODIFIERS } from './notation.ts';
import { countBefore } from './nouns.ts';

const BEHIND = new RegExp(
  `(k)${MODIFIERS}(?:,(?:_[_,.-]{0,3}|n-?[f"']))?[-:,|(]{0,2}(?:x(?![nd]u)|j:?)?([nd])(?:(j|x)?(?=[,.;l)|]|$)|([pt])(?!o|E))\\)?`,
  'dg',
);
/** Kinds that are counted by their noun and not by their weight. */
export const OWN: readonly Kind[] = ['bar', 'curl-bar', 'hex-bar', 'rack', 'stands', 'bench', 'collars', 'storage', 'other'];

export function readNounCounts(scan: Scan): void {
  findAll(scan, BEHIND, ({ from, to, group }) => {
    const kind = scan.tokens[from]?.term?.kind;
    const at = group(2)?.[0] ?? to;
    const count = valueAt(scan, at);
    if (!kind || !OWN.includes(kind) || !isCount(count) || count > 24) return false;
    // "two pairs of collars, one pair worn": counted before.
    if (countBefore(scan, from).count !== null) return false;
    // "spring clips, 2 sets": collars come in pairs; sets of other goods hold nobody knows what.
    if (scan.plain[to] === 't' && kind !== 'collars') return false;
    // "bar 20" is the bar's weight.
    if (kind.endsWith('bar') && count >= 15) return false;
    // A bare number behind a comma may be the first of a list of plates.
    const separator = scan.plain.slice(from + 1, at);
    if (/,$/.test(separator) && group(4) === null && group(3) === null) return false;
    scan.nounCounts.set(from, group(4) ? count * 2 : count);
    for (let i = from + 1; i <= to; i += 1) blank(scan, i);
    return 'claimed';
  });
}
