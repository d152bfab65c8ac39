/** What our reader finds before it makes goods of it: its number tokens, its weights with a unit, its mentions of prices. */
import { chooseLanguage } from '../../../src/read/language/choose.ts';
import { readMeasures } from '../../../src/read/recognisers/measures.ts';
import { claimNoise } from '../../../src/read/recognisers/noise.ts';
import { readPrices } from '../../../src/read/recognisers/prices.ts';
import { readBareSizes, readNamedSizes } from '../../../src/read/recognisers/sleeve-sizes.ts';
import { readTables } from '../../../src/read/recognisers/tables.ts';
import { type Scan, scanText, valueAt } from '../../../src/read/text/scan.ts';
import type { Found } from './found.ts';

/** Plates by their size alone ("45s", "tens") are weights to us, but none with a unit. */
const isSizeWord = (scan: Scan, at: number): boolean => scan.tokens[at]?.term?.code === 'v';

function numbersAndWeights(scan: Scan): Found[] {
  return scan.tokens.flatMap((token, at): Found[] => {
    const value = valueAt(scan, at);
    if (value === null) return [];
    const { start, end } = token;
    const number: Found = { sort: 'number', start, end, value, unit: null, how: token.type === 'number' ? 'digits' : 'words' };
    const unitAt = scan.tokens[at + 1]?.text === '-' ? at + 2 : at + 1;
    const unit = scan.tokens[unitAt];
    const mass = unit?.term?.unit ?? (unit?.text === '#' && unit.glued ? 'lb' : undefined);
    if (!unit || !mass || isSizeWord(scan, at)) return [number];
    return [number, { sort: 'weight', start, end: unit.end, value, unit: mass, how: unit.text }];
  });
}

/** Prices in the order of `read()`: after what uses up numbers that are none. Both ends of a range count. */
function prices(scan: Scan): Found[] {
  claimNoise(scan);
  readBareSizes(scan, [...readNamedSizes(scan), ...readMeasures(scan)]);
  return [...readTables(scan).prices, ...readPrices(scan)].flatMap(({ from, to, amount, high, currency, rule }) => {
    const start = scan.tokens[from]?.start ?? 0;
    const end = scan.tokens[to]?.end ?? 0;
    const amounts = high === undefined ? [amount] : [amount, high];
    return amounts.map((value): Found => ({ sort: 'money', start, end, value, unit: currency, how: rule }));
  });
}

export function findWithReader(text: string): Found[] {
  const scan = scanText(text, chooseLanguage(null, text));
  return [...numbersAndWeights(scan), ...prices(scan)];
}
