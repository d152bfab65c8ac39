/** "85 apiece, I have 4. One is torn so that one is 60": the piece with a price of its own is goods of its own. */
import type { Price } from '../mention.ts';
import { says } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';
import { type Draft, draft, firstToken } from './draft.ts';

/** Tokens between the piece and its price. */
const REACH = 24;

/** The word for one of them before a price, behind the price of each. */
function wordOfOne(scan: Scan, each: Price, price: Price): number | null {
  for (let i = Math.max(each.to + 2, price.from - REACH); i < price.from; i += 1)
    if (says(scan, i, 'one-of-them') && !'kunp'.includes(scan.plain[i + 1] ?? 'l')) return i;
  return null;
}

/** The drafts, with each piece that has another price than its like told apart. */
export function splitOnes(scan: Scan, drafts: readonly Draft[], prices: readonly Price[]): Draft[] {
  const told = [...drafts];
  for (const [index, price] of prices.entries()) {
    const each = prices[index - 1];
    if (each?.role !== 'each' || each.from < 0 || price.role === 'each' || !['asking', 'all'].includes(price.role)) continue;
    const at = price.amount < each.amount ? wordOfOne(scan, each, price) : null;
    if (at === null) continue;
    const goods = told.filter((item) => firstToken(item) < at && (item.count?.value ?? 0) > 1);
    const [item] = goods;
    if (!item?.count || goods.length > 1 || told.some((other) => firstToken(other) > each.to && firstToken(other) < price.to))
      continue;
    const place = { rule: 'one-of-them', from: at, to: at };
    const count = { value: 1, rule: 'one-of-them', from: at, to: at };
    price.role = 'asking';
    told.push(draft(item.kind, place, { count, weight: item.weight, unit: item.unit, label: 'one' }));
    item.count = { ...item.count, value: item.count.value - 1 };
  }
  return told.length === drafts.length ? told : told.sort((a, b) => firstToken(a) - firstToken(b));
}
