/**
 * Counts behind a noun: "Bench 1.", "collars x2", "barbell (2)", "Bar straight - 1 pc", "collars, 1 pair", and with other words between "bar 20 kg,
 * 28 mm shaft x 6 - £85 each", "racks, bolted, 4 available": kept for the noun, and used up.
 */
import type { Kind } from '../../listing/reading.ts';
import { blank, findAll, type Scan, valueAt } from '../text/scan.ts';
import { isCount, MODIFIERS } from './notation.ts';
import { countBefore, isAside } from './nouns.ts';

const BEHIND = new RegExp(
  `(k)${MODIFIERS}(?:,(?:_[_,.-]{0,3}|n-?[f"']))?[-:,|(]{0,2}(?:x(?![nd]u)|j:?)?([nd])(?:(j|x)?(?=[,.;l)|]|$)|([pt])(?!o|E)|(?<=[xj]:?[nd])(?=[-(]|[-@]?[M_$]|n-?e))\\)?`,
  'dg',
);
/** "x 6", "qty 3" or "4 available" at the end of what is said of goods, or before their price. */
const LATER = /(?:x|j:?)([nd])(?=[.,;l()]|[-:=@]{0,1}[M_$]|-?n-?e|$)|[,(-]([nd])&(?=[-:,.;l)@]|[M_$]|$)/dg;
/** How far before such a count its noun may stand. */
const REACH = 20;
/** Kinds that are counted by their noun and not by their weight. */
export const OWN: readonly Kind[] = ['bar', 'curl-bar', 'hex-bar', 'rack', 'stands', 'bench', 'collars', 'storage', 'other'];

/** The only goods before a count in its clause, where they are counted by their noun and have no count yet. */
function onlyNoun(scan: Scan, at: number): number | null {
  let noun: number | null = null;
  for (let i = at - 1; i >= 0 && at - i < REACH && scan.clause[i] === scan.clause[at]; i -= 1) {
    if (scan.letters[i] === 'M' || (scan.letters[i] === 'x' && i < at)) return null;
    if (scan.plain[i] !== 'k') continue;
    if (noun !== null || !OWN.includes(scan.tokens[i]?.term?.kind ?? 'plate')) return null;
    noun = i;
  }
  if (noun === null || isAside(scan, noun) || countBefore(scan, noun).count !== null) return null;
  // "Barbell, 45 lb x 4", "rack, 48 x 48": a weight of its own, or a size.
  const between = scan.plain.slice(noun + 1, at);
  const weights = between.match(/n-?[uh]/g)?.length ?? 0;
  if (/[sv]|n$|^[,:(-]n-?[uh]$/.test(between) || weights > 1) return null;
  return weights === 0 || /^(?:[mC,]|n-?[f"'])*n-?[uh]/.test(between) ? noun : null;
}

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
  findAll(scan, LATER, ({ from, to, group }) => {
    const count = valueAt(scan, (group(1) ?? group(2))?.[0] ?? to);
    const noun = isCount(count) && count <= 24 ? onlyNoun(scan, from) : null;
    if (noun === null || !isCount(count)) return false;
    scan.nounCounts.set(noun, count);
    for (let i = from; i <= to; i += 1) blank(scan, i);
    return 'claimed';
  });
}
