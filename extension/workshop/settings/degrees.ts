/** Degrees north or east as people write them: "48.2", "-77.5", "77.5 W", "48,2° N". Null for anything else. */
import { type Decimal, parseNumber } from '../../components/parse-input.ts';

const WRITTEN = /^([-+\u2212])?\s*([\d.,]+)\s*°?\s*([NSEWO])?$/iu;

export function parseDegrees(text: string, decimal: Decimal = '.'): number | null {
  const [, sign, digits = '', side] = WRITTEN.exec(text.trim()) ?? [];
  const value = parseNumber(digits, decimal);
  if (value === null || (sign && side)) return null;
  const isNegative = sign === '-' || sign === '\u2212' || /[SW]/i.test(side ?? '');
  return isNegative ? -value : value;
}
