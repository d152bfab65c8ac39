/** Why the call is what it is. */
import type { Message } from '../../src/words/message.ts';
import { useWords } from '../components/speech.ts';

export function Reasons({ because }: { readonly because: readonly Message[] }) {
  const { say, t } = useWords();
  if (because.length === 0) return null;
  return (
    <section aria-labelledby="reasons-heading">
      <h2 id="reasons-heading">{t('panel_reasons')}</h2>
      <ul class="plain-list">
        {because.map((reason) => (
          <li key={say(reason)}>{say(reason)}</li>
        ))}
      </ul>
    </section>
  );
}
