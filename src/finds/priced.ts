/** Kept finds as what the going rate is learned from. Times are milliseconds since 1970 and always passed in. */
import type { Settings } from '../listing/settings.ts';
import { rateFrom } from '../price/exchange.ts';
import type { PricedFind } from '../price/going-rate.ts';
import { daysKnown } from './history.ts';
import type { Find } from './record.ts';

/** A price with the find that it comes from. */
export interface PriceOfFind extends PricedFind {
  readonly find: Find;
}

/** What was paid, as a share of what was asked last: a sale says more than an ad. 1 where it isn't known. */
function paidShare({ status, paid, prices }: Find): number {
  const asked = prices.at(-1);
  const known = status === 'bought' && paid && asked && asked.currency === paid.currency && asked.minor > 0 && paid.minor > 0;
  return known ? paid.minor / asked.minor : 1;
}

/**
 * All prices that finds tell, in major units of the buyer's currency; one in another currency only where the buyer gave a rate of
 * exchange. Ages are whole days since the ad was last met, so that the same finds teach the same all day.
 */
export function pricedFinds(finds: readonly Find[], settings: Settings, now: number): PriceOfFind[] {
  return finds.flatMap((find) =>
    (find.summary.observed ?? []).flatMap(({ category, perUnit, currency }): PriceOfFind[] => {
      const rate = currency === settings.currency ? 1 : rateFrom(currency, settings);
      if (rate === null) return [];
      return [{ find, category, perUnit: perUnit * rate * paidShare(find), ageDays: daysKnown(find.metAt, now) }];
    }),
  );
}
