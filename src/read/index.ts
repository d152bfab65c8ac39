/** Text of an ad to its structured content: tokens, then recognisers, then refiners. This file is the table of contents. */
import { composeText } from '../listing/compose.ts';
import type { PageListing } from '../listing/page-listing.ts';
import type { Reading } from '../listing/reading.ts';
import { chooseLanguages } from './language/choose.ts';
import type { Price, Quantity } from './mention.ts';
import { readBarSizes } from './recognisers/bar-sizes.ts';
import { readBarWeights } from './recognisers/bar-weights.ts';
import { readBrackets } from './recognisers/brackets.ts';
import { readConditions } from './recognisers/conditions.ts';
import { readDashes } from './recognisers/dashes.ts';
import { dropDeclined } from './recognisers/declined.ts';
import { readEachOf } from './recognisers/each-of.ts';
import { readNouns } from './recognisers/goods-by-noun.ts';
import { readHeadedBars } from './recognisers/headed-bars.ts';
import { readLaterCounts } from './recognisers/later-counts.ts';
import { NONE_LEFT, readLeftNumbers, sumOf } from './recognisers/left-numbers.ts';
import { readLeftOver } from './recognisers/left-over.ts';
import { readLists } from './recognisers/lists.ts';
import { readLonePrices } from './recognisers/lone-prices.ts';
import { readMarked } from './recognisers/marked.ts';
import { readMeasures } from './recognisers/measures.ts';
import { claimNoise } from './recognisers/noise.ts';
import { readNounCounts } from './recognisers/noun-counts.ts';
import { claimOrdinals } from './recognisers/ordinals.ts';
import { readPairs } from './recognisers/pairs.ts';
import { readPieces } from './recognisers/pieces.ts';
import { readPlace } from './recognisers/place.ts';
import { readPrices } from './recognisers/prices.ts';
import { readSeries } from './recognisers/series.ts';
import { multiplySets, priceSets } from './recognisers/sets-of.ts';
import { readSideBySide } from './recognisers/side-by-side.ts';
import { readSingleWeights } from './recognisers/single-weights.ts';
import { readSlashes } from './recognisers/slashes.ts';
import { readBareSizes, readNamedSizes } from './recognisers/sleeve-sizes.ts';
import { sellPart } from './recognisers/sold-in-part.ts';
import { readTables } from './recognisers/tables.ts';
import { takeBack } from './recognisers/taken-back.ts';
import { readTerms } from './recognisers/terms.ts';
import { readTimes } from './recognisers/times.ts';
import { readToldBehind } from './recognisers/told-behind.ts';
import { readHeadedLists, readToldSingly } from './recognisers/told-singly.ts';
import { readSubtotals, readTotals } from './recognisers/totals.ts';
import { readWeighedLots } from './recognisers/weighed-lots.ts';
import { readWeightCounts } from './recognisers/weight-counts.ts';
import { amendedDoubts } from './refiners/amended-doubts.ts';
import { NOTHING } from './refiners/asked.ts';
import { settleAsking } from './refiners/asking.ts';
import { attachConditions, settleConditions } from './refiners/attach-conditions.ts';
import { attachMeasures } from './refiners/attach-facts.ts';
import { attachFitWords, fitByBar, settleFits, spreadFits } from './refiners/attach-fits.ts';
import { attachMaterials } from './refiners/attach-materials.ts';
import { applyTotals, draftsOfNouns, draftsOfQuantities, settleKinds } from './refiners/build-drafts.ts';
import { countByPrice } from './refiners/count-of-all.ts';
import { firstToken } from './refiners/draft.ts';
import { finishItem, nameDrafts } from './refiners/finish.ts';
import { finishAsking } from './refiners/finish-asking.ts';
import { guessedDoubts } from './refiners/guessed-doubts.ts';
import { implySet, withNamedSet, withSetPlates } from './refiners/implied-sets.ts';
import { settleLabels } from './refiners/labelled.ts';
import { leaveMixed, takeLoneTotals } from './refiners/lone-totals.ts';
import { markSold } from './refiners/mark-sold.ts';
import { dropMentioned } from './refiners/mentioned.ts';
import { mergeDrafts, spreadSold } from './refiners/merge-drafts.ts';
import { splitOnes } from './refiners/one-of-them.ts';
import { pageDoubts } from './refiners/page-doubts.ts';
import { pagePrices, scanPagePrice, settleCurrency } from './refiners/page-prices.ts';
import { perhapsPriced, unexplained } from './refiners/price-doubts.ts';
import { raiseDoubts } from './refiners/raise-doubts.ts';
import { recallByWeight, recallGoods } from './refiners/recall.ts';
import { renewPrices } from './refiners/renewed-prices.ts';
import { settleBareBars } from './refiners/same-bar.ts';
import { settleOrder } from './refiners/settle-order.ts';
import { settleUnits } from './refiners/settle-units.ts';
import { takeSummed } from './refiners/summed-totals.ts';
import { tellApart } from './refiners/told-apart.ts';
import { isOfTrade } from './refiners/trade.ts';
import { isWanted } from './refiners/wanted.ts';
import { finishTotal } from './refiners/whole-lot.ts';
import { lengthOfAd } from './text/boilerplate.ts';
import { type Scan, scanText } from './text/scan.ts';

/** Recognisers of quantities in the order in which they claim tokens: the more telling notation first. */
const QUANTITIES: readonly ((scan: Scan) => Quantity[])[] = [
  readHeadedBars,
  readSeries,
  readHeadedLists,
  readTimes,
  readEachOf,
  readBrackets,
  readPairs,
  readToldBehind,
  readDashes,
  readPieces,
  readMarked,
  readWeightCounts,
  readSlashes,
  readSideBySide,
  readLists,
  readBarWeights,
  readSingleWeights,
];

/**
 * How much is read. Nobody writes a longer ad or names more goods in one; a whole site pasted in is read up to here, a doubt says so,
 * and the time stays in proportion to the text.
 */
const LONGEST_AD = 100_000;
const MOST_MENTIONS = 500;
const most = <T>(list: readonly T[]): T[] => list.slice(0, MOST_MENTIONS);

/** Reads a listing, in the language that it seems to be in or that `readAs` names. Never throws; linear in the length of the text. Spans index `reading.text`. */
export function read(listing: PageListing, readAs: Reading['language'] | null = null): Reading {
  const { text, shift } = composeText(listing);
  const { first: language, second } = chooseLanguages(listing.language, text, readAs);
  const scan = scanText(text.slice(0, Math.min(LONGEST_AD, lengthOfAd(text))), language, second);
  const struck = listing.struck.map(({ start, end }) => ({ start: start + shift, end: end + shift }));

  claimNoise(scan);
  claimOrdinals(scan);
  const sizes = [...readBarSizes(scan), ...readNamedSizes(scan), ...readMeasures(scan)];
  const facts = most([...sizes, ...readBareSizes(scan, sizes)]);
  const table = readTables(scan);
  const written = [...table.prices, ...readPrices(scan)]
    .sort((a, b) => a.from - b.from)
    .map((price) => strike(scan, price, struck));
  const totals = [...readWeighedLots(scan), ...readTotals(scan)];
  readNounCounts(scan);
  const noted = [...table.quantities, ...QUANTITIES.flatMap((recognise) => recognise(scan))].sort((a, b) => a.from - b.from);
  const counted = settleOrder(readLaterCounts(scan, readToldSingly(scan, most(noted))));
  const quantities = multiplySets(scan, takeBack(scan, sellPart(scan, readLeftOver(scan, dropDeclined(scan, counted)))));
  totals.push(...readSubtotals(scan, quantities));
  const asks = written.some(({ role }) => !['former', 'saving', 'delivery', 'deposit', 'other'].includes(role));
  const shown = scanPagePrice(listing, language);
  const lone = asks ? [] : readLonePrices(scan).filter(({ amount }) => amount !== sumOf(quantities));
  const left = asks || lone.length > 0 ? NONE_LEFT : readLeftNumbers(scan, quantities, totals);
  if (left.spent) totals.splice(totals.indexOf(left.spent), 1);
  const prices = most(priceSets(scan, pagePrices(listing, [...written, ...lone, ...left.clear], shown)));
  const currency = settleCurrency(scan, listing, prices);

  const weighed = draftsOfQuantities(scan, quantities);
  const told = withSetPlates([...weighed, ...draftsOfNouns(scan, most(readNouns(scan)))], totals);
  told.sort((a, b) => firstToken(a) - firstToken(b));
  const named = dropMentioned(scan, tellApart(scan, settleLabels(scan, told)));
  const drafts = leaveMixed(scan, splitOnes(scan, named, prices), totals);
  recallByWeight(scan, drafts);
  settleUnits(
    scan,
    drafts,
    currency,
    language.code,
    prices.some(({ role }) => role === 'per-kilogram'),
    totals,
  );
  if (totals.length === 0) totals.push(...takeSummed(scan, drafts));
  totals.push(...takeLoneTotals(scan, drafts));
  settleKinds(drafts);
  settleBareBars(scan, drafts);
  applyTotals(drafts, totals);
  attachMeasures(scan, drafts, facts);
  attachFitWords(scan, drafts);
  attachMaterials(scan, drafts);
  attachConditions(scan, drafts, most(readConditions(scan)));
  settleFits(drafts);
  spreadFits(drafts);
  fitByBar(scan, drafts);
  markSold(scan, drafts, struck);
  spreadSold(scan, drafts);
  recallGoods(scan, drafts);
  renewPrices(scan, prices, drafts);
  countByPrice(scan, prices, drafts);
  const asked = settleAsking(scan, prices, drafts, totals);
  const merged = withNamedSet(scan, implySet(mergeDrafts(scan, drafts), totals), totals);
  settleConditions(merged);

  const wanted = isWanted(scan, asked.amount !== null, asked.price);
  const aboutThisTrade = isOfTrade(scan, quantities, totals, wanted);
  const live = wanted || !aboutThisTrade ? [] : merged.filter((item) => !item.sold);
  const sold = merged.filter((item) => item.sold);
  const called = nameDrafts(live);
  const money = currency ?? language.currency;
  return {
    text,
    language: language.code,
    asking: finishAsking(scan, wanted ? NOTHING : asked, prices, currency, new Set(live.map(({ kind }) => kind)).size > 1, shown),
    items: called.map(({ id, item }) => finishItem(scan, id, item, money)),
    sold: nameDrafts(sold).map(({ id, item }) => finishItem(scan, id, item, money)),
    statedTotal: aboutThisTrade ? finishTotal(scan, totals, live, sold) : null,
    place: readPlace(text),
    distance: null,
    aboutThisTrade,
    wanted,
    terms: readTerms(scan.text),
    doubts: aboutThisTrade
      ? [
          ...raiseDoubts(scan, called, asked, totals, money),
          ...guessedDoubts(scan, called),
          ...amendedDoubts(scan, called, sold, asked, money),
          ...(wanted
            ? []
            : [...perhapsPriced(scan, asked, left.likely, money), ...unexplained({ scan, asked, currency: money })]),
          ...pageDoubts(listing, text.length, LONGEST_AD),
        ]
      : [],
  };
}

/** A price that the page strikes through is a former one. */
function strike(scan: Scan, price: Price, struck: readonly { start: number; end: number }[]): Price {
  const start = scan.tokens[price.from]?.start ?? 0;
  const end = scan.tokens[price.to]?.end ?? 0;
  return struck.some((span) => start >= span.start && end <= span.end) ? { ...price, role: 'former' } : price;
}
