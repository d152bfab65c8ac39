/** Since when the ad stands by its own words, which are quoted: it is its claim, and nobody checked it. */
import { useMemo } from 'preact/hooks';
import { daysBetween, postedOf } from '../../src/finds/posted.ts';
import type { PageListing } from '../../src/listing/page-listing.ts';
import { useWords } from '../components/speech.ts';
import { today } from '../components/today.ts';

export interface PostedLineProps {
  readonly listing: Pick<PageListing, 'title' | 'text'>;
  /** When the ad was read, from where "ago" counts, and now; milliseconds since 1970. */
  readonly seenAt: number;
  readonly now: number;
  /** The buyer's, which says in which order the ad's country writes day and month. */
  readonly currency: string;
}

export function PostedLine({ listing: { title, text }, seenAt, now, currency }: PostedLineProps) {
  const { say, t } = useWords();
  const seen = today(new Date(seenAt));
  const posted = useMemo(
    () => postedOf(`${title}\n${text}`, { day: seen, monthFirst: currency === 'USD' }),
    [title, text, seen, currency],
  );
  if (posted === null) return null;
  const n = daysBetween(posted.day, today(new Date(now)));
  // Of today: it has stood for no time yet.
  if (n === 0) return null;
  return (
    <p class="quiet" data-posted={posted.day}>
      {t(posted.rough > 0 ? 'posted_about' : 'posted_days', {
        n,
        words: posted.words,
        day: say.day(Date.parse(`${posted.day}T12:00`)),
      })}
    </p>
  );
}
