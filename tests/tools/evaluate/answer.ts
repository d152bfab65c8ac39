import * as z from 'zod/mini';
import { toContract } from '../../../src/contract.ts';
import { evaluate } from '../../../src/evaluate.ts';
import { type Contract, contractSchema } from '../../../src/listing/contract.ts';
import type { PageListing } from '../../../src/listing/page-listing.ts';
import type { Settings } from '../../../src/listing/settings.ts';
import type { Speaker } from '../../../src/words/say.ts';

/** The contract for one ad, checked by its own schema before anybody sees it. */
export function answer(listing: PageListing, settings: Settings, say: Speaker): Contract {
  return z.parse(contractSchema, toContract(evaluate(listing, settings), say, settings.unit));
}
