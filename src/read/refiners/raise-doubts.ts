/** What could be meant in two ways: each doubt with its choices, the first being what the reading assumes. */
import { type Choice, type Doubt, isPlate } from '../../listing/reading.ts';
import { inPounds } from '../../units/mass.ts';
import { money } from '../../units/money.ts';
import { message } from '../../words/message.ts';
import type { Total } from '../mention.ts';
import { type Scan, span } from '../text/scan.ts';
import type { Asked } from './asked.ts';
import type { Draft } from './draft.ts';

/** Below this a pound of iron is suspiciously cheap for a lot price: it may be the price of one piece (common practice, no source). */
const SUSPICIOUS_PER_POUND = 0.2;

interface Named {
  readonly id: string;
  readonly item: Draft;
}

export function raiseDoubts(
  scan: Scan,
  named: readonly Named[],
  asked: Asked,
  totals: readonly Total[],
  currency: string,
): Doubt[] {
  const doubts: Doubt[] = [];
  const push = (about: string, key: string, choices: readonly Choice[], from: number, to: number): void => {
    doubts.push({
      id: `${key}:${about}`,
      about,
      why: message(`doubt_${key}`),
      choices,
      evidence: from < 0 ? [] : [span(scan, from, to)],
    });
  };
  for (const { id, item } of named) {
    const at = item.places[0];
    if (!at) continue;
    if (item.either && item.count && item.weight) {
      const swap = [
        { path: `${id}.count`, value: item.weight.value },
        { path: `${id}.unitWeight`, value: item.count.value, unit: item.unit ?? 'lb' },
      ];
      const says = (count: number, value: number) =>
        message('choice_pieces_of', { n: count, weight: { weight: { value, unit: item.unit ?? 'lb' } } });
      push(
        `${id}.count`,
        'order',
        [
          { says: says(item.count.value, item.weight.value), corrections: [] },
          { says: says(item.weight.value, item.count.value), corrections: swap },
        ],
        at.from,
        at.to,
      );
    }
    if (item.fits && item.fits.value === '25mm' && item.fits.rule === 'loose-standard') {
      push(
        `${id}.fits`,
        'standard',
        [
          { says: message('choice_one_inch'), corrections: [] },
          { says: message('choice_two_inch'), corrections: [{ path: `${id}.fits`, value: '50mm' }] },
        ],
        item.fits.from,
        item.fits.to,
      );
    }
    if (item.count?.implied && isPlate(item.kind) && item.count.rule === 'set-of') {
      push(
        `${id}.count`,
        'set_count',
        [2, 4].map((count) => ({
          says: message('choice_pieces', { n: count }),
          corrections: count === 2 ? [] : [{ path: `${id}.count`, value: count }],
        })),
        at.from,
        at.to,
      );
    }
  }
  for (const rival of asked.rivals.slice(0, 2)) {
    const at = asked.price ?? rival;
    const says = (amount: number) => message('choice_money', { money: { money: money(amount, currency) } });
    push(
      'asking.amount',
      'two_prices',
      [
        { says: says(asked.amount ?? 0), corrections: [] },
        { says: says(rival.amount), corrections: [{ path: 'asking.amount', value: rival.amount }] },
      ],
      at.from,
      at.to,
    );
  }
  priceBasis(named, asked, currency, push);
  doubts.push(...setDoubts(scan, named, totals));
  return doubts;
}

/** Whether the bar is counted in the weight of a set, or comes with it at all. */
function setDoubts(scan: Scan, named: readonly Named[], totals: readonly Total[]): Doubt[] {
  const set = totals.find((total) => total.set);
  const plates = named.filter(({ item }) => item.implied && item.weight !== null);
  if (!set || plates.length === 0) return [];
  const evidence = [span(scan, set.from, set.to)];
  const weight = { value: set.weight, unit: set.unit ?? 'lb' };
  if (!named.some(({ item }) => item.kind === 'bar')) {
    const bar = [
      { path: 'added-1.kind', value: 'bar' },
      { path: 'added-1.unitWeight', value: 45, unit: 'lb' },
      { path: 'added-1.fits', value: '50mm' },
    ];
    const choices = [
      { says: message('choice_no_bar'), corrections: [] },
      { says: message('choice_bar_included'), corrections: bar },
    ];
    return [{ id: 'set_no_bar:items', about: 'items', why: message('doubt_set_no_bar'), choices, evidence }];
  }
  const onTop = [
    ...plates.map(({ id }) => ({ path: id, value: null })),
    { path: 'added-1.kind', value: 'plate' },
    { path: 'added-1.totalWeight', value: weight.value, unit: weight.unit },
    { path: 'added-1.fits', value: '50mm' },
  ];
  const choices = [
    { says: message('choice_bar_counted'), corrections: [] },
    { says: message('choice_bar_extra'), corrections: onTop },
  ];
  return [{ id: 'set_bar:statedTotal', about: 'statedTotal', why: message('doubt_set_bar'), choices, evidence }];
}

/** A lot price that makes a pound too cheap may be the price of each. */
function priceBasis(
  named: readonly Named[],
  asked: Asked,
  currency: string,
  push: (about: string, key: string, choices: readonly Choice[], from: number, to: number) => void,
): void {
  const plates = named.filter(({ item }) => isPlate(item.kind) && item.count && item.weight);
  const pounds = plates.reduce(
    (sum, { item }) => sum + (item.count?.value ?? 0) * inPounds({ value: item.weight?.value ?? 0, unit: item.unit ?? 'lb' }),
    0,
  );
  if (asked.basis !== 'lot' || asked.amount === null || !asked.price || plates.length !== named.length || pounds < 20) return;
  if (asked.amount / pounds >= SUSPICIOUS_PER_POUND) return;
  const price = { money: { money: money(asked.amount, currency) } };
  push(
    'asking.basis',
    'lot_or_each',
    [
      { says: message('choice_for_all', price), corrections: [] },
      { says: message('choice_for_each', price), corrections: [{ path: 'asking.basis', value: 'each' }] },
    ],
    asked.price.from,
    asked.price.to,
  );
}
