/** A message to the seller in the ad's language, put together from the answer, changed by hand, and copied with one key. Nothing is sent. */
import { useId, useRef, useState } from 'preact/hooks';
import { MESSAGE_PARTS, type MessagePart, sellerMessage, written } from '../../src/message/compose.ts';
import { sellerSpeaker } from '../../src/message/german.ts';
import { ChoiceField } from '../components/choice-field.tsx';
import { CopyButton } from '../components/copy-button.tsx';
import { useWords } from '../components/speech.ts';
import type { SellerMessageProps } from './seller-message.tsx';

type Language = 'en' | 'de';

export function SellerDraft({ evaluation, title, only }: SellerMessageProps) {
  const { say, t } = useWords();
  const id = useId();
  const [parts, setParts] = useState<readonly MessagePart[]>(MESSAGE_PARTS);
  const [chosen, setChosen] = useState<Language | null>(null);
  /** What the buyer made of it; it stays until they ask for a fresh one. */
  const [own, setOwn] = useState<string | null>(null);
  const copy = useRef<HTMLButtonElement>(null);
  const language = chosen ?? evaluation.reading.language;
  const text = own ?? written(sellerSpeaker(language, say), sellerMessage(evaluation, title, parts, only));
  return (
    <div>
      <fieldset class="message-parts">
        <legend class="field-label">{t('message_with')}</legend>
        {MESSAGE_PARTS.map((part) => (
          <label key={part} class="tick">
            <input
              type="checkbox"
              data-part={part}
              checked={parts.includes(part)}
              disabled={own !== null}
              onChange={(event) => {
                const on = event.currentTarget.checked;
                setParts(MESSAGE_PARTS.filter((one) => (one === part ? on : parts.includes(one))));
              }}
            />
            {t(`message_part_${part}`)}
          </label>
        ))}
      </fieldset>
      {own === null && (
        <ChoiceField
          path="message-language"
          label={t('message_language')}
          labelShown
          value={language}
          options={(['en', 'de'] as const).map((value) => ({ value, words: t(`message_language_${value}`) }))}
          onChoice={(value) => setChosen(value === 'de' ? 'de' : 'en')}
        />
      )}
      <label for={id} class="field-label">
        {t('message_text')}
      </label>
      <textarea
        id={id}
        rows={10}
        lang={language}
        data-path="message"
        value={text}
        aria-describedby={`${id}-hint`}
        aria-keyshortcuts="Control+Enter Meta+Enter"
        onInput={(event) => setOwn(event.currentTarget.value)}
        onKeyDown={(event) => {
          if (event.key !== 'Enter' || !(event.ctrlKey || event.metaKey) || event.isComposing) return;
          event.preventDefault();
          copy.current?.click();
        }}
      />
      <div class="message-tools">
        <CopyButton name="message" words={t('message_copy')} text={() => text} source={text} button={copy} />
        {own !== null && (
          <button type="button" data-afresh onClick={() => setOwn(null)}>
            {t('message_afresh')}
          </button>
        )}
      </div>
      <p id={`${id}-hint`} class="line-notes">
        {t('message_copy_key')} {t('message_nothing_sent')}
      </p>
    </div>
  );
}
