/** Reasons to leave it, in kind words and in the language of the ad, to be said at the door or sent afterwards. */
import type { Evaluation, Flag } from '../../../src/listing/evaluation.ts';
import { written } from '../../../src/message/compose.ts';
import { sellerSpeaker } from '../../../src/message/german.ts';
import { refusalMessage, stillOpen } from '../../../src/message/refusal.ts';
import { CopyButton } from '../../components/copy-button.tsx';
import { useWords } from '../../components/speech.ts';

export function Leave({ evaluation }: { readonly evaluation: Evaluation }) {
  const { say, t } = useWords();
  const refusal = refusalMessage(evaluation);
  const { language } = evaluation.reading;
  const text = refusal && written(sellerSpeaker(language, say), refusal);
  return (
    <section aria-labelledby="leave-heading" class="leave">
      <h2 id="leave-heading">{t('pickup_leave')}</h2>
      {text === null ? (
        <Open flags={stillOpen(evaluation.flags)} />
      ) : (
        <>
          <blockquote lang={language}>
            {text.split('\n\n').map((one) => (
              <p key={one}>{one}</p>
            ))}
          </blockquote>
          <CopyButton name="refusal" words={t('pickup_leave_copy')} text={() => text} />
        </>
      )}
      <p class="quiet">{t('pickup_leave_free')}</p>
    </section>
  );
}

/** No reason to tell the seller, but what is flagged still stands. */
function Open({ flags }: { readonly flags: readonly Flag[] }) {
  const { say, t } = useWords();
  if (flags.length === 0) return <p>{t('pickup_leave_nothing')}</p>;
  return (
    <>
      <p>{t('pickup_leave_open')}</p>
      <ul>
        {[...new Set(flags.map(({ says }) => say(says)))].map((says) => (
          <li key={says}>{says}</li>
        ))}
      </ul>
    </>
  );
}
