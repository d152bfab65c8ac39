/** Conditions told by how ordinary words go together: "welded up by a friend", "one nut gone", "stripped and painted". */
import type { Finding } from '../mention.ts';
import type { Scan } from '../text/scan.ts';

export function readWordedConditions(scan: Scan): Finding[] {
  let text = '';
  const starts = scan.tokens.map((token) => {
    const at = text.length;
    text += `${token.type === 'line' ? '\n' : token.text} `;
    return at;
  });
  const found: Finding[] = [];
  for (const { condition, says } of scan.language.ways)
    for (const match of text.matchAll(says)) {
      const from = starts.findLastIndex((start) => start <= match.index);
      const to = starts.findLastIndex((start) => start < match.index + match[0].length);
      // "No bolts are missing" is one term.
      if (scan.clause[from] !== scan.clause[to] || /^(?:no|not|nothing|kein\w*) /.test(scan.tokens[from]?.text ?? '')) continue;
      const place = { rule: 'condition', from, to };
      found.push({ ...place, condition });
      if (condition === 'home-made' && /weld|schwei/.test(match[0])) found.push({ ...place, condition: 'welded' });
    }
  return found;
}
