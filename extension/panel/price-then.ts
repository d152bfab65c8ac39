/** What a kept ad cost when it was kept, beside what is asked now. */

import { priceChange } from '../../src/finds/history.ts';
import type { Find } from '../../src/finds/record.ts';
import type { Money } from '../../src/units/money.ts';
import type { Words } from '../components/speech.ts';

/** "Asked $150 then, $120 now: 20% less."; null where it had no price. */
export function priceThen({ t }: Words, { prices }: Pick<Find, 'prices'>, now: Money | null): string | null {
  const last = prices.at(-1);
  if (!last) return null;
  if (now === null) return t('keep_price_then', { from: { money: last } });
  const change = priceChange(prices, now);
  if (!change) return t('keep_price_same');
  const said = { from: { money: change.from }, to: { money: change.to } };
  if (change.fraction === null) return t('keep_price_other', said);
  const key = change.fraction < 0 ? 'keep_price_less' : 'keep_price_more';
  return t(key, { ...said, by: { percent: 100 * Math.abs(change.fraction) } });
}
