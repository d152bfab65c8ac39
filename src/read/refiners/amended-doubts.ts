/** Doubts about ads that were changed after they were written: a corrected count that may be another's, goods that somebody has spoken for, a price from before something was sold. */
import type { Doubt } from '../../listing/reading.ts';
import { money } from '../../units/money.ts';
import { message } from '../../words/message.ts';
import type { Place } from '../mention.ts';
import { readUpdates, updateAt } from '../recognisers/updates.ts';
import { type Scan, span } from '../text/scan.ts';
import type { Asked } from './asked.ts';
import type { Draft } from './draft.ts';

interface Named {
  readonly id: string;
  readonly item: Draft;
}

export function amendedDoubts(
  scan: Scan,
  named: readonly Named[],
  sold: readonly Draft[],
  asked: Asked,
  currency: string,
): Doubt[] {
  const doubts: Doubt[] = [];
  for (const { id, item } of named) {
    if (item.pending) doubts.push(pendingDoubt(scan, id, item.pending));
    const { count, was } = item;
    if (!count || was === undefined || was === count.value) continue;
    const about = `${id}.count`;
    const choices = [count.value, was].map((pieces, at) => ({
      says: message('choice_pieces', { n: pieces }),
      corrections: at === 0 ? [] : [{ path: about, value: pieces }],
    }));
    const evidence = [span(scan, count.from, count.to)];
    doubts.push({ id: `counted_again:${about}`, about, why: message('doubt_counted_again'), choices, evidence });
  }
  const { price, amount } = asked;
  if (amount !== null && price && price.from >= 0 && !asked.worked && isBeforeSale(scan, sold, price)) {
    const choices = [
      { says: message('choice_money', { money: { money: money(amount, currency) } }), corrections: [] },
      { says: message('choice_price_open'), corrections: [{ path: 'asking.amount', value: null }] },
    ];
    const evidence = [span(scan, price.from, price.to)];
    doubts.push({ id: 'sold_since:asking.amount', about: 'asking.amount', why: message('doubt_sold_since'), choices, evidence });
  }
  return doubts;
}

/** Somebody has spoken for the goods and not fetched them. */
function pendingDoubt(scan: Scan, id: string, { from, to }: Place): Doubt {
  const choices = [
    { says: message('choice_still_there'), corrections: [] },
    { says: message('choice_gone'), corrections: [{ path: id, value: null }] },
  ];
  return { id: `pending:${id}`, about: id, why: message('doubt_pending'), choices, evidence: [span(scan, from, to)] };
}

/** Goods told before the price and said to be sold behind it; a price that is itself an update knows of it. */
function isBeforeSale(scan: Scan, sold: readonly Draft[], price: { from: number; to: number }): boolean {
  if (updateAt(readUpdates(scan), price.from)) return false;
  return sold.some(({ places }) => {
    const told = places.some(({ to }) => to < price.from);
    return told && places.some(({ from }) => from > price.to && isSoldClause(scan, from));
  });
}

function isSoldClause(scan: Scan, at: number): boolean {
  const clause = scan.clause[at];
  for (let i = at; scan.clause[i] === clause; i += 1) if (scan.letters[i] === 'Y') return true;
  for (let i = at; scan.clause[i] === clause; i -= 1) if (scan.letters[i] === 'Y') return true;
  return false;
}
