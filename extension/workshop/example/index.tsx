/** What the first screen shows while nothing is kept: one ad with its whole answer, made up and said to be. */
import { useState } from 'preact/hooks';
import { useWords } from '../../components/speech.ts';
import { Answer } from '../../panel/answer.tsx';
import { Editing } from '../../panel/edits.ts';
import type { WorkshopHost } from '../host.ts';
import { EXAMPLE } from './ad.ts';
import { type OpenExample, useExample } from './use-example.ts';

export function Example({ host }: { readonly host: WorkshopHost }) {
  const { t } = useWords();
  const open = useExample(host);
  return (
    <div class="one-find" data-example>
      <section class="one-find-about" aria-labelledby="example-heading">
        <h2 id="example-heading">{t('example_heading')}</h2>
        <p>{t('example_about')}</p>
        <blockquote class="example-ad" lang="en">
          {EXAMPLE.text}
        </blockquote>
      </section>
      <div class="one-find-answer">{open ? <Opened open={open} /> : <p class="quiet">{t('workshop_opening')}</p>}</div>
    </div>
  );
}

function Opened({ open }: { readonly open: OpenExample }) {
  const { session, settings } = open;
  const [unit, setUnit] = useState(session.distance?.unit ?? (settings.unit === 'kg' ? 'km' : 'mi'));
  return (
    <Editing.Provider value={open.edits}>
      <Answer
        evaluation={open.evaluation}
        listing={session.listing}
        settings={settings}
        turnsOf={open.core.turnsOf}
        keeping={null}
        typed={session.distance}
        unit={unit}
        onDistance={open.setDistance}
        onUnit={setUnit}
        onSettings={open.setSettings}
      />
    </Editing.Provider>
  );
}
