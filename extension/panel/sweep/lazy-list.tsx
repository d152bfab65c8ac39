/** The list of a sweep, fetched when a page is first swept: most ads are judged one by one, and their panel opens the sooner. */
import { useEffect, useState } from 'preact/hooks';
import type { SweepList, SweepListProps } from './sweep-list.tsx';

/** Kept, so that whoever comes back to the list sees it at once. */
let fetched: { readonly List: typeof SweepList } | null = null;

export function LazySweepList(props: SweepListProps) {
  const [loaded, setLoaded] = useState(fetched);
  useEffect(() => {
    if (loaded) return;
    let here = true;
    import('./sweep-list.tsx').then(
      (module) => {
        fetched = { List: module.SweepList };
        if (here) setLoaded(fetched);
      },
      (error: unknown) => console.error('Ironsift:', error),
    );
    return () => {
      here = false;
    };
  }, []);
  return loaded && <loaded.List {...props} />;
}
