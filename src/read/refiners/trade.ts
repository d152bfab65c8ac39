/** Whether the ad is about this trade at all, and whether it offers or seeks. */
import type { Quantity, Total } from '../mention.ts';
import type { Scan } from '../text/scan.ts';

/** Wanted when the ad opens with a word of seeking, or has one and no price. */
export function isWanted(scan: Scan, hasPrice: boolean): boolean {
  const at = scan.plain.indexOf('W');
  if (at === -1) return false;
  const token = scan.tokens[at];
  const head = scan.plain.slice(0, at).replace(/[^a-zA-Z]/g, '').length;
  const early = head <= 3 || (token?.line === 0 && head <= 8);
  const strong =
    /wtb|want to buy|wanting to buy|looking to buy|wanted|iso|in search|seeking|anyone|anybody|suche|gesucht|kaufe/.test(
      token?.text ?? '',
    );
  return early || (strong && !hasPrice);
}

/** Words of the trade that say little alone need weights or each other; words of other trades weigh against. */
export function isOfTrade(scan: Scan, quantities: readonly Quantity[], totals: readonly Total[]): boolean {
  let strong = 0;
  let weak = 0;
  let foreign = 0;
  const seen = new Set<string>();
  for (const token of scan.tokens) {
    const term = token.term;
    if (!term || seen.has(token.text)) continue;
    seen.add(token.text);
    if (term.kind && term.kind !== 'other') {
      if (term.weak) weak += 1;
      else strong += 1;
    }
    if (term.sense === 'gym') strong += 1;
    if (term.sense === 'foreign') foreign += 1;
    if (term.sense === 'very-foreign') foreign += 3;
    if (term.fits === '50mm') strong += 1;
    if (term.code === 'P') weak += 0.5;
  }
  const sizes = new Set(quantities.filter(({ weight }) => weight !== null).map(({ weight }) => weight)).size;
  if (foreign > 0 && strong < foreign + 1) return false;
  if (strong >= 1) return true;
  return (weak >= 1 && (sizes >= 2 || totals.length > 0)) || weak >= 2 || (weak >= 1 && sizes >= 1) || sizes >= 3;
}
