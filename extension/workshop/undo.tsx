/** What was done last, and the way back. */
import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { useWords } from '../components/speech.ts';

export interface Undo {
  readonly removed: (name: string, back: () => void) => void;
  /** In words of its own. The focus stays where it is unless `focus`. */
  readonly done: (words: string, back: () => void, focus?: boolean) => void;
  readonly forget: () => void;
  readonly line: ComponentChildren;
}

export function useUndo(): Undo {
  const { t } = useWords();
  const [last, setLast] = useState<{ readonly words: string; readonly back: () => void; readonly focus: boolean } | null>(null);
  const button = useRef<HTMLButtonElement>(null);
  // The button that was pressed is gone with its line: the focus goes where the next step is.
  useEffect(() => {
    if (last?.focus) button.current?.focus();
  }, [last]);
  return {
    removed: (name, back) => setLast({ words: t('kit_removed', { name }), back, focus: true }),
    done: (words, back, focus = false) => setLast({ words, back, focus }),
    forget: () => setLast(null),
    line: (
      <p role="status" class={last ? 'kit-removed' : undefined}>
        {last && (
          <>
            {last.words}{' '}
            <button
              type="button"
              ref={button}
              data-undo
              onClick={() => {
                last.back();
                setLast(null);
              }}
            >
              {t('kit_undo')}
            </button>
          </>
        )}
      </p>
    ),
  };
}
