/** Doubts about money that the reading could not account for: a number that may be the price where none is asked, a sum that none of the goods has. */
import type { Choice, Doubt } from '../../listing/reading.ts';
import { money } from '../../units/money.ts';
import { message } from '../../words/message.ts';
import type { Price } from '../mention.ts';
import { type Scan, span } from '../text/scan.ts';
import type { Asked } from './asked.ts';

const MOST_CHOICES = 3;

const costs = (amount: number, currency: string, path = 'asking.amount'): Choice => ({
  says: message('choice_money', { money: { money: money(amount, currency) } }),
  corrections: [{ path, value: amount }],
});

/** "… 160, thanks": numbers that may be the price, where none is told. */
export function perhapsPriced(scan: Scan, asked: Asked, likely: readonly Price[], currency: string): Doubt[] {
  const [first] = likely;
  const assumed = asked.price?.rule === 'number-perhaps';
  if (!first || (!assumed && (asked.amount !== null || asked.basis !== 'none' || asked.placeholder))) return [];
  const amounts = [...new Set(likely.map(({ amount }) => amount))].slice(0, MOST_CHOICES);
  const none = { says: message('choice_no_price'), corrections: assumed ? [{ path: 'asking.amount', value: null }] : [] };
  const told = amounts.map((amount) => (assumed ? { ...costs(amount, currency), corrections: [] } : costs(amount, currency)));
  return [
    {
      id: 'perhaps_price:asking.amount',
      about: 'asking.amount',
      why: message('doubt_perhaps_price'),
      choices: assumed ? [...told, none] : [none, ...told],
      evidence: [span(scan, first.from, first.to)],
    },
  ];
}

/** "$1 a pound" for some of the goods and "$80" for nobody knows what: the price that was read, that money, and both together. */
export function unexplained({ scan, asked, currency }: { scan: Scan; asked: Asked; currency: string }): Doubt[] {
  const [first] = asked.loose ?? [];
  if (!first || asked.amount === null) return [];
  const whole = first.role === 'asking' || first.role === 'all';
  const both = whole ? [asked.amount + first.amount] : [];
  const others = [...new Set([first.amount, ...both])].filter((amount) => amount !== asked.amount);
  const path = whole || asked.unitAmount === null ? 'asking.amount' : 'asking.unitAmount';
  return [
    {
      id: 'unexplained_money:asking.amount',
      about: 'asking.amount',
      why: message('doubt_unexplained_money'),
      choices: [
        { says: message('choice_money', { money: { money: money(asked.amount, currency) } }), corrections: [] },
        ...others.map((amount) => costs(Math.round(amount * 100) / 100, currency, path)),
      ],
      evidence: [span(scan, first.from, first.to)],
    },
  ];
}
