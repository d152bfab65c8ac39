/**
 * Asks before something that can't be taken back in one step: what happens, yes, and no. The focus goes to the answer that changes nothing,
 * and from there back. The question is the name of the group around the answers, which is read as the focus comes into it: were it an alert
 * as well, it would be read twice.
 */
import { useEffect, useId, useRef } from 'preact/hooks';
import { useWords } from '../components/speech.ts';

export interface SureProps {
  readonly words: string;
  readonly yes: string;
  readonly onYes: () => void;
  readonly onNo: () => void;
}

export function Sure({ words, yes, onYes, onNo }: SureProps) {
  const { t } = useWords();
  const id = useId();
  const no = useRef<HTMLButtonElement>(null);
  const asked = useRef(document.activeElement);
  useEffect(() => no.current?.focus(), []);
  const leave = () => {
    onNo();
    if (asked.current instanceof HTMLElement) asked.current.focus();
  };
  return (
    <fieldset aria-labelledby={id} class="sure" onKeyDown={(event) => event.key === 'Escape' && leave()}>
      <span id={id}>{words}</span>{' '}
      <button type="button" data-sure onClick={onYes}>
        {yes}
      </button>{' '}
      <button type="button" ref={no} data-not-sure onClick={leave}>
        {t('workshop_not_sure')}
      </button>
    </fieldset>
  );
}
