/** "45 lb plates $40 each or $150 for all four", "35s, $60 for both": the price tells how many there are, where nothing else does and one line of goods is told. */
import { isPlate } from '../../listing/reading.ts';
import type { Price } from '../mention.ts';
import { says } from '../text/says.ts';
import { type Scan, valueAt } from '../text/scan.ts';
import type { Draft } from './draft.ts';

/** How far before and behind the price the number may stand, in tokens. */
const REACH = 5;
const MOST = 24;

/** Pieces that the words around a price take together, and the token that says so: "all four", "for both", "the pair". */
function piecesOf(scan: Scan, { from, to }: Price): { count: number; at: number } | null {
  for (const at of [1, 2, 3, 4, REACH].flatMap((on) => [to + on, from - on])) {
    if (scan.clause[at] !== scan.clause[from]) continue;
    const term = scan.tokens[at]?.term;
    if (says(scan, at, 'both') || (term?.code === 'L' && term.sense === 'two')) return { count: 2, at };
    if (term?.code === 'L' && term.value !== undefined) return { count: term.value, at };
    if (says(scan, at, 'all') && 'nd'.includes(scan.plain[at + 1] ?? '_') && scan.letters[at + 1] !== 'M') {
      const count = valueAt(scan, at + 1);
      if (count !== null && count >= 2 && count <= MOST) return { count, at: at + 1 };
    }
  }
  return null;
}

export function countByPrice(scan: Scan, prices: readonly Price[], drafts: readonly Draft[]): void {
  const live = drafts.filter(({ sold, kind }) => !sold && kind !== 'other' && kind !== 'collars');
  const [item] = live;
  const alike = live.every(({ kind, weight }) => kind === item?.kind && (weight === null || weight.value === item.weight?.value));
  if (
    !item ||
    !alike ||
    live.some(({ count }) => count !== null) ||
    !item.weight ||
    !(isPlate(item.kind) || item.kind === 'dumbbell')
  )
    return;
  const told = prices.filter(({ role, from }) => role === 'all' && from >= 0).flatMap((price) => piecesOf(scan, price) ?? []);
  const most = told.sort((a, b) => b.count - a.count)[0];
  if (most) item.count = { value: most.count, rule: 'priced-for-all', from: most.at, to: most.at };
}
