/** What to ask the seller, most valuable first. */
import type { Question } from '../../src/listing/evaluation.ts';
import { CopyButton } from '../components/copy-button.tsx';
import { useWords } from '../components/speech.ts';

export function Questions({ questions }: { readonly questions: readonly Question[] }) {
  const { say, t } = useWords();
  if (questions.length === 0) return null;
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
    </section>
  );
}
