/** Words of condition, with denial ("not bent", "no rust", "never dropped") and hearsay ("I think it's straight"). */
import type { Finding } from '../mention.ts';
import type { Scan } from '../text/scan.ts';

/** How many tokens before a word a denial still reaches it ("no sign of rust", "has never been left outside"). */
const REACH = 4;

export function readConditions(scan: Scan): Finding[] {
  const found: Finding[] = [];
  scan.tokens.forEach((token, at) => {
    const condition = token.term?.condition;
    if (!condition) return;
    let denied = false;
    let hearsay = false;
    for (let i = at - 1; i >= Math.max(0, at - REACH); i -= 1) {
      const letter = scan.plain[i] ?? 'l';
      if (scan.clause[i] !== scan.clause[at]) break;
      if (letter === 'N') denied = true;
      // In "no bends spins smooth" the denial ends with the first word it denies.
      if (letter === 'C' && !',c/'.includes(scan.plain[i + 1] ?? '_')) break;
      if (letter === 'y') hearsay = true;
      // "no rust, bent bar": a comma ends the reach, but not in "no rust, cracks or chips".
      if ((letter === ',' || letter === 'c') && !(scan.plain[i - 2] === 'N' && letter === ',')) break;
    }
    const place = { rule: denied ? 'condition-denied' : 'condition', from: at, to: at, ...(hearsay ? { hearsay } : {}) };
    if (!denied) found.push({ ...place, condition });
    else if (token.term?.denied) found.push({ ...place, condition: token.term.denied });
  });
  return found;
}
