/** Keeping many ads at once: what one of them fails by says whether the next can fare better. */
import type { AdToKeep, StoreCode } from '../../store/index.ts';
import type { KeepHost } from '../keep-host.ts';
import type { KeptMany } from './sweep-host.ts';

/** What is wrong with one ad alone. Any other failure is the store's, and all that come behind would meet it too. */
const OF_ONE: ReadonlySet<StoreCode> = new Set(['bad-input', 'unreadable', 'not-found', 'unexpected']);

/** Keeps each that is not null; those known already as they are now. What is null could not be judged, and is left. */
export async function keepMany(host: KeepHost, ads: readonly (AdToKeep | null)[]): Promise<KeptMany> {
  const left: number[] = [];
  let code: StoreCode | null = null;
  for (const [index, ad] of ads.entries()) {
    const failed: StoreCode | null = code !== null && !OF_ONE.has(code) ? code : await keepOne(host, ad);
    if (failed === null) continue;
    left.push(index);
    code = failed;
  }
  return { kept: ads.length - left.length, left, code };
}

async function keepOne(host: KeepHost, ad: AdToKeep | null): Promise<StoreCode | null> {
  if (ad === null) return 'bad-input';
  const again = await host.again(ad.listing);
  if (!again.ok) return again.code;
  const known = again.value.find(({ how }) => how !== 'maybe');
  const outcome = known ? await host.refresh(known.find.id, ad, true) : await host.keep(ad);
  return outcome.ok ? null : outcome.code;
}
