/** How the price moved, and how long the ad has been known. */
import { knownFor } from '../../../src/finds/history.ts';
import type { PageListing } from '../../../src/listing/page-listing.ts';
import { useWords } from '../../components/speech.ts';
import { PostedLine } from '../../panel/posted-line.tsx';
import type { Find } from '../../store/index.ts';

export interface HistoryProps {
  readonly find: Find;
  readonly listing: PageListing;
  readonly currency: string;
  /** Milliseconds since 1970. */
  readonly now: number;
}

export function History({ find, listing, currency, now }: HistoryProps) {
  const { t, say } = useWords();
  return (
    <div class="history">
      <h3>{t('finds_history')}</h3>
      <p>{say(knownFor(find.keptAt, now))}</p>
      <PostedLine listing={listing} seenAt={find.metAt} now={now} currency={currency} />
      {find.prices.length > 0 && (
        <ol class="plain-list">
          {find.prices.map(({ at, minor, currency }) => (
            <li key={at}>{t('finds_price_on', { day: say.day(at), price: say.money({ minor, currency }) })}</li>
          ))}
        </ol>
      )}
    </div>
  );
}
