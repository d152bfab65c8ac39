/** What is needed and owned, and what the rest costs. Before anything is set up: the few figures that the list follows from. */

import { useState } from 'preact/hooks';
import { Announcer } from '../../components/announcer.tsx';
import { useWords } from '../../components/speech.ts';
import { useUndo } from '../undo.tsx';
import { Answer } from './answer.tsx';
import { Figures } from './figures.tsx';
import { Money } from './money.tsx';
import { Needs } from './needs.tsx';
import { OwnedList } from './owned.tsx';
import { forgetKit, putBackKit, saveFigures } from './save.ts';
import { countedName } from './thing-words.ts';
import type { OpenKit } from './use-kit.ts';

export function Overview({ kit }: { readonly kit: OpenKit }) {
  const words = useWords();
  const { t } = words;
  const { figures, status, write } = kit;
  const undo = useUndo();
  const none = figures === null || status === null;
  // Figures count as they are typed, but a screen that turned over at the first digit would take the field from under the next one.
  const [through, setThrough] = useState(!none);
  const forget = async () => {
    const { settings, storedNeeds } = kit;
    if (!(await write(forgetKit))) return;
    setThrough(false);
    const putBack = () => write((store, now) => putBackKit(store, settings, storedNeeds, now)).then(setThrough);
    undo.done(t('kit_forgotten'), () => void putBack(), true);
  };
  if (none || !through) {
    return (
      <>
        {undo.line}
        <p>{t('kit_start')}</p>
        <Figures kit={kit} />
        <p>
          <button
            type="button"
            class="strong"
            data-set-up
            onClick={() => void write((store, now) => saveFigures(store, {}, now)).then(setThrough)}
          >
            {t('kit_set_up')}
          </button>
        </p>
        <OwnedList kit={kit} />
      </>
    );
  }
  const lacking = status.open.map((need) => countedName(words, need));
  return (
    <>
      <Answer kit={kit} figures={figures} status={status} />
      <Announcer text={lacking.length === 0 ? t('kit_complete') : t('kit_lacks_short', { what: lacking.join('; ') })} />
      <Needs kit={kit} status={status} />
      <OwnedList kit={kit} />
      <Money kit={kit} figures={figures} status={status} />
      <section aria-labelledby="kit-figures">
        <h2 id="kit-figures">{t('kit_figures')}</h2>
        <Figures kit={kit} />
        <p>
          <button type="button" class="bare" data-forget onClick={() => void forget()}>
            {t('kit_forget')}
          </button>{' '}
          <span class="quiet">{t('kit_forget_why')}</span>
        </p>
      </section>
    </>
  );
}
