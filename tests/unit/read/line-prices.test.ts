/** Price lists without signs of money, and tables priced by the line. Forms that sellers write: common practice, no source. */
import { expect, test } from 'vitest';
import { asked } from './goods.ts';

test('three lines that end in a bare number are prices', () => {
  expect(asked('Home gym\nRack - 300\nBar (7ft) - 150\nFlat bench - 60')).toEqual([
    'lot 510 USD | worked-out | ',
    'rack-1 300 USD | price-at-line-end | 300',
    'bar-1 150 USD | price-at-line-end | 150',
    'bench-1 60 USD | price-at-line-end | 60',
  ]);
});

test('counts and the weight of a bar at line ends are none', () => {
  expect(asked('45 lb plates - 4\n25 lb plates - 10\nBar - 45\nBench - 1\nRack - 1')).toEqual(['none']);
});

test('a table says that its prices are per line', () => {
  const table = 'Qty\tWhat\tPrice\n2\tFlat bench\t$100\n4\tOlympic plate 45 lb\t$160';
  expect(asked(`Prices are per line.\n${table}`)[0]).toBe('lot 260 USD | worked-out | ');
  expect(asked(table)[0]).toBe('lot 840 USD | worked-out | ');
});
