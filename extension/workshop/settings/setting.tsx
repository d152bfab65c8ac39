/** One setting: its field, what it does, its default, and the way back to it. */
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { useWords } from '../../components/speech.ts';

export interface SettingProps {
  /** Tail of its strings' keys: settings_NAME and settings_NAME_why. */
  readonly name: string;
  /** The default in words; null where there is none to tell. */
  readonly standard: string | null;
  readonly isOwn: boolean;
  readonly onPutBack: () => void;
  /** Draws the field, with the id of its explanation. */
  readonly children: (hint: string) => ComponentChildren;
}

export function Setting({ name, standard, isOwn, onPutBack, children }: SettingProps) {
  const { t } = useWords();
  const hint = useId();
  return (
    <div class="setting" data-setting={name}>
      {children(hint)}
      <span id={hint} class="setting-why">
        {t(`settings_${name}_why`)} {standard !== null && t('settings_default', { value: standard })}
      </span>
      {isOwn && (
        <button type="button" class="bare" data-put-back={name} onClick={onPutBack}>
          {t('settings_put_back')}
          <span class="unseen">: {t(`settings_${name}`)}</span>
        </button>
      )}
    </div>
  );
}
