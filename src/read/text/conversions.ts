/** One weight or length written in two units ("8 kg (17.6 lb)", "60lb / 28kg") is one value: the second writing is joined to the first. */
import { inPounds } from '../../units/mass.ts';
import type { Token } from './tokens.ts';

const isUnit = (token: Token | undefined): token is Token => token?.term?.unit !== undefined;
const OPENERS = ['(', '/', '[', '=', 'or'];

/** Within 10 %, since sellers round ("2.5 kg / 5 lb" is 9 % off). */
const same = (a: Token, unitA: Token, b: Token, unitB: Token): boolean => {
  if (a.value === null || b.value === null || !unitA.term?.unit || !unitB.term?.unit || unitA.term.unit === unitB.term.unit)
    return false;
  const first = inPounds({ value: a.value, unit: unitA.term.unit });
  const second = inPounds({ value: b.value, unit: unitB.term.unit });
  return Math.abs(first - second) <= 0.1 * Math.max(first, second);
};

/** "2" and "two", "two" and "2". */
const isSaidAgain = (a: Token | undefined, b: Token | undefined): boolean => {
  const value = (token: Token | undefined): number | null =>
    token?.type === 'number' ? token.value : (token?.term?.value ?? null);
  return value(a) !== null && value(a) === value(b) && (a?.type === 'number') !== (b?.type === 'number');
};

export function joinConversions(tokens: readonly Token[]): Token[] {
  const joined: Token[] = [];
  let at = 0;
  while (at < tokens.length) {
    const [number, unit, opener, other, otherUnit] = tokens.slice(at, at + 5);
    if (
      number?.type === 'number' &&
      isUnit(unit) &&
      opener &&
      OPENERS.includes(opener.text) &&
      other?.type === 'number' &&
      isUnit(otherUnit)
    ) {
      if (same(number, unit, other, otherUnit)) {
        const closed = tokens[at + 5]?.text === ')' || tokens[at + 5]?.text === ']';
        const last = closed ? tokens[at + 5] : otherUnit;
        joined.push(number, { ...unit, end: last?.end ?? unit.end });
        at += closed ? 6 : 5;
        continue;
      }
    }
    // "2 (two) 45 lb": the number said again.
    if (unit?.text === '(' && other?.text === ')' && isSaidAgain(number, opener)) {
      if (number) joined.push({ ...number, end: other.end });
      at += 4;
      continue;
    }
    // "45 (lb)".
    if (number?.type === 'number' && unit?.text === '(' && isUnit(opener) && other?.text === ')') {
      joined.push(number, { ...opener, end: other.end });
      at += 4;
      continue;
    }
    if (number) joined.push(number);
    at += 1;
  }
  return joined;
}
