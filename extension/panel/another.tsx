/** Always at the bottom: pick the next ad on the page, or paste one. */
import { useId, useState } from 'preact/hooks';
import { useWords } from '../components/speech.ts';

export interface AnotherProps {
  /** Heading of the part: the first ad, or another one. */
  readonly heading: string;
  /** False where the page can't be read: only the paste box is left. */
  readonly canPick: boolean;
  readonly onPick: () => Promise<boolean>;
  /** Reads every ad of the page. */
  readonly onSweep: () => Promise<boolean>;
  readonly onPaste: (text: string) => Promise<boolean>;
}

type Trouble = 'panel_pick_unreachable' | 'sweep_unreachable' | 'panel_paste_empty' | 'panel_paste_full';

export function Another({ heading, canPick, onPick, onSweep, onPaste }: AnotherProps) {
  const { t } = useWords();
  const id = useId();
  const [text, setText] = useState('');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const pick = async () => setTrouble((await onPick()) ? null : 'panel_pick_unreachable');
  const sweep = async () => setTrouble((await onSweep()) ? null : 'sweep_unreachable');
  const judge = async () => {
    if (text.trim() === '') return setTrouble('panel_paste_empty');
    const taken = await onPaste(text);
    setTrouble(taken ? null : 'panel_paste_full');
    if (taken) setText('');
  };
  return (
    <section class="another" aria-labelledby={`${id}-heading`}>
      <h2 id={`${id}-heading`}>{heading}</h2>
      {canPick && (
        <div class="another-pick">
          <button type="button" class="strong" data-pick onClick={pick}>
            {t('panel_pick')}
          </button>
          <span class="quiet">{t('panel_shortcut')}</span>
        </div>
      )}
      {canPick && (
        <div class="another-pick">
          <button type="button" data-start-sweep onClick={sweep}>
            {t('sweep_menu')}
          </button>
          <span class="quiet">{t('sweep_shortcut')}</span>
        </div>
      )}
      <label for={`${id}-paste`}>{t('panel_paste')}</label>
      <textarea
        id={`${id}-paste`}
        data-paste
        rows={3}
        value={text}
        aria-invalid={trouble === 'panel_paste_empty' ? 'true' : undefined}
        aria-describedby={trouble ? `${id}-trouble ${id}-key` : `${id}-key`}
        aria-keyshortcuts="Control+Enter Meta+Enter"
        onInput={(event) => {
          setText(event.currentTarget.value);
          setTrouble(null);
        }}
        onKeyDown={(event) => {
          if (event.key === 'Enter' && (event.ctrlKey || event.metaKey) && !event.isComposing) void judge();
        }}
      />
      <div class="another-pick">
        <button type="button" data-judge onClick={judge}>
          {t('panel_judge')}
        </button>
        <span id={`${id}-key`} class="quiet">
          {t('keys_paste')}
        </span>
      </div>
      {trouble && (
        <p id={`${id}-trouble`} class="complaint" role="alert">
          {t(trouble)}
        </p>
      )}
    </section>
  );
}
