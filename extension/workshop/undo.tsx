/** What was taken off, and the way back. */
import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { useWords } from '../../components/speech.ts';

export interface Undo {
  readonly removed: (name: string, back: () => void) => void;
  readonly line: ComponentChildren;
}

export function useUndo(): Undo {
  const { t } = useWords();
  const [last, setLast] = useState<{ readonly name: string; readonly back: () => void } | null>(null);
  const button = useRef<HTMLButtonElement>(null);
  // The button that was pressed is gone with its line: the focus goes where the next step is.
  useEffect(() => {
    if (last) button.current?.focus();
  }, [last]);
  return {
    removed: (name, back) => setLast({ name, back }),
    line: (
      <p role="status" class={last ? 'kit-removed' : undefined}>
        {last && (
          <>
            {t('kit_removed', { name: last.name })}{' '}
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
