/** Keeping the ad, and what was kept of it before: the price then and now, and how long it has been for sale. */
import { askingOf, knownFor } from '../../src/finds/history.ts';
import type { Evaluation } from '../../src/listing/evaluation.ts';
import type { PageListing } from '../../src/listing/page-listing.ts';
import { fetchedLater } from '../components/fetched-later.tsx';
import { useWords, type Words } from '../components/speech.ts';
import type { MetAgain } from '../store/index.ts';
import { useEdits } from './edits.ts';
import type { KeepHost } from './keep-host.ts';
import { priceThen } from './price-then.ts';
import { useKeep } from './use-keep.ts';

const PostedLine = fetchedLater(async () => (await import('./posted-line.tsx')).PostedLine);

export interface KeepProps {
  readonly host: KeepHost;
  readonly listing: PageListing;
  readonly evaluation: Evaluation;
}

export function Keep({ host, listing, evaluation }: KeepProps) {
  const words = useWords();
  const { say, t } = words;
  const { session } = useEdits();
  const { kept, met, failed, keep, take } = useKeep(host, listing, session, evaluation);
  const known = met.some(({ how }) => how !== 'maybe');
  return (
    <div class="keep" data-kept={kept?.id}>
      {met.map((one) => (
        <div key={one.find.id} class="met" data-met={one.how}>
          <p>
            {t(`keep_met_${one.how}`, { title: one.find.title || t('keep_untitled') })}{' '}
            {history(words, one, evaluation, host.now())}
          </p>
          <button type="button" data-take onClick={() => take(one.find)}>
            {t('keep_take')}
            <span class="unseen">: {one.find.title || t('keep_untitled')}</span>
          </button>{' '}
          <button type="button" class="bare" onClick={() => host.openWorkshop(`finds/${one.find.id}`)}>
            {t('keep_open')}
            <span class="unseen">: {one.find.title || t('keep_untitled')}</span>
          </button>
        </div>
      ))}
      {kept ? (
        <p role="status">
          {t('keep_kept')}{' '}
          <button type="button" class="bare" data-open-find onClick={() => host.openWorkshop(`finds/${kept.id}`)}>
            {t('keep_open')}
          </button>
        </p>
      ) : (
        <button type="button" class={known ? undefined : 'strong'} data-keep onClick={keep}>
          {t(met.length > 0 ? 'keep_as_new' : 'keep')}
        </button>
      )}{' '}
      <button type="button" class="bare" data-open-finds onClick={() => host.openWorkshop('finds')}>
        {t('keep_all')}
      </button>
      {failed && <p role="alert">{say(failed)}</p>}
      <PostedLine listing={listing} seenAt={host.now()} now={host.now()} currency={evaluation.worth.currency} />
    </div>
  );
}

/** "Asked $150 then, $120 now: 20 % less. Known for 12 days. Status: asked." */
function history(words: Words, { find }: MetAgain, { reading }: Evaluation, now: number): string {
  const { t, say } = words;
  const price = priceThen(words, find, askingOf(reading));
  const parts = price === null ? [] : [price];
  parts.push(say(knownFor(find.keptAt, now)), t(`keep_status_${find.status}`));
  if (find.notes !== '') parts.push(t('keep_notes', { notes: find.notes.slice(0, 200) }));
  return parts.join(' ');
}
