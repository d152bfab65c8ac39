/** What was said about an ad before: since the browser was started, or else with the find that it is. */
import type { PageListing } from '../../src/listing/page-listing.ts';
import { loadEdits } from '../platform/index.ts';
import { adKey } from './ad-key.ts';
import type { StoredEdits } from './stored-edits.ts';

/** As stored and unchecked; null for nothing. `ad` is the listing's key. */
export async function editsFor(ad: string, listing: PageListing): Promise<unknown> {
  return (await loadEdits(ad)) ?? withFind(ad, listing);
}

/** A find of the same words alone: corrections name lines of an ad, and other words may have other lines. */
async function withFind(ad: string, listing: PageListing): Promise<StoredEdits | null> {
  const opened = await (await import('../store/page-store.ts')).pageStore();
  if (!opened.ok) return null;
  const { finds } = opened.value;
  const again = await finds.again(listing);
  const known = again.ok ? again.value.filter(({ how }) => how !== 'maybe') : [];
  for (const { find } of known.slice(0, 3)) {
    const kept = await finds.get(find.id);
    if (kept.ok && adKey(kept.value.listing) === ad) return isSaid(kept.value.edits) ? kept.value.edits : null;
  }
  return null;
}

const isSaid = ({ changes, distance, sellerAt }: StoredEdits): boolean =>
  changes.length > 0 || distance !== null || sellerAt !== undefined;
