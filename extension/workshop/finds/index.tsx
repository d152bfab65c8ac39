/** Finds: the list of all kept ads, one of them when the address names it, or what was removed. */
import { useState } from 'preact/hooks';
import type { ScreenProps } from '../screens.ts';
import { WithStore } from '../use-store.tsx';
import { FindList } from './list.tsx';
import { OneFind } from './one.tsx';
import { ALL_FINDS, type Wanted } from './query.ts';
import { RemovedList } from './removed.tsx';

export default function Finds({ host, rest, only }: ScreenProps) {
  // Kept here, so that coming back from one find leads to the list as it was left.
  const [wanted, setWanted] = useState<Wanted>(ALL_FINDS);
  return (
    <WithStore host={host}>
      {rest === '' && <FindList host={host} wanted={wanted} onWanted={setWanted} />}
      {rest === 'removed' && <RemovedList />}
      {rest !== '' && rest !== 'removed' && <OneFind key={rest} host={host} id={rest} only={only} />}
    </WithStore>
  );
}
