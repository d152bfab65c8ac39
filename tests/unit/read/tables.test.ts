/** Tables with a row of headings. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods } from './goods.ts';

/** Text of the ad, then its goods with the rule that read them and the words they were read from. */
const NOTATIONS: readonly (readonly [string, ...string[]])[] = [
  [
    'Weight\tQty\n45 lb plates\t4\n25 lb plates\t2',
    '4 plate 45 lb | table-row | 45 lb plates',
    '2 plate 25 lb | table-row | 25 lb plates',
  ],
  [
    'Qty\tItem\n4\t45 lb plate\n2\t25 lb plate',
    '4 plate 45 lb | table-row | 45 lb plate',
    '2 plate 25 lb | table-row | 25 lb plate',
  ],
  [
    'Size (kg)\tCount\n20 plates\t4\n10 plates\t2',
    '4 plate 20 kg | table-row | 20 plates',
    '2 plate 10 kg | table-row | 10 plates',
  ],
  [
    'Item\tQty\tEach\nPlate 45 lb\t4\t$40\nBarbell\t1\t$90',
    '4 plate 45 lb | table-row | Plate 45 lb',
    '1 bar ? | noun | Barbell',
  ],
  ['Plates | Qty\n45 lb | 4\n25 lb | 2', '4 plate 45 lb | table-row | 45 lb + Plates', '2 plate 25 lb | table-row | 25 lb'],
  [
    'Scheibe\tAnzahl\nHantelscheibe 20 kg\t4\nHantelscheibe 10 kg\t2',
    '4 plate 20 kg | table-row | Hantelscheibe 20 kg + Scheibe',
    '2 plate 10 kg | table-row | Hantelscheibe 10 kg',
  ],
];

describe('tables.ts', () => {
  it.each(NOTATIONS)('%s', (text, ...said) => expect(goods(text)).toEqual(said));
});
