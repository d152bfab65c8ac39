/** The English that is shown is American, as its dollars and wrenches are. The words looked for are from memory. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const FOLDER = 'extension/_locales/en';
const BRITISH =
  /\b(spanners?|car boots?|torch|postcodes?|ticks? (?:it|what|all|none)|kilomet(?:re)s?|metres?|fibres?|licences?|colours?|grey|tyres?|hire|whilst|centres?|aluminium|neighbours?|timber|spirit level|does not do)\b/i;

it.each(readdirSync(FOLDER))('%s has no British word', (file) => {
  const part = JSON.parse(readFileSync(join(FOLDER, file), 'utf8')) as Record<string, { message: string }>;
  const found = Object.entries(part).flatMap(([key, { message }]) => (BRITISH.test(message) ? [`${key}: ${message}`] : []));
  expect(found).toEqual([]);
});

it('finds one', () => expect(BRITISH.test('Bring spanners, the car boot is full')).toBe(true));
