/** Amounts of money in every way that people write them; what part each plays is told by settle-prices.ts. */
import type { Price } from '../mention.ts';
import type { Scan } from '../text/scan.ts';
import { endPrices, goodsPrices, loweredPrices, stockPrices, unitPrices } from './bare-prices.ts';
import { putNumber } from './found-price.ts';
import { inlinePrices } from './inline-prices.ts';
import { amountsForAll, listEnds, rowEnds } from './list-ends.ts';
import { listedPrices } from './listed-prices.ts';
import { settlePrices } from './settle-prices.ts';
import { readSignedPrices } from './signed-prices.ts';
import { readToldPrices } from './told-prices.ts';
import { readUnitRates } from './unit-rates.ts';
import { readPriceOfAll, readWordedPrices } from './worded-prices.ts';

/** The surest first: signs of money, words of asking, then numbers that can only be prices by their place. */
export function readPrices(scan: Scan): Price[] {
  const found: Price[] = [];
  readSignedPrices(scan, found);
  readToldPrices(scan, found);
  readUnitRates(scan, found);
  readWordedPrices(scan, found);
  for (const [former, now] of loweredPrices(scan)) {
    putNumber(scan, found, 'price-told', former);
    putNumber(scan, found, 'price-now', now);
  }
  for (const at of unitPrices(scan)) putNumber(scan, found, 'price-per-piece', at);
  for (const at of stockPrices(scan, found)) putNumber(scan, found, 'price-per-piece', at);
  const lots = amountsForAll(scan, found);
  for (const at of new Set([...inlinePrices(scan), ...listedPrices(scan, lots), ...listEnds(scan, lots), ...rowEnds(scan, lots)]))
    putNumber(scan, found, 'price-at-line-end', at);
  for (const at of goodsPrices(scan, found)) putNumber(scan, found, 'price-of-goods', at);
  readPriceOfAll(scan, found);
  if (found.length === 0) for (const at of endPrices(scan)) putNumber(scan, found, 'lone-number', at, false);
  settlePrices(scan, found);
  return found;
}
