/** The ticked ads as they are kept: each with its answer, and with what the buyer has said about it. */
import type { Evaluation } from '../../../src/listing/evaluation.ts';
import type { PageListing } from '../../../src/listing/page-listing.ts';
import type { Settings } from '../../../src/listing/settings.ts';
import { adKey } from '../ad-key.ts';
import type { Judge } from '../panel.tsx';
import { corrections, forAd, startSession } from '../session.ts';
import { packEdits, type StoredEdits, unpackEdits } from '../stored-edits.ts';

export interface AdToKeep {
  readonly listing: PageListing;
  readonly edits: StoredEdits;
  readonly evaluation: Evaluation;
}

/** Judges them one after the other, and lets the panel answer in between. Null in the place of one that can't be judged. */
export async function toKeep(
  listings: readonly PageListing[],
  loadEdits: (ad: string, listing: PageListing) => Promise<unknown>,
  judge: Judge,
  settings: Settings,
): Promise<(AdToKeep | null)[]> {
  const ads: (AdToKeep | null)[] = [];
  for (const listing of listings) {
    try {
      const key = adKey(listing);
      const stored = await loadEdits(key, listing);
      const fresh = startSession(key, listing);
      const doubts = stored === null ? [] : judge(listing, { ...settings, distance: null }, []).reading.doubts;
      const session = stored === null ? fresh : unpackEdits(fresh, stored, doubts);
      const evaluation = judge(listing, forAd(settings, session), corrections(session));
      ads.push({ listing, edits: packEdits(session), evaluation });
    } catch (error) {
      console.error('Ironsift:', error);
      ads.push(null);
    }
    await new Promise((resolve) => setTimeout(resolve, 0));
  }
  return ads;
}
