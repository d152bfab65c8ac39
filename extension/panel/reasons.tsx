/** Why the call is what it is. */
import type { Flag } from '../../src/listing/evaluation.ts';
import type { Message } from '../../src/words/message.ts';
import { useWords } from '../components/speech.ts';

interface Props {
  readonly because: readonly Message[];
  readonly flags: readonly Flag[];
}

/** A reason that is a flag is named in short: the flag itself stands right below. */
function inShort(say: (message: Message) => string, reason: Message, flags: readonly Flag[]): string {
  const sentence = say(reason);
  const found = flags.find((flag) => say(flag.says) === sentence)?.found;
  return found ? say(found) : sentence;
}

export function Reasons({ because, flags }: Props) {
  const { say, t } = useWords();
  if (because.length === 0) return null;
  return (
    <section aria-labelledby="reasons-heading">
      <h2 id="reasons-heading">{t('panel_reasons')}</h2>
      <ul class="plain-list">
        {because.map((reason) => (
          <li key={say(reason)}>{inShort(say, reason, flags)}</li>
        ))}
      </ul>
    </section>
  );
}
