/** What to ask the seller, most valuable first, and the message that asks it. */
import type { Evaluation } from '../../src/listing/evaluation.ts';
import { CopyButton } from '../components/copy-button.tsx';
import { useWords } from '../components/speech.ts';
import { SellerMessage } from './seller-message.tsx';

export interface QuestionsProps {
  readonly evaluation: Evaluation;
  /** The ad's title; may be empty. */
  readonly title: string;
}

export function Questions({ evaluation, title }: QuestionsProps) {
  const { say, t } = useWords();
  const { questions, reading } = evaluation;
  const message = !reading.wanted && reading.items.length > 0 && <SellerMessage evaluation={evaluation} title={title} />;
  if (questions.length === 0) return message ? <section aria-label={t('message_heading')}>{message}</section> : null;
  return (
    <section aria-labelledby="questions-heading">
      <h2 id="questions-heading">{t('panel_questions')}</h2>
      <ul class="plain-list">
        {questions.map((question) => (
          <li key={question.id}>{say(question.says)}</li>
        ))}
      </ul>
      <CopyButton
        name="questions"
        words={t('panel_questions_copy')}
        text={() => questions.map((question) => say(question.says)).join('\n')}
      />
      {message}
    </section>
  );
}
