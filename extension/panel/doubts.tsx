/** What could be meant in two ways: one click settles it, another takes that back. */
import type { Doubt } from '../../src/listing/reading.ts';
import { useEvidence } from '../components/evidence.ts';
import { useWords } from '../components/speech.ts';
import { useEdits } from './edits.ts';

interface Shown {
  readonly doubt: Doubt;
  /** Null while it is open. */
  readonly choice: number | null;
}

/** Settled ones stay in view, also when the corrected reading raises them no more. */
function useDoubts(open: readonly Doubt[]): Shown[] {
  const { session } = useEdits();
  const settled = session.changes.flatMap((change) => (change.by === 'doubt' ? [change] : []));
  return [
    ...open.filter((doubt) => !settled.some((one) => one.doubt.id === doubt.id)).map((doubt) => ({ doubt, choice: null })),
    ...settled,
  ];
}

export function Doubts({ doubts }: { readonly doubts: readonly Doubt[] }) {
  const { t } = useWords();
  const shown = useDoubts(doubts);
  if (shown.length === 0) return null;
  return (
    <section aria-labelledby="doubts-heading">
      <h2 id="doubts-heading">{t('panel_doubts')}</h2>
      <ul class="doubts">
        {shown.map((one) => (
          <DoubtLine key={one.doubt.id} {...one} />
        ))}
      </ul>
    </section>
  );
}

function DoubtLine({ doubt, choice }: Shown) {
  const { say, t } = useWords();
  const { settle, reopen } = useEdits();
  const evidence = useEvidence(doubt.evidence);
  return (
    <li class={choice === null ? 'doubt' : 'doubt doubt-settled'} data-doubt={doubt.id} {...evidence}>
      <fieldset>
        <legend>{say(doubt.why)}</legend>
        <div class="choices">
          {doubt.choices.map((option, index) => (
            <button
              key={say(option.says)}
              type="button"
              aria-pressed={choice === index}
              data-choice={index}
              onClick={() => (choice === index ? reopen(doubt.id) : settle(doubt, index))}
            >
              {say(option.says)}
              {choice === null && index === 0 && <span class="choice-assumed"> {t('panel_choice_assumed')}</span>}
            </button>
          ))}
          {choice !== null && (
            <button type="button" class="bare" data-undo={doubt.id} onClick={() => reopen(doubt.id)}>
              {t('panel_undo')}
            </button>
          )}
        </div>
      </fieldset>
    </li>
  );
}
