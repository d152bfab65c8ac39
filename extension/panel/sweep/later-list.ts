/** The list of a sweep, fetched when a page is first swept: most ads are judged one by one, and their panel opens the sooner. */
import { fetchedLater } from '../../components/fetched-later.tsx';

export const LaterSweepList = fetchedLater(async () => (await import('./sweep-list.tsx')).SweepList);
