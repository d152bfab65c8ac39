/** The buy list by trying every set of offers and, per need, every way to use its pieces: slow, and without a thought that could be wrong. */
import type { Market } from '../../../src/kit/buy-list/index.ts';

const CAP = 0.9;

interface Tried {
  readonly cost: number;
  readonly spent: number;
  readonly chosen: readonly string[];
}

/** Least cost of `open` pieces of one need, trying every split over the sources. */
function leastUse(sources: readonly { readonly pieces: number; readonly use: number }[], open: number): number {
  const [first, ...others] = sources;
  if (first === undefined) return open === 0 ? 0 : Number.POSITIVE_INFINITY;
  let best = Number.POSITIVE_INFINITY;
  for (let taken = 0; taken <= Math.min(open, first.pieces); taken += 1) {
    best = Math.min(best, taken * first.use + leastUse(others, open - taken));
  }
  return best;
}

/** All sets that make a kit, within the budget or not. Written anew from the definition; shares no line with the source. */
export function everyList(market: Market): Tried[] {
  const open = market.offers.filter(({ barred }) => barred === null);
  const lists: Tried[] = [];
  for (let mask = 0; mask < 2 ** open.length; mask += 1) {
    const set = open.filter((_, index) => (mask >> index) % 2 === 1);
    const chosen = set.map(({ id }) => id);
    if (set.some(({ excludes }) => excludes.some((id) => chosen.includes(id)))) continue;
    const places = market.places.filter(({ id }) => set.some(({ place }) => place === id));
    let cost = places.reduce((sum, { trip }) => sum + trip, 0);
    let spent = places.reduce((sum, { cash }) => sum + cash, 0);
    const sources = new Map<string, { pieces: number; use: number }[]>(market.needs.map(({ id }) => [id, []]));
    for (const offer of set) {
      const parts = offer.fills.map(({ need, pieces }) => {
        const wanted = market.needs.find(({ id }) => id === need);
        if (wanted === undefined) throw new Error('no such need');
        return { wanted, pieces, resale: wanted.fresh === null ? wanted.resale : Math.min(wanted.resale, wanted.fresh) };
      });
      const all = parts.reduce((sum, { pieces, resale }) => sum + pieces * resale, 0) + offer.otherResale;
      const share = all > CAP * offer.price ? (CAP * offer.price) / all : 1;
      let back = Math.floor(offer.otherResale * share);
      for (const { wanted, pieces, resale } of parts) {
        const counted = Math.floor(resale * share);
        back += pieces * counted;
        const use = Math.round((1 - offer.refusal) * counted + offer.refusal * (wanted.fresh ?? counted));
        sources.get(wanted.id)?.push({ pieces, use });
      }
      cost += Math.max(0, Math.round((1 - offer.refusal) * (offer.price - back)));
      spent += offer.price;
    }
    for (const { id, pieces, fresh } of market.needs) {
      const ways = sources.get(id) ?? [];
      const offered = ways.reduce((sum, way) => sum + way.pieces, 0);
      // New only what the offers lack: a piece that is there and paid for is never dearer than a new one.
      const missing = Math.max(0, pieces - offered);
      cost += missing === 0 ? 0 : missing * (fresh ?? Number.POSITIVE_INFINITY);
      spent += missing * (fresh ?? 0);
      cost += leastUse(ways, pieces - missing);
    }
    if (Number.isFinite(cost)) lists.push({ cost, spent, chosen });
  }
  return lists;
}
