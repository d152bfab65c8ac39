import type { ComponentType, FunctionComponent } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** A component that is fetched when it is first shown, with nothing in its place until then: what is not needed at once keeps nobody waiting. */
export function fetchedLater<Props extends object>(load: () => Promise<ComponentType<Props>>): FunctionComponent<Props> {
  // Kept, so that whoever comes back sees it at once.
  let fetched: { readonly Part: ComponentType<Props> } | null = null;
  return (props) => {
    const [loaded, setLoaded] = useState(fetched);
    useEffect(() => {
      if (loaded) return;
      let here = true;
      load().then(
        (Part) => {
          fetched = { Part };
          if (here) setLoaded(fetched);
        },
        (error: unknown) => console.error('Ironsift:', error),
      );
      return () => {
        here = false;
      };
    }, []);
    return loaded && <loaded.Part {...props} />;
  };
}
